/** Woods without a height, trees without a height or crown: says which measure a default stands in for. */

import { inEnglish, told, type Told, toldFault } from '../../words/told.ts';
import type { Fault } from '../../result.ts';
import { whereArea } from '../feature-kind.ts';
import type { AssumedMeasure, Canopy, Tree } from '../model.ts';
import { type CourseRule, featureList } from './rule.ts';

export const canopyAssumed: CourseRule = (course) => {
  const faults: Fault[] = [];
  // a MultiPolygon gives several areas; one fault does for all of them
  const seen = new Set<number>();
  for (const area of course.areas) {
    if (!area.assumed?.includes('canopy-top') || seen.has(area.featureIndex)) continue;
    seen.add(area.featureIndex);
    faults.push(
      toldFault({
        severity: 'warning',
        code: 'canopy-assumed',
        where: whereArea(area),
        message: told(({ courseReading }) => courseReading.canopy.woods, measures(area.assumed, area.canopy)),
        featureIndex: area.featureIndex,
      }),
    );
  }
  for (const { trees, assumed } of groupTrees(course.trees)) {
    const indices = trees.map(({ featureIndex }) => featureIndex);
    faults.push(
      toldFault({
        severity: 'warning',
        code: 'canopy-assumed',
        where: told(({ features }) => features.trees, { list: featureList(indices) }),
        message:
          trees.length === 1
            ? told(({ courseReading }) => courseReading.canopy.oneTree, assumed)
            : told(({ courseReading }) => courseReading.canopy.trees, { trees: trees.length, ...assumed }),
        featureIndex: indices[0]!,
      }),
    );
  }
  return faults;
};

interface Measures {
  readonly measures: Told;
  readonly count: number;
}

/** Trees for which something that matters was assumed, gathered by what was assumed. */
function groupTrees(
  trees: readonly Tree[],
): Iterable<{ readonly trees: Tree[]; readonly assumed: Measures }> {
  const groups = new Map<string, { readonly trees: Tree[]; readonly assumed: Measures }>();
  for (const tree of trees) {
    const lacking = tree.assumed ?? [];
    if (!lacking.includes('canopy-top') && !lacking.includes('crown-radius')) continue;
    const assumed = measures(lacking, tree.canopy, tree.crownRadiusM);
    const key = inEnglish(assumed.measures);
    const group = groups.get(key) ?? { trees: [], assumed };
    group.trees.push(tree);
    groups.set(key, group);
  }
  return groups.values();
}

function measures(assumed: readonly AssumedMeasure[], canopy?: Canopy, crownRadiusM?: number): Measures {
  const of = (measure: AssumedMeasure): Told => {
    switch (measure) {
      case 'canopy-top':
        return told(({ courseReading }) => courseReading.canopy.top, { metres: canopy!.topM });
      case 'canopy-base':
        return told(({ courseReading }) => courseReading.canopy.base, { metres: canopy!.baseM });
      case 'canopy-density':
        return told(({ courseReading }) => courseReading.canopy.density, { perM: canopy!.densityPerM });
      case 'crown-radius':
        return told(({ courseReading }) => courseReading.canopy.crown, { metres: crownRadiusM! });
    }
  };
  return {
    measures: assumed
      .map(of)
      .reduce((first, second) => told(({ features }) => features.joined, { first, second })),
    count: assumed.length,
  };
}
