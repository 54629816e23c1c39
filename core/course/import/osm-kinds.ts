/**
 * What an OpenStreetMap element is on a golf course, told from its tags (wiki.openstreetmap.org: Key:golf,
 * Key:natural, Key:waterway, Tag:leisure=golf_course), and why the rest is left out.
 */

import { courseImport } from '../../words/english/course-import.ts';
import { type Said, told, type Told } from '../../words/told.ts';
import type { FeatureKind } from '../feature-kind.ts';
import type { Tags } from './osm-data.ts';

export type OsmMeaning =
  /** A thing of the course, drawn as an area, a line or a point. */
  | { readonly as: 'feature'; readonly kind: FeatureKind; readonly shape: 'area' | 'line' | 'point' | 'path' }
  | { readonly as: 'tree-row' }
  /** Running water drawn as a line: it becomes as wide as it says, or as a default says. */
  | { readonly as: 'stream'; readonly defaultWidthM: number }
  | { readonly as: 'left-out'; readonly what: Said; readonly why: Told }
  /** Carries nothing but the geometry of something else. */
  | { readonly as: 'nothing' };

const GOLF: Readonly<Record<string, OsmMeaning>> = {
  tee: area('tee'),
  fairway: area('fairway'),
  green: area('green'),
  bunker: area('bunker'),
  rough: area('rough'),
  water_hazard: area('penalty-yellow'),
  lateral_water_hazard: area('penalty-red'),
  out_of_bounds: area('out-of-bounds'),
  hole: { as: 'feature', kind: 'hole', shape: 'line' },
  cartpath: { as: 'feature', kind: 'path', shape: 'path' },
  path: { as: 'feature', kind: 'path', shape: 'path' },
  pin: { as: 'feature', kind: 'hole-position', shape: 'point' },
  driving_range: leftOut(
    'golf=driving_range',
    told((words) => words.courseImport.why.practice),
  ),
  practice: leftOut(
    'golf=practice',
    told((words) => words.courseImport.why.practice),
  ),
  clubhouse: leftOut(
    'golf=clubhouse',
    told((words) => words.courseImport.why.noShot),
  ),
};

/** Widths where none is tagged. Common practice, no source. */
const WATERWAYS: Readonly<Record<string, number>> = {
  stream: 2,
  ditch: 2,
  drain: 2,
  brook: 2,
  canal: 8,
  river: 10,
};

const NATURAL: Readonly<Record<string, OsmMeaning>> = {
  wood: area('woods'),
  tree: { as: 'feature', kind: 'tree', shape: 'point' },
  tree_row: { as: 'tree-row' },
  water: area('penalty-red'),
  sand: area('bunker'),
  scrub: area('woods'),
};

function area(kind: FeatureKind): OsmMeaning {
  return { as: 'feature', kind, shape: 'area' };
}

function leftOut(what: Said, why: Told): OsmMeaning {
  return { as: 'left-out', what, why };
}

/** Tags that say where data is from, not what a thing is. */
const ABOUT_DATA = new Set([
  'source',
  'created_by',
  'note',
  'fixme',
  'FIXME',
  'attribution',
  'type',
  'area',
  'check_date',
]);

/** Why tags that come up often are not taken in. */
const REASONS = Object.keys(courseImport.why.tags) as readonly (keyof typeof courseImport.why.tags)[];

/** Golf tags come first, then natural ones, then the use of the land: a bunker mapped as sand too is a bunker. */
export function osmMeaning(tags: Tags): OsmMeaning {
  const golf = lookUp(GOLF, tags['golf']);
  if (golf !== undefined) return golf;
  if (tags['leisure'] === 'golf_course') return area('boundary');
  const natural = lookUp(NATURAL, tags['natural']);
  if (natural !== undefined) return natural;
  if (tags['landuse'] === 'forest') return area('woods');
  const width = lookUp(WATERWAYS, tags['waterway']);
  if (width !== undefined) {
    if (isUnderGround(tags))
      return leftOut(
        `waterway=${tags['waterway']!}`,
        told((words) => words.courseImport.why.underGround),
      );
    return { as: 'stream', defaultWidthM: width };
  }
  const isForCarts = ['yes', 'designated'].includes(tags['golf_cart'] ?? '');
  if (isForCarts && tags['highway'] !== undefined) return { as: 'feature', kind: 'path', shape: 'path' };
  const keys = Object.keys(tags).filter((key) => !ABOUT_DATA.has(key) && !key.startsWith('source:'));
  const known = REASONS.find((key) => Object.hasOwn(tags, key));
  if (known !== undefined) {
    const what =
      known === 'building'
        ? told((words) => words.courseImport.things.building)
        : `${known}=${shorten(tags[known]!)}`;
    return leftOut(
      what,
      told((words) => words.courseImport.why.tags[known]),
    );
  }
  const [first] = keys;
  return first === undefined
    ? { as: 'nothing' }
    : leftOut(
        shorten(first),
        told((words) => words.courseImport.why.noMeaning),
      );
}

function isUnderGround(tags: Tags): boolean {
  return (tags['tunnel'] ?? 'no') !== 'no' || Number(tags['layer'] ?? 0) < 0;
}

function lookUp<T>(table: Readonly<Record<string, T>>, value: string | undefined): T | undefined {
  return value !== undefined && Object.hasOwn(table, value) ? table[value] : undefined;
}

function shorten(text: string): string {
  return text.length <= 40 ? text : `${text.slice(0, 39)}…`;
}
