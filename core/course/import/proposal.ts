/** What importing a file would do: shown to the person first, then applied to the document in one step. */

import type { Said, Told } from '../../words/told.ts';
import { type EditableDocument, type FeatureId, holeOf, kindOf, propertiesOf } from '../document.ts';
import { geometryOf } from '../document.ts';
import type { FeatureKind } from '../feature-kind.ts';
import type { LonLat } from '../model.ts';
import type { Geometry } from '../schema.ts';

export type ImportKind = 'osm' | 'geojson' | 'gpx' | 'heights';

/** A feature in our own format, without an id yet. */
export interface ProposedFeature {
  readonly kind: FeatureKind;
  readonly properties: Readonly<Record<string, unknown>>;
  readonly geometry: Geometry;
  /** What it is in the file: `way/123`, `track "Green 7"`, `feature 12`. */
  readonly origin: string;
  /** The same to be told in the language of the window, where it is not the file's own name for it. */
  readonly toldOrigin?: Told;
}

/** What a thing of a file is called in its report. */
export function originSaid({ origin, toldOrigin }: Pick<ProposedFeature, 'origin' | 'toldOrigin'>): Said {
  return toldOrigin ?? origin;
}

/** Things of one sort that are not taken in, and why. */
export interface LeftOut {
  readonly what: string;
  readonly why: string;
  readonly count: number;
  /** The first few, as the file calls them. */
  readonly examples: readonly string[];
  /** The same to be told in the language of the window. */
  readonly told: { readonly what: Said; readonly why: Said; readonly examples: readonly Said[] };
}

/** How a feature came to its hole; `feature` is its index in the proposal. */
export type Assignment =
  | { readonly feature: number; readonly hole: number; readonly by: 'ref' }
  | { readonly feature: number; readonly hole: number; readonly by: 'nearness'; readonly distanceM: number };

/** A feature that should belong to a hole and for which none was found. */
export interface Unassigned {
  readonly feature: number;
  readonly why: string;
  readonly told: Said;
}

export interface ImportProposal {
  readonly kind: ImportKind;
  readonly features: readonly ProposedFeature[];
  /** In the order of the kinds' first features. */
  readonly counts: readonly { readonly kind: FeatureKind; readonly count: number }[];
  readonly assigned: readonly Assignment[];
  /** Features that should belong to a hole and for which none was found. */
  readonly unassigned: readonly Unassigned[];
  readonly leftOut: readonly LeftOut[];
  /** What was taken for what, and what to look at. */
  readonly notes: readonly string[];
  /** The same to be told in the language of the window. */
  readonly toldNotes: readonly Told[];
  /** Whom the data's licence asks to be named; goes into the course. */
  readonly sources: readonly string[];
  /** Features of the document that the new ones take the place of. */
  readonly replaces: readonly FeatureId[];
  readonly courseName?: string;
}

/** The line of a hole that features can be near to. */
export interface HoleWay {
  readonly hole: number;
  readonly line: readonly LonLat[];
}

/** What the reader of a file must know of the course that it is to be added to. */
export interface ImportContext {
  readonly holes: readonly HoleWay[];
  /** `osm_id` of features that came from OpenStreetMap before. */
  readonly knownOsmIds: ReadonlySet<string>;
  /** Ground levels that an elevation model gave before. */
  readonly modelLevels: readonly FeatureId[];
  /** Where the course lies: its boundary where it has one, else all that is drawn. Null for an empty course. */
  readonly extent: CourseExtent | null;
}

export interface CourseExtent {
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
  /** Outer rings of the boundary; empty without one. */
  readonly boundary: readonly (readonly LonLat[])[];
}

export const EMPTY_CONTEXT: ImportContext = {
  holes: [],
  knownOsmIds: new Set(),
  modelLevels: [],
  extent: null,
};

/** Mark on features that an import may take out again when it is done anew. */
export const ORIGIN_MEMBER = 'holewright_origin';
export const ELEVATION_MODEL = 'elevation-model';
export const OSM_ID_MEMBER = 'osm_id';

export function contextOf(document: EditableDocument): ImportContext {
  const holes: HoleWay[] = [];
  const knownOsmIds = new Set<string>();
  const modelLevels: FeatureId[] = [];
  for (const feature of document.features) {
    const properties = propertiesOf(feature);
    const osmId = properties[OSM_ID_MEMBER];
    if (typeof osmId === 'string') knownOsmIds.add(osmId);
    const kind = kindOf(feature);
    if (kind === 'ground-level' && properties[ORIGIN_MEMBER] === ELEVATION_MODEL)
      modelLevels.push(feature.id);
    const hole = kind === 'hole' ? holeOf(feature) : undefined;
    const geometry = hole === undefined ? undefined : geometryOf(feature);
    if (hole === undefined || geometry?.type !== 'LineString') continue;
    holes.push({ hole, line: geometry.coordinates.map(([lon, lat]): LonLat => [lon, lat]) });
  }
  return { holes, knownOsmIds, modelLevels, extent: extentOf(document) };
}

function extentOf(document: EditableDocument): CourseExtent | null {
  const drawn = document.features.flatMap((feature) => {
    const kind = kindOf(feature);
    const geometry = kind === undefined ? undefined : geometryOf(feature);
    return geometry === undefined ? [] : [{ kind, geometry }];
  });
  const boundaries = drawn.filter(({ kind }) => kind === 'boundary');
  // levels say nothing of where the course is: an earlier import may have spread them wider
  const counted = boundaries.length > 0 ? boundaries : drawn.filter(({ kind }) => kind !== 'ground-level');
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  const boundary: LonLat[][] = [];
  for (const { kind, geometry } of counted) {
    const rings =
      geometry.type === 'Polygon'
        ? geometry.coordinates.slice(0, 1)
        : geometry.type === 'MultiPolygon'
          ? geometry.coordinates.flatMap((part) => part.slice(0, 1))
          : [geometry.type === 'Point' ? [geometry.coordinates] : geometry.coordinates];
    for (const [lon, lat] of rings.flat()) {
      west = Math.min(west, lon);
      east = Math.max(east, lon);
      south = Math.min(south, lat);
      north = Math.max(north, lat);
    }
    if (kind === 'boundary')
      boundary.push(...rings.map((ring) => ring.map(([lon, lat]): LonLat => [lon, lat])));
  }
  return west <= east ? { west, south, east, north, boundary } : null;
}
