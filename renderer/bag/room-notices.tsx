/** What stands between the person and their work: no right to write, unsaved work found, a change on disk, a refusal. */

import type { Words } from '../../core/words/words.ts';
import { useBag, useDesk } from './state/use-bag.ts';
import { isUnsaved } from './state/reduce-bag.ts';
import type { Access, Found } from './state/bag-state.ts';
import { timeText } from './words.ts';
import { useWords } from '../state/use-words.ts';

export function RoomNotices() {
  const words = useWords();
  const desk = useDesk();
  const access = useBag((state) => state.file?.access ?? null);
  const found = useBag((state) => state.file?.found ?? NONE_FOUND);
  const changed = useBag((state) => state.file?.changedOnDisk ?? null);
  const gone = useBag((state) => (state.file?.isGone === true ? state.file.entry.name : null));
  const refusal = useBag((state) => state.refusal);
  const said = useBag((state) => state.said);
  const unsaved = useBag((state) => state.file !== null && isUnsaved(state.file));
  return (
    <div class="room-notices">
      <p class="unseen" role="status">
        {said ?? ''}
      </p>
      {access?.may === 'read' && !(gone !== null && access.why === 'refused') && (
        <p class="room-note" role="note">
          {accessWords(access, words)}
        </p>
      )}
      {found.map((work) => (
        <div key={work.journal} class="room-note strong" role="alert">
          <p>
            {words.player.notices.found({
              when: timeText(work.writtenAt, words),
              older: work.isOlder ? words.player.notices.savedSince : '',
            })}{' '}
            {words.player.notices.foundHolds({
              clubs: work.document.bag.length,
              shots: work.document.shots?.length ?? 0,
              handicap: handicapText(work.document.handicap, words),
            })}
            {found.length > 1 && ` ${words.player.notices.takesPlace}`}
          </p>
          <button type="button" class="small-button" onClick={() => void desk.takeFound(work)}>
            {words.player.notices.takeUp}
          </button>
          <button type="button" class="small-button" onClick={() => void desk.dropFound(work)}>
            {words.player.notices.drop}
          </button>
        </div>
      ))}
      {changed !== null && (
        <div class="room-note strong" role="alert">
          <p>{words.player.notices.changed}</p>
          <button type="button" class="small-button" onClick={() => void desk.saveOver()}>
            {words.player.notices.saveMine}
          </button>
          <button type="button" class="small-button" onClick={() => void desk.saveCopy()}>
            {words.player.notices.keepMine}
          </button>
          <button type="button" class="small-button" onClick={() => void desk.readAgain()}>
            {words.player.notices.takeFile({ giveUp: unsaved ? words.player.notices.giveUp : '' })}
          </button>
        </div>
      )}
      {gone !== null && (
        <div class="room-note strong" role="alert">
          <p>{words.courseFile.gone({ name: gone })}</p>
          <button type="button" class="small-button" onClick={() => void desk.putBack()}>
            {words.courseFile.writeAnew}
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
            {words.player.notices.close}
          </button>
        </div>
      )}
    </div>
  );
}

function accessWords(access: Extract<Access, { may: 'read' }>, words: Words): string {
  switch (access.why) {
    case 'demo':
      return words.player.notices.demo;
    case 'refused':
      return words.player.notices.onlyRead({ message: access.message });
    case 'held': {
      const where = {
        'other-window': words.player.notices.otherWindow,
        'other-program': words.player.notices.otherProgram,
        'other-computer': words.player.notices.otherComputer({
          computer: access.holder.computer === '' ? '' : ` (${access.holder.computer})`,
        }),
      }[access.holder.place];
      return words.player.notices.held({ where });
    }
  }
}

function handicapText(handicap: number | undefined, words: Words): string {
  return handicap === undefined
    ? ''
    : words.player.notices.foundHandicap({ handicap: words.figures.short(handicap, 1) });
}

const NONE_FOUND: readonly Found[] = [];
