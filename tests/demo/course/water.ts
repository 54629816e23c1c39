/** Ponds and streams as penalty areas; a stream ends at the bank of the pond it feeds and at the edge of the property. */

import { difference, featureCollection, intersect, polygon } from '@turf/turf';
import { closedCurve, type Measured, type Point } from './curves.ts';
import { PONDS, STREAMS } from './water-design.ts';
import type { planeNoise } from './noise.ts';
import { signedArea } from './polygons.ts';
import { ribbonRing } from './shapes.ts';

export interface WaterArea {
  readonly name: string;
  readonly red: boolean;
  readonly pond: boolean;
  readonly ring: Point[];
}

type Noise = ReturnType<typeof planeNoise>;

export function drawWater(
  lines: ReadonlyMap<number, Measured>,
  boundary: readonly Point[],
  grip: Noise,
  hand: Noise,
): WaterArea[] {
  const ponds = PONDS.map((pond): WaterArea => {
    const line = lines.get(pond.hole)!;
    const control = pond.outline.map(([s, o]): Point => {
      const [x, y] = line.at(s, o);
      return [x + 1.2 * grip(x, y), y + 1.2 * grip(x + 400, y)];
    });
    return { name: pond.name, red: pond.red, pond: true, ring: closedCurve(control, 3) };
  });
  const streams = STREAMS.flatMap((stream) =>
    reaches(stream.course.length, stream.redReaches).map(([from, to, red]): WaterArea => {
      const ring = ribbonRing(
        stream.course,
        from,
        to,
        3.5,
        (x, y) => 1.1 * grip(x, y),
        (x, y) => 3.2 * hand(1.4 * x, 1.4 * y) + 0.8 * grip(0.6 * x, 0.6 * y),
      );
      return { name: stream.name, red, pond: false, ring: clip(ring, boundary, ponds) };
    }),
  );
  return [...ponds, ...streams];
}

/** The part of the ring inside the boundary and outside the ponds; its largest piece where there are several. */
function clip(ring: readonly Point[], boundary: readonly Point[], ponds: readonly WaterArea[]): Point[] {
  const shape = (points: readonly Point[]) => polygon([[...points, points[0]!].map(([x, y]) => [x, y])]);
  let left = intersect(featureCollection([shape(ring), shape(boundary)]));
  for (const pond of ponds) {
    if (left !== null) left = difference(featureCollection([left, shape(pond.ring)]));
  }
  if (left === null) throw new Error('A reach of a stream lies wholly outside the property or in a pond.');
  const pieces = left.geometry.type === 'Polygon' ? [left.geometry.coordinates] : left.geometry.coordinates;
  const rings = pieces.map((piece) => piece[0]!.slice(0, -1).map(([x, y]): Point => [x!, y!]));
  return rings.reduce((a, b) => (Math.abs(signedArea(a)) >= Math.abs(signedArea(b)) ? a : b));
}

/** Splits control points 0..count-1 into runs of one colour: [from, to, red]. */
function reaches(
  count: number,
  red: readonly (readonly [number, number])[],
): (readonly [number, number, boolean])[] {
  const out: (readonly [number, number, boolean])[] = [];
  let at = 0;
  for (const [from, to] of red) {
    if (from > at) out.push([at, from, false]);
    out.push([from, to, true]);
    at = to;
  }
  if (at < count - 1) out.push([at, count - 1, false]);
  return out;
}
