/** One hole of the strategy card, put together from its plan. */

import type { Words } from '../words/words.ts';
import { dayWords, isOrdinaryDay } from '../conditions/day-words.ts';
import type { Course } from '../course/model.ts';
import { choiceOf } from '../plan/choices.ts';
import type { Option, SpotPlan } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import type { StrokesField } from '../plan/strokes-field.ts';
import { aimWords } from './aim-words.ts';
import { badPlaces } from './bad-places.ts';
import { carriesAlong, runOutAlong } from './carries.ts';
import { greenDrawing, holeDrawing } from './drawing.ts';
import { greenPlace } from './green-place.ts';
import { type CardUnits, lengthWords } from './lengths.ts';
import type { CardHole } from './model.ts';
import { safeSide } from './safe-side.ts';
import { reasonWords } from '../plan/recommend.ts';

export interface CardWishes {
  readonly words: Words;
  readonly units: CardUnits;
  /** Id of the option to print; the recommendation by default. */
  readonly chosen?: string;
  readonly budget?: { readonly strokes: number; readonly words: string };
}

/** How far beyond the carry distances are still told, metres. */
const BEYOND_CARRY_M = 45;

/** `plan`: of the shot from this hole's tee. Throws a RangeError for a plan without that option. */
export function cardHole(
  course: Course,
  prepared: PreparedHole,
  field: StrokesField,
  plan: SpotPlan,
  { units, chosen, budget, words }: CardWishes,
): CardHole {
  const id = chosen ?? plan.recommendation.optionId;
  const option = plan.options.find((candidate) => candidate.id === id);
  if (option?.kind !== 'shot') throw new RangeError(`Unexpected option ${id} on hole ${plan.hole}.`);
  const { hole, tee } = prepared;
  const choice = choiceOf(prepared, option);
  const { bearing } = option.aim;
  const carries = carriesAlong(course, prepared, tee, bearing, option.carryM + BEYOND_CARRY_M, words);
  const runOut = runOutAlong(prepared, tee, bearing, option.carryM, words);
  return {
    hole: hole.number,
    name: hole.name ?? null,
    par: hole.par,
    strokeIndex: hole.strokeIndex ?? null,
    lengthM: prepared.lengthM,
    tee: prepared.teeName,
    holePosition: prepared.positionName,
    units,
    club: clubWords(option, words),
    carryM: option.carryM,
    aim: aimWords(course, prepared, tee, bearing, option.carryM, units, words),
    reason: id === plan.recommendation.optionId ? reasonWords(plan, words) : words.cards.ownChoice,
    day: isOrdinaryDay(prepared.conditions) ? null : dayWords(prepared.conditions, units, words),
    carries,
    runOut,
    safeSide: safeSide(prepared, field, tee, choice, words),
    badPlaces: badPlaces(prepared, field, choice, units, words),
    leave: leaveOf(option, units, words),
    green: greenPlace(course, prepared, units, words),
    expected: option.meanStrokes,
    odds: option.parOdds,
    budget: budget ?? null,
    boxes: Object.values(words.cards.boxes),
    drawing: holeDrawing(course, prepared, choice, carries, runOut, units),
    greenDrawing: greenDrawing(course, prepared),
  };
}

function clubWords({ club, swing }: Option, { cards, golf }: Words): string {
  return swing === 'full' ? club : cards.clubSwing({ club, swing: golf.swings[swing] });
}

function leaveOf({ leave }: Option, units: CardUnits, { cards }: Words): CardHole['leave'] {
  const { p10M: shortM, medianM, p90M: longM } = leave;
  const told = (metres: number): string => lengthWords(metres, units);
  return {
    ...{ shortM, medianM, longM },
    words: cards.leave({ median: told(medianM), low: told(shortM), high: told(longM) }),
  };
}
