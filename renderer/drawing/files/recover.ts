/** What a journal of an earlier sitting would bring back, put together and told in short. */

import { english } from '../../../core/words/english/english.ts';
import type { Words } from '../../../core/words/words.ts';
import type { DocumentFeature, EditableDocument, FeatureId } from '../../../core/course/document.ts';
import { type EditResult, makeEdit } from '../../../core/course/edits/edit.ts';
import type { Journal } from '../../../electron/contract/host.ts';
import { afterNote, readNote } from './journal-entry.ts';

export interface Recovered {
  /** Names the journal. */
  readonly journal: string;
  readonly lastNumber: number;
  /** Milliseconds since 1970, of the last change in it. */
  readonly lastAt: number;
  /** Null where it cannot be put together, with the reason. */
  readonly document: EditableDocument | null;
  readonly why: string | null;
  /** Names of the changes, oldest first. */
  readonly names: readonly string[];
  readonly difference: Difference;
}

export interface Difference {
  readonly added: number;
  readonly changed: number;
  readonly removed: number;
  readonly header: boolean;
}

const NO_DIFFERENCE: Difference = { added: 0, changed: 0, removed: 0, header: false };

/** Null for a journal that holds nothing which the file has not. */
export function recover(
  journal: Journal,
  document: EditableDocument,
  revision: string,
  words: Words = english,
): Recovered | null {
  const last = journal.entries.at(-1);
  if (journal.isNewer) {
    return {
      journal: journal.journal,
      lastNumber: 0,
      lastAt: journal.startedAt,
      document: null,
      why: words.courseFile.recover.newer,
      names: [],
      difference: NO_DIFFERENCE,
    };
  }
  if (last === undefined) return null;
  let state = journal.entries[0]!.baseRevision === revision ? document : null;
  const names: string[] = [];
  let read = 0;
  for (const { text } of journal.entries) {
    const note = readNote(text);
    const next = note === null ? null : afterNote(state, note);
    if (note === null || next === null) break;
    names.push(note.name);
    state = next;
    read++;
  }
  const about = { journal: journal.journal, lastNumber: last.number, lastAt: last.writtenAt, names };
  if (read === 0 || state === null) {
    return {
      ...about,
      document: null,
      why: words.courseFile.recover.noFit,
      difference: NO_DIFFERENCE,
    };
  }
  const difference = differenceOf(document, state);
  const nothing = difference.added + difference.changed + difference.removed === 0 && !difference.header;
  if (nothing && read === journal.entries.length) return null;
  const lost = journal.entries.length - read;
  const why = lost === 0 ? null : words.courseFile.recover.lost({ count: lost });
  return { ...about, document: state, why, difference };
}

/** The course as a journal ends with it, from its own entries alone; null where they hold no whole course. */
export function wholeOf(journal: Journal): EditableDocument | null {
  let state: EditableDocument | null = null;
  for (const { text } of journal.entries) {
    const note = readNote(text);
    if (note === null || (state === null && note.what === 'change')) continue;
    const next = afterNote(state, note);
    if (next === null) break;
    state = next;
  }
  return state;
}

export function differenceOf(from: EditableDocument, to: EditableDocument): Difference {
  const old = new Map(from.features.map((feature) => [feature.id, JSON.stringify(feature)]));
  let added = 0;
  let changed = 0;
  for (const feature of to.features) {
    const before = old.get(feature.id);
    if (before === undefined) added++;
    else if (before !== JSON.stringify(feature)) changed++;
    old.delete(feature.id);
  }
  const header = JSON.stringify(from.holewright) !== JSON.stringify(to.holewright);
  return { added, changed, removed: old.size, header };
}

/** One edit that makes the document the same as another version of it. */
export function becomes(document: EditableDocument, target: EditableDocument, name: string): EditResult {
  const old = new Map(document.features.map((feature) => [feature.id, feature]));
  const changed: DocumentFeature[] = [];
  const added: { feature: DocumentFeature; after?: FeatureId }[] = [];
  let behind: FeatureId | undefined;
  for (const feature of target.features) {
    const before = old.get(feature.id);
    if (before === undefined) {
      added.push(behind === undefined ? { feature } : { feature, after: behind });
      continue;
    }
    if (JSON.stringify(before) !== JSON.stringify(feature)) changed.push(feature);
    behind = feature.id;
    old.delete(feature.id);
  }
  const header =
    JSON.stringify(document.holewright) === JSON.stringify(target.holewright)
      ? {}
      : { header: target.holewright };
  return makeEdit(document, name, { changed, added, removed: [...old.keys()], ...header });
}
