/** Beside the map: what is chosen, the hole, what is to be put right, the course and its file. */

import { Choice } from '../../panels/choice.tsx';
import { isUnsaved } from '../selectors.ts';
import type { PanelName } from '../drawing-state.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { ChecksPanel } from './checks-panel.tsx';
import { ChosenPanel } from './chosen-panel.tsx';
import { CoursePanel } from './course-panel.tsx';
import { HolePanel } from './hole-panel.tsx';
import { useWords } from '../../state/use-words.ts';

export function RoomPanel() {
  const words = useWords();
  const desk = useDesk();
  const panel = useDrawing((state) => state.panel);
  const faults = useDrawing(({ report }) => report?.faults.length ?? 0);
  const entries: readonly (readonly [PanelName, string])[] = [
    ['chosen', words.drawing.panels.chosen],
    ['hole', words.drawing.panels.hole],
    ['checks', faults === 0 ? words.drawing.panels.checks : words.drawing.panels.checksCount({ faults })],
    ['course', words.drawing.panels.course],
  ];
  return (
    <aside class="drawing-panel" aria-label={words.drawing.panels.name}>
      <div class="panel-head">
        <Choice
          label={words.drawing.panels.shown}
          name="drawing-panel"
          value={panel}
          entries={entries}
          choose={(chosen) => desk.store.dispatch({ type: 'panel-shown', panel: chosen })}
        />
        <SaveState />
      </div>
      <div class="panel-body">
        {panel === 'chosen' && <ChosenPanel />}
        {panel === 'hole' && <HolePanel />}
        {panel === 'checks' && <ChecksPanel />}
        {panel === 'course' && <CoursePanel />}
      </div>
    </aside>
  );
}

/** Whether the disk has everything. */
function SaveState() {
  const words = useWords();
  const desk = useDesk();
  const access = useDrawing(({ file }) => file?.access.may ?? null);
  const saving = useDrawing(({ file }) => file?.saving === true);
  const troubled = useDrawing(
    ({ file }) => file !== null && (file.trouble !== null || file.isGone || file.onDisk !== null),
  );
  const unsaved = useDrawing(isUnsaved);
  const steps = useDrawing(({ history }) => history.past.length);
  if (access === null) return null;
  if (access === 'look') return <p class="save-state faint">{words.courseFile.lookingOnly}</p>;
  const phrase = saving
    ? words.courseFile.saving
    : !unsaved
      ? words.courseFile.saved
      : troubled
        ? words.courseFile.isNotSaved
        : words.courseFile.soon;
  return (
    <p class={troubled && unsaved ? 'save-state warning' : 'save-state faint'}>
      <span data-save={saving ? 'saving' : unsaved ? 'unsaved' : 'saved'}>{phrase}</span>
      <button
        type="button"
        class="small-button"
        disabled={!unsaved || saving}
        title={words.courseFile.saveNow({ steps: words.courseFile.steps({ count: steps }) })}
        onClick={() => void desk.files.save()}
      >
        {words.courseFile.save}
      </button>
    </p>
  );
}
