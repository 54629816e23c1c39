/** Moves whole features. */

import { type DocumentFeature, type EditableDocument, type FeatureId, geometryOf } from '../document.ts';
import type { LonLat } from '../model.ts';
import { isPlace, mapPositions, samePosition } from '../positions.ts';
import { type EditResult, makeEdit, pickFeatures, refuseEdit } from './edit.ts';
import { carryAlong } from './rigid-move.ts';
import { checkGeometry } from './shape.ts';
import { featuresWords, sentenceWords } from './words.ts';

/** As when the place `from` is taken hold of and let go at `to` (degrees). Shapes and sizes stay as they are. */
export function moveFeatures(
  document: EditableDocument,
  ids: readonly FeatureId[],
  { from, to }: { readonly from: LonLat; readonly to: LonLat },
): EditResult {
  const picked = pickFeatures(document, ids);
  if (!picked.ok) return picked;
  if (!isPlace(from) || !isPlace(to)) {
    return refuseEdit(
      'not-a-place',
      'That is no place: longitude goes from -180 to 180, latitude from -90 to 90.',
    );
  }
  const name = `Move ${featuresWords(picked.value)}`;
  if (samePosition(from, to)) return makeEdit(document, name, {});
  const carry = carryAlong(from, to);
  const changed: DocumentFeature[] = [];
  for (const feature of picked.value) {
    const geometry = geometryOf(feature);
    const what = sentenceWords(feature);
    if (geometry === undefined) {
      return refuseEdit(
        'wrong-geometry',
        `${what} has no shape that can be moved. Remove it and draw it again.`,
        feature.id,
      );
    }
    let moved;
    try {
      moved = mapPositions(geometry, carry);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      return refuseEdit(
        'not-a-place',
        `${what} lies too far away to be moved along. Move it by itself.`,
        feature.id,
      );
    }
    const checked = checkGeometry(moved, what, feature.id);
    if (!checked.ok) return checked;
    changed.push({ ...feature, geometry: moved });
  }
  return makeEdit(document, name, { changed });
}
