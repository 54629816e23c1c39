/** The card's own view: metres turned so that a bearing points up the page, seen from a point. */

import type { Spot } from '../plan/model.ts';

export interface View {
  /** Radians clockwise from north that point up the page. */
  readonly up: number;
  /** From the hole's frame (east, north) to the page (right, up). */
  readonly toPage: (spot: Spot) => Spot;
}

export function makeView(origin: Spot, up: number): View {
  const sin = Math.sin(up);
  const cos = Math.cos(up);
  return {
    up,
    toPage: ({ x, y }) => {
      const dx = x - origin.x;
      const dy = y - origin.y;
      return { x: dx * cos - dy * sin, y: dx * sin + dy * cos };
    },
  };
}

export function bearingOf(from: Spot, to: Spot): number {
  return Math.atan2(to.x - from.x, to.y - from.y);
}

export function distanceOf(a: Spot, b: Spot): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

export function pointAlong(from: Spot, bearing: number, metres: number): Spot {
  return { x: from.x + Math.sin(bearing) * metres, y: from.y + Math.cos(bearing) * metres };
}

/** In (-pi, pi]. */
export function turnOf(from: number, to: number): number {
  return Math.atan2(Math.sin(to - from), Math.cos(to - from));
}

/** Points no more than `stepM` apart along a closed ring. */
export function* alongRing(ring: readonly Spot[], stepM: number): Generator<Spot> {
  for (let i = 0; i + 1 < ring.length; i++) {
    const a = ring[i]!;
    const b = ring[i + 1]!;
    const steps = Math.max(1, Math.ceil(distanceOf(a, b) / stepM));
    for (let k = 0; k < steps; k++)
      yield { x: a.x + ((b.x - a.x) * k) / steps, y: a.y + ((b.y - a.y) * k) / steps };
  }
}
