/**
 * What the doubt about the player's own shots does to the options: few measured shots leave room for better and worse
 * spreads than the one that is planned with. Each option is valued under draws from the posterior of the bag, on the same
 * shots for all. Limits: only the law of the shot to be played varies, the strokes surface behind it stays as it is
 * solved; and the aims stay those that were found for the spread that is planned with.
 */

import type { BagFlights } from '../flight/bag-flights.ts';
import { drawSpreads } from '../player/posterior.ts';
import { quantile } from '../player/posterior/intervals.ts';
import { ShotDrawer } from '../random/shot-draws.ts';
import { makeStreamKey } from '../random/streams.ts';
import { choiceOf, LawBook } from './choices.ts';
import { ChoiceEvaluator } from './evaluate.ts';
import type { Option, Spot, SpreadDoubt } from './model.ts';
import type { PreparedHole } from './prepare.ts';
import { lieOfSpot } from './sample.ts';
import type { StrokesField } from './strokes-field.ts';

/** Bags drawn from the posterior, and shots on which each option is valued under each. */
const BAGS = 60;
const SHOTS = 128;
const LOW_QUANTILE = 0.05;
/** Label of the draws. */
const DOUBTING = 12;

/** The bags serve every hole and spot of a player on a day. */
const drawnBags = new WeakMap<BagFlights, readonly LawBook[]>();

/** The doubt of each shot among `options`, by id; empty where the player's spreads come without a posterior. */
export function doubtOfOptions(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  options: readonly Option[],
): ReadonlyMap<string, SpreadDoubt> {
  const books = bagsOf(prepared);
  const shots = options
    .filter(({ kind, clubKind }) => kind === 'shot' && clubKind !== 'putter')
    .map((option) => ({ option, choice: choiceOf(prepared, option) }));
  if (books.length === 0 || shots.length === 0) return new Map();
  const lie = lieOfSpot(prepared, spot);
  const draws = new ShotDrawer(SHOTS).redraw(prepared.key, DOUBTING);
  const ownValue = field.valueAt(spot.x, spot.y, lie);
  const valuesBy = (book: LawBook): number[] => {
    const evaluator = new ChoiceEvaluator(field, book);
    return shots.map(({ choice }) => evaluator.valueOf(spot, lie, choice, draws, ownValue));
  };
  const planned = valuesBy(prepared.book);
  // What a bag changes is added to what the option costs by its own, much larger sample.
  const rows = books.map((book) =>
    valuesBy(book).map((value, k) => shots[k]!.option.meanStrokes + value - planned[k]!),
  );
  const others = options
    .filter(({ id }) => shots.every(({ option }) => option.id !== id))
    .map(({ meanStrokes }) => meanStrokes);
  const least = rows.map((row) => Math.min(...row, ...others));
  return new Map(
    shots.map(({ option }, k) => {
      const values = Float64Array.from(rows, (row) => row[k]!).sort();
      const cheapest = rows.filter((row, r) => row[k] === least[r]).length;
      return [
        option.id,
        {
          lowStrokes: quantile(values, LOW_QUANTILE),
          highStrokes: quantile(values, 1 - LOW_QUANTILE),
          cheapestShare: cheapest / rows.length,
        },
      ];
    }),
  );
}

function bagsOf({ player, book }: PreparedHole): readonly LawBook[] {
  const known = drawnBags.get(book.flights);
  if (known !== undefined) return known;
  const posterior = player.posterior?.();
  const key = makeStreamKey('doubt about shots');
  const bySpread = posterior?.entries.map((entry) => drawSpreads(entry, key, BAGS)) ?? [];
  const books =
    bySpread.length !== player.spreads.length
      ? []
      : Array.from(
          { length: BAGS },
          (_, row) => new LawBook({ ...player, spreads: bySpread.map((drawn) => drawn[row]!) }, book.flights),
        );
  drawnBags.set(book.flights, books);
  return books;
}
