/** All keys on one sheet. */

import { useEffect, useRef } from 'preact/hooks';
import { Picture } from '../../panels/pictograms.tsx';
import { KIND_CARDS } from '../kinds.ts';
import { useWords } from '../../state/use-words.ts';

type Rows = readonly (readonly [string, string])[];

function rowsOf(entries: Readonly<Record<string, { readonly key: string; readonly does: string }>>): Rows {
  return Object.values(entries).map(({ key, does }) => [key, does] as const);
}

export function ShortcutSheet({ close }: { readonly close: () => void }) {
  const words = useWords();
  const sheet = useRef<HTMLDialogElement>(null);
  useEffect(() => sheet.current?.showModal(), []);
  return (
    <dialog class="key-sheet" ref={sheet} aria-label={words.drawing.keys.title} onClose={close}>
      <div class="key-sheet-head">
        <h2>{words.drawing.keys.title}</h2>
        <button
          type="button"
          class="icon-button"
          aria-label={words.drawing.close}
          title={words.drawing.closeEscape}
          onClick={() => sheet.current?.close()}
        >
          <Picture of="close" />
        </button>
      </div>
      <div class="key-columns">
        <KeyTable title={words.drawing.keys.mapFocus} rows={rowsOf(words.drawing.keys.onTheMap)} />
        <div>
          <KeyTable title={words.drawing.keys.byMouse} rows={rowsOf(words.drawing.keys.mouse)} />
          <KeyTable title={words.drawing.keys.anywhereTitle} rows={rowsOf(words.drawing.keys.anywhere)} />
        </div>
        <KeyTable
          title={words.drawing.keys.draw}
          rows={KIND_CARDS.map(({ kind, key }) => [key.toUpperCase(), words.drawing.kinds[kind]] as const)}
        />
      </div>
    </dialog>
  );
}

function KeyTable({ title, rows }: { readonly title: string; readonly rows: Rows }) {
  return (
    <table class="key-table">
      <caption>{title}</caption>
      <tbody>
        {rows.map(([keys, phrase]) => (
          <tr key={keys}>
            <th scope="row">{keys}</th>
            <td>{phrase}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
