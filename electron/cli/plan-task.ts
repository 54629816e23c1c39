/** Planning of one hole as one piece of work: the same function in the command's own thread and in its workers. */

import { prepareHole } from '../../core/plan/prepare.ts';
import { planFromSpot } from '../../core/plan/options.ts';
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
}

export interface PlannedHole {
  readonly plan: SpotPlan;
  readonly tee: string;
  readonly holePosition: string | null;
  readonly lengthM: number;
  readonly convergence: Convergence;
}

export function planTask(course: Course, player: PlayerModel, task: PlanTask): Result<PlannedHole, Fault> {
  const prepared = prepareHole({
    course,
    player,
    holeNumber: task.hole,
    seed: task.seed,
    ...(task.tee === undefined ? {} : { teeName: task.tee }),
    ...(task.holePosition === undefined ? {} : { holePosition: task.holePosition }),
  });
  if (!prepared.ok) return prepared;
  const spot = task.from === undefined ? prepared.value.tee : prepared.value.frame.toSpot(task.from);
  if (task.from !== undefined && !prepared.value.isOnMap(spot)) {
    return refuse(spotOffMap('from', task.from, task.hole));
  }
  const field = solveNow(prepared.value);
  return succeed({
    plan: planFromSpot(prepared.value, field, spot),
    tee: prepared.value.teeName,
    holePosition: prepared.value.positionName,
    lengthM: prepared.value.lengthM,
    convergence: field.convergence,
  });
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
