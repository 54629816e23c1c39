/** Writes a course anew whose file is gone from its folder: under its name where that is free, else under one near it. */

import { courseOf, serialise } from '../../../core/course/document.ts';
import { revisionOf } from '../../../core/course/history.ts';
import { type KeptFile, NO_TROUBLE } from './kept-file.ts';

export async function putBack(kept: KeptFile): Promise<void> {
  const { sitting, tools } = kept;
  await sitting.writing;
  const { file, history } = kept.store.state();
  if (file?.entry.token !== sitting.token || !file.isGone || history.drag !== null) return;
  const { token, name } = file.entry;
  const text = serialise(history.document);
  const upTo = sitting.lastNumber;
  // what is drawn from now on is not in `text`, so it cannot build on entries that are dropped below
  sitting.wholeDue = true;
  const made = await tools.host.create('course', name, text);
  if (!made.ok) {
    const words = kept.words().courseFile;
    kept.tell({ trouble: words.notSaved({ message: made.message, kept: words.kept }) }, token);
    return;
  }
  const { entry, revision } = made.value;
  kept.own.add(revision);
  kept.tell({ saved: revisionOf(history), baseRevision: revision, ...NO_TROUBLE }, token);
  const { journal } = sitting;
  if (journal !== null && upTo > 0) await kept.drop(token, journal, upTo);
  const files = await tools.host.list();
  if (files.ok) tools.store.dispatch({ type: 'files-listed', files: files.value });
  const course = courseOf(history.document);
  if (course.ok)
    tools.store.dispatch({
      type: 'course-opened',
      document: { entry, text, revision, value: course.value },
    });
  const phrase = kept.words().courseFile.writtenAnew({ name: entry.name });
  kept.store.dispatch({ type: 'said', said: { tone: 'news', words: phrase } });
}
