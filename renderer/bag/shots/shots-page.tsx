/** Shots in: a table from any device, or typed; below them what the player has. */

import { useRef, useState } from 'preact/hooks';
import { useBag, useDesk } from '../state/use-bag.ts';
import { closeIntake, openIntake } from './intake-steps.ts';
import { KeptShots } from './kept-shots.tsx';
import { MappingPanel } from './mapping-panel.tsx';
import { ReadPanel } from './read-panel.tsx';
import { TypedShots } from './typed-shots.tsx';
import { useWords } from '../../state/use-words.ts';

export function ShotsPage() {
  const words = useWords();
  const desk = useDesk();
  const intake = useBag((state) => state.intake);
  const may = useBag((state) => state.file?.access.may ?? 'wait');
  if (may === 'read')
    return (
      <div class="shots-page">
        <p class="faint">{words.shots.choice.ownOnly}</p>
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
          <progress aria-label={words.shots.choice.opening} />{' '}
          {words.shots.choice.openingName({ name: intake.name })}
          <button type="button" class="small-button" onClick={() => closeIntake(desk)}>
            {words.shots.leave}
          </button>
        </p>
      );
    case 'refused':
      return (
        <div class="fault-box" role="alert">
          <strong>{words.shots.choice.notOpened}</strong>
          <p>{stage.message}</p>
          <button type="button" class="small-button" onClick={() => closeIntake(desk)}>
            {words.player.back}
          </button>
        </div>
      );
    case 'mapping':
      return <MappingPanel intake={intake} />;
    case 'reading':
      return (
        <p class="work-note" role="status">
          <progress
            aria-label={words.shots.choice.reading}
            max={1}
            value={stage.progress === null ? 0 : stage.progress.done / stage.progress.total}
          />{' '}
          {words.shots.choice.readingName({ name: intake.name })}{' '}
          <button type="button" class="small-button" onClick={() => void desk.office.cancelTable()}>
            {words.player.stop}
          </button>
        </p>
      );
    case 'read':
      return <ReadPanel intake={intake} table={stage.table} />;
  }
}

function TableChoice() {
  const words = useWords();
  const desk = useDesk();
  const picker = useRef<HTMLInputElement>(null);
  const [pasting, setPasting] = useState(false);
  const [text, setText] = useState('');
  return (
    <section
      class="table-choice"
      aria-label={words.shots.choice.name}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        const file = event.dataTransfer?.files[0];
        if (file !== undefined) void openIntake(desk, file, file.name, words);
      }}
    >
      <div class="save-row">
        <button type="button" class="main-button" onClick={() => picker.current?.click()}>
          {words.shots.choice.file}
        </button>
        <button type="button" class="small-button" onClick={() => setPasting(!pasting)}>
          {words.shots.choice.paste}
        </button>
        <p class="faint">{words.shots.choice.explain}</p>
      </div>
      <input
        ref={picker}
        class="unseen"
        type="file"
        tabIndex={-1}
        aria-label={words.shots.choice.table}
        accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values"
        onChange={(event) => {
          const input = event.currentTarget;
          const file = input.files?.[0];
          if (file !== undefined) void openIntake(desk, file, file.name, words);
          // The same file may be chosen again after it was mended.
          input.value = '';
        }}
      />
      {pasting && (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void openIntake(desk, text, words.shots.choice.pasted, words);
          }}
        >
          <label>
            <span class="field-name">{words.shots.choice.text}</span>
            <textarea rows={6} value={text} onInput={(event) => setText(event.currentTarget.value)} />
          </label>
          <button type="submit" class="small-button" disabled={text.trim() === ''}>
            {words.shots.choice.look}
          </button>
        </form>
      )}
    </section>
  );
}
