/** Gives holes other numbers: the `ref` of every feature that names them changes along. */

import { type DocumentFeature, type EditableDocument, holeOf, kindOf, propertiesOf } from '../document.ts';
import { type EditResult, makeEdit, refuseEdit } from './edit.ts';
import { told } from '../../words/told.ts';

/** Highest number that a hole may have; what reading takes. */
const MOST_NUMBER = 9999;

/**
 * `numbers` leads from old numbers to new ones; holes that it does not name keep theirs. Refuses where two holes
 * would come to share a number. Tee markers, areas and everything else with a `ref` go with their hole.
 */
export function renumberHoles(document: EditableDocument, numbers: ReadonlyMap<number, number>): EditResult {
  const known = holeNumbers(document);
  for (const [from, to] of numbers) {
    if (!known.includes(from))
      return refuseEdit(
        'no-such-hole',
        told(({ courseEdits }) => courseEdits.noHole, { hole: from }),
      );
    if (!Number.isInteger(to) || to < 1 || to > MOST_NUMBER) {
      return refuseEdit(
        'value-not-accepted',
        told(({ courseEdits }) => courseEdits.badNumber, { hole: to }),
      );
    }
  }
  const taken = new Map<number, number>();
  for (const hole of known) {
    const number = numbers.get(hole) ?? hole;
    const earlier = taken.get(number);
    if (earlier !== undefined) {
      return refuseEdit(
        'number-taken',
        told(({ courseEdits }) => courseEdits.sameNumber, { first: earlier, second: hole, number }),
      );
    }
    taken.set(number, hole);
  }
  const changed: DocumentFeature[] = [];
  for (const feature of document.features) {
    const from = holeOf(feature);
    const to = from === undefined ? undefined : numbers.get(from);
    if (to === undefined || to === from) continue;
    const properties = propertiesOf(feature);
    const ref = typeof properties['ref'] === 'number' ? to : String(to);
    changed.push({ ...feature, properties: { ...properties, ref } });
  }
  const [only] = [...numbers].filter(([from, to]) => from !== to);
  const name =
    numbers.size === 1 && only !== undefined
      ? told(({ courseEdits }) => courseEdits.names.renumberOne, { from: only[0], to: only[1] })
      : told(({ courseEdits }) => courseEdits.names.renumber);
  return makeEdit(document, name, { changed });
}

/** Numbers that features name, ascending: holes with a line or at least one feature of their own. */
export function holeNumbers(document: EditableDocument): readonly number[] {
  const numbers = new Set<number>();
  for (const feature of document.features) {
    const hole = kindOf(feature) === undefined ? undefined : holeOf(feature);
    if (hole !== undefined) numbers.add(hole);
  }
  return [...numbers].sort((a, b) => a - b);
}
