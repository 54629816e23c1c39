/** Removes features. */

import type { EditableDocument, FeatureId } from '../document.ts';
import { type EditResult, makeEdit, pickFeatures } from './edit.ts';
import { featuresTold } from './words.ts';
import { told } from '../../words/told.ts';

export function removeFeatures(document: EditableDocument, ids: readonly FeatureId[]): EditResult {
  const picked = pickFeatures(document, ids);
  if (!picked.ok) return picked;
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.remove, { what: featuresTold(picked.value) }),
    {
      removed: picked.value.map(({ id }) => id),
    },
  );
}
