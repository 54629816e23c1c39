/** Makes course files: an empty one at a place, or a copy of what is open, and opens them in the window. */

import { firstFault } from '../../../core/words/told.ts';
import { wordsOf } from '../../state/use-words.ts';
import { english } from '../../../core/words/english/english.ts';
import type { Words } from '../../../core/words/words.ts';
import {
  courseOf,
  type EditableDocument,
  newDocument,
  openDocumentText,
  serialise,
} from '../../../core/course/document.ts';
import { setCourse } from '../../../core/course/edits/set-course.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { isPlace } from '../../../core/course/positions.ts';
import { refuse, type Result, succeed } from '../../../core/result.ts';
import type { OpenedFile } from '../../../electron/contract/host.ts';
import type { AppTools } from '../../state/use-app.ts';
import { PLACE_MEMBER } from '../frame.ts';

type Tools = Pick<AppTools, 'host' | 'store'>;

const LONGEST_NAME = 120;

/** Null where it went well, else what stood in the way. */
export async function beginCourse(tools: Tools, name: string, place: LonLat | null): Promise<string | null> {
  const phrase = nameWords(name, wordsOf(tools.store.state()));
  if (!phrase.ok) return phrase.error;
  const empty = newDocument(phrase.value);
  const document: EditableDocument =
    place === null ? empty : { ...empty, holewright: { ...empty.holewright, [PLACE_MEMBER]: [...place] } };
  return create(tools, phrase.value, document);
}

export async function copyCourse(
  tools: Tools,
  document: EditableDocument,
  name: string,
): Promise<string | null> {
  const phrase = nameWords(name, wordsOf(tools.store.state()));
  if (!phrase.ok) return phrase.error;
  const named = setCourse(document, { courseName: phrase.value });
  return create(tools, phrase.value, named.ok ? named.value.document : document);
}

function nameWords(name: string, words: Words): Result<string, string> {
  const trimmed = name.trim();
  if (trimmed === '') return refuse(words.courseFile.giveName);
  return trimmed.length > LONGEST_NAME
    ? refuse(words.courseFile.longName({ length: trimmed.length, most: LONGEST_NAME }))
    : succeed(trimmed);
}

async function create(tools: Tools, name: string, document: EditableDocument): Promise<string | null> {
  const made = await tools.host.create('course', `${name}.geojson`, serialise(document));
  if (!made.ok) return made.message;
  const files = await tools.host.list();
  if (files.ok) tools.store.dispatch({ type: 'files-listed', files: files.value });
  return show(tools, made.value);
}

function show({ store }: Tools, { entry, text, revision }: OpenedFile): string | null {
  const opened = openDocumentText(text);
  const course = opened.ok ? courseOf(opened.value.document) : opened;
  if (!course.ok) {
    const words = wordsOf(store.state());
    return firstFault(course.error, words) ?? words.courseFile.newUnreadable;
  }
  store.dispatch({ type: 'course-opened', document: { entry, text, revision, value: course.value } });
  return null;
}

/** `52.37, 4.9`: latitude first, decimal degrees; an empty text is no place. */
export function readPlace(text: string, words: Words = english): Result<LonLat | null, string> {
  if (text.trim() === '') return succeed(null);
  const parts =
    /^\s*([-+]?\d+(?:\.\d+)?)\s*°?\s*([NS])?\s*[,; ]\s*([-+]?\d+(?:\.\d+)?)\s*°?\s*([EW])?\s*$/i.exec(text);
  if (parts !== null) {
    const lat = Number(parts[1]) * (parts[2]?.toUpperCase() === 'S' ? -1 : 1);
    const lon = Number(parts[3]) * (parts[4]?.toUpperCase() === 'W' ? -1 : 1);
    if (isPlace([lon, lat])) return succeed([lon, lat]);
  }
  return refuse(words.courseFile.writePlace);
}
