/** All keys on one sheet. */

import { useEffect, useRef } from 'preact/hooks';
import { Picture } from '../../panels/pictograms.tsx';
import { KIND_CARDS } from '../kinds.ts';

const ANYWHERE: readonly (readonly [string, string])[] = [
  ['Ctrl+Z', 'Undo; while drawing, the last place'],
  ['Ctrl+Shift+Z', 'Do again'],
  ['Ctrl+S', 'Save now'],
  ['F6', 'Go to the map'],
  ['?', 'This sheet'],
];

const ON_MAP: readonly (readonly [string, string])[] = [
  ['Arrows', 'Move the cross-hair; what is chosen: move it by 1 m'],
  ['Shift + arrows', 'Finer: 1 pixel, 10 cm'],
  ['Ctrl + arrows', 'Coarser: 50 pixels, 10 m'],
  ['Enter', 'Place, or choose what is under the cross-hair'],
  ['Shift+Enter', 'End the line or area'],
  ['Backspace', 'Take back the last place; remove the corner or the thing'],
  ['Escape', 'Stop; let go'],
  [', and .', 'Previous and next corner of what is chosen'],
  ['Insert', 'New corner behind the chosen one'],
  ['+  −  0', 'Closer, farther, show it whole'],
  ['S', 'Choose and change'],
  ['K', 'Catching on neighbours on or off'],
];

const BY_MOUSE: readonly (readonly [string, string])[] = [
  ['Click', 'Place; choose'],
  ['Shift+click', 'Choose one more, or one less'],
  ['Drag', 'Move the map, a corner, or what is chosen'],
  ['Click a side’s dot', 'New corner there'],
  ['Right click', 'Remove a corner; take back the last place'],
  ['Double click', 'Last place, and done'],
  ['Ctrl held', 'Nothing is caught'],
];

export function ShortcutSheet({ close }: { readonly close: () => void }) {
  const sheet = useRef<HTMLDialogElement>(null);
  useEffect(() => sheet.current?.showModal(), []);
  return (
    <dialog class="key-sheet" ref={sheet} aria-label="Keys and clicks" onClose={close}>
      <div class="key-sheet-head">
        <h2>Keys and clicks</h2>
        <button
          type="button"
          class="icon-button"
          aria-label="Close"
          title="Close (Escape)"
          onClick={() => sheet.current?.close()}
        >
          <Picture of="close" />
        </button>
      </div>
      <div class="key-columns">
        <KeyTable title="With the map in focus" rows={ON_MAP} />
        <div>
          <KeyTable title="By mouse" rows={BY_MOUSE} />
          <KeyTable title="Anywhere" rows={ANYWHERE} />
        </div>
        <KeyTable
          title="Draw"
          rows={KIND_CARDS.map(({ key, words }) => [key.toUpperCase(), words] as const)}
        />
      </div>
    </dialog>
  );
}

function KeyTable({
  title,
  rows,
}: {
  readonly title: string;
  readonly rows: readonly (readonly [string, string])[];
}) {
  return (
    <table class="key-table">
      <caption>{title}</caption>
      <tbody>
        {rows.map(([keys, words]) => (
          <tr key={keys}>
            <th scope="row">{keys}</th>
            <td>{words}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
