/** Putts of a hole that is tried out: over the green's slopes at the day's speed, with numbered luck. */

import { describe, expect, it } from 'vitest';
import { dayPutts } from '../../core/green/day-putts.ts';
import { makePuttingTable } from '../../core/putting/putting.ts';
import type { PuttsAround } from '../../core/putting/putts-around.ts';
import { LuckSource, MIDDLING_LUCK } from '../../core/round/luck.ts';
import { HolePlay, playHole } from '../../core/round/play-hole.ts';
import { puttOn, puttOnce } from '../../core/round/putt-once.ts';
import { shortHole } from './short-hole.ts';

const PIN = { x: 40, y: -7 };
const SKILL = { directionSd: 0.025, distanceSdShare: 0.12 };
const table = makePuttingTable(SKILL);

/** Falls towards the south by `slope`: levels every four metres. */
function green(greenSpeedFt: number, slope = 0.02): PuttsAround {
  const steps = Array.from({ length: 13 }, (_, k) => 4 * (k - 6));
  const levels = steps.flatMap((x) =>
    steps.map((y) => ({ x: PIN.x + x, y: PIN.y + y, elevationM: slope * y })),
  );
  return dayPutts({ levels, pin: PIN, greenSpeedFt, putting: SKILL, table, reachM: 14 });
}

const sloping = green(10);
const source = new LuckSource('putts', 1);
const from = (east: number, north: number) => ({ x: PIN.x + east, y: PIN.y + north });

describe('a putt over slopes', () => {
  it.each([
    [0, 4],
    [0, -4],
    [5, 1],
  ])('costs on average what the green’s field says from (%i, %i)', (east, north) => {
    const costs = Array.from({ length: 1500 }, (_, round) => {
      const end = puttOn(sloping, from(east, north), PIN, SKILL, source.luckOf(round, 0));
      return end === null ? 1 : 1 + sloping.expectedAt(end.x - PIN.x, end.y - PIN.y);
    });
    const mean = costs.reduce((sum, cost) => sum + cost, 0) / costs.length;
    const squares = costs.reduce((sum, cost) => sum + (cost - mean) ** 2, 0);
    const standardError = Math.sqrt(squares / (costs.length - 1) / costs.length);
    // The field rests on 128 draws a place and is read between its places: 0.02 putts for both.
    expect(Math.abs(mean - sloping.expectedAt(east, north))).toBeLessThan(3 * standardError + 0.02);
  });

  it('drops where nothing goes wrong, break and all', () => {
    for (const [east, north] of [
      [4, 0],
      [-3, 3],
      [0, 5],
    ] as const)
      expect(puttOn(sloping, from(east, north), PIN, SKILL, MIDDLING_LUCK)).toBeNull();
  });

  it('whose slope is misread goes farther astray on a faster day', () => {
    // Off line, so that it does not drop; misread one way and the other.
    const end = (feet: number, rollZ: number): number =>
      puttOn(green(feet), from(0, 4), PIN, SKILL, { ...MIDDLING_LUCK, directionZ: 4, rollZ })!.y;
    const apart = (feet: number): number => Math.abs(end(feet, 2) - end(feet, -2));
    expect(apart(8)).toBeGreaterThan(0.1);
    expect(apart(12)).toBeGreaterThan(1.3 * apart(8));
  });

  it('takes the same luck to the same end, and a misread slope to another', () => {
    const luck = source.luckOf(3, 2);
    const end = puttOn(sloping, from(6, 2), PIN, SKILL, luck);
    expect(puttOn(sloping, from(6, 2), PIN, SKILL, { ...luck, poorU: 0.1, canopyDepth: 3 })).toEqual(end);
    const missed = { ...MIDDLING_LUCK, directionZ: 2 };
    expect(puttOn(sloping, from(6, 2), PIN, SKILL, { ...missed, gustZ: 1 })).not.toEqual(
      puttOn(sloping, from(6, 2), PIN, SKILL, missed),
    );
  });
});

describe('a green without slopes', () => {
  it('is putted by the level law', () => {
    const level = dayPutts({ levels: [], pin: PIN, greenSpeedFt: 10, putting: SKILL, table, reachM: 14 });
    for (let round = 0; round < 50; round++) {
      const luck = source.luckOf(round, 1);
      const wanted = puttOnce(from(3, 3), PIN, SKILL, luck.distanceZ, luck.directionZ);
      expect(puttOn(level, from(3, 3), PIN, SKILL, luck)).toEqual(wanted);
    }
  });
});

describe('a hole that is tried out', () => {
  it('asks its own green where a putt ends', () => {
    const { play } = shortHole();
    const asked: number[] = [];
    const putts: PuttsAround = {
      ...play.prepared.putts,
      rollOnce: (_east, _north, { run }) => {
        asked.push(run);
        return null;
      },
    };
    const other = new HolePlay({ ...play.prepared, putts }, play.field, play.tee);
    const { shots, holedOut } = playHole(other, source.hole(5));
    expect(holedOut).toBe(true);
    expect(shots.filter(({ kind }) => kind === 'putt')).toHaveLength(1);
    // The luck of that stroke's number, whatever came before it.
    expect(asked).toEqual([source.luckOf(5, shots.length - 1).distanceZ]);
  });
});
