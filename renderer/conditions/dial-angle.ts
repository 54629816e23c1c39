/** The direction of the wind on its dial: from a place of the pointer, and by keys. Degrees clockwise from north. */

import { wholeTurn } from '../../core/conditions/day-words.ts';

const STEP_DEG = 5;
const POINT_DEG = 45;

/** `right` and `down` of the dial's middle; to the nearest five degrees. Null in the very middle, where there is no direction. */
export function dialAngle(right: number, down: number): number | null {
  if (Math.hypot(right, down) < 4) return null;
  const degrees = (Math.atan2(right, -down) * 180) / Math.PI;
  return wholeTurn(Math.round(degrees / STEP_DEG) * STEP_DEG);
}

/** Where a key leads from `fromDeg`; null for a key that does nothing here. */
export function turnedBy(key: string, fromDeg: number): number | null {
  const by: Readonly<Record<string, number>> = {
    ArrowRight: STEP_DEG,
    ArrowUp: STEP_DEG,
    ArrowLeft: -STEP_DEG,
    ArrowDown: -STEP_DEG,
    PageUp: POINT_DEG,
    PageDown: -POINT_DEG,
  };
  if (key === 'Home') return 0;
  const turn = by[key];
  return turn === undefined ? null : wholeTurn(fromDeg + turn);
}
