/** What the window is told of a worked-out hole: the plan from the tee, and its recommended shot as the map paints it. */

import type { LonLat } from '../../core/course/model.ts';
import { choiceOf } from '../../core/plan/choices.ts';
import type { Choice, Spot, SpotPlan } from '../../core/plan/model.ts';
import { type OptionSettings, planFromSpot } from '../../core/plan/options.ts';
import type { PreparedHole } from '../../core/plan/prepare.ts';
import { sampleShot, spreadEllipses } from '../../core/plan/sample.ts';
import type { StrokesField } from '../../core/plan/strokes-field.ts';
import type { HoleResult } from '../state/app-state.ts';
import { type HoleTask, isSwing, PAINTED_BALLS, type ShotPicture, type SpotQuestion } from './planner-api.ts';

/** Shares of the solid strikes that the painted ellipses hold. */
const ELLIPSE_SHARES = [0.5, 0.9];

/** Samples per option while something is being dragged. */
const ROUGH_SAMPLES = 128;

export function settingsOf({
  rough,
  strokesTaken,
}: Pick<SpotQuestion, 'rough' | 'strokesTaken'>): OptionSettings {
  return rough ? { strokesTaken, samples: ROUGH_SAMPLES } : { strokesTaken, withDoubt: true };
}

export function resultOf(task: HoleTask, prepared: PreparedHole, field: StrokesField): HoleResult {
  const place = (spot: Spot): LonLat => prepared.frame.toLonLat(spot);
  const teePlan = planFromSpot(
    prepared,
    field,
    prepared.tee,
    settingsOf({ rough: task.rough, strokesTaken: 0 }),
  );
  return {
    key: task.key,
    hole: task.hole,
    rough: task.rough,
    origin: prepared.frame.origin,
    tee: place(prepared.tee),
    pin: place(prepared.pin),
    teeName: prepared.teeName,
    positionName: prepared.positionName ?? 'your own',
    lengthM: prepared.lengthM,
    conditions: prepared.conditions,
    convergence: field.convergence,
    teePlan,
    teePicture: task.rough ? null : recommendedPicture(prepared, teePlan),
  };
}

export function shotPicture(prepared: PreparedHole, spot: Spot, choice: Choice, balls: number): ShotPicture {
  return {
    sample: sampleShot(prepared, spot, choice, balls),
    ellipses: spreadEllipses(prepared, spot, choice, ELLIPSE_SHARES),
  };
}

function recommendedPicture(prepared: PreparedHole, plan: SpotPlan): ShotPicture | null {
  const shot = plan.options.find(({ id }) => id === plan.recommendation.optionId);
  if (shot === undefined || !isSwing(shot)) return null;
  return shotPicture(prepared, prepared.tee, choiceOf(prepared, shot), PAINTED_BALLS);
}
