/** Putting errors from records: found again from simulated putts, with honest intervals, whatever kind of record. */

import { describe, expect, it } from 'vitest';
import type { PlayerDocument } from '../../core/player/format.ts';
import type { PuttingSkill } from '../../core/player/model.ts';
import { parsePlayer } from '../../core/player/parse.ts';
import { BALL_RADIUS_M, captureAngle, HOLE_RADIUS_M, runSd } from '../../core/putting/capture.ts';
import { fitPutting, type PuttingFit, type PuttingRecord } from '../../core/putting/fit.ts';
import { makePuttingTable } from '../../core/putting/putting.ts';
import { puttCountOdds } from '../../core/putting/second-putt.ts';
import { drawNormal } from '../../core/player/posterior/random-laws.ts';
import { makeStreamKey, RandomStream } from '../../core/random/streams.ts';
import { minimalPlayer } from './sample-player.ts';
import { inEnglish } from '../../core/words/told.ts';

const FOOT_M = 0.3048;
const TEST_FEET = [3, 6, 10, 20, 30, 40];
const truth: PuttingSkill = { directionSd: 0.026, distanceSdShare: 0.13 };

/** One putt by the model, written anew here: where it stops beyond the hole, or that it dropped. */
function putt(
  stream: RandomStream,
  distanceM: number,
): { readonly holed: boolean; readonly leaveM: number; readonly pastM: number } {
  const angle = truth.directionSd * drawNormal(stream);
  const run = Math.max(0, distanceM + FOOT_M + runSd(distanceM, truth.distanceSdShare) * drawNormal(stream));
  const onLine = Math.abs(Math.sin(angle)) * distanceM < HOLE_RADIUS_M - BALL_RADIUS_M || distanceM < 0.02;
  const holed = onLine && run >= distanceM && run <= distanceM + 3 * FOOT_M;
  return {
    holed,
    leaveM: Math.hypot(run * Math.cos(angle) - distanceM, run * Math.sin(angle)),
    pastM: run - distanceM,
  };
}

function puttsTaken(stream: RandomStream, distanceM: number): number {
  let left = distanceM;
  for (let putts = 1; ; putts++) {
    const { holed, leaveM } = putt(stream, left);
    if (holed || putts >= 9) return putts;
    left = Math.max(0.1, leaveM);
  }
}

/** The ten-minute test: ten putts from each of six distances. */
function tenMinutes(stream: RandomStream, times: number): PuttingRecord {
  const missed: { distanceM: number; pastM: number }[] = [];
  const holed = TEST_FEET.map((feet) => {
    const distanceM = feet * FOOT_M;
    let made = 0;
    for (let i = 0; i < times; i++) {
      const one = putt(stream, distanceM);
      if (one.holed) made++;
      // Misses from afar are measured; the record counts them once only.
      else if (feet >= 20) missed.push({ distanceM, pastM: one.pastM });
    }
    return feet >= 20 ? { distanceM, tries: made, made } : { distanceM, tries: times, made };
  });
  return { holed, missed };
}

function fit(record: PuttingRecord): PuttingFit {
  const found = fitPutting(record);
  if (!found.ok) throw new Error(inEnglish(found.error));
  return found.value;
}

const isIn = (value: number, { low, high }: { readonly low: number; readonly high: number }): boolean =>
  value >= low && value <= high;

describe('odds of one, two and more putts', () => {
  it('are those of the putting table', () => {
    const table = makePuttingTable(truth);
    for (const distanceM of [0.6, 1.5, 3, 6, 10, 18]) {
      const odds = puttCountOdds(distanceM, truth);
      const [one, two] = table.scoreOdds(distanceM);
      expect(odds[0] + odds[1] + odds[2]).toBeCloseTo(1, 12);
      // The table is linear between steps of a decimetre.
      expect(Math.abs(odds[0] - one)).toBeLessThan(0.002);
      expect(Math.abs(odds[1] - two)).toBeLessThan(0.004);
    }
  });
});

describe('errors from the ten-minute test', () => {
  it('are found again, their intervals holding them nine times in ten', () => {
    const stream = new RandomStream();
    const sets = 120;
    let direction = 0;
    let distance = 0;
    let mean = 0;
    for (let set = 0; set < sets; set++) {
      stream.restart(makeStreamKey('ten minutes'), set);
      const found = fit(tenMinutes(stream, 10));
      if (isIn(truth.directionSd, found.intervals.directionSd)) direction++;
      if (isIn(truth.distanceSdShare, found.intervals.distanceSdShare)) distance++;
      mean += Math.log(found.skill.distanceSdShare / truth.distanceSdShare) / sets;
    }
    // Binomial: 3.3 points; three and a half of them.
    const allowed = 3.5 * Math.sqrt(0.09 / sets);
    expect(Math.abs(direction / sets - 0.9)).toBeLessThan(allowed);
    expect(Math.abs(distance / sets - 0.9)).toBeLessThan(allowed);
    expect(Math.abs(mean)).toBeLessThan(0.05);
  });

  it('settle as the test is repeated', () => {
    const stream = new RandomStream();
    const widths = [4, 20, 100].map((times) => {
      stream.restart(makeStreamKey('settle'), times);
      const { low, high } = fit(tenMinutes(stream, times)).intervals.directionSd;
      return high / low;
    });
    expect(widths[1]).toBeLessThan(widths[0]!);
    expect(widths[2]).toBeLessThan(widths[1]!);
  });
});

