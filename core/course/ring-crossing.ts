/**
 * Where the rings of a polygon cross or touch themselves or each other. A sweep over segments sorted by their
 * western end, so that outlines of thousands of points are checked in milliseconds; repeated points are passed over.
 */

import type { LonLat, Rings } from './model.ts';

interface Segment {
  readonly ring: number;
  readonly position: number;
  readonly ringLength: number;
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

/** A place where two segments that are not neighbours meet; undefined for a simple polygon. Rings may be open or closed. */
export function findCrossing(rings: Rings): LonLat | undefined {
  const origin = rings[0]?.[0];
  if (origin === undefined) return undefined;
  const segments = rings
    .flatMap((ring, index) => segmentsOf(ring, index, origin))
    .sort((s, t) => west(s) - west(t));
  for (let i = 0; i < segments.length; i++) {
    const s = segments[i]!;
    const east = Math.max(s.ax, s.bx);
    for (let j = i + 1; j < segments.length && west(segments[j]!) <= east; j++) {
      const t = segments[j]!;
      if (areNeighbours(s, t) ? foldsBack(s, t) : meet(s, t)) {
        return [origin[0] + (t.ax + t.bx) / 2, origin[1] + (t.ay + t.by) / 2];
      }
    }
  }
  return undefined;
}

/** Relative to the first vertex, so that subtraction loses no digits later. */
function segmentsOf(ring: readonly LonLat[], index: number, origin: LonLat): Segment[] {
  const points = ring.filter((point, i) => i === 0 || !same(point, ring[i - 1]!));
  if (points.length > 1 && same(points[0]!, points.at(-1)!)) points.pop();
  return points.map((a, position) => {
    const b = points[(position + 1) % points.length]!;
    return {
      ring: index,
      position,
      ringLength: points.length,
      ax: a[0] - origin[0],
      ay: a[1] - origin[1],
      bx: b[0] - origin[0],
      by: b[1] - origin[1],
    };
  });
}

function same(a: LonLat, b: LonLat): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

function west(s: Segment): number {
  return Math.min(s.ax, s.bx);
}

function areNeighbours(s: Segment, t: Segment): boolean {
  if (s.ring !== t.ring) return false;
  const apart = Math.abs(s.position - t.position);
  return apart === 1 || apart === s.ringLength - 1;
}

/** Two neighbours share one end; they overlap where the next runs straight back along the first. */
function foldsBack(s: Segment, t: Segment): boolean {
  const [first, second] = s.bx === t.ax && s.by === t.ay ? [s, t] : [t, s];
  if (first.bx !== second.ax || first.by !== second.ay) return false;
  const ux = first.bx - first.ax;
  const uy = first.by - first.ay;
  const vx = second.bx - second.ax;
  const vy = second.by - second.ay;
  return ux * vy - uy * vx === 0 && ux * vx + uy * vy < 0;
}

function meet(s: Segment, t: Segment): boolean {
  if (Math.max(s.ay, s.by) < Math.min(t.ay, t.by) || Math.max(t.ay, t.by) < Math.min(s.ay, s.by))
    return false;
  const a = side(s, t.ax, t.ay);
  const b = side(s, t.bx, t.by);
  const c = side(t, s.ax, s.ay);
  const d = side(t, s.bx, s.by);
  if (a === 0 && b === 0) {
    // on one line: the boxes decide
    return Math.max(s.ax, s.bx) >= Math.min(t.ax, t.bx) && Math.max(t.ax, t.bx) >= Math.min(s.ax, s.bx);
  }
  return a * b <= 0 && c * d <= 0;
}

/** -1, 0 or 1: on which side of the segment's line a point lies. */
function side(s: Segment, x: number, y: number): number {
  return Math.sign((s.bx - s.ax) * (y - s.ay) - (s.by - s.ay) * (x - s.ax));
}
