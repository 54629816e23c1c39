/** OpenStreetMap data saved to a file, as XML or as Overpass-style JSON, to features of a course. */

import { type Fault, type Result, refuse } from '../../result.ts';
import { inEnglish, told, type Told } from '../../words/told.ts';
import { TREE_CROWN_RADIUS_M } from '../defaults.ts';
import type { FeatureKind } from '../feature-kind.ts';
import { readJsonText } from '../json-text.ts';
import type { LonLat, Rings } from '../model.ts';
import { samePosition } from '../positions.ts';
import type { Geometry } from '../schema.ts';
import { alongLine } from './along-line.ts';
import { completeProposal } from './complete-proposal.ts';
import { LeftOutList } from './left-out.ts';
import { parseLengthM } from './lengths.ts';
import {
  type OsmData,
  type OsmRelation,
  type OsmWay,
  readOsmJson,
  readOsmXml,
  type Tags,
} from './osm-data.ts';
import { osmMeaning } from './osm-kinds.ts';
import { propertiesOf, takenFor, wordsOf } from './osm-properties.ts';
import { isComplete, outlineOf } from './osm-rings.ts';
import type { ImportContext, ImportProposal, ProposedFeature } from './proposal.ts';
import { textOverLimit } from './text-limit.ts';
import { widenLine } from './widen.ts';

/** What the Open Database Licence asks to be said (4.3; www.openstreetmap.org/copyright). */
export const OSM_SOURCE = 'Map data © OpenStreetMap contributors, Open Database Licence 1.0';

const MOST_TREES_OF_ROW = 500;
/** Giving a line a width takes a tenth of a millisecond for each of its points. */
const MOST_STREAM_POINTS = 20_000;

/** XML or JSON, told from the first character. */
export function readOsm(text: string, context: ImportContext): Result<ImportProposal, readonly Fault[]> {
  const tooLong = textOverLimit(text);
  if (tooLong !== undefined) return refuse([tooLong]);
  const data = readData(text);
  return data.ok ? new OsmReading(data.value).propose(context) : data;
}

function readData(text: string): Result<OsmData, readonly Fault[]> {
  if (/^\uFEFF?\s*</.test(text.slice(0, 1000))) return readOsmXml(text.replace(/^\uFEFF/, ''));
  const json = readJsonText(text);
  return json.ok ? readOsmJson(json.value) : json;
}

/** One reading of a file: gathers features, what is left out, and what was taken for what. */
class OsmReading {
  readonly #features: ProposedFeature[] = [];
  readonly #leftOut = new LeftOutList();
  readonly #notes = new Map<string, { readonly note: Told; count: number }>();
  readonly #courseNames = new Set<string>();
  /** Ways whose outline a relation has used and whose tags are that relation's. */
  readonly #spent = new Set<string>();

  #streamPoints = 0;
  readonly #ways: ReadonlyMap<string, OsmWay>;

  constructor(private readonly data: OsmData) {
    this.#ways = new Map(data.ways.map((way) => [way.id, way]));
  }

  propose(context: ImportContext): Result<ImportProposal, readonly Fault[]> {
    for (const { element, why } of this.data.broken)
      this.#leftOut.add(
        told(({ courseImport }) => courseImport.things.element),
        why,
        element,
      );
    for (const relation of this.data.relations) this.#takeRelation(relation);
    for (const { id, points, tags } of this.data.ways) {
      if (!this.#spent.has(id)) this.#takeWay(`way/${id}`, points, tags);
    }
    for (const { id, at, tags } of this.data.nodes) this.#takeNode(`node/${id}`, at, tags);
    const names = [...this.#courseNames];
    return completeProposal(
      {
        kind: 'osm',
        features: this.#features,
        leftOut: this.#leftOut,
        notes: [...this.#notes.values()].map(({ note, count }) =>
          told(({ courseImport }) => courseImport.notes.times, { count, note }),
        ),
        sources: [OSM_SOURCE],
        ...(names.length === 1 ? { courseName: names[0]! } : {}),
      },
      context,
    );
  }

  #note(note: Told): void {
    const key = inEnglish(note);
    const known = this.#notes.get(key);
    if (known === undefined) this.#notes.set(key, { note, count: 1 });
    else known.count++;
  }

