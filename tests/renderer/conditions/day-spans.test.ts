/** How far the day may change: asked of a planner's desk, drawn as zones of a bar, said in both languages. */

import { beforeAll, describe, expect, it } from 'vitest';
import type { ConditionSpan, DayChange } from '../../../core/plan/sensitivity.ts';
import { type SpanWords, spanText } from '../../../core/plan/sensitivity-words.ts';
import { sensitivity as english } from '../../../core/words/english/sensitivity.ts';
import { sensitivity as german } from '../../../core/words/german/sensitivity.ts';
import { zonesOf } from '../../../renderer/conditions/spans/span-bar.tsx';
import { SpansDesk } from '../../../renderer/conditions/spans/spans-desk.ts';
import type { SpotQuestion } from '../../../renderer/workers/planner-api.ts';
import { at } from '../../course/builders.ts';
import { smallCourseText, smallPlayerText } from '../small-course.ts';

const means = {
  clock: (() => {
    let now = 0;
    return () => (now += 20);
  })(),
  turn: () => new Promise<void>((resolve) => setImmediate(resolve)),
};

function change(at: number, rest: Partial<DayChange> = {}): DayChange {
  return { at, club: '5-wood', swing: 'full', turnRad: 0, gainAtEnd: 0.12, standardError: 0.004, ...rest };
}

const WIND: ConditionSpan = {
  ...{ condition: 'wind-along', unit: 'm/s', now: -2, from: -20, to: 20 },
  turnsBelow: change(-4, { club: '7-iron', turnRad: 0.0524 }),
  changesBelow: change(-6),
};

describe('a desk asked how far the day may change', () => {
  const desk = new SpansDesk(means);
  const question: SpotQuestion = { resultKey: 'pond', rough: false, ball: at(0, 0), strokesTaken: 0 };
  const task = { key: 'pond', hole: 1, teeName: 'Oak', position: 'front', seed: 'dew', rough: false };

  beforeAll(async () => {
    expect((await desk.open(smallCourseText(), smallPlayerText())).ok).toBe(true);
    expect((await desk.solve(task, () => undefined)).ok).toBe(true);
  }, 120_000);

  it('tells every condition with its progress', async () => {
    const shares: number[] = [];
    const spans = await desk.daySpans(question, (share) => shares.push(share));
    expect(spans!.map(({ condition }) => condition)).toEqual([
      ...['wind-along', 'wind-across', 'temperature', 'firmness', 'green-speed'],
    ]);
    expect(shares.length).toBeGreaterThan(10);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
  }, 120_000);

  it('has nothing to tell of a rough hole, one that is gone, or after it was stopped', async () => {
    expect(await desk.daySpans({ ...question, resultKey: 'gone' }, () => undefined)).toBeNull();
    expect(await desk.daySpans(question, () => void desk.stopDaySpans())).toBeNull();
    await desk.solve({ ...task, key: 'quick', rough: true }, () => undefined);
    expect(await desk.daySpans({ ...question, resultKey: 'quick' }, () => undefined)).toBeNull();
  }, 120_000);
});

describe('the bar of a condition', () => {
  it('is plain around today, dotted where the aim turns, striped where another club takes over', () => {
    const { zones, now } = zonesOf(WIND);
    expect(now).toBeCloseTo(0.45, 9);
    expect(zones.map(({ kind }) => kind)).toEqual(['changes', 'turns', 'stays']);
    expect(zones[0]).toMatchObject({ from: 0, to: 0.35 });
    expect(zones[1]!.to).toBeCloseTo(0.4, 9);
    expect(zones[2]!.to).toBe(1);
  });

  it('gives steps fields of equal width', () => {
    const ground: ConditionSpan = { condition: 'firmness', unit: 'step', now: 1, from: 0, to: 2 };
    expect(zonesOf(ground)).toEqual({ zones: [{ kind: 'stays', from: 0, to: 1 }], now: 0.5 });
    const changed = zonesOf({ ...ground, changesBelow: change(0), turnsAbove: change(2) });
    expect(changed.zones.map(({ kind, to }) => [kind, Number(to.toFixed(3))])).toEqual([
      ...[
        ['changes', 0.333],
        ['stays', 0.667],
        ['turns', 1],
      ],
    ]);
  });
});

describe('the words', () => {
  const figures = {
    fixed: (value: number, decimals: number) => value.toFixed(decimals),
    short: (value: number, most: number) => String(Number(value.toFixed(most))),
  };
  const words: SpanWords = { told: english, figures, units: 'metres' };

  it('say where another club takes over and by how much', () => {
    expect(spanText(WIND, words)).toBe(
      'Wind along the shot: 2 m/s against now; from 4 m/s against aim 3° further right; ' +
        'from 6 m/s against the 5-wood takes over (saves 0.12 ± 0.004 at 20 m/s against).',
    );
  });

  it('do not boast of a gain that is gone at the end of the range', () => {
    const gone = { ...WIND, changesBelow: change(-6, { gainAtEnd: 0.004 }) };
    expect(spanText(gone, words)).toContain('(no longer ahead at 20 m/s against)');
  });

  it('say so where nothing changes, in either language and in miles', () => {
    const still: ConditionSpan = { condition: 'wind-across', unit: 'm/s', now: 0.01, from: -20, to: 20 };
    expect(spanText(still, { ...words, units: 'yards' })).toBe(
      'Wind across it: no wind now; nothing changes from 45 mph from the right to 45 mph from the left.',
    );
    expect(spanText(still, { ...words, told: german })).toContain('ändert sich nichts');
  });
});
