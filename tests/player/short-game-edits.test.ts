/** Putting and short-game records added to a player file and taken out; what the file then says. */

import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import {
  addGreen,
  addPuttingTest,
  addUpAndDown,
  removeGreen,
  removePuttingTest,
  removeUpAndDowns,
  TEST_DISTANCES_FT,
} from '../../core/player/edits/putting.ts';
import type { PlayerDocument } from '../../core/player/format.ts';
import { parsePlayer } from '../../core/player/parse.ts';
import { minimalPlayer } from './sample-player.ts';
import { inEnglish } from '../../core/words/told.ts';

const nobody: PlayerDocument = { ...minimalPlayer(), putting: undefined };
delete nobody.putting;

function good(result: ReturnType<typeof addPuttingTest>): PlayerDocument {
  if (!result.ok) throw new Error(inEnglish(result.error));
  return result.value;
}

function modelOf(document: PlayerDocument) {
  const read = parsePlayer(document);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
}

/**
 * The angle model with an error of 1.5 degrees (Gelman & Nolan 2002, Teaching Statistics 24:93): of x feet the share
 * 2 Phi(asin((R - r) / x) / sigma) - 1 is holed, R = 4.25 / 24 ft, r = 1.68 / 24 ft.
 */
const TOUR = [3, 6, 10].map((distanceFt) => {
  const angle = Math.asin((4.25 - 1.68) / 24 / distanceFt) / ((1.5 * Math.PI) / 180);
  return { distanceFt, tries: 1000, made: Math.round(1000 * (2 * jStat.normal.cdf(angle, 0, 1) - 1)) };
});

describe('a putting test', () => {
  it('is turned into an error of direction near the one that made it', () => {
    const { putting, puttingSource } = modelOf(good(addPuttingTest(nobody, TOUR, '2026-05-01')));
    expect(puttingSource).toEqual({ from: 'measured', shots: 3000, poorShots: 0 });
    // Some of the misses are laid to the length, so a little less than 1.5 degrees is left to the direction.
    expect((putting.directionSd * 180) / Math.PI).toBeGreaterThan(1.1);
    expect((putting.directionSd * 180) / Math.PI).toBeLessThan(1.55);
  });

  it('keeps feet exactly as metres, leaves out what was not tried, refuses more holed than tried', () => {
    const test = TEST_DISTANCES_FT.map((distanceFt) => ({
      distanceFt,
      tries: distanceFt < 20 ? 10 : 0,
      made: 0,
    }));
    const { puttingRecord } = good(addPuttingTest(nobody, test, '2026-05-01'));
    // 0.3048 m to the foot: international yard and pound agreement of 1959.
    expect(puttingRecord?.holed?.map(({ distanceM }) => distanceM)).toEqual([0.9144, 1.8288, 3.048]);
    const odd = addPuttingTest(nobody, [{ distanceFt: 6, tries: 3, made: 4 }], '2026-05-01');
    expect(!odd.ok && inEnglish(odd.error)).toContain('4 holed of 3 from 6 ft');
    expect(addPuttingTest(nobody, [], '2026-05-01').ok).toBe(false);
  });

  it('can be taken out again by its day', () => {
    const two = good(addPuttingTest(good(addPuttingTest(nobody, TOUR, '2026-05-01')), TOUR, '2026-05-02'));
    const one = removePuttingTest(two, '2026-05-01');
    expect(one.puttingRecord?.holed?.every((line) => line['at'] === '2026-05-02')).toBe(true);
    expect(one.puttingRecord?.holed).toHaveLength(3);
    expect(modelOf(removePuttingTest(one, '2026-05-02')).puttingSource?.from).toBe('preset');
  });
});

describe('a log of greens', () => {
  it('keeps the putts, and where a miss stopped only where there was one', () => {
    let document = addGreen(nobody, { distanceM: 6, putts: 2, pastM: -0.5 }, '2026-05-01');
    document = addGreen(document, { distanceM: 3, putts: 1, pastM: 0.2 }, '2026-05-01');
    document = addGreen(document, { distanceM: 9, putts: 3, pastM: null }, '2026-05-01');
    expect(document.puttingRecord?.taken?.map(({ putts }) => putts)).toEqual([2, 1, 3]);
    expect(document.puttingRecord?.missed).toHaveLength(1);
    expect(modelOf(document).puttingSource?.from).toBe('measured');
    expect(removeGreen(document, 1).puttingRecord?.taken?.map(({ putts }) => putts)).toEqual([2, 3]);
  });
});

describe('up-and-downs', () => {
  it('add up per kind and go away per kind', () => {
    const one = good(addUpAndDown(nobody, { kind: 'chip', tries: 10, saved: 4 }, '2026-05-01'));
    const two = good(addUpAndDown(one, { kind: 'bunker', tries: 5, saved: 1 }, '2026-05-01'));
    expect(removeUpAndDowns(two, 'chip').upAndDowns?.map(({ kind }) => kind)).toEqual(['bunker']);
    expect(addUpAndDown(nobody, { kind: 'chip', tries: 1, saved: 2 }, '2026-05-01').ok).toBe(false);
    expect(addUpAndDown(nobody, { kind: 'chip', tries: 0, saved: 0 }, '2026-05-01').ok).toBe(false);
  });
});
