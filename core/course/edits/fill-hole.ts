/** Fills a hole of an area again. */

import { type EditableDocument, type FeatureId, featureById, geometryOf } from '../document.ts';
import { type EditResult, makeEdit, noSuchFeature, refuseEdit } from './edit.ts';
import { geometryOfPolygons, polygonsOfGeometry } from './shape.ts';
import { featureWords, sentenceWords } from './words.ts';

/** Takes an inner ring away: `ring` counts from 1 within the polygon `part`. */
export function fillHole(document: EditableDocument, id: FeatureId, ring: number, part = 0): EditResult {
  const target = featureById(document, id);
  if (target === undefined) return noSuchFeature(id);
  const geometry = geometryOf(target);
  const polygons = geometry === undefined ? [] : polygonsOfGeometry(geometry);
  if (ring < 1 || polygons[part]?.[ring] === undefined) {
    return refuseEdit(
      'no-such-ring',
      `${sentenceWords(target)} has no such hole any more. Choose one on the map.`,
      id,
    );
  }
  const filled = polygons.map((rings, index) =>
    index === part ? rings.filter((_, at) => at !== ring) : rings,
  );
  return makeEdit(document, `Fill a hole of ${featureWords(target)}`, {
    changed: [{ ...target, geometry: geometryOfPolygons(filled) }],
  });
}
