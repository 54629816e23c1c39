/** A planned hole as JSON. */

import type { PlannedHole } from './plan-task.ts';

/** The JSON of one hole; its fields are described in maps/schemas/plan.schema.json. */
export function planDocument(hole: PlannedHole, seed: string, inputs: object): object {
  const { plan: spotPlan } = hole;
  const recommended = spotPlan.options.find((option) => option.id === spotPlan.recommendation.optionId);
  return {
    hole: spotPlan.hole,
    par: spotPlan.par,
    tee: hole.tee,
    holePosition: hole.holePosition,
    lengthM: hole.lengthM,
    from: spotPlan.fromLonLat,
    lie: spotPlan.lie,
    distanceToHoleM: spotPlan.distanceToHoleM,
    strokesTaken: spotPlan.strokesTaken,
    expectedStrokes: recommended === undefined ? null : recommended.meanStrokes,
    reason: spotPlan.recommendation.reason,
    recommended:
      recommended === undefined ? null : { ...recommended, reason: spotPlan.recommendation.reason },
    options: spotPlan.options,
    convergence: hole.convergence,
    conditions: hole.conditions,
    ...(hole.sensitivity === null ? {} : { sensitivity: hole.sensitivity }),
    seed,
    inputs,
  };
}
