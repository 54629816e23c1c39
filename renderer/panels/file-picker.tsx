/** Which course or player is open, the others to choose from, and a way to bring in a file. */

import type { AppState } from '../state/app-state.ts';
import { countText } from '../state/measures.ts';
import { fileNotes } from '../state/selectors.ts';
import { useApp, useDispatch, useTools } from '../state/use-app.ts';
import { Field } from './field.tsx';
import { Picture } from './pictograms.tsx';

type Kind = 'course' | 'player';

const WORDS: Readonly<
  Record<Kind, { readonly name: string; readonly bring: string; readonly none: string }>
> = {
  course: { name: 'Course', bring: 'Bring in a course file', none: 'No course yet' },
  player: { name: 'Player', bring: 'Bring in a player file', none: 'No player yet' },
};

export function FilePicker({ kind }: { readonly kind: Kind }) {
  const { duties } = useTools();
  const files = useApp((state) => state.files);
  const open = useApp((state) => openOf(state, kind));
  const notes = useApp((state) => fileNotes(state, kind).length);
  const dispatch = useDispatch();
  const words = WORDS[kind];
  const entries = (files ?? []).filter((file) => file.kind === kind);
  return (
    <div class="file-picker">
      <Field
        name={words.name}
        control={(id) => (
          <select
            id={id}
            value={open?.entry.token ?? ''}
            disabled={files === null}
            title={open === null ? words.none : open.entry.name}
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
            {open === null && <option value="">{files === null ? 'Reading files …' : words.none}</option>}
            {entries.map((entry) => (
              <option key={entry.token} value={entry.token}>
                {entry.token === open?.entry.token ? open.value.name : entry.name}
                {entry.readOnly ? ' (invented demo)' : ''}
              </option>
            ))}
          </select>
        )}
      />
      <button
        type="button"
        class="icon-button"
        title={words.bring}
        aria-label={words.bring}
        onClick={() => void duties.importFile(kind)}
      >
        <Picture of="bring" />
      </button>
      {notes > 0 && (
        <button
          type="button"
          class="text-button"
          aria-label={`${countText(notes, 'note', 'notes')} on the ${kind} file`}
          onClick={() => dispatch({ type: 'notes-shown', fileKind: kind })}
        >
          {countText(notes, 'note', 'notes')}
        </button>
      )}
    </div>
  );
}

function openOf(state: AppState, kind: Kind): AppState['course'] | AppState['player'] {
  return kind === 'course' ? state.course : state.player;
}
