/**
 * The side to miss on, seen from the aim and not from the hole (an aim that already keeps off water may be missed towards it):
 * what it costs on average to aim one standard deviation of direction to the left, and to the right.
 */

import type { Words } from '../words/words.ts';
import { compareChoices } from '../plan/options.ts';
import type { Choice, Spot } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import type { StrokesField } from '../plan/strokes-field.ts';
import type { SafeSide } from './model.ts';

/** A difference below this is not worth a word, strokes. */
const LEAST_COST = 0.04;

/** Null where the two aims cannot be compared. */
export function safeSide(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  choice: Choice,
  words: Words,
  samples = 1024,
): SafeSide | null {
  const spread = prepared.player.spreads[choice.spreadIndex];
  if (spread === undefined) return null;
  const turned = (by: number): Choice => ({ ...choice, bearing: choice.bearing + by });
  const compared = compareChoices(
    prepared,
    field,
    spot,
    turned(-spread.directionSd),
    turned(spread.directionSd),
    { samples },
  );
  if (compared === null) return null;
  // Positive: left costs more.
  const { difference, standardError } = compared;
  const clear = Math.abs(difference) > Math.max(2 * standardError, LEAST_COST);
  const side = !clear ? null : difference > 0 ? 'right' : 'left';
  const cost = Math.abs(difference);
  return { side, cost, standardError, words: sideWords(side, cost, words) };
}

function sideWords(side: SafeSide['side'], cost: number, { cards, figures }: Words): string {
  if (side === null) return cards.safe.same;
  return cards.safe[side]({ cost: figures.fixed(cost, 2) });
}
