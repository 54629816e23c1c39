/** A solved hole's field over greens of another speed, or between trees of another season: its values off the green stay. */

import type { Season } from '../conditions/conditions.ts';
import type { Course } from '../course/model.ts';
import { dayPutts } from '../green/day-putts.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { rasteriseHole } from '../ground/rasterise.ts';
import { DAY_RANGES } from '../conditions/ranges.ts';
import type { PuttsAround } from '../putting/putts-around.ts';
import type { ChoiceEvaluator } from './evaluate.ts';
import { measuringEvaluators } from './measure-choice.ts';
import { greenProblem, type PreparedHole } from './prepare.ts';
import { StrokesField } from './strokes-field.ts';

/** For differences between speeds: fewer bearings and putts than the plan's own greens have. */
const BEARINGS = 8;
const DRAWS = 32;

/** Evaluators that see the field's values on another ground, or with other putts. */
function seenWith(
  { book }: PreparedHole,
  field: StrokesField,
  ground: HoleGround,
  putts: PuttsAround,
): readonly ChoiceEvaluator[] {
  const view = (from: StrokesField): StrokesField =>
    new StrokesField(ground, from.pin, putts, from.spacingM, false, from);
  const whole = view(field);
  whole.replicas = field.replicas.map(view);
  return measuringEvaluators(whole, book);
}

export function otherSeason(
  course: Course,
  prepared: PreparedHole,
  field: StrokesField,
  season: Season,
): readonly ChoiceEvaluator[] {
  const ground = rasteriseHole(course, prepared.hole, prepared.frame, prepared.ground.cellM, season);
  return seenWith(prepared, field, ground, prepared.putts);
}

type ByFeet = (greenSpeedFt: number) => Generator<null, readonly ChoiceEvaluator[], void>;

/**
 * Expected putts by green speed: those of today plus the difference that coarse greens show, which are solved at the ends of
 * the range, halfway to them and today; between these the difference is taken to be straight. Odds of putts stay today's.
 */
export function greensByDay(course: Course, prepared: PreparedHole, field: StrokesField): ByFeet {
  const now = prepared.conditions.greenSpeedFt;
  const { least, most } = DAY_RANGES.greenSpeedFt;
  const knots = [...new Set([least, (least + now) / 2, now, (now + most) / 2, most])].sort((a, b) => a - b);
  const problem = greenProblem(course, prepared);
  const solved = new Map<number, PuttsAround>();
  const coarse = (greenSpeedFt: number): PuttsAround => {
    let known = solved.get(greenSpeedFt);
    if (known === undefined) {
      known = dayPutts({ ...problem, greenSpeedFt, bearings: BEARINGS, draws: DRAWS });
      solved.set(greenSpeedFt, known);
    }
    return known;
  };
  // One for each speed: whoever reads putts may keep what they say of a place.
  const puttsAt = (feet: number): PuttsAround => ({
    expectedAt: (east, north) => {
      const today = prepared.putts.expectedAt(east, north);
      if (feet === now) return today;
      const above = knots.findIndex((knot) => knot >= feet);
      const k = Math.max(1, above < 0 ? knots.length - 1 : above);
      const [low, high] = [knots[k - 1]!, knots[k]!];
      const t = (feet - low) / (high - low);
      const there = (1 - t) * coarse(low).expectedAt(east, north) + t * coarse(high).expectedAt(east, north);
      return Math.max(1, today + there - coarse(now).expectedAt(east, north));
    },
    oddsAt: (east, north) => prepared.putts.oddsAt(east, north),
  });
  return function* (greenSpeedFt) {
    for (const knot of [now, ...knots]) {
      if (solved.has(knot)) continue;
      yield null;
      coarse(knot);
    }
    return seenWith(prepared, field, prepared.ground, puttsAt(greenSpeedFt));
  };
}
