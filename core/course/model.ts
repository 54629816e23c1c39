/**
 * The course as the rest of core sees it: parsed, checked, still in longitude and latitude (WGS 84 degrees).
 * Built only by `parseCourse`; whatever holds a `Course` may trust it.
 */

import type { Fault } from '../result.ts';
import type { LEAF_CYCLES, LEAF_TYPES, SANDS } from './schema.ts';

/** [longitude, latitude] in degrees, WGS 84 (RFC 7946 order). */
export type LonLat = readonly [number, number];

/** Rings as in a GeoJSON polygon: first the outer ring, then its holes, each closed. */
export type Rings = readonly (readonly LonLat[])[];

export type AreaKind =
  | 'tee'
  | 'fairway'
  | 'green'
  | 'bunker'
  | 'rough'
  | 'long-rough'
  | 'penalty-yellow'
  | 'penalty-red'
  | 'out-of-bounds'
  | 'path'
  | 'woods'
  | 'boundary';

/** An area drawn on the map. MultiPolygons are split into one area per part. */
export interface Area {
  readonly kind: AreaKind;
  readonly rings: Rings;
  /** Hole number that the feature's `ref` names; absent for features of no hole in particular. */
  readonly hole?: number;
  readonly name?: string;
  /** Woods only. Top and base of the canopy above the ground, metres; density in 1/m (see flight/trees). */
  readonly canopy?: Canopy;
  /** Bunkers only: height of the edge above the sand, metres; absent where the file does not say. */
  readonly lipM?: number;
  /** Woods only: measures that the file does not give and a default stands in for. */
  readonly assumed?: readonly AssumedMeasure[];
  /** Rings (by index) that the file left open; closed on reading. */
  readonly openRings?: readonly number[];
  /** Index into the file's feature list. */
  readonly featureIndex: number;
}

/** A measure taken from a default (core/course/defaults.ts) because the file has none. */
export type AssumedMeasure = 'canopy-top' | 'canopy-base' | 'canopy-density' | 'crown-radius';

export interface Canopy {
  readonly topM: number;
  readonly baseM: number;
  /** Chance per metre of canopy crossed that the ball is stopped, `k` in 1 - exp(-k L). */
  readonly densityPerM: number;
  /** As tagged; absent where the file does not say. */
  readonly leafType?: (typeof LEAF_TYPES)[number];
  readonly leafCycle?: (typeof LEAF_CYCLES)[number];
}

export interface Tree {
  readonly at: LonLat;
  readonly crownRadiusM: number;
  readonly canopy: Canopy;
  readonly assumed?: readonly AssumedMeasure[];
  readonly featureIndex: number;
}

export interface GroundLevel {
  readonly at: LonLat;
  readonly elevationM: number;
}

/** A slope seen on a green and put down by hand. */
export interface SlopeMark {
  readonly at: LonLat;
  /** Metres of fall per metre. */
  readonly slopeShare: number;
  /** Where it falls to, radians clockwise from north. */
  readonly downhill: number;
  readonly featureIndex: number;
}

export interface TeeMarker {
  readonly name: string;
  readonly at: LonLat;
  /** Absent where the file draws none and the start of the hole's line stands in. */
  readonly featureIndex?: number;
}

export interface HolePosition {
  readonly name: string;
  readonly at: LonLat;
  /** Absent where the file draws none and the middle of the green (or the end of the line) stands in. */
  readonly featureIndex?: number;
}

/** A tee marker or hole position whose `ref` names a hole that has no hole line. */
export interface StrayMarker {
  readonly kind: 'tee-marker' | 'hole-position';
  readonly hole: number;
  readonly name?: string;
  readonly at: LonLat;
  readonly featureIndex: number;
}

export interface Hole {
  readonly number: number;
  readonly name?: string;
  readonly par: number;
  /** True where the file gives no par that can be read and the length of the line stands in for it. */
  readonly parAssumed?: true;
  /** 1 is the hardest; absent where the file has none. */
  readonly strokeIndex?: number;
  /** The line of play from the rearmost tee to the middle of the green. */
  readonly line: readonly LonLat[];
  /** In the order of the file; never empty after a successful parse (the line's start serves where none is drawn). */
  readonly tees: readonly TeeMarker[];
  /** Never empty after a successful parse (the green's centre serves where none is drawn). */
  readonly positions: readonly HolePosition[];
  readonly featureIndex: number;
}

export type Sand = (typeof SANDS)[number];

export interface Course {
  readonly name: string;
  readonly formatVersion: number;
  /** True where the file says that the place is invented. */
  readonly invented: boolean;
  /** Of all bunkers; absent where the file does not say. */
  readonly sand?: Sand;
  readonly holes: readonly Hole[];
  readonly areas: readonly Area[];
  readonly trees: readonly Tree[];
  readonly levels: readonly GroundLevel[];
  /** Absent where the file has none. */
  readonly slopeMarks?: readonly SlopeMark[];
  readonly strayMarkers?: readonly StrayMarker[];
  /** Things that planning can live with, e.g. a canopy height taken from a default. */
  readonly warnings: readonly Fault[];
}
