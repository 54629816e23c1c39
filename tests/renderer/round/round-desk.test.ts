/** What a worker does for a round, on a short par 3 worked out roughly. */

import { beforeAll, describe, expect, it } from 'vitest';
import { type Conditions, DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { meanOf } from '../../../core/round/distribution.ts';
import type { RoundApi } from '../../../renderer/workers/round-api.ts';
import { RoundDesk } from '../../../renderer/workers/round-desk.ts';
import { smallCourseText, smallPlayerText } from '../small-course.ts';

const means = {
  clock: (() => {
    let now = 0;
    return () => (now += 20);
  })(),
  turn: () => new Promise<void>((resolve) => setImmediate(resolve)),
};
const quiet = (): void => undefined;
const TASK = { key: 'pond', hole: 1, teeName: 'Oak', position: 'front', seed: 'dew', rough: true };

describe('a desk that serves a round', () => {
  let desk: RoundApi;
  let expected: number;

  beforeAll(async () => {
    desk = new RoundDesk(means);
    expect((await desk.open(smallCourseText(), smallPlayerText())).ok).toBe(true);
    const solved = await desk.solve(TASK, quiet);
    if (!solved.ok) throw new Error('not solved');
    expected = solved.value.teePlan.expectedStrokes;
  });

  it('counts strokes by kind, against a peer too, with progress that does not run backwards', async () => {
    const shares: number[] = [];
    const peer = { handicap: 5, group: 'men' } as const;
    const answer = await desk.ledger({ resultKey: 'pond', plays: 400, peer }, (share) => shares.push(share));
    if (!answer.ok) throw new Error('no ledger');
    const { ledger, peerScores } = answer.value;
    // 400 plays: the mean is within four standard errors of the plan's, give or take the rough field.
    expect(Math.abs(ledger.score.mean - expected)).toBeLessThan(4 * ledger.score.standardError + 0.1);
    expect(ledger.gainedOnPeer).not.toBeNull();
    expect(meanOf(peerScores!)).toBeLessThan(expected);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBeLessThanOrEqual(1);
  });

  it('drops a ledger under way when told to', async () => {
    const under = desk.ledger({ resultKey: 'pond', plays: 100_000, peer: null }, quiet);
    await desk.cancelLedgers();
    expect(await under).toEqual({ ok: false, error: { why: 'cancelled' } });
  });

  it('works the hole out for a player with fewer poor strikes: fewer strokes', async () => {
    const task = { hole: 1, teeName: 'Oak', position: 'front', seed: 'dew' };
    const asIs = await desk.improved({ ...task, improvement: null }, quiet);
    const better = await desk.improved({ ...task, improvement: 'fewer-poor-strikes' }, quiet);
    if (!asIs.ok || !better.ok) throw new Error('not solved');
    expect(meanOf(better.value)).toBeLessThan(meanOf(asIs.value));
  });

  it('makes the card of the hole, of the option that was chosen', async () => {
    const card = await desk.card('pond', { units: 'metres', language: 'en' }, null);
    expect(card).toMatchObject({ hole: 1, par: 3, units: 'metres', tee: 'Oak', holePosition: 'front' });
    const ball = await desk.startBall('pond');
    const { plan } = (await desk.tryChoices('pond', ball!))!;
    const other = plan.options.find(({ id }) => id !== plan.recommendation.optionId);
    expect((await desk.card('pond', { units: 'metres', language: 'en' }, other!.id))?.club).toContain(
      other!.club,
    );
  });

  it('plays a stroke with numbered luck and tells what the choice costs', async () => {
    const ball = (await desk.startBall('pond'))!;
    const { own, plan } = (await desk.tryChoices('pond', ball))!;
    expect(plan.lie).toBe('tee');
    const luck = { seed: 'try', round: 3 };
    const first = (await desk.tryShot('pond', ball, own, luck))!;
    expect((await desk.tryShot('pond', ball, own, luck))!.shot.end).toEqual(first.shot.end);
    expect((await desk.tryShot('pond', ball, own, { ...luck, round: 4 }))!.shot.end).not.toEqual(
      first.shot.end,
    );
    expect(first.cost?.cost).toBeCloseTo(0, 6);
    if (own.kind !== 'swing') throw new Error('the plan does not swing');
    const wide = { ...own, choice: { ...own.choice, bearing: own.choice.bearing - 0.6 } };
    expect((await desk.tryShot('pond', ball, wide, luck))!.cost!.cost).toBeGreaterThan(0.1);
  });

  it('replays a hole with the same luck and records it', async () => {
    const luck = { seed: 'try', round: 3 };
    const once = (await desk.replay('pond', [], luck))!;
    const again = (await desk.replay(
      'pond',
      once.played.shots.map(({ decision }) => decision),
      luck,
    ))!;
    expect(again.record).toEqual(once.record);
    expect(once.record.score).toBe(once.played.score);
    const review = await desk.reviewHole('pond', once.record, null, 'look', DEFAULT_CONDITIONS);
    expect(review?.gained).toBeCloseTo(review!.expected! - once.played.score, 9);
    const { choice, execution, luck: fortune, putting, unexplained } = review!.parts!;
    expect(choice + execution + fortune + putting + unexplained).toBeCloseTo(review!.gained!, 9);
  });

  it('holds a played hole against the day it was played under, and stops working that out', async () => {
    const { record } = (await desk.replay('pond', [], { seed: 'try', round: 3 }))!;
    const look = (day: Conditions) => desk.reviewHole('pond', record, null, 'look', day);
    const ordinary = await look(DEFAULT_CONDITIONS);
    const against = { ...DEFAULT_CONDITIONS, wind: { speedMps: 12, fromDeg: 0, gustSdMps: 3 } };
    const stopped = look(against);
    await desk.cancelReviews();
    expect(await stopped).toBeNull();
    const windy = await look(against);
    // North, into the wind: the hole costs more, so the same score gained more.
    expect(windy!.expected!).toBeGreaterThan(ordinary!.expected! + 0.1);
    expect(windy!.gained! - ordinary!.gained!).toBeCloseTo(windy!.expected! - ordinary!.expected!, 9);
    expect(await look(against)).toEqual(windy);
  }, 60_000);

  it('knows nothing of a hole that it was not given', async () => {
    expect(await desk.card('elsewhere', { units: 'yards', language: 'en' }, null)).toBeNull();
    expect(await desk.startBall('elsewhere')).toBeNull();
    expect(await desk.ledger({ resultKey: 'elsewhere', plays: 1, peer: null }, quiet)).toEqual({
      ok: false,
      error: { why: 'cancelled' },
    });
  });
});
