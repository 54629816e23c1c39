/** What planning a spot gives back: options, odds, recommendation. Plain data, safe to post between threads. */

import type { LonLat } from '../course/model.ts';
import type { LieName } from '../ground/lies.ts';
import type { ClubKind, SpreadSource, Swing } from '../player/model.ts';

/** Metres in the hole's own frame: x east, y north of the frame's origin. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Chance that the first shot ends in each kind of trouble, or meets it. */
export interface Trouble {
  readonly outOfBounds: number;
  readonly penaltyYellow: number;
  readonly penaltyRed: number;
  readonly bunker: number;
  /** Stopped by a tree or at rest in woods. */
  readonly trees: number;
  readonly longRough: number;
}

/** Distance that the shot leaves to the hole in metres, after any relief: 10th, 50th and 90th percentile. */
export interface Leave {
  readonly p10M: number;
  readonly medianM: number;
  readonly p90M: number;
}

/** Ways to play on from a bad place without a swing (Rules of Golf 2023: 17.1d, 18.2, 19.2, 19.3, and Model Local Rule E-5). */
export type ReliefKind =
  | 'unplayable-lateral'
  | 'unplayable-back-on-line'
  | 'unplayable-outside-bunker'
  | 'unplayable-replay'
  | 'penalty-lateral'
  | 'penalty-back-on-line'
  | 'penalty-replay'
  | 'out-replay'
  | 'out-fairway';

export interface Option {
  /** Stable within a result: club, swing and rank of aim. */
  readonly id: string;
  readonly kind: 'shot' | 'relief';
  readonly relief?: ReliefKind;
  /** Penalty strokes of the relief, included in `meanStrokes`; absent for a shot. */
  readonly penaltyStrokes?: number;
  readonly club: string;
  readonly clubKind: ClubKind;
  readonly swing: Swing;
  /** The aim: direction from the ball, radians clockwise from north, and the point at the carry distance. */
  readonly aim: { readonly bearing: number; readonly lonLat: LonLat; readonly spot: Spot };
  /** Carry asked for, metres; differs from the club's mean for part swings. */
  readonly carryM: number;
  /** Expected strokes to hole out from here, this shot and its penalties included. */
  readonly meanStrokes: number;
  /**
   * Monte Carlo standard error of `meanStrokes` for the settled plan: chance in this shot and in the value of what follows.
   * Which choices the solution settles on varies with the seed too and is not in it.
   */
  readonly standardError: number;
  /** Difference to the best option and its standard error, from common random numbers. */
  readonly lossToBest: number;
  readonly lossStandardError: number;
  /** True where the data cannot tell it from the best. */
  readonly tooCloseToCall: boolean;
  /** `scoreOdds[k]` is the chance of holing out in exactly k strokes from here; the last entry is that many or more. */
  readonly scoreOdds: readonly number[];
  /** With the strokes already taken: against the hole's par. */
  readonly parOdds: ParOdds;
  readonly trouble: Trouble;
  readonly leave: Leave;
  /** Share of balls at rest per lie (penalties counted where the ball went in). Sums to 1. */
  readonly endShare: Readonly<Record<LieName, number>>;
  /** Null for relief. */
  readonly spreadSource: SpreadSource | null;
  /** Absent for relief and putts, where the spreads come without a posterior, and where it was not asked for. */
  readonly doubt?: SpreadDoubt;
}

/** What the doubt about the player's own shots leaves open. */
export interface SpreadDoubt {
  /** The option's mean strokes lie between these nine times in ten. */
  readonly lowStrokes: number;
  readonly highStrokes: number;
  /** Share of bags that fit the measured shots under which this option costs the fewest strokes. */
  readonly cheapestShare: number;
}

export interface ParOdds {
  readonly parOrBetter: number;
  readonly bogey: number;
  readonly doubleOrWorse: number;
}

export interface Recommendation {
  /** Empty where there are no options. */
  readonly optionId: string;
  /** One sentence. */
  readonly reason: string;
}

/** A club that is not on offer from a bunker: its flight does not clear the lip. */
export interface LipBlock {
  readonly club: string;
  readonly swing: Swing;
  /** Height of the lip and distance of the bunker's edge on the way to the hole, metres. */
  readonly lipM: number;
  readonly atM: number;
}

export interface SpotPlan {
  readonly hole: number;
  readonly from: Spot;
  readonly fromLonLat: LonLat;
  readonly lie: LieName;
  readonly distanceToHoleM: number;
  readonly strokesTaken: number;
  readonly par: number;
  /** Best first. Empty only for a ball out of bounds, where the stroke is played again. */
  readonly options: readonly Option[];
  readonly recommendation: Recommendation;
  /** In a bunker, where there are any. */
  readonly lipBlocks?: readonly LipBlock[];
  /** Expected strokes to hole out under the best option. */
  readonly expectedStrokes: number;
  readonly seed: string;
}

/** Sampled balls of one option, for drawing. Coordinates in the hole's frame, metres. */
export interface ShotSample {
  readonly count: number;
  /** Pairs x, y. */
  readonly landing: Float32Array;
  readonly end: Float32Array;
  /** `Lie` code where each came to rest or was lost. */
  readonly lie: Uint8Array;
}

/** The ellipse that holds a share of the solid strikes: centre and semi-axes in metres, axis bearing in radians. */
export interface SpreadEllipse {
  readonly share: number;
  readonly centre: Spot;
  readonly semiMajorM: number;
  readonly semiMinorM: number;
  readonly majorBearing: number;
}

export interface SolveProgress {
  readonly stage: string;
  readonly done: number;
  readonly total: number;
}

/** How the strokes-to-hole-out field changed between the last two spacings: the refinement error shown to people. */
export interface Convergence {
  readonly spacingsM: readonly number[];
  /** Root mean square and largest change on common nodes between consecutive spacings. */
  readonly rmsChange: readonly number[];
  readonly maxChange: readonly number[];
  readonly sweeps: readonly number[];
}

/** A club, swing and aim to be evaluated: `spreadIndex` into the player's spreads. */
export interface Choice {
  readonly spreadIndex: number;
  /** Radians clockwise from north. */
  readonly bearing: number;
  /** Carry asked for, metres; ignored for swings other than `part`. */
  readonly carryM: number;
}

/** Two choices from one spot, with common random numbers. Negative `difference`: the first costs fewer strokes. */
export interface Comparison {
  readonly first: Option;
  readonly second: Option;
  readonly difference: number;
  readonly standardError: number;
  readonly tooCloseToCall: boolean;
}

/** Strokes to hole out on a square grid for painting; row 0 is the southernmost, NaN where there is none. */
export interface StrokesSurface {
  /** Centre of the first cell in the hole's frame. */
  readonly originX: number;
  readonly originY: number;
  readonly cellM: number;
  readonly columns: number;
  readonly rows: number;
  readonly values: Float32Array;
}
