/** Drift: a change is found where there is one, and not made up where there is none. */

import { describe, expect, it } from 'vitest';
import { drift, type Drift, driftSentence, type Period } from '../../core/player/drift.ts';
import type { MeasuredShot } from '../../core/player/measured-shot.ts';
import type { SpreadEvidence } from '../../core/player/posterior.ts';
import { presetSpread, STANDARD_BAG } from '../../core/player/presets.ts';
import { dayOf, weightOfAge } from '../../core/player/recency.ts';
import { drawShots } from './sample-player.ts';
import { english } from '../../core/words/english/english.ts';

const club = STANDARD_BAG.find(({ name }) => name === '7-iron')!;
const expected = presetSpread({ handicap: 16, group: 'men' }, club, 'full');
const spring: Period = { name: 'spring', from: '2026-03-01', until: '2026-06-01' };
const summer: Period = { name: 'summer', from: '2026-06-01', until: '2026-09-01' };

function dated(count: number, day: string, seed: string, longer = 1): MeasuredShot[] {
  const law = { ...expected, carryMean: longer * expected.carryMean };
  return drawShots(law, count, seed).map((shot) => ({ ...shot, day: dayOf(day)! }));
}

function found(shots: readonly MeasuredShot[]): Drift {
  const evidence: SpreadEvidence = { club, swing: 'full', expected, shots };
  const result = drift(evidence, spring, summer);
  if (!result.ok) throw new Error(result.error);
  return result.value;
}

describe('drift', () => {
  it('finds six per cent less carry in summer, with an interval that holds it', () => {
    const shots = [...dated(60, '2026-04-10', 'before'), ...dated(60, '2026-07-10', 'after', 0.94)];
    const change = found(shots).changes.carryMean;
    expect(change.high).toBeLessThan(0);
    expect(change.low).toBeLessThan(-0.06 * expected.carryMean);
    expect(driftSentence(found(shots), 'spring', 'metres', english)).toMatch(
      /^7-iron carries \d+ m less than in spring \(90 % interval \d+ to \d+ m\)\.$/,
    );
    expect(driftSentence(found(shots), 'spring', 'yards', english)).toMatch(/ yd less /);
  });

  it('raises an alarm in at most one of ten pairs of periods without a change', () => {
    let alarms = 0;
    const pairs = 60;
    for (let i = 0; i < pairs; i++) {
      const shots = [...dated(8, '2026-04-10', `b ${i}`), ...dated(8, '2026-07-10', `a ${i}`)];
      if (driftSentence(found(shots), 'spring', 'metres', english) !== null) alarms++;
    }
    // 10 % of 60 and three binomial standard errors; the estimator, being cautious, stays well below.
    expect(alarms).toBeLessThan(6 + 3 * Math.sqrt(5.4));
  });

  it('takes the direction of change from before to after', () => {
    const shots = [...dated(60, '2026-04-10', 'before'), ...dated(60, '2026-07-10', 'after', 1.08)];
    expect(found(shots).changes.carryMean.low).toBeGreaterThan(0);
    expect(driftSentence(found(shots), 'spring', 'metres', english)).toContain('more than in spring');
  });

  it('refuses too few shots and periods that are no dates, and says what to do', () => {
    const evidence = { club, swing: 'full', expected, shots: dated(4, '2026-04-10', 'few') } as const;
    expect(drift(evidence, spring, summer)).toMatchObject({ ok: false });
    const bad = drift(evidence, { ...spring, from: 'March' }, summer);
    expect(bad.ok ? '' : bad.error).toContain('2026-03-01');
  });
});

describe('age of shots', () => {
  it('reads dates and times of ISO 8601, and nothing else', () => {
    expect(dayOf('1970-01-02')).toBe(1);
    expect(dayOf('1970-01-01T12:00')).toBe(0.5);
    expect(dayOf('1970-01-01T12:00:00+06:00')).toBe(0.25);
    expect(dayOf('1970-01-01T12:00:00.0Z')).toBe(0.5);
    for (const text of ['', 'yesterday', '2026-02-30', '2026-13-01', '03/04/2026', undefined])
      expect(dayOf(text)).toBeUndefined();
  });

  it('halves with every half-life, and never for shots without a date', () => {
    expect(weightOfAge(0, 90, 90)).toBe(0.5);
    expect(weightOfAge(0, 180, 90)).toBe(0.25);
    expect(weightOfAge(100, 90, 90)).toBe(1);
    expect(weightOfAge(undefined, 90, 90)).toBe(1);
    expect(weightOfAge(0, 90, undefined)).toBe(1);
    expect(weightOfAge(0, 1e9, 1)).toBeGreaterThan(0);
  });
});
