/** A planner's desk asked what more shots would be worth: its numbers hang together, and it can be stopped. */

import { beforeAll, describe, expect, it } from 'vitest';
import { WorthDesk } from '../../../renderer/bag/work/worth-desk.ts';
import { smallCourseText, smallPlayerText } from '../small-course.ts';

const means = {
  clock: (() => {
    let now = 0;
    return () => (now += 20);
  })(),
  turn: () => new Promise<void>((resolve) => setImmediate(resolve)),
};

describe('the worth of ten more shots', () => {
  const desk = new WorthDesk(means);

  beforeAll(async () => {
    expect((await desk.open(smallCourseText(), smallPlayerText())).ok).toBe(true);
    const task = { key: 'pond', hole: 1, teeName: 'Oak', position: 'front', seed: 'dew', rough: false };
    expect((await desk.solve(task, () => undefined)).ok).toBe(true);
  });

  it('is never more than that of knowing everything, and comes with its progress', async () => {
    const shares: number[] = [];
    const values = await desk.worth({ resultKey: 'pond', shots: 10 }, (share) => shares.push(share));
    expect(values).not.toBeNull();
    expect(values!.length).toBeGreaterThan(0);
    for (const { clubs, perfectStrokes, choices } of values!) {
      expect(choices).toBeGreaterThan(0);
      expect(perfectStrokes).toBeGreaterThanOrEqual(0);
      for (const { gainStrokes, standardError } of clubs) {
        expect(gainStrokes).toBeLessThanOrEqual(perfectStrokes + 3 * standardError);
        expect(gainStrokes).toBeGreaterThan(-3 * standardError - 1e-9);
      }
    }
    expect(shares.length).toBeGreaterThan(3);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(Math.max(...shares)).toBeLessThanOrEqual(1);
  });

  it('stops when it is told to, and says nothing of holes that are not worked out', async () => {
    const stopped = desk.worth({ resultKey: 'pond', shots: 10 }, () => void desk.stopWorth());
    expect(await stopped).toBeNull();
    expect(await desk.worth({ resultKey: 'gone', shots: 10 }, () => undefined)).toBeNull();
  });
});
