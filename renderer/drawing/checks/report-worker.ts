/** Works the report out beside the page, so that drawing does not wait for it. */

import { expose } from 'comlink';
import type { EditableDocument } from '../../../core/course/document.ts';
import { type CourseReport, reportOn } from '../../../core/course/report.ts';

export interface ReportApi {
  report(document: EditableDocument): CourseReport;
}

expose({ report: reportOn } satisfies ReportApi);
