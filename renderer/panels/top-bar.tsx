/** The bar at the top: what is open, undo and redo, units, light, help and print. */

import { useLayoutEffect, useState } from 'preact/hooks';
import { LANGUAGE_NAMES, LANGUAGES } from '../../core/words/language.ts';
import { RoomSwitch } from '../rooms/room-switch.tsx';
import { useApp, useDispatch, useTools } from '../state/use-app.ts';
import { Choice } from './choice.tsx';
import { FilePicker } from './file-picker.tsx';
import { Field } from './field.tsx';
import { Picture } from './pictograms.tsx';
import { useWords } from '../state/use-words.ts';

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
      <LanguageChoice />
      <PrintAndHelp />
    </header>
  );
}

function UndoButtons() {
  const words = useWords();
  const { undo: desk } = useTools();
  const room = useApp((state) => state.view.room);
  const [, redraw] = useState(0);
  useLayoutEffect(() => desk.subscribe(() => redraw((count) => count + 1)), [desk]);
  const source = desk.of(room);
  const undo = source?.undoLabel() ?? null;
  const redo = source?.redoLabel() ?? null;
  const undoTitle = undo === null ? words.bar.nothingToUndo : words.bar.undo({ step: undo });
  const redoTitle = redo === null ? words.bar.nothingToRedo : words.bar.redo({ step: redo });
  return (
    <div class="button-pair" role="group" aria-label={words.bar.undoAndRedo}>
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
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const dispatch = useDispatch();
  return (
    <Choice
      label={words.bar.units}
      name="units"
      value={units}
      entries={[
        ['yards', words.bar.yards],
        ['metres', words.bar.metres],
      ]}
      choose={(chosen) => dispatch({ type: 'units-set', units: chosen })}
    />
  );
}

function ThemeChoice() {
  const words = useWords();
  const theme = useApp((state) => state.settings.theme);
  const dispatch = useDispatch();
  return (
    <Field
      name={words.bar.theme}
      control={(id) => (
        <select
          id={id}
          class="theme-choice"
          value={theme}
          onChange={(event) => {
            const chosen = event.currentTarget.value;
            if (chosen === 'light' || chosen === 'dark' || chosen === 'system')
              dispatch({ type: 'theme-set', theme: chosen });
          }}
        >
          <option value="system">{words.bar.asTheSystem}</option>
          <option value="light">{words.bar.light}</option>
          <option value="dark">{words.bar.dark}</option>
        </select>
      )}
    />
  );
}

/** The system's language until another is chosen. */
function LanguageChoice() {
  const words = useWords();
  const dispatch = useDispatch();
  return (
    <Field
      name={words.bar.language}
      control={(id) => (
        <select
          id={id}
          class="language-choice"
          value={words.language}
          onChange={(event) => {
            const chosen = event.currentTarget.value;
            const language = LANGUAGES.find((each) => each === chosen);
            if (language !== undefined) dispatch({ type: 'language-set', language });
          }}
        >
          {LANGUAGES.map((each) => (
            <option key={each} value={each} lang={each}>
              {LANGUAGE_NAMES[each]}
            </option>
          ))}
        </select>
      )}
    />
  );
}

function PrintAndHelp() {
  const words = useWords();
  const { store, duties } = useTools();
  const canPrint = useApp((state) => state.view.hole !== null && state.course !== null);
  const printTitle = canPrint ? words.bar.printThisHole : words.bar.chooseHoleToPrint;
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
        {words.bar.help}
      </button>
    </>
  );
}
