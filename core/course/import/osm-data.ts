/**
 * OpenStreetMap elements as plain data: nodes, ways and relations with their tags, and the places of ways. Read from
 * OSM XML (API 0.6) and from Overpass-style JSON, both saved to a file.
 */

import { told, type Told, toldFault } from '../../words/told.ts';
import * as v from 'valibot';
import { type Fault, type Result, refuse, succeed } from '../../result.ts';
import type { LonLat } from '../model.ts';
import { isPlace } from '../positions.ts';
import { readXml } from './xml.ts';

export type Tags = Readonly<Record<string, string>>;

export interface OsmNode {
  readonly id: string;
  readonly at: LonLat;
  readonly tags: Tags;
}

export interface OsmWay {
  readonly id: string;
  /** Null where the file does not hold the node. */
  readonly points: readonly (LonLat | null)[];
  readonly tags: Tags;
}

export interface OsmMember {
  readonly type: string;
  readonly ref: string;
  readonly role: string;
  /** The place of a way that the relation itself brings along. */
  readonly points?: readonly (LonLat | null)[];
}

export interface OsmRelation {
  readonly id: string;
  readonly members: readonly OsmMember[];
  readonly tags: Tags;
}

export interface OsmData {
  readonly nodes: readonly OsmNode[];
  readonly ways: readonly OsmWay[];
  readonly relations: readonly OsmRelation[];
  /** Elements that could not be used, as the file calls them. */
  readonly broken: readonly { readonly element: string; readonly why: Told }[];
}

/** Most nodes of one way: OpenStreetMap itself takes up to 2,000. */
const MOST_WAY_NODES = 50_000;

/** Ways before the nodes that they name: places are looked up at the end. */
interface Draft {
  readonly nodes: OsmNode[];
  readonly ways: { id: string; refs: string[]; points?: (LonLat | null)[]; tags: Record<string, string> }[];
  readonly relations: { id: string; members: OsmMember[]; tags: Record<string, string> }[];
  readonly broken: { element: string; why: Told }[];
}

function finish({ nodes, ways, relations, broken }: Draft): OsmData {
  const places = new Map(nodes.map(({ id, at }) => [id, at]));
  const located: OsmWay[] = [];
  for (const { id, refs, points, tags } of ways) {
    const own = points ?? refs.map((ref) => places.get(ref) ?? null);
    if (own.length > MOST_WAY_NODES)
      broken.push({
        element: `way/${id}`,
        why: told(({ courseImport }) => courseImport.why.manyPoints, { most: MOST_WAY_NODES }),
      });
    else located.push({ id, points: own, tags });
  }
  return { nodes, ways: located, relations, broken };
}

const NO_PLACE = told(({ courseImport }) => courseImport.why.noPlace);

/** OSM XML. Elements that an editor has marked as deleted are passed over. */
export function readOsmXml(text: string): Result<OsmData, readonly Fault[]> {
  const draft: Draft = { nodes: [], ways: [], relations: [], broken: [] };
  let root: string | undefined;
  let tags: Record<string, string> | undefined;
  let refs: string[] | undefined;
  let members: OsmMember[] | undefined;
  const read = readXml(text, 'OpenStreetMap XML', {
    open: (name, attributes, depth) => {
      if (depth === 1) root = name;
      const { id } = attributes;
      // osmChange wraps elements in create, modify, delete; only plain files are read
      if (depth === 2) {
        [tags, refs, members] = [undefined, undefined, undefined];
        const isDeleted = attributes['action'] === 'delete' || attributes['visible'] === 'false';
        if (id === undefined || isDeleted) return;
        tags = {};
        if (name === 'node') {
          const at = placeOf(attributes['lon'], attributes['lat']);
          if (at === null) draft.broken.push({ element: `node/${id}`, why: NO_PLACE });
          else draft.nodes.push({ id, at, tags });
        } else if (name === 'way') {
          refs = [];
          draft.ways.push({ id, refs, tags });
        } else if (name === 'relation') {
          members = [];
          draft.relations.push({ id, members, tags });
        }
        return;
      }
      if (depth !== 3) return;
      if (name === 'tag' && tags !== undefined) addTag(tags, attributes['k'], attributes['v']);
      else if (name === 'nd' && refs !== undefined) refs.push(attributes['ref'] ?? '');
      else if (name === 'member' && members !== undefined) {
        members.push({
          type: attributes['type'] ?? '',
          ref: attributes['ref'] ?? '',
          role: attributes['role'] ?? '',
        });
      }
    },
  });
  if (!read.ok) return read;
  if (root !== 'osm') {
    const message = told(({ courseImport: { faults } }) => faults.notOsm, {
      root:
        root === undefined ? told(({ courseImport: { faults } }) => faults.empty) : `<${root.slice(0, 40)}>`,
    });
    return refuse([toldFault({ severity: 'error', code: 'not-osm', where: 'file', message })]);
  }
  return succeed(finish(draft));
}

