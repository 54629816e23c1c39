/** A small course under edit, for tests of the course room. */

import { type EditableDocument, openDocument } from '../../../core/course/document.ts';
import type { EditedFile } from '../../../renderer/drawing/drawing-state.ts';
import { smallCourse } from '../small-course.ts';

export const entry = {
  token: 'course-token',
  name: 'small.geojson',
  kind: 'course',
  readOnly: false,
  modifiedAt: 0,
  bytes: 1,
} as const;

export const file: EditedFile = {
  entry,
  baseRevision: 'r1',
  access: { may: 'edit' },
  saved: 0,
  saving: false,
  trouble: null,
  onDisk: null,
  isGone: false,
  recovered: [],
};

export function smallDocument(): EditableDocument {
  const opened = openDocument(smallCourse());
  if (!opened.ok) throw new Error(opened.error[0]?.message);
  return opened.value.document;
}