describe('errors from a log of distances and putts', () => {
  it('are found again from three hundred greens', () => {
    const stream = new RandomStream();
    stream.restart(makeStreamKey('log'), 0);
    const taken = Array.from({ length: 300 }, () => {
      const distanceM = 0.6 + 12 * stream.nextUniform() ** 1.5;
      return { distanceM, putts: puttsTaken(stream, distanceM) };
    });
    const found = fit({ taken });
    expect(found.putts).toBe(300);
    for (const name of ['directionSd', 'distanceSdShare'] as const) {
      const { low, high } = found.intervals[name];
      const margin = (high - low) / 2;
      expect(truth[name]).toBeGreaterThan(low - margin);
      expect(truth[name]).toBeLessThan(high + margin);
      expect(found.isSettled[name]).toBe(true);
    }
  });
});

describe('a record that does not tell', () => {
  it('short putts only leave the error of length open, and say so', () => {
    const found = fit({ holed: [{ distanceM: 0.9, tries: 30, made: 26 }] });
    expect(found.isSettled.distanceSdShare).toBe(false);
    const usual = { directionSd: 0.028, distanceSdShare: 0.14 };
    const leaning = fitPutting(
      { holed: [{ distanceM: 0.9, tries: 30, made: 26 }] },
      { leanOn: { skill: usual, logSd: 0.35 } },
    );
    if (!leaning.ok) throw new Error(inEnglish(leaning.error));
    expect(leaning.value.skill.distanceSdShare / usual.distanceSdShare).toBeCloseTo(1, 0);
  });

  it.each([
    ['nothing', {}],
    ['more made than tried', { holed: [{ distanceM: 1, tries: 2, made: 3 }] }],
    ['no putt at all', { taken: [{ distanceM: 1, putts: 0 }] }],
    ['a stop behind the player', { missed: [{ distanceM: 1, pastM: -2 }] }],
    ['no distance', { holed: [{ distanceM: 0, tries: 2, made: 1 }] }],
    ['not a number', { holed: [{ distanceM: NaN, tries: 2, made: 1 }] }],
  ] as const)('%s is refused with what to do', (_, record) => {
    const found = fitPutting(record);
    expect(found.ok ? '' : inEnglish(found.error)).toMatch(/\. .+\.$/);
  });

  it('all holed and none holed still give finite numbers', () => {
    for (const made of [0, 20]) {
      const { skill, intervals } = fit({ holed: [{ distanceM: 2, tries: 20, made }] });
      for (const value of [skill.directionSd, skill.distanceSdShare, intervals.directionSd.high])
        expect(value > 0 && value < 1).toBe(true);
    }
  });

  it('from no distance at all: the capture angle of a tap-in is wide', () => {
    expect(captureAngle(0.01)).toBe(Math.PI / 2);
  });
});

describe('a player file with putts on record', () => {
  const holed = TEST_FEET.map((feet, i) => ({
    distanceM: feet * FOOT_M,
    tries: 10,
    made: [9, 5, 3, 1, 1, 0][i]!,
  }));
  const document: PlayerDocument = { ...minimalPlayer(), puttingRecord: { holed } };

  it('putts by them, leaning on what is stated', () => {
    const player = parsePlayer(document);
    if (!player.ok) throw new Error('refused');
    expect(player.value.puttingSource).toEqual({ from: 'measured', shots: 60, poorShots: 0 });
    expect(player.value.putting.directionSd).toBeGreaterThan(0.015);
    expect(player.value.putting.directionSd).toBeLessThan(0.04);
  });

  it('is told where the record cannot be', () => {
    const bad = { ...document, puttingRecord: { holed: [{ distanceM: 1, tries: 2, made: 3 }] } };
    const player = parsePlayer(bad);
    if (!player.ok) throw new Error('refused');
    expect(player.value.puttingSource).toEqual({ from: 'stated' });
    expect(player.value.warnings.map(({ code }) => code)).toContain('putting-record-unusable');
  });

  it('with an empty record is as stated, without a word', () => {
    const player = parsePlayer({ ...document, puttingRecord: {} });
    expect(player.ok && player.value.puttingSource).toEqual({ from: 'stated' });
  });
});
