/** The player as the engine sees it: how each club and swing behaves, how the player putts. SI units. */

import type { LieName } from '../ground/lies.ts';
import type { Fault } from '../result.ts';
import type { PartLaw } from './part-law.ts';
import type { BagPosterior } from './posterior.ts';

export type ClubKind = 'driver' | 'wood' | 'hybrid' | 'iron' | 'wedge' | 'putter';

/** `part` is any length below a full wedge, its carry chosen freely; `punch` is low under branches. */
/**
 * Ways to swing a club. A curved shot starts aside and bends back to its aim, round what stands between: to the left is a draw
 * for the right-handed and a fade for the left-handed.
 */
export const SWINGS = [
  'full',
  'three-quarter',
  'half',
  'punch',
  'part',
  'curved-left',
  'curved-right',
] as const;
export type Swing = (typeof SWINGS)[number];

export interface Club {
  readonly name: string;
  readonly kind: ClubKind;
  readonly loftDeg: number;
  readonly lengthM?: number;
  readonly swings: readonly Swing[];
  /** Of full swings, as measured. */
  readonly launch?: ClubLaunch;
}

export interface ClubLaunch {
  readonly angleDeg?: number | undefined;
  readonly spinRpm?: number | undefined;
  readonly ballSpeedMps?: number | undefined;
  readonly apexM?: number | undefined;
}

/** Where the numbers of a spread come from, said to the player wherever they are used. */
export type SpreadSource =
  | { readonly from: 'measured'; readonly shots: number; readonly poorShots: number }
  | { readonly from: 'stated' }
  | { readonly from: 'preset'; readonly level: string }
  | { readonly from: 'derived'; readonly fromSwing: Swing; readonly fromClub: string };

/**
 * The law of one club and swing from a good lie on level ground in still air. A solid strike's carry and
 * direction are bivariate normal; a poor strike (share `poorShare`) has its own wider law.
 */
export interface ShotSpread {
  readonly club: Club;
  readonly swing: Swing;
  /** Mean carry in metres. For `part`, the longest carry of that swing. */
  readonly carryMean: number;
  /** Standard deviation of carry in metres. For `part`, at the longest carry; see `partSpread`. */
  readonly carrySd: number;
  /** Mean direction in radians, positive right of the aim seen by the player. */
  readonly directionMean: number;
  readonly directionSd: number;
  /** Correlation of carry and direction, in (-1, 1). */
  readonly correlation: number;
  /** Chance of a poor strike, in [0, 1). */
  readonly poorShare: number;
  readonly poor: PoorStrike;
  readonly source: SpreadSource;
  /** For `part` swings that are measured: how they scatter with length. */
  readonly part?: PartLaw;
}

export interface PoorStrike {
  /** Carry as a share of the solid mean: mean and standard deviation. */
  readonly carryShareMean: number;
  readonly carryShareSd: number;
  readonly directionSd: number;
}

/** How a lie changes a spread. Factors multiply; `poorShareAdded` adds. `playable` false: the club stays in the bag. */
export interface LieEffect {
  readonly playable: boolean;
  readonly carryFactor: number;
  readonly carrySdFactor: number;
  readonly directionSdFactor: number;
  readonly poorShareAdded: number;
}

export interface PuttingSkill {
  /** Standard deviation of the starting direction, radians (Gelman & Nolan 2002). */
  readonly directionSd: number;
  /** Standard deviation of the run as a share of the intended run (Gelman 2019). */
  readonly distanceSdShare: number;
}

export interface PlayerModel {
  readonly name: string;
  readonly invented: boolean;
  readonly handicap?: number;
  readonly hand: 'right' | 'left';
  /** One entry per club and swing that may be played, longest carry first. The putter has none. */
  readonly spreads: readonly ShotSpread[];
  readonly putting: PuttingSkill;
  /** Where the putting comes from; absent where the maker of the model does not say. */
  readonly puttingSource?: SpreadSource;
  /** Effect of a lie on a club; total over all lies that can be played from. */
  readonly lieEffect: (club: Club, swing: Swing, lie: LieName) => LieEffect;
  /**
   * The spreads with their doubt: one entry per spread, in the same order, their draws belonging together. Absent where
   * the maker of the model gives none. A function, since a model is passed on more often than its doubt is asked for.
   */
  readonly posterior?: () => BagPosterior;
  readonly units: 'yards' | 'metres';
  /** Options within this many strokes of the best count as equal to it (design: the player's own margin). */
  readonly marginStrokes: number;
  readonly warnings: readonly Fault[];
}
