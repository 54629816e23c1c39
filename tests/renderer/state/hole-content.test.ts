/** A hole's content changes whenever the ground that it is planned on does, and stays where an edit is out of reach. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import type { Course } from '../../../core/course/model.ts';
import { parseCourse } from '../../../core/course/parse.ts';
import { rasteriseHole } from '../../../core/ground/rasterise.ts';
import { holeContent } from '../../../renderer/state/hole-content.ts';
import { area, at, collection, line, point, square, type TestFeature } from '../../course/builders.ts';

function read(features: readonly TestFeature[]): Course {
  const course = parseCourse(collection(...features));
  if (!course.ok) throw new Error(course.error[0]?.message);
  return course.value;
}

/** Two holes 700 units apart, each with green, bunker, woods, a tree, a slope arrow and levels. */
function twoHoles(): TestFeature[] {
  return [1, 2].flatMap((hole) => {
    const east = (hole - 1) * 700;
    const ref = String(hole);
    return [
      line({ golf: 'hole', ref, par: '3', handicap: ref }, at(east, 0), at(east, 130)),
      area({ golf: 'tee', ref }, square(east, 0, 8)),
      area({ golf: 'green', ref }, square(east, 130, 14)),
      point({ holewright_kind: 'hole_position', ref, name: 'Middle' }, at(east, 130)),
      area({ golf: 'bunker' }, square(east + 24, 126, 7)),
      area({ natural: 'wood', height: 14 }, square(east - 60, 60, 30)),
      point({ natural: 'tree', height: 9 }, at(east + 40, 40)),
      point({ holewright_kind: 'slope_mark', slope_percent: 2, downhill_deg: 90 }, at(east + 3, 128)),
      ...[0, 60, 120].flatMap((north) =>
        [-60, 0, 60].map((side) =>
          point({ holewright_kind: 'ground_level', ele: 10 + north / 60 }, at(east + side, north)),
        ),
      ),
    ];
  });
}

function moved(feature: TestFeature, east: number, north: number): TestFeature {
  const shift = (value: unknown): unknown => {
    if (!Array.isArray(value)) return value;
    const [lon, lat] = value as unknown[];
    if (typeof lon === 'number' && typeof lat === 'number') return [lon + east * 1e-5, lat + north * 1e-5];
    return (value as unknown[]).map(shift);
  };
  const { geometry } = feature;
  if (geometry === null) return feature;
  return { ...feature, geometry: { ...geometry, coordinates: shift(geometry.coordinates) } };
}

/** The parts of the raster that planning reads, coarse so that many are quick. */
function groundText(course: Course, number: number): string {
  const hole = course.holes.find((one) => one.number === number)!;
  const ground = rasteriseHole(course, hole, makeLocalFrame(hole.line[1]!), 6);
  const { lie, canopyTop, canopyBase, elevation, slopes } = ground;
  const sums = [lie, canopyTop, canopyBase, elevation ?? [], slopes ?? []].map((values) =>
    Array.from(values).join(),
  );
  return [ground.west, ground.south, ground.columns, ground.rows, ...sums].join('|');
}

describe('the content of a hole', () => {
  const before = twoHoles();
  const course = read(before);
  const grounds = new Map([1, 2].map((number) => [number, groundText(course, number)]));

  it('differs wherever moving a feature changes the ground of the hole', () => {
    fc.assert(
      fc.property(
        fc.nat(before.length - 1),
        fc.integer({ min: -400, max: 400 }),
        fc.integer({ min: -400, max: 400 }),
        (index, east, north) => {
          const next = read(before.with(index, moved(before[index]!, east, north)));
          for (const number of [1, 2]) {
            if (holeContent(next, number) !== holeContent(course, number)) continue;
            expect(groundText(next, number)).toBe(grounds.get(number));
          }
        },
      ),
      { seed: 41, numRuns: 120 },
    );
  });

  it('stays where a bunker of the other hole is moved', () => {
    const bunker = before.findLastIndex(({ properties }) => properties?.['golf'] === 'bunker');
    const next = read(before.with(bunker, moved(before[bunker]!, 3, 3)));
    expect(holeContent(next, 1)).toBe(holeContent(course, 1));
    expect(holeContent(next, 2)).not.toBe(holeContent(course, 2));
  });

  it('stays where a level of the other hole is raised, for its own levels lie close enough', () => {
    const level = before.findLastIndex(({ properties }) => properties?.['ele'] !== undefined);
    const raised = { ...before[level]!, properties: { ...before[level]!.properties, ele: 99 } };
    const next = read(before.with(level, raised));
    expect(holeContent(next, 2)).not.toBe(holeContent(course, 2));
  });

  it('differs for another slope of its own green alone', () => {
    const mark = before.findIndex(({ properties }) => properties?.['slope_percent'] !== undefined);
    const steeper = { ...before[mark]!, properties: { ...before[mark]!.properties, slope_percent: 3 } };
    const next = read(before.with(mark, steeper));
    expect(holeContent(next, 1)).not.toBe(holeContent(course, 1));
    expect(holeContent(next, 2)).toBe(holeContent(course, 2));
  });

  it('takes in every level where the hole has none near, since the nearest one bears on it', () => {
    const levels = (ele: number): TestFeature[] => [
      ...before.filter(({ properties }) => properties?.['ele'] === undefined),
      point({ holewright_kind: 'ground_level', ele: 10 }, at(700, 0)),
      point({ holewright_kind: 'ground_level', ele }, at(690, 130)),
    ];
    expect(holeContent(read(levels(20)), 1)).not.toBe(holeContent(read(levels(10)), 1));
  });

  it('differs for another par, another name of a tee and another crown', () => {
    const line1 = before[0]!;
    const par = read(before.with(0, { ...line1, properties: { ...line1.properties, par: '4' } }));
    expect(holeContent(par, 1)).not.toBe(holeContent(course, 1));
    expect(holeContent(par, 2)).toBe(holeContent(course, 2));
    const tree = before.findIndex(({ properties }) => properties?.['natural'] === 'tree');
    const wide = { ...before[tree]!, properties: { ...before[tree]!.properties, diameter_crown: 12 } };
    expect(holeContent(read(before.with(tree, wide)), 1)).not.toBe(holeContent(course, 1));
  });
});
