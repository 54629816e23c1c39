/** Puts a point, or one corner, at a place given in numbers. */

import type { EditableDocument } from '../document.ts';
import { isPlace, type Position } from '../positions.ts';
import { type EditResult, refuseEdit } from './edit.ts';
import { moveVertex } from './move-vertex.ts';
import type { VertexAddress } from './shape.ts';
import { told } from '../../words/told.ts';

/** Longitude and latitude in degrees of WGS 84; they are kept to 8 decimals. */
export function setPosition(
  document: EditableDocument,
  address: VertexAddress,
  lon: number,
  lat: number,
): EditResult {
  const place: Position = [lon, lat];
  if (!isPlace(place)) {
    return refuseEdit(
      'not-a-place',
      told(({ courseEdits }) => courseEdits.notPlace, { lon, lat }),
      address.feature,
    );
  }
  return moveVertex(document, address, [lon, lat]);
}
