/** Where an aim lies for a person: so far beside the flag, or so far beside the hole's line of play. */

import type { Spot } from './model.ts';

/** Aims that end this near the flag are told from it, metres left to it. */
const NEAR_FLAG_M = 60;

/** Metres to the right of the straight way to the flag or of the hole's line; negative is left. */
export interface AimSide {
  readonly of: 'flag' | 'line';
  readonly rightM: number;
}

/** `line`: the hole's line of play, at least two points. `carryM`: of the shot; one that reaches the hole is told from the flag. */
export function aimSide(aim: Spot, carryM: number, from: Spot, pin: Spot, line: readonly Spot[]): AimSide {
  const toPin = Math.hypot(pin.x - from.x, pin.y - from.y);
  const left = Math.hypot(pin.x - aim.x, pin.y - aim.y);
  if (left < NEAR_FLAG_M || toPin < carryM) return { of: 'flag', rightM: besideLine(aim, from, pin).rightM };
  let best = { distance: Infinity, rightM: 0 };
  for (let i = 0; i + 1 < line.length; i++) {
    const found = besideLine(aim, line[i]!, line[i + 1]!);
    if (found.distance < best.distance) best = found;
  }
  return { of: 'line', rightM: best.rightM };
}

function besideLine(point: Spot, a: Spot, b: Spot): { readonly distance: number; readonly rightM: number } {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length === 0) return { distance: Math.hypot(point.x - a.x, point.y - a.y), rightM: 0 };
  const ux = (b.x - a.x) / length;
  const uy = (b.y - a.y) / length;
  const dx = point.x - a.x;
  const dy = point.y - a.y;
  const along = Math.min(length, Math.max(0, dx * ux + dy * uy));
  return { distance: Math.hypot(dx - along * ux, dy - along * uy), rightM: dx * uy - dy * ux };
}
