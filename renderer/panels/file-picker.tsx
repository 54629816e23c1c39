/** Which course or player is open, the others to choose from, and a way to bring in a file. */

import type { AppState } from '../state/app-state.ts';
import { fileNotes } from '../state/selectors.ts';
import { useApp, useDispatch, useTools } from '../state/use-app.ts';
import { Field } from './field.tsx';
import { Picture } from './pictograms.tsx';
import { useWords } from '../state/use-words.ts';

type Kind = 'course' | 'player';

export function FilePicker({ kind }: { readonly kind: Kind }) {
  const words = useWords();
  const { duties } = useTools();
  const files = useApp((state) => state.files);
  const open = useApp((state) => openOf(state, kind));
  const notes = useApp((state) => fileNotes(state, kind).length);
  const dispatch = useDispatch();
  const told = words.bar.files[kind];
  const listed = (files ?? []).filter((file) => file.kind === kind);
  // What is open stays named although its file is gone from the folder.
  const isGone = open !== null && !listed.some(({ token }) => token === open.entry.token);
  const entries = isGone ? [...listed, open.entry] : listed;
  return (
    <div class="file-picker">
      <Field
        name={told.name}
        control={(id) => (
          <select
            id={id}
            value={open?.entry.token ?? ''}
            disabled={files === null}
            title={open === null ? told.none : open.entry.name}
            onChange={(event) => {
              const select = event.currentTarget;
              const token = select.value;
              // Where the file does not open, the list goes back to what is.
              void duties.openFile(kind, token).then(() => {
                select.value = select.dataset['open'] ?? '';
              });
            }}
            data-open={open?.entry.token ?? ''}
          >
            {open === null && <option value="">{files === null ? words.bar.readingFiles : told.none}</option>}
            {entries.map((entry) => (
              <option key={entry.token} value={entry.token}>
                {entry.token === open?.entry.token ? open.value.name : entry.name}
                {entry.readOnly ? ` ${words.bar.inventedDemoMark}` : ''}
              </option>
            ))}
          </select>
        )}
      />
      <button
        type="button"
        class="icon-button"
        title={told.bring}
        aria-label={told.bring}
        onClick={() => void duties.importFile(kind)}
      >
        <Picture of="bring" />
      </button>
      {notes > 0 && (
        <button
          type="button"
          class="text-button"
          aria-label={words.bar.notesOn({ notes: words.bar.noteCount({ count: notes }), kind })}
          onClick={() => dispatch({ type: 'notes-shown', fileKind: kind })}
        >
          {words.bar.noteCount({ count: notes })}
        </button>
      )}
    </div>
  );
}

function openOf(state: AppState, kind: Kind): AppState['course'] | AppState['player'] {
  return kind === 'course' ? state.course : state.player;
}
