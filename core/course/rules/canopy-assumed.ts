/** Woods without a height, trees without a height or crown: says which measure a default stands in for. */

import { inEnglish } from '../../words/told.ts';
import type { Fault } from '../../result.ts';
import { whereArea } from '../feature-kind.ts';
import type { AssumedMeasure, Canopy, Tree } from '../model.ts';
import { type CourseRule, featureList } from './rule.ts';

export const canopyAssumed: CourseRule = (course) => {
  const faults: Fault[] = [];
  // a MultiPolygon gives several areas; one fault does for all of them
  const told = new Set<number>();
  for (const area of course.areas) {
    if (!area.assumed?.includes('canopy-top') || told.has(area.featureIndex)) continue;
    told.add(area.featureIndex);
    faults.push({
      severity: 'warning',
      code: 'canopy-assumed',
      where: inEnglish(whereArea(area)),
      message: `The woods have no height: ${measures(area.assumed, area.canopy)} taken. Measure and write height and canopy_base_m, in metres.`,
      featureIndex: area.featureIndex,
    });
  }
  for (const [words, trees] of groupTrees(course.trees)) {
    const indices = trees.map(({ featureIndex }) => featureIndex);
    faults.push({
      severity: 'warning',
      code: 'canopy-assumed',
      where: `trees (${featureList(indices)})`,
      message: `${trees.length === 1 ? 'One tree lacks' : `${trees.length} trees lack`} measures: ${words} taken. Write height, canopy_base_m and diameter_crown, in metres.`,
      featureIndex: indices[0]!,
    });
  }
  return faults;
};

/** Trees for which something that matters was assumed, gathered by what was assumed, in words. */
function groupTrees(trees: readonly Tree[]): Map<string, Tree[]> {
  const groups = new Map<string, Tree[]>();
  for (const tree of trees) {
    const assumed = tree.assumed ?? [];
    if (!assumed.includes('canopy-top') && !assumed.includes('crown-radius')) continue;
    const words = measures(assumed, tree.canopy, tree.crownRadiusM);
    groups.set(words, [...(groups.get(words) ?? []), tree]);
  }
  return groups;
}

function measures(assumed: readonly AssumedMeasure[], canopy?: Canopy, crownRadiusM?: number): string {
  const values: Readonly<Record<AssumedMeasure, string>> = {
    'canopy-top': `top ${canopy?.topM} m`,
    'canopy-base': `base ${canopy?.baseM} m`,
    'canopy-density': `density ${canopy?.densityPerM} per m`,
    'crown-radius': `crown radius ${crownRadiusM} m`,
  };
  return `${assumed.map((measure) => values[measure]).join(', ')} ${assumed.length === 1 ? 'is' : 'are'}`;
}
