/** Cuts an area along a line that was drawn across it. */

import { booleanPointInPolygon, polygonize } from '@turf/turf';
import type { FeatureCollection, LineString } from 'geojson';
import { metresPerDegree } from '../degree-lengths.ts';
import {
  type DocumentFeature,
  type EditableDocument,
  type FeatureId,
  featureById,
  freeIds,
} from '../document.ts';
import { areaM2, distanceM } from '../ellipsoid.ts';
import type { LonLat, Rings } from '../model.ts';
import { turfPolygon } from '../polygon.ts';
import { isPlace, roundLonLat, samePosition } from '../positions.ts';
import { roundRing } from './area-algebra.ts';
import { type EditResult, makeEdit, noSuchFeature, refuseEdit } from './edit.ts';
import { interiorPoint } from './interior-point.ts';
import { type Side, splitAtMeetings, lineCrossesItself } from './noding.ts';
import { crossesItself, geometryOfPolygons, polygonsOfGeometry, requireGeometry } from './shape.ts';
import { featureTold, sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

/** An end this near to the outline was meant to lie on it, metres. */
const REACH_M = 0.05;

/**
 * The largest part keeps the id; the others stand behind it with the same properties. A line that goes in and out
 * several times gives more than two parts. Refuses a line that does not go right through.
 */
export function cutInTwo(document: EditableDocument, id: FeatureId, line: readonly LonLat[]): EditResult {
  const feature = featureById(document, id);
  if (feature === undefined) return noSuchFeature(id);
  const required = requireGeometry(feature, ['Polygon']);
  if (!required.ok) return required;
  const what = sentenceTold(feature);
  const [rings] = polygonsOfGeometry(required.value);
  if (rings === undefined || crossesItself(required.value)) {
    return refuseEdit(
      'crosses-itself',
      told(({ courseEdits }) => courseEdits.crosses, { what }),
      id,
    );
  }
  if (!line.every(isPlace))
    return refuseEdit(
      'not-a-place',
      told(({ courseEdits }) => courseEdits.lineOffMap),
      id,
    );
  const cut = roundRing(line);
  if (cut.length < 2)
    return refuseEdit(
      'line-does-not-cross',
      told(({ courseEdits }) => courseEdits.drawAcross, { what: featureTold(feature) }),
      id,
    );
  if (lineCrossesItself(cut)) {
    return refuseEdit(
      'line-crosses-itself',
      told(({ courseEdits }) => courseEdits.lineCrosses),
      id,
    );
  }
  const parts = partsOf(rings, reachOut(cut, rings));
  if (parts.length < 2) {
    const message = told(({ courseEdits }) => courseEdits.notThrough, { what: featureTold(feature) });
    return refuseEdit('line-does-not-cross', message, id);
  }
  const [largest, ...others] = parts.toSorted((a, b) => areaM2(b) - areaM2(a));
  const ids = freeIds(document, others.length);
  const partOf = (own: Rings, partId: FeatureId): DocumentFeature => ({
    ...feature,
    id: partId,
    geometry: geometryOfPolygons([own]),
  });
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.cut, {
      what: featureTold(feature),
      parts: parts.length === 2 ? told(({ courseEdits }) => courseEdits.two) : String(parts.length),
    }),
    {
      changed: [partOf(largest!, id)],
      added: others.map((own, index) => ({ feature: partOf(own, ids[index]!), after: id })),
    },
  );
}

/** The faces into which the line divides the polygon: sides cut where they meet, put together by turf, those outside dropped. */
function partsOf(rings: Rings, cut: readonly LonLat[]): Rings[] {
  const outline: Side[] = rings.flatMap(sidesOf);
  const polygon = turfPolygon(rings);
  const isInside = ([lon, lat]: LonLat) =>
    booleanPointInPolygon([lon, lat], polygon, { ignoreBoundary: true });
  const { first, second } = splitAtMeetings(outline, sidesOf(cut));
  const across = second.filter(([a, b]) => isInside([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]));
  const lines: FeatureCollection<LineString> = {
    type: 'FeatureCollection',
    features: [...first, ...across].map(([a, b]) => ({
      type: 'Feature',
      properties: {},
      geometry: { type: 'LineString', coordinates: [[...a], [...b]] },
    })),
  };
  const faces = polygonize(lines).features.map(({ geometry }) =>
    geometry.coordinates[0]!.map(([lon, lat]): LonLat => [lon!, lat!]),
  );
  const holes = rings.slice(1);
  const parts: Rings[] = [];
  for (const face of faces) {
    // turf gives holes back as faces of their own and leaves them out of the face around them
    const within = holes.filter((hole) => hole.every((point) => isInRing(point, face)));
    const part = [face, ...within.filter((hole) => !sameRing(hole, face))];
    const inner = interiorPoint(part);
    if (inner !== undefined && isInside(inner)) parts.push(part);
  }
  return parts;
}

function isInRing([lon, lat]: LonLat, ring: readonly LonLat[]): boolean {
  return booleanPointInPolygon([lon, lat], turfPolygon([ring]));
}

function sameRing(a: readonly LonLat[], b: readonly LonLat[]): boolean {
  const places = new Set(a.map(([lon, lat]) => `${lon} ${lat}`));
  return b.every(([lon, lat]) => places.has(`${lon} ${lat}`));
}

function sidesOf(points: readonly LonLat[]): Side[] {
  return points.slice(1).map((point, index): Side => [points[index]!, point]);
}

/** The line with ends that lie on the outline, or within a hair of it, drawn on a little so that they surely cross. */
function reachOut(cut: readonly LonLat[], rings: Rings): LonLat[] {
  const lengthened = [...cut];
  const onOutline = (at: LonLat) =>
    rings.flatMap(sidesOf).some(([a, b]) => distanceToSideM(at, a, b) <= REACH_M);
  if (onOutline(cut[0]!)) lengthened[0] = beyond(cut[1]!, cut[0]!);
  if (onOutline(cut.at(-1)!)) lengthened[cut.length - 1] = beyond(cut.at(-2)!, cut.at(-1)!);
  return lengthened;
}

function beyond(from: LonLat, end: LonLat): LonLat {
  const length = distanceM(from, end);
  const share = (length + 2 * REACH_M) / length;
  const next = roundLonLat([from[0] + (end[0] - from[0]) * share, from[1] + (end[1] - from[1]) * share]);
  return samePosition(next, from) ? end : next;
}

function distanceToSideM(at: LonLat, a: LonLat, b: LonLat): number {
  const { eastM, northM } = metresPerDegree(at[1]);
  const ax = (a[0] - at[0]) * eastM;
  const ay = (a[1] - at[1]) * northM;
  const dx = (b[0] - a[0]) * eastM;
  const dy = (b[1] - a[1]) * northM;
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, -(ax * dx + ay * dy) / square));
  return Math.hypot(ax + share * dx, ay + share * dy);
}
