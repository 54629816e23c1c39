/**
 * What kinds of tree do to a ball, in leaf and bare. Common practice, no source: no measurements of balls in crowns are
 * known to us. A crown of density k lets through exp(-k L) of the balls that pass L metres of it.
 */

import type { Season } from '../conditions/conditions.ts';
import type { Canopy } from '../course/model.ts';

/** Dense broadleaf (oak, beech, lime), light broadleaf (birch, willow, ash), conifer (pine, spruce, fir, evergreen). */
export const TREE_KINDS = ['broadleaf', 'light-broadleaf', 'conifer'] as const;
export type TreeKind = (typeof TREE_KINDS)[number];

interface Crown {
  readonly leafPerM: number;
  /** Twigs and branches alone, as a share of the crown in leaf. */
  readonly bareShare: number;
  /** Trunk's diameter at breast height as a share of the tree's height. */
  readonly trunkShare: number;
}

const CROWNS: Readonly<Record<TreeKind, Crown>> = {
  broadleaf: { leafPerM: 0.2, bareShare: 0.4, trunkShare: 0.035 },
  'light-broadleaf': { leafPerM: 0.1, bareShare: 0.35, trunkShare: 0.022 },
  conifer: { leafPerM: 0.18, bareShare: 1, trunkShare: 0.025 },
};

/**
 * Chance per metre to meet a trunk under the crowns of a wood: stems per square metre times their width (mean free path
 * 1 / (n d), geometry). 400 stems a hectare of 25 cm: common practice, no source.
 */
export const STEMS_PER_M = 0.04 * 0.25;

/** Density of a crown, per metre. */
export function crownDensity(kind: TreeKind, season: Season): number {
  const { leafPerM, bareShare } = CROWNS[kind];
  return season === 'bare' ? leafPerM * bareShare : leafPerM;
}

/** What a crown's tags say of its kind; most trees whose kind nobody has tagged are taken for broadleaf. */
export function kindOfCanopy({ leafType }: Pick<Canopy, 'leafType'>): TreeKind {
  return leafType === 'needleleaved' ? 'conifer' : 'broadleaf';
}

/**
 * Density of a crown of the map, which is given for trees in leaf, on a day of `season`. Needles and evergreen leaves
 * stay; a mixed wood keeps half of what leaves take away. The cycle, where it is tagged, says more than the leaf: larches.
 */
export function seasonalDensity(canopy: Canopy, season: Season): number {
  return season === 'bare' ? canopy.densityPerM * bareShareOf(canopy) : canopy.densityPerM;
}

function bareShareOf(canopy: Canopy): number {
  const bare = CROWNS.broadleaf.bareShare;
  const half = (1 + bare) / 2;
  const { leafCycle, leafType } = canopy;
  if (leafCycle === undefined) return leafType === 'mixed' ? half : CROWNS[kindOfCanopy(canopy)].bareShare;
  if (leafCycle === 'evergreen') return 1;
  return leafCycle === 'deciduous' ? bare : half;
}

/** Chance that a ball gets through `lengthM` metres of crown. */
export function lightShare(densityPerM: number, lengthM: number): number {
  return Math.exp(-densityPerM * lengthM);
}

/** Radius of the trunk of a tree of that height, metres. */
export function trunkRadiusM(kind: TreeKind, heightM: number): number {
  return (CROWNS[kind].trunkShare * heightM) / 2;
}
