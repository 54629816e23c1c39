/**
 * Where a choice is meant to end. A part swing is played to where it stops: chips run as far as they fly, so a landing point
 * says little a few metres aside. A full swing is played to where it comes down.
 */

import { runShare } from '../flight/shot-law.ts';
import { Lie, type LieCode } from '../ground/lies.ts';
import type { LawBook } from './choices.ts';
import type { Choice, Spot } from './model.ts';

/** Rounds in which a carry is found from a distance; each halves the error and more. */
const ROUNDS = 8;

/** Carry of a part swing that stops `distanceM` away on a level green, metres; null where it is not played from the lie. */
export function carryToStop(
  book: LawBook,
  spreadIndex: number,
  lie: LieCode,
  distanceM: number,
): number | null {
  const longest = book.player.spreads[spreadIndex]!.carryMean;
  let carryM = distanceM;
  for (let k = 0; k < ROUNDS; k++) {
    const law = book.lawOf(spreadIndex, lie, Math.min(longest, carryM));
    if (law === null) return null;
    carryM = (carryM + distanceM / (1 + Math.max(0, runShare(law, Lie.green)))) / 2;
  }
  return carryM;
}

/** The point that a choice from `from` is played to. */
export function finishOf(book: LawBook, from: Spot, lie: LieCode, choice: Choice): Spot {
  let distance = choice.carryM;
  if (book.player.spreads[choice.spreadIndex]!.swing === 'part') {
    const law = book.lawOf(choice.spreadIndex, lie, choice.carryM);
    if (law !== null) distance *= 1 + Math.max(0, runShare(law, Lie.green));
  }
  return {
    x: from.x + Math.sin(choice.bearing) * distance,
    y: from.y + Math.cos(choice.bearing) * distance,
  };
}

/** The choice of a club and swing that is played from `from` to `finish`; a part swing no longer than its longest. */
export function choiceTo(book: LawBook, from: Spot, lie: LieCode, spreadIndex: number, finish: Spot): Choice {
  const dx = finish.x - from.x;
  const dy = finish.y - from.y;
  const spread = book.player.spreads[spreadIndex]!;
  const carryM =
    spread.swing === 'part'
      ? Math.min(
          spread.carryMean,
          carryToStop(book, spreadIndex, lie, Math.hypot(dx, dy)) ?? spread.carryMean,
        )
      : spread.carryMean;
  return { spreadIndex, bearing: Math.atan2(dx, dy), carryM };
}
