/** Closes open rings and turns all rings to the right-hand rule (RFC 7946, 3.1.6), throughout the document. */

import { sentenceTold } from './words.ts';
import { type DocumentFeature, type EditableDocument, geometryOf } from '../document.ts';
import { type EditResult, makeEdit, refuseEdit } from './edit.ts';
import { checkGeometry, geometryFrom, pathsOf, tidyGeometry } from './shape.ts';
import { told } from '../../words/told.ts';

/** Shapes stay what they are; refuses where every ring is in order already. */
export function orderAllRings(document: EditableDocument): EditResult {
  const changed: DocumentFeature[] = [];
  for (const feature of document.features) {
    const geometry = geometryOf(feature);
    if (geometry?.type !== 'Polygon' && geometry?.type !== 'MultiPolygon') continue;
    if (!checkGeometry(geometry, sentenceTold(feature)).ok) continue;
    const tidy = tidyGeometry(geometryFrom(geometry, pathsOf(geometry)));
    if (JSON.stringify(tidy) !== JSON.stringify(geometry)) changed.push({ ...feature, geometry: tidy });
  }
  if (changed.length === 0)
    return refuseEdit(
      'nothing-to-do',
      told(({ courseEdits }) => courseEdits.ringsInOrder),
    );
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.orderRings),
    { changed },
  );
}
