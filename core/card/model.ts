/** What a strategy card says about a hole, before any layout. Metres and radians; words are ready to print. */

import type { LieName } from '../ground/lies.ts';
import type { ParOdds, Spot } from '../plan/model.ts';
import type { CardUnits } from './lengths.ts';

/** A distance from the tee along the aim. */
export interface CardDistance {
  readonly words: string;
  /** To reach it, and to carry it; the same where it has no depth to tell. */
  readonly nearM: number;
  readonly farM: number;
  readonly side: 'left' | 'right' | 'across';
  /** Where the two distances are reached. */
  readonly near: Spot;
  readonly far: Spot;
}

export interface RunOut {
  /** Distance from the tee along the aim at which the fairway ends, and what begins there. */
  readonly atM: number;
  readonly into: LieName;
  readonly at: Spot;
  readonly words: string;
}

export interface SafeSide {
  /** Null: neither side is clearly better. */
  readonly side: 'left' | 'right' | null;
  /** Strokes by which the other side costs more, and the standard error of that. */
  readonly cost: number;
  readonly standardError: number;
  readonly words: string;
}

export interface BadPlace {
  /** Share of tee shots that end there. */
  readonly share: number;
  readonly where: string;
  readonly what: string;
  readonly at: Spot;
}

export interface GreenPlace {
  /** Depth and width of the green as seen from where the approach comes, metres. */
  readonly depthM: number;
  readonly widthM: number;
  /** The hole from the front edge and from the nearer side edge, metres. */
  readonly fromFrontM: number;
  readonly fromSideM: number;
  readonly side: 'left' | 'right';
  readonly words: string;
}

export interface DrawnArea {
  readonly kind: DrawnKind;
  readonly rings: readonly (readonly Spot[])[];
}

export type DrawnKind =
  | 'rough'
  | 'long-rough'
  | 'woods'
  | 'fairway'
  | 'path'
  | 'tee'
  | 'green'
  | 'bunker'
  | 'penalty-yellow'
  | 'penalty-red'
  | 'out-of-bounds';

export interface DrawnBox {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** A picture in metres: x to the right of the line from tee to hole, y along it, the tee at (0, 0). */
export interface HoleDrawing {
  readonly box: DrawnBox;
  /** In the order in which they are painted. */
  readonly areas: readonly DrawnArea[];
  readonly trees: readonly { readonly at: Spot; readonly radiusM: number }[];
  readonly tee: Spot;
  readonly pin: Spot;
  readonly line: readonly Spot[];
  readonly aim: Spot | null;
  /** Outlines within which a share of the solid strikes comes down. */
  readonly ellipses: readonly { readonly share: number; readonly outline: readonly Spot[] }[];
  readonly marks: readonly { readonly at: Spot; readonly text: string }[];
}

/** The green alone: x to the right and y away from the approach, the middle of its box at (0, 0). */
export interface GreenDrawing {
  readonly box: DrawnBox;
  readonly areas: readonly DrawnArea[];
  readonly pin: Spot;
}

export interface CardHole {
  readonly hole: number;
  readonly name: string | null;
  readonly par: number;
  readonly strokeIndex: number | null;
  readonly lengthM: number;
  readonly tee: string;
  readonly holePosition: string | null;
  readonly units: CardUnits;
  /** `Driver`, `9-iron, three-quarter`. */
  readonly club: string;
  readonly carryM: number;
  readonly aim: string;
  readonly reason: string;
  /** The day that the plan is for, in words; null for an ordinary one. */
  readonly day: string | null;
  readonly carries: readonly CardDistance[];
  readonly runOut: RunOut | null;
  readonly safeSide: SafeSide | null;
  readonly badPlaces: readonly BadPlace[];
  readonly leave: {
    readonly shortM: number;
    readonly medianM: number;
    readonly longM: number;
    readonly words: string;
  };
  readonly green: GreenPlace | null;
  readonly expected: number;
  readonly odds: ParOdds;
  readonly budget: { readonly strokes: number; readonly words: string } | null;
  /** Boxes to be filled in on the course. */
  readonly boxes: readonly string[];
  readonly drawing: HoleDrawing;
  readonly greenDrawing: GreenDrawing | null;
}