function placeOf(lon: string | undefined, lat: string | undefined): LonLat | null {
  if (lon === undefined || lat === undefined || lon.trim() === '' || lat.trim() === '') return null;
  const at: LonLat = [Number(lon), Number(lat)];
  return isPlace(at) ? at : null;
}

function addTag(tags: Record<string, string>, key: string | undefined, value: string | undefined): void {
  if (key === undefined || value === undefined || key === '__proto__') return;
  tags[key] = value;
}

const IdSchema = v.union([v.pipe(v.number(), v.integer()), v.string()]);
const TagsSchema = v.optional(v.record(v.string(), v.string()), {});
const PlaceSchema = v.nullable(v.object({ lat: v.number(), lon: v.number() }));
const ElementSchema = v.variant('type', [
  v.object({ type: v.literal('node'), id: IdSchema, lat: v.number(), lon: v.number(), tags: TagsSchema }),
  v.object({
    type: v.literal('way'),
    id: IdSchema,
    nodes: v.optional(v.array(IdSchema)),
    geometry: v.optional(v.array(PlaceSchema)),
    tags: TagsSchema,
  }),
  v.object({
    type: v.literal('relation'),
    id: IdSchema,
    members: v.optional(
      v.array(
        v.object({
          type: v.string(),
          ref: v.optional(IdSchema, ''),
          role: v.optional(v.string(), ''),
          geometry: v.optional(v.array(PlaceSchema)),
        }),
      ),
      [],
    ),
    tags: TagsSchema,
  }),
]);

/** Overpass-style JSON: `{ elements: [...] }`, with nodes of its own (`out body; >;`) or places in ways (`out geom;`). */
export function readOsmJson(json: unknown): Result<OsmData, readonly Fault[]> {
  if (!v.is(v.looseObject({ elements: v.array(v.unknown()) }), json)) {
    const message = told(({ courseImport }) => courseImport.faults.noElements);
    return refuse([toldFault({ severity: 'error', code: 'not-osm', where: 'file', message })]);
  }
  const draft: Draft = { nodes: [], ways: [], relations: [], broken: [] };
  json.elements.forEach((raw, index) => {
    const parsed = v.safeParse(ElementSchema, raw, { abortEarly: true });
    if (!parsed.success) {
      const path = v.getDotPath(parsed.issues[0]) ?? 'it';
      draft.broken.push({
        element: `element ${index}`,
        why: told(({ courseImport }) => courseImport.why.cannotBeRead, { place: path }),
      });
      return;
    }
    const element = parsed.output;
    const id = String(element.id);
    const tags = element.tags;
    switch (element.type) {
      case 'node': {
        const at: LonLat = [element.lon, element.lat];
        if (isPlace(at)) draft.nodes.push({ id, at, tags });
        else draft.broken.push({ element: `node/${id}`, why: NO_PLACE });
        break;
      }
      case 'way':
        draft.ways.push({
          id,
          refs: (element.nodes ?? []).map(String),
          ...(element.geometry === undefined ? {} : { points: element.geometry.map(toPoint) }),
          tags,
        });
        break;
      case 'relation':
        draft.relations.push({
          id,
          members: element.members.map(({ type, ref, role, geometry }) => ({
            type,
            ref: String(ref),
            role,
            ...(geometry === undefined ? {} : { points: geometry.map(toPoint) }),
          })),
          tags,
        });
        break;
    }
  });
  return succeed(finish(draft));
}

function toPoint(place: { lat: number; lon: number } | null): LonLat | null {
  if (place === null) return null;
  const at: LonLat = [place.lon, place.lat];
  return isPlace(at) ? at : null;
}
