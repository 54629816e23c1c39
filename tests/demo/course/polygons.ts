/** Plain measures of polygons in local metres. Rings do not repeat their first point. */

import { distanceBetween, mixPoints, type Point } from './curves.ts';

/** Positive for counter-clockwise rings. */
export function signedArea(ring: readonly Point[]): number {
  let sum = 0;
  for (let i = 0; i < ring.length; i++) {
    const [a, b] = [ring[i]!, ring[(i + 1) % ring.length]!];
    sum += a[0] * b[1] - b[0] * a[1];
  }
  return sum / 2;
}

export function centroid(ring: readonly Point[]): Point {
  let [x, y, sum] = [0, 0, 0];
  for (let i = 0; i < ring.length; i++) {
    const [a, b] = [ring[i]!, ring[(i + 1) % ring.length]!];
    const cross = a[0] * b[1] - b[0] * a[1];
    x += (a[0] + b[0]) * cross;
    y += (a[1] + b[1]) * cross;
    sum += cross;
  }
  return [x / (3 * sum), y / (3 * sum)];
}

export function scaleAbout(ring: readonly Point[], centre: Point, factor: number): Point[] {
  return ring.map((p) => mixPoints(centre, p, factor));
}

export function isInside(ring: readonly Point[], [x, y]: Point): boolean {
  let inside = false;
  for (let i = 0; i < ring.length; i++) {
    const [a, b] = [ring[i]!, ring[(i + 1) % ring.length]!];
    if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside;
  }
  return inside;
}

export function distanceToSegment(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / square));
  return distanceBetween(p, [a[0] + t * dx, a[1] + t * dy]);
}

export function distanceToRing(ring: readonly Point[], p: Point): number {
  let best = Infinity;
  for (let i = 0; i < ring.length; i++) {
    best = Math.min(best, distanceToSegment(p, ring[i]!, ring[(i + 1) % ring.length]!));
  }
  return best;
}

export function distanceToLine(line: readonly Point[], p: Point): number {
  let best = Infinity;
  for (let i = 0; i + 1 < line.length; i++)
    best = Math.min(best, distanceToSegment(p, line[i]!, line[i + 1]!));
  return best;
}

/** Where the ray from `from` (inside) along the unit vector leaves the ring: metres from `from`. */
export function exitDistance(ring: readonly Point[], from: Point, [ux, uy]: Point): number {
  let far = 0;
  for (let i = 0; i < ring.length; i++) {
    const [a, b] = [ring[i]!, ring[(i + 1) % ring.length]!];
    const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
    const det = ex * uy - ey * ux;
    if (Math.abs(det) < 1e-12) continue;
    const [wx, wy] = [a[0] - from[0], a[1] - from[1]];
    const along = (ex * wy - ey * wx) / det;
    const share = (ux * wy - uy * wx) / det;
    if (along > 0 && share >= 0 && share < 1) far = Math.max(far, along);
  }
  return far;
}

/** Douglas & Peucker 1973 on a closed ring. */
export function simplifyRing(ring: readonly Point[], toleranceM: number): Point[] {
  let far = 0;
  for (let i = 1; i < ring.length; i++) {
    if (distanceBetween(ring[0]!, ring[i]!) > distanceBetween(ring[0]!, ring[far]!)) far = i;
  }
  const there = simplifyLine(ring.slice(0, far + 1), toleranceM);
  const back = simplifyLine([...ring.slice(far), ring[0]!], toleranceM);
  return [...there.slice(0, -1), ...back.slice(0, -1)];
}

function simplifyLine(line: readonly Point[], toleranceM: number): Point[] {
  const [first, last] = [line[0]!, line[line.length - 1]!];
  let worst = 0;
  let at = 0;
  for (let i = 1; i + 1 < line.length; i++) {
    const d = distanceToSegment(line[i]!, first, last);
    if (d > worst) [worst, at] = [d, i];
  }
  if (worst <= toleranceM) return [first, last];
  return [
    ...simplifyLine(line.slice(0, at + 1), toleranceM).slice(0, -1),
    ...simplifyLine(line.slice(at), toleranceM),
  ];
}
