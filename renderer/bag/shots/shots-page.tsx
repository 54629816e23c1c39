/** Shots in: a table from any device, or typed; below them what the player has. */

import { useRef, useState } from 'preact/hooks';
import { useBag, useDesk } from '../state/use-bag.ts';
import { closeIntake, openIntake } from './intake-steps.ts';
import { KeptShots } from './kept-shots.tsx';
import { MappingPanel } from './mapping-panel.tsx';
import { ReadPanel } from './read-panel.tsx';
import { TypedShots } from './typed-shots.tsx';

export function ShotsPage() {
  const desk = useDesk();
  const intake = useBag((state) => state.intake);
  const may = useBag((state) => state.file?.access.may ?? 'wait');
  if (may === 'read')
    return (
      <div class="shots-page">
        <p class="faint">Shots can be added to a player of your own: make a copy, or a new player.</p>
        <KeptShots />
      </div>
    );
  if (intake === null)
    return (
      <div class="shots-page">
        <TableChoice />
        <TypedShots />
        <KeptShots />
      </div>
    );
  const { stage } = intake;
  switch (stage.at) {
    case 'opening':
      return (
        <p class="work-note" role="status">
          <progress aria-label="Opening the table" /> Opening {intake.name} …
          <button type="button" class="small-button" onClick={() => closeIntake(desk)}>
            Leave it
          </button>
        </p>
      );
    case 'refused':
      return (
        <div class="fault-box" role="alert">
          <strong>The table could not be opened.</strong>
          <p>{stage.message}</p>
          <button type="button" class="small-button" onClick={() => closeIntake(desk)}>
            Back
          </button>
        </div>
      );
    case 'mapping':
      return <MappingPanel intake={intake} />;
    case 'reading':
      return (
        <p class="work-note" role="status">
          <progress
            aria-label="Reading the table"
            max={1}
            value={stage.progress === null ? 0 : stage.progress.done / stage.progress.total}
          />{' '}
          Reading {intake.name} …{' '}
          <button type="button" class="small-button" onClick={() => void desk.office.cancelTable()}>
            Stop
          </button>
        </p>
      );
    case 'read':
      return <ReadPanel intake={intake} table={stage.table} />;
  }
}

function TableChoice() {
  const desk = useDesk();
  const picker = useRef<HTMLInputElement>(null);
  const [pasting, setPasting] = useState(false);
  const [text, setText] = useState('');
  return (
    <section
      class="table-choice"
      aria-label="Bring in a table"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        const file = event.dataTransfer?.files[0];
        if (file !== undefined) void openIntake(desk, file, file.name);
      }}
    >
      <div class="save-row">
        <button type="button" class="main-button" onClick={() => picker.current?.click()}>
          Choose a table file
        </button>
        <button type="button" class="small-button" onClick={() => setPasting(!pasting)}>
          Paste a table
        </button>
        <p class="faint">
          Any device’s table with one shot per row: CSV or text with commas, semicolons or tabs. You say what
          its columns hold; next time it is known.
        </p>
      </div>
      <input
        ref={picker}
        class="unseen"
        type="file"
        tabIndex={-1}
        aria-label="Table of shots"
        accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values"
        onChange={(event) => {
          const input = event.currentTarget;
          const file = input.files?.[0];
          if (file !== undefined) void openIntake(desk, file, file.name);
          // The same file may be chosen again after it was mended.
          input.value = '';
        }}
      />
      {pasting && (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void openIntake(desk, text, 'pasted table');
          }}
        >
          <label>
            <span class="field-name">The table, names of columns included</span>
            <textarea rows={6} value={text} onInput={(event) => setText(event.currentTarget.value)} />
          </label>
          <button type="submit" class="small-button" disabled={text.trim() === ''}>
            Look at its columns
          </button>
        </form>
      )}
    </section>
  );
}
