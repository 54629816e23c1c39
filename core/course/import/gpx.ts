/**
 * GPX 1.1 (Topografix, www.topografix.com/GPX/1/1): waypoints become tee markers and hole positions by their names,
 * tracks and routes become areas or lines of a chosen kind. Heights from a satellite receiver are not taken in.
 */

import { type Fault, type Result, refuse, succeed } from '../../result.ts';
import { tagsOfKind } from '../edits/kind-tags.ts';
import { distanceM, polylineLengthM } from '../ellipsoid.ts';
import { kindTold } from '../edits/words.ts';
import { inEnglish, told, type Told, toldFault } from '../../words/told.ts';
import type { FeatureKind } from '../feature-kind.ts';
import type { LonLat } from '../model.ts';
import { isPlace, samePosition } from '../positions.ts';
import { type Geometry, KIND_RULES } from '../schema.ts';
import { completeProposal } from './complete-proposal.ts';
import { LeftOutList } from './left-out.ts';
import type { ImportContext, ImportProposal, ProposedFeature } from './proposal.ts';
import { kindOfWord } from './suggest-mappings.ts';
import { textOverLimit } from './text-limit.ts';
import { readXml } from './xml.ts';

export interface GpxOptions {
  /** Kind of tracks and routes whose name says none. */
  readonly trackKind?: FeatureKind;
  /** Kinds of tracks and routes by name, before anything else. */
  readonly kindsByName?: ReadonlyMap<string, FeatureKind>;
}

interface GpxPoint {
  readonly at: LonLat;
  name: string;
}

interface GpxTrack {
  readonly what: 'track' | 'route';
  name: string;
  /** One list per segment. */
  readonly segments: LonLat[][];
}

interface GpxData {
  readonly waypoints: readonly GpxPoint[];
  readonly tracks: readonly GpxTrack[];
  readonly lost: number;
}

/** A walk round an area ends this near to where it began, as a share of its length. Common practice, no source. */
const CLOSING_SHARE = 0.2;

export function readGpx(
  text: string,
  context: ImportContext,
  options: GpxOptions = {},
): Result<ImportProposal, readonly Fault[]> {
  const data = readGpxData(text);
  if (!data.ok) return data;
  const leftOut = new LeftOutList();
  const features: ProposedFeature[] = [];
  for (const { at, name } of data.value.waypoints) {
    const origin = called(
      told(({ courseImport }) => courseImport.things.waypoint),
      name,
    );
    const kind = kindOfWaypoint(name);
    if (kind === undefined) {
      leftOut.add(
        told(({ courseImport }) => courseImport.things.waypoint),
        told(({ courseImport }) => courseImport.why.waypointName),
        origin,
      );
      continue;
    }
    const geometry: Geometry = { type: 'Point', coordinates: [at[0], at[1]] };
    features.push({ kind, properties: named(kind, name), geometry, ...asOrigin(origin) });
  }
  for (const track of data.value.tracks) takeTrack(track, options, features, leftOut);
  const notes =
    data.value.lost === 0
      ? []
      : [told(({ courseImport }) => courseImport.notes.lost, { count: data.value.lost })];
  return completeProposal({ kind: 'gpx', features, leftOut, notes, sources: [] }, context);
}

function takeTrack(
  track: GpxTrack,
  options: GpxOptions,
  features: ProposedFeature[],
  leftOut: LeftOutList,
): void {
  const thing = told(({ courseImport }) => courseImport.things[track.what]);
  const origin = called(thing, track.name);
  const kind =
    options.kindsByName?.get(track.name) ??
    kindOfWord(track.name, ['Polygon']) ??
    kindOfWord(track.name, ['LineString']) ??
    options.trackKind;
  if (kind === undefined) {
    leftOut.add(
      thing,
      told(({ courseImport }) => courseImport.why.trackName),
      origin,
    );
    return;
  }
  const types = KIND_RULES[kind].geometry;
  if (!types.includes('Polygon') && !types.includes('LineString')) {
    leftOut.add(
      thing,
      told(({ courseImport }) => courseImport.why.isPoint, { kind: kindTold(kind) }),
      origin,
    );
    return;
  }
  for (const segment of track.segments) {
    const points = segment.filter((at, index) => index === 0 || !samePosition(at, segment[index - 1]!));
    if (points.length < 2) continue;
    const properties = named(kind, track.name);
    // a path walked round and round is still a line
    if (types.includes('LineString')) {
      const coordinates = points.map(([lon, lat]): [number, number] => [lon, lat]);
      features.push({ kind, properties, geometry: { type: 'LineString', coordinates }, ...asOrigin(origin) });
      continue;
    }
    const gapM = distanceM(points[0]!, points.at(-1)!);
    if (points.length < 3 || gapM > CLOSING_SHARE * (polylineLengthM(points) + gapM)) {
      leftOut.add(
        thing,
        told(({ courseImport }) => courseImport.why.open, { kind: kindTold(kind) }),
        origin,
      );
      continue;
    }
    const ring = points.map(([lon, lat]): [number, number] => [lon, lat]);
    if (gapM > 0) ring.push([...ring[0]!]);
    features.push({
      kind,
      properties,
      geometry: { type: 'Polygon', coordinates: [ring] },
      ...asOrigin(origin),
    });
  }
}

