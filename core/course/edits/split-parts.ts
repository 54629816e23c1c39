/** Makes a feature of each part of an area of several parts. */

import {
  type DocumentFeature,
  type EditableDocument,
  type FeatureId,
  featureById,
  freeIds,
} from '../document.ts';
import { type EditResult, makeEdit, noSuchFeature } from './edit.ts';
import { geometryOfPolygons, polygonsOfGeometry, requireGeometry } from './shape.ts';
import { featureTold } from './words.ts';
import { told } from '../../words/told.ts';

/** The first part keeps the id; the others stand behind it with the same properties. */
export function splitParts(document: EditableDocument, id: FeatureId): EditResult {
  const feature = featureById(document, id);
  if (feature === undefined) return noSuchFeature(id);
  const required = requireGeometry(feature, ['MultiPolygon']);
  if (!required.ok) return required;
  const [first, ...others] = polygonsOfGeometry(required.value);
  const ids = freeIds(document, others.length);
  const partOf = (rings: NonNullable<typeof first>, partId: FeatureId): DocumentFeature => ({
    ...feature,
    id: partId,
    geometry: geometryOfPolygons([rings]),
  });
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.split, { what: featureTold(feature) }),
    {
      changed: [partOf(first!, id)],
      added: others.map((rings, index) => ({ feature: partOf(rings, ids[index]!), after: id })),
    },
  );
}
