/** Takes a corner out of an outline or a line. */

import type { EditableDocument } from '../document.ts';
import { type EditResult, makeEdit, refuseEdit } from './edit.ts';
import { checkGeometry, fewestPoints, type VertexAddress } from './shape.ts';
import { findVertex, withPath } from './vertex.ts';
import { featureTold, sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

/** Refuses to go below 3 corners of an area or 2 points of a line. */
export function removeVertex(document: EditableDocument, address: VertexAddress): EditResult {
  const found = findVertex(document, address);
  if (!found.ok) return found;
  const { feature, geometry, path, vertex } = found.value;
  const what = sentenceTold(feature);
  if (geometry.type === 'Point' || path.points.length <= fewestPoints(path)) {
    const rest =
      geometry.type === 'Point'
        ? told(({ courseEdits }) => courseEdits.singlePoint)
        : path.closed
          ? told(({ courseEdits }) => courseEdits.cornersLeft, { count: path.points.length })
          : told(({ courseEdits }) => courseEdits.pointsLeft, { count: path.points.length });
    return refuseEdit(
      'too-few-vertices',
      told(({ courseEdits }) => courseEdits.tooFew, { what, rest }),
      feature.id,
    );
  }
  const next = withPath(geometry, address, path.points.toSpliced(vertex, 1));
  const checked = checkGeometry(next, what, feature.id);
  if (!checked.ok) return checked;
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.removeCorner, { what: featureTold(feature) }),
    {
      changed: [{ ...feature, geometry: next }],
    },
  );
}
