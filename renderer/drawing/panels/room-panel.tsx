/** Beside the map: what is chosen, the hole, what is to be put right, the course and its file. */

import { Choice } from '../../panels/choice.tsx';
import { countText } from '../../state/measures.ts';
import { isUnsaved } from '../selectors.ts';
import type { PanelName } from '../drawing-state.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { ChecksPanel } from './checks-panel.tsx';
import { ChosenPanel } from './chosen-panel.tsx';
import { CoursePanel } from './course-panel.tsx';
import { HolePanel } from './hole-panel.tsx';

export function RoomPanel() {
  const desk = useDesk();
  const panel = useDrawing((state) => state.panel);
  const faults = useDrawing(({ report }) => report?.faults.length ?? 0);
  const entries: readonly (readonly [PanelName, string])[] = [
    ['chosen', 'Chosen'],
    ['hole', 'Hole'],
    ['checks', faults === 0 ? 'Checks' : `Checks: ${faults}`],
    ['course', 'Course'],
  ];
  return (
    <aside class="drawing-panel" aria-label="About what is drawn">
      <div class="panel-head">
        <Choice
          label="What is shown here"
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
  const desk = useDesk();
  const access = useDrawing(({ file }) => file?.access.may ?? null);
  const saving = useDrawing(({ file }) => file?.saving === true);
  const troubled = useDrawing(({ file }) => file !== null && (file.trouble !== null || file.onDisk !== null));
  const unsaved = useDrawing(isUnsaved);
  const steps = useDrawing(({ history }) => history.past.length);
  if (access === null) return null;
  if (access === 'look') return <p class="save-state faint">looking only</p>;
  const words = saving ? 'saving …' : !unsaved ? 'saved' : troubled ? 'not saved' : 'saved when you rest';
  return (
    <p class={troubled && unsaved ? 'save-state warning' : 'save-state faint'}>
      <span data-save={saving ? 'saving' : unsaved ? 'unsaved' : 'saved'}>{words}</span>
      <button
        type="button"
        class="small-button"
        disabled={!unsaved || saving}
        title={`Save now (Ctrl+S); ${countText(steps, 'step', 'steps')} can be undone`}
        onClick={() => void desk.files.save()}
      >
        Save
      </button>
    </p>
  );
}
