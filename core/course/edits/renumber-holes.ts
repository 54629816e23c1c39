/** Gives holes other numbers: the `ref` of every feature that names them changes along. */

import { type DocumentFeature, type EditableDocument, holeOf, kindOf, propertiesOf } from '../document.ts';
import { type EditResult, makeEdit, refuseEdit } from './edit.ts';

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
      return refuseEdit('no-such-hole', `There is no hole ${from}. Draw its line first.`);
    if (!Number.isInteger(to) || to < 1 || to > MOST_NUMBER) {
      return refuseEdit(
        'value-not-accepted',
        `A hole cannot be number ${to}: write a whole number such as 7.`,
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
        `Holes ${earlier} and ${hole} would both be number ${number}. Give the other one a number of its own too.`,
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
      ? `Make hole ${only[0]} number ${only[1]}`
      : 'Renumber the holes';
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
