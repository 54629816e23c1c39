/** Woods and trees whose height nobody has written down: what is taken, and the offer to write it. */

import { TREE_CANOPY, TREE_CROWN_RADIUS_M, WOODS_CANOPY } from './defaults.ts';
import { type EditableDocument, type FeatureId, geometryOf } from './document.ts';
import { countTold } from './edits/words.ts';
import type { Missing } from './missing.ts';
import type { AssumedMeasure, Course } from './model.ts';
import { distanceToLineM } from './nearness.ts';
import { told, type Told } from '../words/told.ts';

/** Woods and trees within this of a hole's line matter to it, metres. Common practice, no source. */
const CANOPY_REACH_M = 100;

/** Woods or a tree whose canopy rests on a default for its height. */
export interface Canopied {
  readonly kind: 'woods' | 'tree';
  readonly id: FeatureId;
  readonly assumed: readonly AssumedMeasure[];
  /** Numbers of the holes that it matters to. */
  readonly holes: ReadonlySet<number>;
}

export function guessedCanopies(document: EditableDocument, course: Course): Canopied[] {
  const found: Canopied[] = [];
  const told = new Set<number>();
  const woods = course.areas.filter(({ kind }) => kind === 'woods');
  const drawn = [
    ...woods.map(({ assumed, featureIndex }) => ({ kind: 'woods' as const, assumed, featureIndex })),
    ...course.trees.map(({ assumed, featureIndex }) => ({ kind: 'tree' as const, assumed, featureIndex })),
  ];
  for (const { kind, assumed = [], featureIndex } of drawn) {
    // areas of several parts come once per part
    if (!assumed.includes('canopy-top') || told.has(featureIndex)) continue;
    told.add(featureIndex);
    const feature = document.features[featureIndex]!;
    const geometry = geometryOf(feature);
    if (geometry === undefined) continue;
    const near = course.holes.filter(({ line }) => distanceToLineM(geometry, line) <= CANOPY_REACH_M);
    found.push({ kind, id: feature.id, assumed, holes: new Set(near.map(({ number }) => number)) });
  }
  return found;
}

/** One for the woods and one for the trees of each set of measures that is lacking; only those are offered. */
export function canopyMissing(canopies: readonly Canopied[]): Missing[] {
  const groups = new Map<string, Canopied[]>();
  for (const canopy of canopies) {
    const key = [canopy.kind, ...canopy.assumed].join(' ');
    groups.set(key, [...(groups.get(key) ?? []), canopy]);
  }
  return [...groups.values()].map((group): Missing => {
    const { kind, assumed } = group[0]!;
    const standard = kind === 'woods' ? WOODS_CANOPY : TREE_CANOPY;
    const offers: Readonly<Record<AssumedMeasure, readonly [string, number, Told]>> = {
      'canopy-top': [
        'height',
        standard.topM,
        told(({ courseNotes }) => courseNotes.high, { metres: standard.topM }),
      ],
      'canopy-base': [
        'canopy_base_m',
        standard.baseM,
        told(({ courseNotes }) => courseNotes.branches, { metres: standard.baseM }),
      ],
      'canopy-density': [
        'canopy_density_per_m',
        standard.densityPerM,
        told(({ courseNotes }) => courseNotes.density, { density: standard.densityPerM }),
      ],
      'crown-radius': [
        'diameter_crown',
        2 * TREE_CROWN_RADIUS_M,
        told(({ courseNotes }) => courseNotes.crown, { metres: 2 * TREE_CROWN_RADIUS_M }),
      ],
    };
    const features = group.map(({ id }) => id);
    const taken = assumed
      .map((measure) => offers[measure][2])
      .reduce((first, second) => told(({ features }) => features.joined, { first, second }));
    return {
      code: 'no-canopy-height',
      weight: 'assumed',
      message: told(({ courseNotes }) => courseNotes.noCanopy, {
        what: countTold(group.length, kind),
        taken,
      }),
      features,
      fix: {
        how: 'write',
        label: told(({ courseNotes }) => courseNotes.writeCanopy, { taken }),
        features,
        values: Object.fromEntries(assumed.map((measure) => [offers[measure][0], offers[measure][1]])),
      },
    };
  });
}
