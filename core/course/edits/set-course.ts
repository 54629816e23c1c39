/** Writes what the course says of itself: its name, notes, datum, sand, whether the place is invented. */

import type { Sand } from '../model.ts';
import type { EditableDocument } from '../document.ts';
import { type EditResult, makeEdit, refuseEdit } from './edit.ts';
import { told } from '../../words/told.ts';

export interface CourseWords {
  readonly courseName?: string;
  readonly notes?: string;
  readonly datum?: string;
  readonly invented?: boolean;
  readonly sand?: Sand | '';
}

/** An empty text takes a member away. */
export function setCourse(document: EditableDocument, words: CourseWords): EditResult {
  const header: Record<string, unknown> = { ...document.holewright };
  let differs = false;
  for (const [key, value] of Object.entries(words) as [string, string | boolean][]) {
    if (value === '') {
      if (!Object.hasOwn(header, key)) continue;
      // eslint-disable-next-line @typescript-eslint/no-dynamic-delete -- a fresh object of our own
      delete header[key];
    } else {
      if (header[key] === value) continue;
      header[key] = value;
    }
    differs = true;
  }
  if (!differs)
    return refuseEdit(
      'nothing-to-do',
      told(({ courseEdits }) => courseEdits.saysSo),
    );
  const name =
    'courseName' in words
      ? told(({ courseEdits }) => courseEdits.names.rename)
      : 'sand' in words
        ? told(({ courseEdits }) => courseEdits.names.sand)
        : told(({ courseEdits }) => courseEdits.names.notes);
  return makeEdit(document, name, { header });
}
