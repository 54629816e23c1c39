/** Which hole a feature is put to: the one clearly nearest, else none, with the reason. */

import { describe, expect, it } from 'vitest';
import { assignHoles } from '../../../core/course/import/assign-holes.ts';
import type { HoleWay, ProposedFeature } from '../../../core/course/import/proposal.ts';
import type { FeatureKind } from '../../../core/course/feature-kind.ts';
import { at, square } from '../builders.ts';

// side by side, played in opposite directions; 1 unit is about 0.7 m east, 1.1 m north
const ways: HoleWay[] = [
  { hole: 1, line: [at(0, 0), at(0, 300)] },
  { hole: 2, line: [at(150, 300), at(150, 0)] },
];

function thing(
  kind: FeatureKind,
  ring: [number, number][],
  properties: Record<string, unknown> = {},
): ProposedFeature {
  return { kind, properties, geometry: { type: 'Polygon', coordinates: [ring] }, origin: 'test' };
}

function hole(kind: FeatureKind, east: number, north: number, half = 8, holes = ways): number | string {
  const { assigned, unassigned, features } = assignHoles([thing(kind, square(east, north, half))], holes);
  const [found] = assigned;
  if (found === undefined) return unassigned[0]!.why;
  expect(features[0]!.properties['ref']).toBe(String(found.hole));
  return found.hole;
}

describe('by nearness', () => {
  it('greens go to the hole that ends there, tees to the one that starts there', () => {
    expect(hole('green', 0, 300)).toBe(1);
    expect(hole('green', 150, 0)).toBe(2);
    expect(hole('green', 0, 0)).toContain('no hole is near');
    expect(hole('tee', 0, 0)).toBe(1);
    expect(hole('tee', 150, 300)).toBe(2);
    expect(hole('tee', 150, 0)).toContain('no hole is near');
    // a forward tee stands well along the line
    expect(hole('tee', 10, 120)).toBe(1);
  });

  it('a green on which two holes end is left without a number', () => {
    const double: HoleWay[] = [...ways, { hole: 10, line: [at(-80, 0), at(5, 301)] }];
    expect(hole('green', 0, 300, 12, double)).toContain('holes 1 and 10 both end on it');
  });

  it('bunkers go to the nearer hole, if it is clearly nearer', () => {
    expect(hole('bunker', 30, 150)).toBe(1);
    expect(hole('bunker', 120, 150)).toBe(2);
    expect(hole('bunker', 75, 150)).toMatch(/about as near to hole \d \(\d+ m\) as to hole \d \(\d+ m\)/);
    expect(hole('bunker', 400, 150)).toContain('no hole is near');
  });

  it('a fairway that two lines cross goes to the one that runs along it', () => {
    const crossing: HoleWay[] = [...ways, { hole: 3, line: [at(-200, 150), at(100, 150)] }];
    const { assigned } = assignHoles(
      [thing('fairway', [at(-20, 30), at(20, 30), at(20, 270), at(-20, 270), at(-20, 30)])],
      crossing,
    );
    expect(assigned[0]!.hole).toBe(1);
    expect(hole('fairway', 0, 150, 20, crossing)).toContain('about as near');
  });

  it('needs hole lines, and not so many that looking takes all day', () => {
    expect(hole('green', 0, 300, 8, [])).toContain('no hole lines yet');
    const many = Array.from(
      { length: 40 },
      (_, i): HoleWay => ({ hole: i + 1, line: Array.from({ length: 20_000 }, () => at(0, 0)) }),
    );
    const ring = Array.from({ length: 200 }, (_, i) => at(i, i % 2));
    expect(assignHoles([thing('green', [...ring, ring[0]!])], many).unassigned[0]!.why).toContain(
      'too many hole lines',
    );
  });
});

it('by ref comes first, and kinds of no hole are left alone', () => {
  const { assigned, features } = assignHoles(
    [
      thing('green', square(0, 300, 8), { ref: '2' }),
      thing('woods', square(0, 300, 8)),
      thing('path', square(0, 0, 8)),
    ],
    ways,
  );
  expect(assigned).toEqual([{ feature: 0, hole: 2, by: 'ref' }]);
  expect(features[1]!.properties).toEqual({});
});

it('lines of the same file count', () => {
  const line: ProposedFeature = {
    kind: 'hole',
    properties: { ref: '5' },
    geometry: { type: 'LineString', coordinates: [at(500, 0), at(500, 200)] },
    origin: 'test',
  };
  const { assigned } = assignHoles([line, thing('green', square(500, 200, 8))], ways);
  expect(assigned).toEqual([expect.objectContaining({ feature: 1, hole: 5, by: 'nearness' })]);
});
