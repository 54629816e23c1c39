/** Plays the holes in another order: the numbers that the course has are dealt out anew. */

import type { EditableDocument } from '../document.ts';
import { type EditResult, joinEdits, refuseEdit } from './edit.ts';
import { holeNumbers, renumberHoles } from './renumber-holes.ts';
import { told } from '../../words/told.ts';

/**
 * `order` names every hole of the course once, by its present number, in the order of play to be; the first takes
 * the lowest number, and so on.
 */
export function reorderHoles(document: EditableDocument, order: readonly number[]): EditResult {
  const numbers = holeNumbers(document);
  const complete = order.length === numbers.length && new Set(order).size === order.length;
  if (!complete || !order.every((hole) => numbers.includes(hole))) {
    return refuseEdit(
      'no-such-hole',
      told(({ courseEdits }) => courseEdits.nameEach, { holes: numbers.join(', ') }),
    );
  }
  const edit = renumberHoles(document, new Map(order.map((hole, index) => [hole, numbers[index]!])));
  return edit.ok
    ? {
        ok: true,
        value: joinEdits(
          told(({ courseEdits }) => courseEdits.names.reorder),
          [edit.value],
        ),
      }
    : edit;
}
