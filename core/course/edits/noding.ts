/** Cuts two sets of sides where they meet, so that they can be put together to faces. In the plane of longitude and latitude. */

import type { LonLat } from '../model.ts';
import { roundLonLat, samePosition } from '../positions.ts';

export type Side = readonly [LonLat, LonLat];

/**
 * Every side of one set divided at its meetings with sides of the other; meeting points are rounded to 8 decimals and
 * the same in both. Sides of one set are taken not to cross each other.
 */
export function splitAtMeetings(
  first: readonly Side[],
  second: readonly Side[],
): { readonly first: readonly Side[]; readonly second: readonly Side[] } {
  const onFirst = first.map((): LonLat[] => []);
  const onSecond = second.map((): LonLat[] => []);
  first.forEach((s, i) => {
    second.forEach((t, j) => {
      for (const point of meetings(s, t)) {
        onFirst[i]!.push(point);
        onSecond[j]!.push(point);
      }
    });
  });
  return {
    first: first.flatMap((side, i) => divide(side, onFirst[i]!)),
    second: second.flatMap((side, j) => divide(side, onSecond[j]!)),
  };
}

/** Where two sides meet: nowhere, in one point, or, where they run along each other, at the ends of what they share. */
function meetings([a, b]: Side, [c, d]: Side): LonLat[] {
  if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0])) return [];
  if (Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1])) return [];
  // relative to a, so that differences keep their digits
  const ux = b[0] - a[0];
  const uy = b[1] - a[1];
  const vx = d[0] - c[0];
  const vy = d[1] - c[1];
  const wx = c[0] - a[0];
  const wy = c[1] - a[1];
  const cross = ux * vy - uy * vx;
  const parallel = Math.abs(cross) <= 1e-12 * Math.hypot(ux, uy) * Math.hypot(vx, vy);
  if (parallel) {
    return [a, b, c, d].filter((end) => isOn(end, a, b) && isOn(end, c, d));
  }
  const s = (wx * vy - wy * vx) / cross;
  const t = (wx * uy - wy * ux) / cross;
  if (s < 0 || s > 1 || t < 0 || t > 1) return [];
  return [roundLonLat([a[0] + s * ux, a[1] + s * uy])];
}

/** Whether a point lies on a side, to within what rounding moves. */
function isOn(point: LonLat, a: LonLat, b: LonLat): boolean {
  const ux = b[0] - a[0];
  const uy = b[1] - a[1];
  const length = Math.hypot(ux, uy);
  const px = point[0] - a[0];
  const py = point[1] - a[1];
  if (length === 0) return Math.hypot(px, py) <= 1e-8;
  const along = (px * ux + py * uy) / length;
  return Math.abs(px * uy - py * ux) / length <= 1e-8 && along >= -1e-8 && along <= length + 1e-8;
}

function divide([a, b]: Side, points: readonly LonLat[]): Side[] {
  const along = ([lon, lat]: LonLat) => (lon - a[0]) * (b[0] - a[0]) + (lat - a[1]) * (b[1] - a[1]);
  const stops = [a, ...points.toSorted((p, q) => along(p) - along(q)), b];
  const sides: Side[] = [];
  for (let i = 1; i < stops.length; i++) {
    const from = sides.at(-1)?.[1] ?? a;
    if (!samePosition(from, stops[i]!)) sides.push([from, stops[i]!]);
  }
  return sides;
}

/** Whether a line meets itself elsewhere than where one side goes on to the next. */
export function lineCrossesItself(points: readonly LonLat[]): boolean {
  for (let i = 1; i < points.length; i++) {
    for (let j = i + 1; j < points.length; j++) {
      const shared = meetings([points[i - 1]!, points[i]!], [points[j - 1]!, points[j]!]);
      const allowed = j === i + 1 ? points[i]! : undefined;
      if (shared.some((point) => allowed === undefined || !samePosition(point, allowed))) return true;
    }
  }
  return false;
}
