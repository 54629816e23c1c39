/** Keeps the report in step with the document: asked for when drawing rests, the latest document only. */

import type { EditableDocument } from '../../../core/course/document.ts';
import { keepWorker } from '../../workers/kept-worker.ts';
import { latestWins } from '../../workers/latest-wins.ts';
import type { DrawingStore } from '../desk.ts';
import type { ReportApi } from './report-worker.ts';

const REST_MS = 250;

export function followReport(store: DrawingStore): void {
  let asked: EditableDocument | null = null;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const checker = keepWorker<ReportApi>({
    start: () => new Worker(new URL('./report-worker.ts', import.meta.url), { type: 'module' }),
    restarted: () => {
      if (asked !== null) asking.ask(asked);
    },
  });
  const asking = latestWins<EditableDocument>(
    async (document) => {
      const report = await checker.desk().report(document);
      // an answer about an earlier document would point at the wrong features
      if (store.state().history.document === document) store.dispatch({ type: 'report-arrived', report });
    },
    () => {
      asked = null;
    },
  );
  store.subscribe(() => {
    const { history, file } = store.state();
    if (file === null || history.drag !== null || history.document === asked) return;
    asked = history.document;
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      if (asked !== null) asking.ask(asked);
    }, REST_MS);
  });
}
