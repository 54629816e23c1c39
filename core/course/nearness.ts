/** How near a shape lies to the line of a hole, in the plane; good to a part in a thousand over a few kilometres. */

import { metresPerDegree } from './degree-lengths.ts';
import { turnedAbout, turnedRings } from './longitude.ts';
import type { LonLat } from './model.ts';
import { isInside } from './polygon.ts';
import type { Geometry } from './schema.ts';

interface Plane {
  readonly origin: LonLat;
  readonly eastM: number;
  readonly northM: number;
}

type Point = readonly [number, number];

function planeAt(origin: LonLat): Plane {
  return { origin, ...metresPerDegree(origin[1]) };
}

function toPlane(
  { origin, eastM, northM }: Plane,
  [lon, lat]: readonly [number, number, ...unknown[]],
): Point {
  return [(turnedAbout(lon, origin[0]) - origin[0]) * eastM, (lat - origin[1]) * northM];
}

/** Metres between the nearest points of a shape and a line of at least one point; 0 where they meet or it lies inside. */
export function distanceToLineM(shape: Geometry, line: readonly LonLat[]): number {
  const [start] = line;
  if (start === undefined) return Infinity;
  const plane = planeAt(start);
  const way = line.map((point) => toPlane(plane, point));
  const polygons =
    shape.type === 'Polygon' ? [shape.coordinates] : shape.type === 'MultiPolygon' ? shape.coordinates : [];
  if (
    polygons.some((rings) =>
      isInside(start, { rings: turnedRings(rings.map((ring) => ring.map(([x, y]): LonLat => [x, y]))) }),
    )
  ) {
    return 0;
  }
  const chains =
    shape.type === 'Point'
      ? [[shape.coordinates]]
      : shape.type === 'LineString'
        ? [shape.coordinates]
        : polygons.flat();
  let leastSquare = Infinity;
  for (const chain of chains) {
    const points = chain.map((point) => toPlane(plane, point));
    for (let i = Math.min(1, points.length - 1); i < points.length; i++) {
      const a = points[Math.max(0, i - 1)]!;
      const b = points[i]!;
      for (let j = Math.min(1, way.length - 1); j < way.length; j++) {
        leastSquare = Math.min(leastSquare, betweenSides(a, b, way[Math.max(0, j - 1)]!, way[j]!));
        if (leastSquare === 0) return 0;
      }
    }
  }
  return Math.sqrt(leastSquare);
}

/** Square of the distance between two sides. */
function betweenSides(a: Point, b: Point, c: Point, d: Point): number {
  if (cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0) return 0;
  return Math.min(toSide(a, c, d), toSide(b, c, d), toSide(c, a, b), toSide(d, a, b));
}

function cross(a: Point, b: Point, p: Point): number {
  return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
}

/** Square of the distance from p to the side from a to b. */
function toSide(p: Point, a: Point, b: Point): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const square = dx * dx + dy * dy;
  const x = p[0] - a[0];
  const y = p[1] - a[1];
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, (x * dx + y * dy) / square));
  return (x - share * dx) ** 2 + (y - share * dy) ** 2;
}

/** The side of the line (by its first point's index) that lies nearest to a place. 0 for a line of one point. */
export function nearestSide(line: readonly LonLat[], at: LonLat): number {
  const [start] = line;
  if (start === undefined) return 0;
  const plane = planeAt(start);
  const way = line.map((point) => toPlane(plane, point));
  const p = toPlane(plane, at);
  let nearest = 0;
  let least = Infinity;
  for (let i = 0; i + 1 < way.length; i++) {
    const square = toSide(p, way[i]!, way[i + 1]!);
    if (square >= least) continue;
    least = square;
    nearest = i;
  }
  return nearest;
}
