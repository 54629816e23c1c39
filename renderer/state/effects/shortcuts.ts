/** Keys that work anywhere in the window. */

import type { Store } from '../store.ts';
import type { UndoDesk } from '../undo-desk.ts';

export function listenForShortcuts(store: Store, undo: UndoDesk, page: Window): () => void {
  const pressed = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
    const key = event.key.toLowerCase();
    const redo = (key === 'z' && event.shiftKey) || key === 'y';
    if (key !== 'z' && !redo) return;
    event.preventDefault();
    const source = undo.of(store.state().view.room);
    if (redo) source?.redo();
    else source?.undo();
  };
  page.addEventListener('keydown', pressed);
  return () => page.removeEventListener('keydown', pressed);
}

/** A text field has its own undo. */
function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && (target.type === 'text' || target.type === 'number');
}
