/** The bar at the top: what is open, undo and redo, units, light, help and print. */

import { useLayoutEffect, useState } from 'preact/hooks';
import { RoomSwitch } from '../rooms/room-switch.tsx';
import { useApp, useDispatch, useTools } from '../state/use-app.ts';
import { Choice } from './choice.tsx';
import { FilePicker } from './file-picker.tsx';
import { Field } from './field.tsx';
import { Picture } from './pictograms.tsx';

export function TopBar() {
  return (
    <header class="top-bar">
      <h1 class="brand">Holewright</h1>
      <RoomSwitch />
      <FilePicker kind="course" />
      <FilePicker kind="player" />
      <div class="spring" />
      <UndoButtons />
      <UnitsChoice />
      <ThemeChoice />
      <PrintAndHelp />
    </header>
  );
}

function UndoButtons() {
  const { undo: desk } = useTools();
  const room = useApp((state) => state.view.room);
  const [, redraw] = useState(0);
  useLayoutEffect(() => desk.subscribe(() => redraw((count) => count + 1)), [desk]);
  const source = desk.of(room);
  const undo = source?.undoLabel() ?? null;
  const redo = source?.redoLabel() ?? null;
  const undoTitle = undo === null ? 'Nothing to undo' : `Undo: ${undo} (Ctrl+Z)`;
  const redoTitle = redo === null ? 'Nothing to redo' : `Redo: ${redo} (Ctrl+Shift+Z)`;
  return (
    <div class="button-pair" role="group" aria-label="Undo and redo">
      <button
        type="button"
        class="icon-button"
        disabled={undo === null}
        title={undoTitle}
        aria-label={undoTitle}
        onClick={() => source?.undo()}
      >
        <Picture of="undo" />
      </button>
      <button
        type="button"
        class="icon-button"
        disabled={redo === null}
        title={redoTitle}
        aria-label={redoTitle}
        onClick={() => source?.redo()}
      >
        <Picture of="redo" />
      </button>
    </div>
  );
}

function UnitsChoice() {
  const units = useApp((state) => state.settings.units);
  const dispatch = useDispatch();
  return (
    <Choice
      label="Units"
      name="units"
      value={units}
      entries={[
        ['yards', 'Yards'],
        ['metres', 'Metres'],
      ]}
      choose={(chosen) => dispatch({ type: 'units-set', units: chosen })}
    />
  );
}

function ThemeChoice() {
  const theme = useApp((state) => state.settings.theme);
  const dispatch = useDispatch();
  return (
    <Field
      name="Theme"
      control={(id) => (
        <select
          id={id}
          value={theme}
          onChange={(event) => {
            const chosen = event.currentTarget.value;
            if (chosen === 'light' || chosen === 'dark' || chosen === 'system')
              dispatch({ type: 'theme-set', theme: chosen });
          }}
        >
          <option value="system">As the system</option>
          <option value="light">Light</option>
          <option value="dark">Dark</option>
        </select>
      )}
    />
  );
}

function PrintAndHelp() {
  const { store, duties } = useTools();
  const canPrint = useApp((state) => state.view.hole !== null && state.course !== null);
  const printTitle = canPrint ? 'Print this hole' : 'Choose a hole to print it';
  return (
    <>
      <button
        type="button"
        class="icon-button"
        title={printTitle}
        aria-label={printTitle}
        disabled={!canPrint}
        onClick={() => void duties.printHole()}
      >
        <Picture of="print" />
      </button>
      <button
        type="button"
        class="text-button"
        onClick={() => store.dispatch({ type: 'help-shown', page: 'guide' })}
      >
        <Picture of="help" />
        Help
      </button>
    </>
  );
}
