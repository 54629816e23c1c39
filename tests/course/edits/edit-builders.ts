/** A small course as an editable document, and shorthands that fail loudly. */

import {
  type DocumentFeature,
  type EditableDocument,
  featureById,
  type FeatureId,
  geometryOf,
  openDocument,
} from '../../../core/course/document.ts';
import type { Edit, EditResult, Refusal } from '../../../core/course/edits/edit.ts';
import { polygonsOfGeometry } from '../../../core/course/edits/shape.ts';
import { areaM2 } from '../../../core/course/ellipsoid.ts';
import type { Position } from '../../../core/course/positions.ts';
import { area, at, collection, line, plainHole, point, square, type TestFeature } from '../builders.ts';

export function withId(id: FeatureId, feature: TestFeature) {
  return { ...feature, id };
}

export function open(...features: unknown[]): EditableDocument {
  const opened = openDocument(collection(...features));
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  return opened.value.document;
}

/** Two holes; `pond` has an island, `double` is an area of two parts, `bunker` lies inside `fairway`. */
export function smallCourse(): EditableDocument {
  return open(
    ...plainHole(1, 0),
    ...plainHole(2, 400),
    withId('fairway', area({ golf: 'fairway', ref: '1' }, square(0, 150, 40))),
    withId('neighbour', area({ golf: 'fairway', ref: '2' }, square(80, 150, 40))),
    withId('bunker', area({ golf: 'bunker', ref: '1' }, square(10, 160, 6))),
    withId('pond', area({ golf: 'water_hazard' }, square(200, 150, 30), square(200, 150, 10).toReversed())),
    withId('double', {
      type: 'Feature',
      properties: { natural: 'wood' },
      geometry: { type: 'MultiPolygon', coordinates: [[square(-200, 0, 20)], [square(-200, 100, 20)]] },
    }),
    withId('path', line({ golf: 'cartpath' }, at(50, 0), at(60, 100), at(50, 200))),
    withId('marker', point({ holewright_kind: 'tee_marker', ref: '1', name: 'Long' }, at(1, 2))),
    withId('strange', { type: 'Feature', properties: { building: 'yes' }, geometry: null }),
  );
}

export function must(result: EditResult): Edit {
  if (!result.ok) throw new Error(`refused: ${result.error.reason}: ${result.error.message}`);
  return result.value;
}

export function refused(result: EditResult): Refusal {
  if (result.ok) throw new Error(`"${result.value.name}" was done, though it should have been refused`);
  return result.error;
}

export function feature(document: EditableDocument, id: FeatureId): DocumentFeature {
  const found = featureById(document, id);
  if (found === undefined) throw new Error(`no feature ${id}`);
  return found;
}

/** The rings of an area's first part. */
export function ringsOf(document: EditableDocument, id: FeatureId): readonly (readonly Position[])[] {
  const geometry = geometryOf(feature(document, id));
  if (geometry?.type === 'Polygon') return geometry.coordinates;
  if (geometry?.type === 'MultiPolygon') return geometry.coordinates[0]!;
  throw new Error(`${id} is no area`);
}

export function areaOf(document: EditableDocument, id: FeatureId): number {
  const geometry = geometryOf(feature(document, id));
  return polygonsOfGeometry(geometry!).reduce((sum, rings) => sum + areaM2(rings), 0);
}

export function totalArea(document: EditableDocument, ids: readonly FeatureId[]): number {
  return ids.map((id) => areaOf(document, id)).reduce((sum, part) => sum + part, 0);
}

/** Positive for a counter-clockwise ring; its size means nothing. */
export function turn(ring: readonly Position[]): number {
  let twice = 0;
  for (let i = 1; i < ring.length; i++) {
    const [x0, y0] = ring[0]!;
    twice += (ring[i - 1]![0] - x0) * (ring[i]![1] - y0) - (ring[i]![0] - x0) * (ring[i - 1]![1] - y0);
  }
  return twice;
}

/** Faults of the right-hand rule (RFC 7946, 3.1.6) and of closing, over the whole document. */
export function ringFaults(document: EditableDocument): string[] {
  return document.features.flatMap((each) => {
    const geometry = geometryOf(each);
    const polygons =
      geometry?.type === 'Polygon'
        ? [geometry.coordinates]
        : geometry?.type === 'MultiPolygon'
          ? geometry.coordinates
          : [];
    return polygons.flatMap((rings) =>
      rings.flatMap((ring, index) => {
        const first = JSON.stringify(ring[0]);
        if (JSON.stringify(ring.at(-1)) !== first) return [`${each.id}: ring ${index} is open`];
        return turn(ring) > 0 === (index === 0) ? [] : [`${each.id}: ring ${index} runs the wrong way`];
      }),
    );
  });
}
