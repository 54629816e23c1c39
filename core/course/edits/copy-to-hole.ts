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
import { featuresWords, sentenceWords } from './words.ts';

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
      `A hole cannot be number ${hole}: write a whole number such as 7.`,
    );
  }
  const newIds = freeIds(document, picked.value.length);
  const added: { feature: DocumentFeature }[] = [];
  for (const [index, feature] of picked.value.entries()) {
    const properties = propertiesOf(feature);
    const what = sentenceWords(feature);
    if (properties['golf'] === 'hole') {
      return refuseEdit(
        'wrong-kind',
        `${what} cannot be copied: a hole has one line. Draw the other hole's line.`,
        feature.id,
      );
    }
    const geometry = geometryOf(feature);
    if (geometry === undefined) {
      return refuseEdit(
        'wrong-geometry',
        `${what} has no shape that can be copied. Draw it again.`,
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
          `${what} would be moved off the map. Choose a smaller shift.`,
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
  return makeEdit(document, `Copy ${featuresWords(picked.value)} to hole ${hole}`, { added });
}
