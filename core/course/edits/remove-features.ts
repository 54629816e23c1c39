/** Removes features. */

import type { EditableDocument, FeatureId } from '../document.ts';
import { type EditResult, makeEdit, pickFeatures } from './edit.ts';
import { featuresWords } from './words.ts';

export function removeFeatures(document: EditableDocument, ids: readonly FeatureId[]): EditResult {
  const picked = pickFeatures(document, ids);
  if (!picked.ok) return picked;
  return makeEdit(document, `Remove ${featuresWords(picked.value)}`, {
    removed: picked.value.map(({ id }) => id),
  });
}
