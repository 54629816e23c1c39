/** Copies features to another hole: a bunker drawn once serves again. */

import {
  type DocumentFeature,
  type EditableDocument,
  type FeatureId,
  freeIds,
  geometryOf,
  propertiesOf,
} from '../document.ts';
import { mapPositions, positionsOf } from '../positions.ts';
import { type EditResult, makeEdit, pickFeatures, refuseEdit } from './edit.ts';
import { carryAlong, shifted, type Shift } from './rigid-move.ts';
import { checkGeometry } from './shape.ts';
import { featuresTold, sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

/**
 * The copies belong to `hole` and lie `shift` (metres) away from what they were made of; with no shift they lie on
 * top of it. They are the features that the edit touches. A hole line is not copied: a hole has one only.
 */
export function copyToHole(
  document: EditableDocument,
  ids: readonly FeatureId[],
  hole: number,
  shift: Shift = { eastM: 0, northM: 0 },
): EditResult {
  const picked = pickFeatures(document, ids);
  if (!picked.ok) return picked;
  if (!Number.isInteger(hole) || hole < 1 || hole > 9999) {
    return refuseEdit(
      'value-not-accepted',
      told(({ courseEdits }) => courseEdits.badNumber, { hole }),
    );
  }
  const newIds = freeIds(document, picked.value.length);
  const added: { feature: DocumentFeature }[] = [];
  for (const [index, feature] of picked.value.entries()) {
    const properties = propertiesOf(feature);
    const what = sentenceTold(feature);
    if (properties['golf'] === 'hole') {
      return refuseEdit(
        'wrong-kind',
        told(({ courseEdits }) => courseEdits.oneLine, { what }),
        feature.id,
      );
    }
    const geometry = geometryOf(feature);
    if (geometry === undefined) {
      return refuseEdit(
        'wrong-geometry',
        told(({ courseEdits }) => courseEdits.noCopy, { what }),
        feature.id,
      );
    }
    let copied = geometry;
    if (shift.eastM !== 0 || shift.northM !== 0) {
      const [lon, lat] = positionsOf(geometry)[0]!;
      try {
        copied = mapPositions(geometry, carryAlong([lon, lat], shifted([lon, lat], shift)));
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        return refuseEdit(
          'not-a-place',
          told(({ courseEdits }) => courseEdits.offMap, { what }),
          feature.id,
        );
      }
    }
    const checked = checkGeometry(copied, what, feature.id);
    if (!checked.ok) return checked;
    added.push({
      feature: {
        ...feature,
        id: newIds[index]!,
        properties: { ...properties, ref: String(hole) },
        geometry: copied,
      },
    });
  }
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.copy, { what: featuresTold(picked.value), hole }),
    { added },
  );
}
