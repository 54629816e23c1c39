/**
 * Food and water spread over a round: small portions at even distances rather than one large one, so that the last holes are
 * not played hungry. Common practice, no source; no medical advice. What the player lists comes first.
 */

import type { Words } from '../words/words.ts';
import { clock } from './clock.ts';

export interface FoodWishes {
  /** The player's own list; suggestions stand in where it is empty. */
  readonly items: readonly string[];
  readonly allergies: readonly string[];
}

export interface FoodStop {
  /** Before this hole's tee shot. */
  readonly hole: number;
  readonly clock: string;
  readonly food: string;
}

export interface FoodPlan {
  readonly stops: readonly FoodStop[];
  /** For the whole round, litres. */
  readonly waterL: number;
  readonly waterWords: string;
  /** Things on the own list that name an allergy, and with any allergy the word to check all of them. */
  readonly warnings: readonly string[];
  readonly allergies: readonly string[];
  /** Short lines for the cards of those holes. */
  readonly reminders: readonly { readonly hole: number; readonly words: string }[];
}

interface RoundTimes {
  readonly teeOffMin: number;
  readonly durationMin: number;
  readonly holes: number;
}

/** Suggestions that release their energy slowly. */
const SUGGESTIONS = ['sandwich', 'banana', 'nuts', 'oatBar', 'apple', 'riceCakes'] as const;

const FIRST_STOP_MIN = 50;
const BETWEEN_STOPS_MIN = 55;
/** Nothing to eat so near the end, minutes. */
const LAST_STOP_BEFORE_END_MIN = 25;

export function foodPlan(
  { items, allergies }: FoodWishes,
  { teeOffMin, durationMin, holes }: RoundTimes,
  words: Words,
  temperatureC?: number,
): FoodPlan {
  const told = words.prepare;
  const named = allergies.map((allergy) => allergy.trim().toLowerCase()).filter((allergy) => allergy !== '');
  const avoided = (text: string): string | undefined =>
    named.find((allergy) => text.toLowerCase().includes(allergy) || allergy.includes(text.toLowerCase()));
  const own = items.map((item) => item.trim()).filter((item) => item !== '');
  // No list of ours knows what a food holds or was packed beside: with an allergy nothing is suggested.
  const suggested = named.length > 0 ? [told.foods.own] : SUGGESTIONS.map((kind) => told.foods[kind]);
  const list = own.length > 0 ? own : suggested;
  const stops = stopTimes(durationMin, holes).map(
    ({ hole, minute }, i): FoodStop => ({
      hole,
      clock: clock(teeOffMin + minute),
      food: list[i % list.length]!,
    }),
  );
  const waterL = waterFor(durationMin, temperatureC);
  return {
    stops,
    waterL,
    waterWords: told.water({ litres: words.figures.fixed(waterL, 1) }),
    warnings: [
      ...own.flatMap((item) => {
        const allergy = avoided(item);
        return allergy === undefined ? [] : [told.allergyWarning({ item, allergy })];
      }),
      ...(named.length > 0 ? [told.checkEveryItem] : []),
    ],
    allergies: named,
    reminders: stops.map(({ hole, food }) => ({ hole, words: told.eat({ food }) })),
  };
}

/** The holes on whose tees food comes out. */
function stopTimes(durationMin: number, holes: number): { readonly hole: number; readonly minute: number }[] {
  const perHole = durationMin / holes;
  const stops: { hole: number; minute: number }[] = [];
  for (
    let minute = FIRST_STOP_MIN;
    minute <= durationMin - LAST_STOP_BEFORE_END_MIN;
    minute += BETWEEN_STOPS_MIN
  ) {
    const played = Math.round(minute / perHole);
    if (played >= holes) break;
    stops.push({ hole: played + 1, minute: Math.round(played * perHole) });
  }
  return stops;
}

/** A quarter litre an hour in cool weather, up to half a litre in heat; rounded up to a tenth. */
function waterFor(durationMin: number, temperatureC = 18): number {
  const perHour = temperatureC >= 28 ? 0.5 : temperatureC >= 22 ? 0.4 : 0.25;
  return Math.ceil((10 * perHour * durationMin) / 60 - 1e-9) / 10;
}
