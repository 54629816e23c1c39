/** Moves one corner of an area, one point of a line, or a point. */

import type { EditableDocument } from '../document.ts';
import type { LonLat } from '../model.ts';
import { movedTo } from '../positions.ts';
import { type EditResult, makeEdit } from './edit.ts';
import { checkGeometry, type VertexAddress } from './shape.ts';
import { findVertex, withPath } from './vertex.ts';
import { featureTold, sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

/**
 * To a place in degrees. An outline that comes to cross itself is let be, for a drag may pass through one; the
 * course's check names it. Where the ring turns over, its corners are counted the other way round afterwards.
 */
export function moveVertex(document: EditableDocument, address: VertexAddress, to: LonLat): EditResult {
  const found = findVertex(document, address);
  if (!found.ok) return found;
  const { feature, geometry, path, vertex } = found.value;
  const points = path.points.with(vertex, movedTo(path.points[vertex]!, to));
  const moved = withPath(geometry, address, points);
  const checked = checkGeometry(moved, sentenceTold(feature), feature.id);
  if (!checked.ok) return checked;
  const name =
    geometry.type === 'Point'
      ? told(({ courseEdits }) => courseEdits.names.move, { what: featureTold(feature) })
      : told(({ courseEdits }) => courseEdits.names.moveCorner, { what: featureTold(feature) });
  return makeEdit(document, name, { changed: [{ ...feature, geometry: moved }] });
}
