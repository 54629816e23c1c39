/** What stands between the person and their work: no right to write, unsaved work found, a change on disk, a refusal. */

import { useBag, useDesk } from './state/use-bag.ts';
import { isUnsaved } from './state/reduce-bag.ts';
import type { Access } from './state/bag-state.ts';
import { timeText } from './words.ts';

export function RoomNotices() {
  const desk = useDesk();
  const access = useBag((state) => state.file?.access ?? null);
  const found = useBag((state) => state.file?.found ?? null);
  const changed = useBag((state) => state.file?.changedOnDisk ?? null);
  const refusal = useBag((state) => state.refusal);
  const said = useBag((state) => state.said);
  const unsaved = useBag((state) => state.file !== null && isUnsaved(state.file));
  return (
    <div class="room-notices">
      <p class="unseen" role="status">
        {said ?? ''}
      </p>
      {access?.may === 'read' && (
        <p class="room-note" role="note">
          {accessWords(access)}
        </p>
      )}
      {found !== null && (
        <div class="room-note strong" role="alert">
          <p>
            Unsaved changes from {timeText(found.writtenAt)} were found
            {found.isOlder ? '; the file was saved again since then' : ''}.
          </p>
          <button type="button" class="small-button" onClick={() => void desk.takeFound()}>
            Take them up
          </button>
          <button type="button" class="small-button" onClick={() => void desk.dropFound()}>
            Drop them
          </button>
        </div>
      )}
      {changed !== null && (
        <div class="room-note strong" role="alert">
          <p>The file was changed by another program while you had unsaved changes here.</p>
          <button type="button" class="small-button" onClick={() => void desk.saveOver()}>
            Save mine over it
          </button>
          <button type="button" class="small-button" onClick={() => void desk.saveCopy()}>
            Keep mine as a copy
          </button>
          <button type="button" class="small-button" onClick={() => void desk.readAgain()}>
            Take the file’s{unsaved ? ', give mine up' : ''}
          </button>
        </div>
      )}
      {refusal !== null && (
        <div class="room-note strong" role="alert">
          <p>{refusal}</p>
          <button
            type="button"
            class="small-button"
            onClick={() => desk.store.dispatch({ type: 'refused', message: null })}
          >
            Close
          </button>
        </div>
      )}
    </div>
  );
}

function accessWords(access: Extract<Access, { may: 'read' }>): string {
  switch (access.why) {
    case 'demo':
      return 'This is a demo player and stays as it is. “Make it yours” makes a copy in your folder that you can change.';
    case 'refused':
      return `Only to be read: ${access.message}`;
    case 'held': {
      const where = {
        'other-window': 'in another window',
        'other-program': 'by another program on this computer',
        'other-computer': `on another computer${access.holder.computer === '' ? '' : ` (${access.holder.computer})`}`,
      }[access.holder.place];
      return `Only to be read: the file is being changed ${where}. Close it there, then choose the player again.`;
    }
  }
}
