/** How large a hole may be: what one slip in a coordinate would lay out is refused before any of it is. */

import { describe, expect, it } from 'vitest';
import { checkCourse } from '../../core/course/check.ts';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import type { Course, LonLat } from '../../core/course/model.ts';
import { holeSpanM, tooLarge, WIDEST_HOLE_M, windowAround } from '../../core/ground/hole-window.ts';
import { prepareHole } from '../../core/plan/prepare.ts';
import type { Fault } from '../../core/result.ts';
import { faultText } from '../../core/words/told.ts';
import { wordsIn } from '../../core/words/words.ts';
import { area, collection, line, mustParse, plainHole, point, square } from '../course/builders.ts';
import { fourClubs, statedPlayer } from '../plan/synthetic.ts';

const player = statedPlayer({ spreads: fourClubs() });

function prepare(course: Course, holeNumber = 1): ReturnType<typeof prepareHole> {
  return prepareHole({ course, holeNumber, player, seed: 's' });
}

/** A hole whose tee marker lies at a place. */
function withTeeAt(place: LonLat): Course {
  const marker = point({ holewright_kind: 'tee_marker', ref: '1', name: 'back' }, place);
  return mustParse(collection(...plainHole(1, 0), ...plainHole(2, 200), marker));
}

function refusalOf(course: Course): Fault {
  const answer = prepare(course);
  if (answer.ok) throw new Error('prepared, though it should have been refused');
  return answer.error;
}

describe('a hole with a place far away', () => {
  it.each([
    ['a figure wrong', [4.1, 52], 7],
    ['longitude and latitude changed for each other', [52, 4], 5800],
    ['on the other side of the earth', [-176, -52], 20_000],
  ] as const)('%s: is refused with how far its places are spread, and the others are not', (_, place, km) => {
    const course = withTeeAt(place);
    expect(holeSpanM(course.holes[0]!) / 1000).toBeGreaterThan(0.9 * km);
    const fault = refusalOf(course);
    expect(fault).toMatchObject({ severity: 'error', code: 'hole-too-large', where: 'hole 1' });
    expect(fault.message).toContain('Check its coordinates');
    expect(prepare(course, 2).ok).toBe(true);
  });

  it('is told in both languages, with its number, how far and what to do', () => {
    const fault = refusalOf(withTeeAt([4.025, 52]));
    expect(faultText(fault, wordsIn('en'))).toEqual({
      where: 'hole 1',
      message:
        'Its line, tees and hole positions are spread over 1.7 km; up to 1.5 km can be planned. Check its coordinates (degrees, longitude first), and whether a tee marker or hole position bears its number (ref) but belongs elsewhere.',
    });
    expect(faultText(fault, wordsIn('de')).where).toBe('Loch 1');
    expect(faultText(fault, wordsIn('de')).message).toContain('bis zu 1,7 km auseinander; bis 1,5 km');
  });

  it('is an error of the check too, of that hole alone', () => {
    const faults = checkCourse(withTeeAt([4.5, 52])).filter(({ code }) => code === 'hole-too-large');
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ severity: 'error', where: 'hole 1 (feature 0)', featureIndex: 0 });
  });
});

describe('the limit', () => {
  const holeOf = (metres: number) => {
    const tee: LonLat = [4, 52];
    const frame = makeLocalFrame(tee);
    const end = frame.toLonLat({ x: 30, y: metres });
    const course = mustParse(collection(line({ golf: 'hole', ref: '1', par: '5' }, tee, end)));
    return course.holes[0]!;
  };

  it('leaves room above the longest holes, and stands where it says', () => {
    expect(tooLarge(holeOf(1000))).toBeNull();
    expect(tooLarge(holeOf(WIDEST_HOLE_M - 1))).toBeNull();
    expect(tooLarge(holeOf(WIDEST_HOLE_M + 1))).not.toBeNull();
  });

  it('bounds the cells: a raster within it has fewer than three million', () => {
    const hole = holeOf(WIDEST_HOLE_M - 1);
    const { columns, rows } = windowAround(hole, makeLocalFrame(hole.line[1]!), 1);
    expect(rows).toBeLessThan(WIDEST_HOLE_M + 162);
    expect((WIDEST_HOLE_M + 162) ** 2).toBeLessThan(3e6);
    expect(columns).toBeLessThan(200);
  });
});

it('is for holes alone: areas of many kilometres are cut to the ground of the hole', () => {
  const wide = [
    area({ holewright_kind: 'boundary' }, square(0, 0, 20_000)),
    area({ golf: 'rough' }, square(0, 0, 400_000)),
    area({ holewright_kind: 'out_of_bounds' }, square(30_000, 0, 29_950)),
  ];
  const plain = prepare(mustParse(collection(...plainHole(1, 0))));
  const course = mustParse(collection(...plainHole(1, 0), ...wide));
  const answer = prepare(course);
  if (!answer.ok || !plain.ok) throw new Error('refused');
  expect(answer.value.ground.lie).toHaveLength(plain.value.ground.lie.length);
  expect(checkCourse(course).filter(({ code }) => code === 'hole-too-large')).toEqual([]);
});
