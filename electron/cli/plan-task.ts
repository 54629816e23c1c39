/** Planning of one hole as one piece of work: the same function in the command's own thread and in its workers. */

import { type AimSide, aimSide } from '../../core/plan/aim-side.ts';
import type { Conditions } from '../../core/conditions/conditions.ts';
import { prepareHole } from '../../core/plan/prepare.ts';
import { planFromSpot } from '../../core/plan/options.ts';
import { noShotFault } from '../../core/plan/recommend.ts';
import { type ConditionSpan, conditionSpans } from '../../core/plan/sensitivity.ts';
import { solveNow } from '../../core/plan/solve.ts';
import type { Convergence, SpotPlan } from '../../core/plan/model.ts';
import type { Course, LonLat } from '../../core/course/model.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import { refuse, succeed, type Fault, type Result } from '../../core/result.ts';

/** Plain data, so that it can be posted to a worker. */
export interface PlanTask {
  readonly hole: number;
  readonly tee?: string;
  readonly from?: LonLat;
  readonly holePosition?: string;
  readonly seed: string;
  readonly conditions: Conditions;
  /** Whether to tell how far the day may change before the recommendation does. */
  readonly sensitivity?: boolean;
}

export interface PlannedHole {
  readonly plan: SpotPlan;
  readonly tee: string;
  readonly holePosition: string | null;
  readonly lengthM: number;
  /** Where each option's aim lies, by the option's id. */
  readonly sides: Readonly<Record<string, AimSide>>;
  readonly convergence: Convergence;
  readonly conditions: Conditions;
  /** Null where it was not asked for. */
  readonly sensitivity: readonly ConditionSpan[] | null;
}

export function planTask(course: Course, player: PlayerModel, task: PlanTask): Result<PlannedHole, Fault> {
  const prepared = prepareHole({
    course,
    player,
    holeNumber: task.hole,
    seed: task.seed,
    conditions: task.conditions,
    ...(task.tee === undefined ? {} : { teeName: task.tee }),
    ...(task.holePosition === undefined ? {} : { holePosition: task.holePosition }),
  });
  if (!prepared.ok) return prepared;
  const spot = task.from === undefined ? prepared.value.tee : prepared.value.frame.toSpot(task.from);
  if (task.from !== undefined && !prepared.value.isOnMap(spot)) {
    return refuse(spotOffMap('from', task.from, task.hole));
  }
  const { pin, playLine, lengthM, teeName, positionName } = prepared.value;
  const field = solveNow(prepared.value);
  const plan = planFromSpot(prepared.value, field, spot, { withDoubt: true });
  const noShot = noShotFault(plan);
  if (noShot !== null) return refuse(noShot);
  const sides = plan.options.map(({ id, aim, carryM }) => [
    id,
    aimSide(aim.spot, carryM, spot, pin, playLine),
  ]);
  return succeed({
    plan,
    sides: Object.fromEntries(sides) as PlannedHole['sides'],
    tee: teeName,
    holePosition: positionName,
    lengthM,
    convergence: field.convergence,
    conditions: prepared.value.conditions,
    sensitivity: task.sensitivity === true ? spansNow(course, prepared.value, field, plan) : null,
  });
}

function spansNow(...of: Parameters<typeof conditionSpans>): readonly ConditionSpan[] {
  const steps = conditionSpans(...of);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** A place named by `--option` that is not on the hole's ground. */
export function spotOffMap(option: string, lonLat: LonLat, hole: number): Fault {
  return {
    severity: 'error',
    code: 'spot-off-map',
    where: `--${option} ${lonLat.join(',')}`,
    message: `that place is not on the ground of hole ${hole}. Give a place within 80 m of the hole.`,
  };
}
