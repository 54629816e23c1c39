/** The hole position of the day on its green, in paces from the front and from the nearer side. */

import type { Words } from '../words/words.ts';
import { greenOf } from '../course/hole-features.ts';
import type { Course } from '../course/model.ts';
import type { Spot } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import { bearingOf, makeView } from './frame.ts';
import { type CardUnits, paces } from './lengths.ts';
import type { GreenPlace } from './model.ts';

/** The bearing from which the green is approached: along the last leg of the line of play. */
export function approachBearing({ playLine, tee, pin }: PreparedHole): number {
  const before = playLine.at(-2) ?? tee;
  return bearingOf(before, pin);
}

/** Null where the green is not drawn. */
export function greenPlace(
  course: Course,
  prepared: PreparedHole,
  units: CardUnits,
  words: Words,
): GreenPlace | null {
  const green = greenOf(course, prepared.hole);
  if (green === undefined) return null;
  const view = makeView(prepared.pin, approachBearing(prepared));
  const outline = (green.rings[0] ?? []).map((place) => view.toPage(prepared.frame.toSpot(place)));
  // On the line through the hole: front and back; on the one across it: left and right.
  const along = crossings(outline.map(({ x, y }) => ({ x: y, y: x })));
  const across = crossings(outline);
  if (along === null || across === null) return null;
  const fromFrontM = -along.before;
  const fromLeftM = -across.before;
  const side = fromLeftM <= across.after ? 'left' : 'right';
  const fromSideM = Math.min(fromLeftM, across.after);
  const depthM = along.after - along.before;
  const told = {
    on: paces(fromFrontM, units, words),
    side: paces(fromSideM, units, words),
    deep: paces(depthM, units, words),
  };
  return {
    depthM,
    widthM: across.after - across.before,
    fromFrontM,
    fromSideM,
    side,
    words: side === 'left' ? words.cards.greenLeft(told) : words.cards.greenRight(told),
  };
}

/** The nearest places before and after 0 at which the outline crosses the line y = 0. */
function crossings(outline: readonly Spot[]): { readonly before: number; readonly after: number } | null {
  let before = -Infinity;
  let after = Infinity;
  for (let i = 0; i + 1 < outline.length; i++) {
    const a = outline[i]!;
    const b = outline[i + 1]!;
    if (a.y > 0 === b.y > 0) continue;
    const x = a.x + ((b.x - a.x) * -a.y) / (b.y - a.y);
    if (x <= 0) before = Math.max(before, x);
    else after = Math.min(after, x);
  }
  return before === -Infinity || after === Infinity ? null : { before, after };
}
