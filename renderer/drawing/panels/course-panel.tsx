/** The course as a whole: what it says of itself, its file, its kept copies, a new one. */

import { setCourse } from '../../../core/course/edits/set-course.ts';
import { mayEdit } from '../drawing-state.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { BackgroundPart } from '../background/background-part.tsx';
import { ExportPart } from '../export/export-part.tsx';
import { ImportPanel } from '../import/import-panel.tsx';
import { KeptCopies } from './kept-copies.tsx';
import { NewCourseForm } from './new-course-form.tsx';
import { SandField } from './sand-field.tsx';
import { ValueField } from './value-field.tsx';
import { useWords } from '../../state/use-words.ts';

export function CoursePanel() {
  const words = useWords();
  const token = useDrawing(({ file }) => file?.entry.token ?? null);
  return (
    <>
      {token !== null && (
        <>
          <CourseWords />
          <BackgroundPart key={`${token} background`} token={token} />
          <ImportPanel />
          <ExportPart />
          <KeptCopies key={token} token={token} />
        </>
      )}
      <details class="panel-part" open={token === null}>
        <summary>{words.courseFile.beginAnother}</summary>
        <NewCourseForm />
      </details>
    </>
  );
}

function CourseWords() {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const header = useDrawing(({ history }) => history.document.holewright);
  const name = useDrawing(({ file }) => file?.entry.name ?? '');
  const count = useDrawing(({ history }) => history.document.features.length);
  const shown = (key: string): string => (typeof header[key] === 'string' ? header[key] : '');
  return (
    <div class="panel-part">
      <h2>{words.drawing.course.title}</h2>
      <ValueField
        name={words.drawing.name}
        value={shown('courseName')}
        disabled={!editable}
        take={(courseName) => desk.attempt((document) => setCourse(document, { courseName }))}
      />
      <ValueField
        name={words.drawing.course.notes}
        value={shown('notes')}
        disabled={!editable}
        take={(notes) => desk.attempt((document) => setCourse(document, { notes }))}
      />
      <SandField sand={shown('sand')} disabled={!editable} />
      <p class="faint">{words.drawing.course.count({ name, count })}</p>
    </div>
  );
}