  #takeRelation({ id, members, tags }: OsmRelation): void {
    const origin = `relation/${id}`;
    if (tags['type'] !== 'multipolygon') {
      const meaning = osmMeaning(tags);
      if (meaning.as === 'left-out') this.#leftOut.add(meaning.what, meaning.why, origin);
      else if (meaning.as !== 'nothing') {
        this.#leftOut.add(
          told(({ courseImport }) => courseImport.things.relation),
          told(({ courseImport }) => courseImport.why.onlyMultipolygons),
          origin,
        );
      }
      return;
    }
    const ways = this.#ways;
    const outerMembers = members.filter(({ type, role }) => type === 'way' && role !== 'inner');
    let own = tags;
    let meaning = osmMeaning(tags);
    if (meaning.as === 'nothing') {
      // old style: the tags stand on the outer way
      const [outer] = outerMembers;
      const outerTags = outer === undefined ? undefined : ways.get(outer.ref)?.tags;
      if (outerTags === undefined) return;
      own = outerTags;
      meaning = osmMeaning(own);
      for (const { ref } of outerMembers) this.#spent.add(ref);
    }
    if (meaning.as === 'nothing') return;
    if (meaning.as === 'left-out') {
      this.#leftOut.add(meaning.what, meaning.why, origin);
      return;
    }
    for (const { ref } of outerMembers) {
      // drawn before relations were, and tagged again since: the same thing twice
      const twin = osmMeaning(ways.get(ref)?.tags ?? {});
      if (twin.as === 'feature' && meaning.as === 'feature' && twin.kind === meaning.kind)
        this.#spent.add(ref);
    }
    if (meaning.as !== 'feature' || (meaning.shape !== 'area' && meaning.shape !== 'path')) {
      this.#leftOut.add(
        wordsOf(own),
        told(({ courseImport }) => courseImport.why.noArea),
        origin,
      );
      return;
    }
    const outline = outlineOf(members, ways);
    if (!outline.ok) {
      this.#leftOut.add(wordsOf(own), outline.error, origin);
      return;
    }
    if (outline.value.stray > 0)
      this.#note(told(({ courseImport }) => courseImport.notes.strayInner, { what: wordsOf(own) }));
    this.#addArea(meaning.kind, outline.value.polygons, own, origin);
  }

  #takeWay(origin: string, points: readonly (LonLat | null)[], tags: Tags): void {
    const meaning = osmMeaning(tags);
    if (meaning.as === 'nothing') return;
    if (meaning.as === 'left-out') {
      this.#leftOut.add(meaning.what, meaning.why, origin);
      return;
    }
    if (!isComplete(points) || points.length < 2) {
      const why =
        points.length < 2
          ? told(({ courseImport }) => courseImport.why.noPoints)
          : told(({ courseImport }) => courseImport.why.pointsMissing);
      this.#leftOut.add(wordsOf(tags), why, origin);
      return;
    }
    const isClosed = points.length > 3 && samePosition(points[0]!, points.at(-1)!);
    switch (meaning.as) {
      case 'tree-row':
        this.#takeTreeRow(points, tags, origin);
        return;
      case 'stream':
        this.#takeStream(points, meaning.defaultWidthM, tags, origin);
        return;
      case 'feature':
        break;
    }
    if (meaning.shape === 'point') {
      this.#leftOut.add(
        wordsOf(tags),
        told(({ courseImport }) => courseImport.why.wantsPoint),
        origin,
      );
    } else if (meaning.shape === 'line') {
      this.#add(meaning.kind, lineOf(points), tags, origin);
    } else if (meaning.shape === 'path') {
      const isArea = isClosed && (tags['area'] === 'yes' || tags['area:highway'] !== undefined);
      if (isArea) this.#addArea('path', [[points]], tags, origin);
      else this.#add('path', lineOf(points), tags, origin);
    } else if (isClosed) {
      this.#addArea(meaning.kind, [[points]], tags, origin);
    } else {
      this.#leftOut.add(
        wordsOf(tags),
        told(({ courseImport }) => courseImport.why.notClosed),
        origin,
      );
    }
  }

  #takeNode(origin: string, at: LonLat, tags: Tags): void {
    const meaning = osmMeaning(tags);
    if (meaning.as === 'nothing') return;
    if (meaning.as === 'left-out') {
      this.#leftOut.add(meaning.what, meaning.why, origin);
      return;
    }
    const point: Geometry = { type: 'Point', coordinates: [at[0], at[1]] };
    if (meaning.as === 'feature' && meaning.shape === 'point') {
      this.#add(meaning.kind, point, tags, origin);
    } else if (meaning.as === 'feature' && meaning.kind === 'tee') {
      this.#note(told(({ courseImport }) => courseImport.notes.teePoint));
      this.#add('tee-marker', point, tags, origin);
    } else {
      this.#leftOut.add(
        wordsOf(tags),
        told(({ courseImport }) => courseImport.why.isDrawnAsPoint),
        origin,
      );
    }
  }

  #addArea(kind: FeatureKind, polygons: readonly Rings[], tags: Tags, origin: string): void {
    const coordinates = polygons.map((rings) =>
      rings.map((ring) => ring.map(([lon, lat]): [number, number] => [lon, lat])),
    );
    const geometry: Geometry =
      coordinates.length === 1
        ? { type: 'Polygon', coordinates: coordinates[0]! }
        : { type: 'MultiPolygon', coordinates };
    this.#add(kind, geometry, tags, origin);
  }

  #add(kind: FeatureKind, geometry: Geometry, tags: Tags, origin: string): void {
    if (kind === 'boundary' && tags['name'] !== undefined) this.#courseNames.add(tags['name']);
    const taken = takenFor(kind, tags);
    if (taken !== undefined) this.#note(taken);
    this.#features.push({ kind, properties: propertiesOf(kind, tags, origin), geometry, origin });
  }

  #takeStream(points: readonly LonLat[], defaultWidthM: number, tags: Tags, origin: string): void {
    const tagged = parseLengthM(tags['width']);
    const widthM = tagged !== undefined && tagged <= 500 ? tagged : defaultWidthM;
    this.#streamPoints += points.length;
    if (this.#streamPoints > MOST_STREAM_POINTS) {
      this.#leftOut.add(
        wordsOf(tags),
        told(({ courseImport }) => courseImport.why.muchWater),
        origin,
      );
      return;
    }
    const geometry = widenLine(points, widthM);
    if (geometry === undefined) {
      this.#leftOut.add(
        wordsOf(tags),
        told(({ courseImport }) => courseImport.why.badLine),
        origin,
      );
      return;
    }
    if (tagged === undefined)
      this.#note(
        told(({ courseImport }) => courseImport.notes.width, { what: wordsOf(tags), metres: defaultWidthM }),
      );
    this.#add('penalty-red', geometry, tags, origin);
  }

  #takeTreeRow(points: readonly LonLat[], tags: Tags, origin: string): void {
    const spacingM = parseLengthM(tags['diameter_crown']) ?? 2 * TREE_CROWN_RADIUS_M;
    const places = alongLine(points, spacingM, MOST_TREES_OF_ROW);
    if (places === undefined) {
      this.#leftOut.add(
        wordsOf(tags),
        told(({ courseImport }) => courseImport.why.manyTrees, { most: MOST_TREES_OF_ROW }),
        origin,
      );
      return;
    }
    this.#note(told(({ courseImport }) => courseImport.notes.treeRow));
    places.forEach((at, index) => {
      const properties = propertiesOf('tree', tags, `${origin}/${index + 1}`);
      this.#features.push({
        kind: 'tree',
        properties,
        geometry: { type: 'Point', coordinates: [at[0], at[1]] },
        origin,
      });
    });
  }
}

function lineOf(points: readonly LonLat[]): Geometry {
  return { type: 'LineString', coordinates: points.map(([lon, lat]) => [lon, lat]) };
}
