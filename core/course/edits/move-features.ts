/** Moves whole features. */

import { type DocumentFeature, type EditableDocument, type FeatureId, geometryOf } from '../document.ts';
import type { LonLat } from '../model.ts';
import { isPlace, mapPositions, samePosition } from '../positions.ts';
import { type EditResult, makeEdit, pickFeatures, refuseEdit } from './edit.ts';
import { carryAlong } from './rigid-move.ts';
import { checkGeometry } from './shape.ts';
import { featuresTold, sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

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
      told(({ courseEdits }) => courseEdits.noPlace),
    );
  }
  const name = told(({ courseEdits }) => courseEdits.names.move, { what: featuresTold(picked.value) });
  if (samePosition(from, to)) return makeEdit(document, name, {});
  const carry = carryAlong(from, to);
  const changed: DocumentFeature[] = [];
  for (const feature of picked.value) {
    const geometry = geometryOf(feature);
    const what = sentenceTold(feature);
    if (geometry === undefined) {
      return refuseEdit(
        'wrong-geometry',
        told(({ courseEdits }) => courseEdits.noMove, { what }),
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
        told(({ courseEdits }) => courseEdits.tooFar, { what }),
        feature.id,
      );
    }
    const checked = checkGeometry(moved, what, feature.id);
    if (!checked.ok) return checked;
    changed.push({ ...feature, geometry: moved });
  }
  return makeEdit(document, name, { changed });
}
