/** What the architect decides about a hole. Lengths in metres, stations along the line of play from the rear tee. */

import type { Point } from './curves.ts';

/** [station, offset of the middle to the right, width]; negative stations count back from the green's middle. */
export type FairwayStation = readonly [number, number, number];

export interface GreenDesign {
  readonly areaM2: number;
  /** Depth along the line of play as a multiple of the width. */
  readonly depth: number;
  /** Turned clockwise from the line of play, degrees. */
  readonly turnDeg: number;
  /** Positive: wider at the back (a pear); negative: wider in front. */
  readonly taper: number;
  /** Bend of the long axis (a kidney); positive bulges to the right. */
  readonly bend: number;
}

interface BunkerShape {
  readonly areaM2: number;
  /** Length along its own axis as a multiple of its depth. */
  readonly stretch: number;
  /** Number of bays in the outline. */
  readonly lobes: number;
}

/** Beside the green at an hour of the clock seen by the player: 12 behind, 6 in front. `gapM` of grass between. */
export interface GreensideBunker extends BunkerShape {
  readonly clock: number;
  readonly gapM: number;
}

export interface FairwayBunker extends BunkerShape {
  readonly at: readonly [number, number];
  /** Turn of the long axis clockwise from the line of play, degrees. */
  readonly turnDeg: number;
}

export type BunkerDesign = GreensideBunker | FairwayBunker;

export interface TeeDesign {
  /** Metres ahead of the rear tee and to the right of the line. */
  readonly at: readonly [number, number];
  readonly widthM: number;
  readonly depthM: number;
}

export interface HoleDesign {
  readonly number: number;
  readonly name: string;
  readonly par: number;
  readonly strokeIndex: number;
  /** Rear tee, corners, middle of the green. */
  readonly line: readonly Point[];
  /** Gorse, Heather, Clover: back to front. */
  readonly tees: readonly [TeeDesign, TeeDesign, TeeDesign];
  /** Pieces of fairway, each from near the tee to near the green. */
  readonly fairways: readonly (readonly FairwayStation[])[];
  readonly green: GreenDesign;
  readonly bunkers: readonly BunkerDesign[];
  /** Side on which the front and back hole positions lie, -1 left to 1 right. */
  readonly frontSide: number;
  readonly backSide: number;
}

export const TEE_NAMES = ['Gorse', 'Heather', 'Clover'] as const;

export function tee(ahead: number, aside: number, widthM = 9, depthM = 13): TeeDesign {
  return { at: [ahead, aside], widthM, depthM };
}

export function greenside(
  clock: number,
  areaM2: number,
  stretch: number,
  lobes: number,
  gapM = 4,
): GreensideBunker {
  return { clock, areaM2, stretch, lobes, gapM };
}

export function fairwayBunker(
  station: number,
  offset: number,
  areaM2: number,
  stretch: number,
  lobes: number,
  turnDeg = 0,
): FairwayBunker {
  return { at: [station, offset], areaM2, stretch, lobes, turnDeg };
}

export function green(
  areaM2: number,
  depth: number,
  turnDeg: number,
  taper: number,
  bend: number,
): GreenDesign {
  return { areaM2, depth, turnDeg, taper, bend };
}
