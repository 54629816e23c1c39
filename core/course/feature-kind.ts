/**
 * Which thing of a course a GeoJSON feature is, told from its tags: OpenStreetMap's open tags where one exists,
 * our own `holewright_kind` for the rest. `holewright_kind` wins where both stand.
 */

import { features } from '../words/english/features.ts';
import { told, type Told } from '../words/told.ts';
import type { Area, AreaKind } from './model.ts';

export type FeatureKind =
  | AreaKind
  | 'hole'
  | 'tree'
  | 'tee-marker'
  | 'hole-position'
  | 'ground-level'
  | 'slope-mark';

export const GOLF_TAGS: Readonly<Record<string, FeatureKind>> = {
  tee: 'tee',
  fairway: 'fairway',
  green: 'green',
  bunker: 'bunker',
  rough: 'rough',
  water_hazard: 'penalty-yellow',
  lateral_water_hazard: 'penalty-red',
  cartpath: 'path',
  hole: 'hole',
};

export const NATURAL_TAGS: Readonly<Record<string, FeatureKind>> = { wood: 'woods', tree: 'tree' };

export const OWN_KINDS: Readonly<Record<string, FeatureKind>> = {
  long_rough: 'long-rough',
  out_of_bounds: 'out-of-bounds',
  boundary: 'boundary',
  tee_marker: 'tee-marker',
  hole_position: 'hole-position',
  ground_level: 'ground-level',
  slope_mark: 'slope-mark',
};

/** What a kind is called in files and commands, which are English. */
export const KIND_WORDS: Readonly<Record<FeatureKind, string>> = features.kinds;

/** The kind that a feature's properties name; undefined where no known tag stands. */
export function featureKindOf(properties: Readonly<Record<string, unknown>>): FeatureKind | undefined {
  return (
    lookUp(OWN_KINDS, properties['holewright_kind']) ??
    lookUp(GOLF_TAGS, properties['golf']) ??
    lookUp(NATURAL_TAGS, properties['natural'])
  );
}

function lookUp(table: Readonly<Record<string, FeatureKind>>, tag: unknown): FeatureKind | undefined {
  return typeof tag === 'string' && Object.hasOwn(table, tag) ? table[tag] : undefined;
}

/** A feature for a fault's `where`: `feature 12 (bunker, hole 3, "Deep one")`. Counted from 0, as in the file's list. */
export function whereFeature(index: number, kind?: FeatureKind, ref?: string | number, name?: string): Told {
  const parts = [
    ...(kind === undefined ? [] : [told(({ features }) => features.kinds[kind])]),
    ...(ref === undefined ? [] : [told(({ features }) => features.hole, { hole: shorten(String(ref)) })]),
    ...(name === undefined ? [] : [told(({ features }) => features.quoted, { name: shorten(name) })]),
  ];
  if (parts.length === 0) return told(({ features }) => features.where, { index });
  const what = parts.reduce((first, second) => told(({ features }) => features.joined, { first, second }));
  return told(({ features }) => features.whereWhat, { index, what });
}

export function whereArea({ featureIndex, kind, hole, name }: Area): Told {
  return whereFeature(featureIndex, kind, hole, name);
}

function shorten(text: string): string {
  return text.length <= 60 ? text : `${text.slice(0, 59)}…`;
}