/** `3 tee white`, `Tee 12`, `hole 3 pin`, `flag 7`. */
function kindOfWaypoint(name: string): FeatureKind | undefined {
  const lower = name.toLowerCase();
  if (/\btees?\b/.test(lower)) return 'tee-marker';
  return /\b(pin|flag|cup|hole)\b/.test(lower) ? 'hole-position' : undefined;
}

/** The number in a name is that of the hole, where there is just one; what is left is the name. */
function named(kind: FeatureKind, name: string): Record<string, unknown> {
  const numbers = name.match(/(?<![\d.])\d{1,2}(?![\d.])/g) ?? [];
  const [number] = numbers;
  const hole =
    numbers.length === 1 && Number(number) >= 1 && Number(number) <= 36 ? Number(number) : undefined;
  const rest = (hole === undefined ? name : name.replace(number!, ' '))
    .replace(/\b(hole|tees?|pin|flag|cup|no\.?)\b/gi, ' ')
    .replace(/[\s:;,.#_-]+/g, ' ')
    .trim();
  const label = kind === 'tee-marker' || kind === 'hole-position' ? rest : name.trim();
  return {
    ...tagsOfKind(kind),
    ...(hole === undefined ? {} : { ref: String(hole) }),
    ...(label === '' ? {} : { name: label.slice(0, 200) }),
  };
}

function readGpxData(text: string): Result<GpxData, readonly Fault[]> {
  const tooLong = textOverLimit(text);
  if (tooLong !== undefined) return refuse([tooLong]);
  const waypoints: GpxPoint[] = [];
  const tracks: GpxTrack[] = [];
  let root: string | undefined;
  let lost = 0;
  let owner: { name: string } | undefined;
  // names stand as children of wpt, trk and rte; those of track points are not wanted
  let inName = false;
  const read = readXml(text.replace(/^\uFEFF/, ''), 'GPX', {
    open: (prefixed, attributes, depth) => {
      const name = local(prefixed);
      if (depth === 1) root = name;
      const at: LonLat = [Number(attributes['lon'] ?? NaN), Number(attributes['lat'] ?? NaN)];
      if (depth === 2) {
        owner = undefined;
        if (name === 'wpt') {
          const point: GpxPoint = { at, name: '' };
          owner = point;
          if (isPlace(at)) waypoints.push(point);
          else lost++;
        } else if (name === 'trk' || name === 'rte') {
          const track: GpxTrack = { what: name === 'trk' ? 'track' : 'route', name: '', segments: [] };
          if (name === 'rte') track.segments.push([]);
          owner = track;
          tracks.push(track);
        }
        return;
      }
      const track = tracks.at(-1);
      if (depth === 3 && name === 'name') inName = true;
      else if (depth === 3 && name === 'trkseg') track?.segments.push([]);
      else if ((depth === 4 && name === 'trkpt') || (depth === 3 && name === 'rtept')) {
        if (isPlace(at)) track?.segments.at(-1)?.push(at);
        else lost++;
      }
    },
    text: (chunk) => {
      if (inName && owner !== undefined && owner.name.length < 500) owner.name += chunk;
    },
    close: (_, depth) => {
      if (depth === 3) inName = false;
    },
  });
  if (!read.ok) return read;
  if (root !== 'gpx') {
    const message = told(({ courseImport }) => courseImport.faults.notGpx, {
      root: (root ?? '').slice(0, 40),
    });
    return refuse([toldFault({ severity: 'error', code: 'not-gpx', where: 'file', message })]);
  }
  return succeed({ waypoints, tracks, lost });
}

function local(name: string): string {
  return name.slice(name.indexOf(':') + 1);
}

function called(what: Told, name: string): Told {
  return told(({ features }) => features.named, { what, name: shorten(name) });
}

function asOrigin(toldOrigin: Told): Pick<ProposedFeature, 'origin' | 'toldOrigin'> {
  return { origin: inEnglish(toldOrigin), toldOrigin };
}

function shorten(text: string): string {
  return text.length <= 40 ? text : `${text.slice(0, 39)}…`;
}
