/** Takes a corner out of an outline or a line. */

import type { EditableDocument } from '../document.ts';
import { type EditResult, makeEdit, refuseEdit } from './edit.ts';
import { checkGeometry, fewestPoints, type VertexAddress } from './shape.ts';
import { findVertex, withPath } from './vertex.ts';
import { featureWords, sentenceWords } from './words.ts';

/** Refuses to go below 3 corners of an area or 2 points of a line. */
export function removeVertex(document: EditableDocument, address: VertexAddress): EditResult {
  const found = findVertex(document, address);
  if (!found.ok) return found;
  const { feature, geometry, path, vertex } = found.value;
  const what = sentenceWords(feature);
  if (geometry.type === 'Point' || path.points.length <= fewestPoints(path)) {
    const rest =
      geometry.type === 'Point'
        ? 'is a single point'
        : `has only ${path.points.length} ${path.closed ? 'corners' : 'points'} left there`;
    return refuseEdit('too-few-vertices', `${what} ${rest}. Remove the whole of it instead.`, feature.id);
  }
  const next = withPath(geometry, address, path.points.toSpliced(vertex, 1));
  const checked = checkGeometry(next, what, feature.id);
  if (!checked.ok) return checked;
  return makeEdit(document, `Remove a corner of ${featureWords(feature)}`, {
    changed: [{ ...feature, geometry: next }],
  });
}
