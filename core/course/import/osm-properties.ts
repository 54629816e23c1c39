/** What an OpenStreetMap element's tags become as properties of a course feature. */

import { type Said, told, type Told } from '../../words/told.ts';
import { tagsOfKind } from '../edits/kind-tags.ts';
import type { FeatureKind } from '../feature-kind.ts';
import { LEAF_CYCLES, LEAF_TYPES } from '../schema.ts';
import { parseLengthM } from './lengths.ts';
import type { Tags } from './osm-data.ts';
import { OSM_ID_MEMBER } from './proposal.ts';

/** Height of scrub where none is tagged, metres. Common practice, no source. */
const SCRUB_HEIGHT_M = 2;

/** `golf=green`, `natural=wood`: the tag that gives an element its meaning. */
export function wordsOf(tags: Tags): Said {
  for (const key of ['golf', 'leisure', 'natural', 'landuse', 'waterway', 'highway']) {
    const value = tags[key];
    if (value !== undefined) return `${key}=${value.slice(0, 40)}`;
  }
  return told(({ courseImport }) => courseImport.things.element);
}

/** Meanings that are a choice of ours and not the map's. */
export function takenFor(kind: FeatureKind, tags: Tags): Told | undefined {
  if (tags['golf'] !== undefined) return undefined;
  if (kind === 'penalty-red') {
    return told(({ courseImport }) => courseImport.notes.red, { what: wordsOf(tags) });
  }
  if (tags['natural'] === 'sand') return told(({ courseImport }) => courseImport.notes.sand);
  if (tags['natural'] === 'scrub')
    return told(({ courseImport }) => courseImport.notes.scrub, { metres: SCRUB_HEIGHT_M });
  if (tags['landuse'] === 'forest') return told(({ courseImport }) => courseImport.notes.forest);
  return undefined;
}

const KEPT: Readonly<Partial<Record<FeatureKind, readonly string[]>>> = { hole: ['par', 'handicap'] };

const LEAF_TAGS = [
  ['leaf_type', LEAF_TYPES],
  ['leaf_cycle', LEAF_CYCLES],
] as const;

/** Our tags for the kind, and of the element's own those that mean something to the course. */
export function propertiesOf(kind: FeatureKind, tags: Tags, origin: string): Record<string, unknown> {
  const properties: Record<string, unknown> = { ...tagsOfKind(kind) };
  const ref = tags['ref'];
  if (ref !== undefined && kind !== 'tree' && kind !== 'woods' && kind !== 'boundary')
    properties['ref'] = ref;
  const name = tags['name'];
  if (name !== undefined && name.trim() !== '') properties['name'] = name.slice(0, 200);
  for (const key of KEPT[kind] ?? []) {
    const value = Number(tags[key]);
    if (tags[key] !== undefined && Number.isInteger(value)) properties[key] = value;
  }
  if (kind === 'woods' || kind === 'tree') {
    const heightM = parseLengthM(tags['height'] ?? tags['est_height']);
    if (heightM !== undefined && heightM <= 200) properties['height'] = heightM;
    const crownM = parseLengthM(tags['diameter_crown']);
    if (kind === 'tree' && crownM !== undefined && crownM <= 200) properties['diameter_crown'] = crownM;
    for (const [key, values] of LEAF_TAGS) {
      const value = tags[key];
      if ((values as readonly unknown[]).includes(value)) properties[key] = value;
    }
    if (tags['natural'] === 'scrub') {
      properties['height'] ??= SCRUB_HEIGHT_M;
      properties['canopy_base_m'] = 0;
    }
  }
  properties[OSM_ID_MEMBER] = origin;
  return properties;
}
