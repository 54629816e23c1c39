/** One hole of the strategy card, put together from its plan. */

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
import { CARD_BOXES, type CardHole } from './model.ts';
import { safeSide } from './safe-side.ts';
import { english } from '../words/english/english.ts';

export interface CardWishes {
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
  { units, chosen, budget }: CardWishes,
): CardHole {
  const id = chosen ?? plan.recommendation.optionId;
  const option = plan.options.find((candidate) => candidate.id === id);
  if (option?.kind !== 'shot') throw new RangeError(`Unexpected option ${id} on hole ${plan.hole}.`);
  const { hole, tee } = prepared;
  const choice = choiceOf(prepared, option);
  const { bearing } = option.aim;
  const carries = carriesAlong(course, prepared, tee, bearing, option.carryM + BEYOND_CARRY_M);
  const runOut = runOutAlong(prepared, tee, bearing, option.carryM);
  return {
    hole: hole.number,
    name: hole.name ?? null,
    par: hole.par,
    strokeIndex: hole.strokeIndex ?? null,
    lengthM: prepared.lengthM,
    tee: prepared.teeName,
    holePosition: prepared.positionName,
    units,
    club: clubWords(option),
    carryM: option.carryM,
    aim: aimWords(course, prepared, tee, bearing, option.carryM, units),
    reason: id === plan.recommendation.optionId ? plan.recommendation.reason : 'Your own choice.',
    day: isOrdinaryDay(prepared.conditions) ? null : dayWords(prepared.conditions, units, english),
    carries,
    runOut,
    safeSide: safeSide(prepared, field, tee, choice),
    badPlaces: badPlaces(prepared, field, choice, units),
    leave: leaveOf(option, units),
    green: greenPlace(course, prepared, units),
    expected: option.meanStrokes,
    odds: option.parOdds,
    budget: budget ?? null,
    boxes: CARD_BOXES,
    drawing: holeDrawing(course, prepared, choice, carries, runOut, units),
    greenDrawing: greenDrawing(course, prepared),
  };
}

function clubWords({ club, swing }: Option): string {
  return swing === 'full' ? club : swing === 'part' ? `${club}, part swing` : `${club}, ${swing}`;
}

function leaveOf({ leave }: Option, units: CardUnits): CardHole['leave'] {
  const { p10M: shortM, medianM, p90M: longM } = leave;
  return {
    ...{ shortM, medianM, longM },
    words: `${lengthWords(medianM, units)} left (8 of 10: ${lengthWords(shortM, units)} to ${lengthWords(longM, units)})`,
  };
}
