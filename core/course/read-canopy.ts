/** The canopy of woods or of a tree, with word of every measure that a default stands in for. */

import type { Fault } from '../result.ts';
import { told, toldFault } from '../words/told.ts';
import { DEFAULT_DENSITY_PER_M } from './defaults.ts';
import type { AssumedMeasure, Canopy } from './model.ts';
import type { FeatureContext } from './read-properties.ts';
import type { Properties } from './schema.ts';

/** Canopy from height, base and density; a default stands in for each that is absent, the base kept below the top. */
export function readCanopy(
  properties: Properties,
  standard: Canopy,
  context: FeatureContext,
): { canopy: Canopy; assumed: AssumedMeasure[]; faults: Fault[] } {
  const assumed: AssumedMeasure[] = [];
  const faults: Fault[] = [];
  const topM = properties.height ?? standard.topM;
  if (typeof properties.height !== 'number') assumed.push('canopy-top');
  let baseM = properties.canopy_base_m ?? undefined;
  if (baseM !== undefined && baseM > topM) {
    const message = told(({ courseReading }) => courseReading.canopy.upsideDown, { base: baseM, top: topM });
    faults.push(
      toldFault({
        severity: 'warning',
        code: 'canopy-upside-down',
        where: context.where,
        message,
        featureIndex: context.index,
      }),
    );
    baseM = undefined;
  }
  if (baseM === undefined) assumed.push('canopy-base');
  const densityPerM = properties.canopy_density_per_m ?? DEFAULT_DENSITY_PER_M;
  if (typeof properties.canopy_density_per_m !== 'number') assumed.push('canopy-density');
  // a low tree keeps the same share of trunk
  const defaultBaseM = Math.min(standard.baseM, (topM * standard.baseM) / standard.topM);
  const { leaf_type: leafType, leaf_cycle: leafCycle } = properties;
  const canopy: Canopy = {
    topM,
    baseM: baseM ?? defaultBaseM,
    densityPerM,
    ...(typeof leafType === 'string' ? { leafType } : {}),
    ...(typeof leafCycle === 'string' ? { leafCycle } : {}),
  };
  return { canopy, assumed, faults };
}
