/** Puts a new corner into an outline or a line. */

import type { EditableDocument } from '../document.ts';
import type { LonLat } from '../model.ts';
import { roundLonLat } from '../positions.ts';
import { type EditResult, makeEdit, refuseEdit } from './edit.ts';
import { checkGeometry, type VertexAddress } from './shape.ts';
import { findVertex, withPath } from './vertex.ts';
import { featureTold, sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

/** Behind the addressed corner; behind the last point of a line it lengthens the line. */
export function insertVertex(document: EditableDocument, behind: VertexAddress, at: LonLat): EditResult {
  const found = findVertex(document, behind);
  if (!found.ok) return found;
  const { feature, geometry, path, vertex } = found.value;
  if (geometry.type === 'Point') {
    return refuseEdit(
      'wrong-geometry',
      told(({ courseEdits }) => courseEdits.isPoint, { what: sentenceTold(feature) }),
      feature.id,
    );
  }
  const next = withPath(geometry, behind, path.points.toSpliced(vertex + 1, 0, roundLonLat(at)));
  const checked = checkGeometry(next, sentenceTold(feature), feature.id);
  if (!checked.ok) return checked;
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.addCorner, { what: featureTold(feature) }),
    {
      changed: [{ ...feature, geometry: next }],
    },
  );
}
