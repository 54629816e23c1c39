/** Fills a hole of an area again. */

import { type EditableDocument, type FeatureId, featureById, geometryOf } from '../document.ts';
import { type EditResult, makeEdit, noSuchFeature, refuseEdit } from './edit.ts';
import { geometryOfPolygons, polygonsOfGeometry } from './shape.ts';
import { featureTold, sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

/** Takes an inner ring away: `ring` counts from 1 within the polygon `part`. */
export function fillHole(document: EditableDocument, id: FeatureId, ring: number, part = 0): EditResult {
  const target = featureById(document, id);
  if (target === undefined) return noSuchFeature(id);
  const geometry = geometryOf(target);
  const polygons = geometry === undefined ? [] : polygonsOfGeometry(geometry);
  if (ring < 1 || polygons[part]?.[ring] === undefined) {
    return refuseEdit(
      'no-such-ring',
      told(({ courseEdits }) => courseEdits.noRing, { what: sentenceTold(target) }),
      id,
    );
  }
  const filled = polygons.map((rings, index) =>
    index === part ? rings.filter((_, at) => at !== ring) : rings,
  );
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.fill, { what: featureTold(target) }),
    {
      changed: [{ ...target, geometry: geometryOfPolygons(filled) }],
    },
  );
}
