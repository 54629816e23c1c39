/** What is written into the journal: the whole document now and then, between that the changes that lead on from it. */

import { nameIn } from '../../../core/words/told.ts';
import { english } from '../../../core/words/english/english.ts';
import type { Words } from '../../../core/words/words.ts';
import { applyPatches, enablePatches, type Patch } from 'immer';
import * as v from 'valibot';
import { type EditableDocument, openDocument } from '../../../core/course/document.ts';
import type { History } from '../../../core/course/history.ts';

enablePatches();

const VERSION = 1;

/** A change that leads from the document before to the one after, in immer's patches (after RFC 6902). */
export type JournalNote =
  | { readonly what: 'whole'; readonly name: string; readonly document: unknown }
  | { readonly what: 'change'; readonly name: string; readonly patches: readonly Patch[] };

const nameSchema = v.pipe(v.string(), v.maxLength(500));
const noteSchema = v.variant('what', [
  v.object({
    version: v.literal(VERSION),
    what: v.literal('whole'),
    name: nameSchema,
    document: v.looseObject({}),
  }),
  v.object({
    version: v.literal(VERSION),
    what: v.literal('change'),
    name: nameSchema,
    patches: v.array(
      v.object({
        op: v.picklist(['add', 'replace', 'remove']),
        path: v.array(v.union([v.string(), v.number()])),
        value: v.optional(v.unknown()),
      }),
    ),
  }),
]);

export function noteText(note: JournalNote): string {
  return JSON.stringify({ version: VERSION, ...note });
}

/** Null where the text is no note of this version. */
export function readNote(text: string): JournalNote | null {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return null;
  }
  const parsed = v.safeParse(noteSchema, json);
  if (!parsed.success) return null;
  const { output } = parsed;
  if (output.what === 'whole') return output;
  const patches = output.patches.map(({ op, path, value }): Patch => ({ op, path, value }));
  return { what: 'change', name: output.name, patches };
}

/** The step from one state of the history to the next; the whole document where it is not a single step. */
export function noteOfStep(before: History, after: History, words: Words = english): JournalNote {
  const last = after.past.at(-1);
  if (after.past.length === before.past.length + 1 && last !== undefined) {
    return { what: 'change', name: nameIn(last, words), patches: last.patches };
  }
  const undone = before.past.at(-1);
  if (after.past.length === before.past.length - 1 && undone !== undefined) {
    return {
      what: 'change',
      name: words.courseFile.recover.undo({ step: nameIn(undone, words) }),
      patches: undone.inverse,
    };
  }
  return {
    what: 'whole',
    name: last === undefined ? words.courseFile.recover.asOpened : nameIn(last, words),
    document: after.document,
  };
}

/** The document after the note; null where the note does not fit on it. `document` null is an unknown one. */
export function afterNote(document: EditableDocument | null, note: JournalNote): EditableDocument | null {
  try {
    const json = note.what === 'whole' ? note.document : document && applyPatches(document, note.patches);
    if (json === null) return null;
    const opened = openDocument(json);
    return opened.ok ? opened.value.document : null;
  } catch {
    return null;
  }
}
