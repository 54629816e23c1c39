/** Brings back what was wished for the open course and player, and keeps it in the settings as it changes. */

import type { AppState } from '../../state/app-state.ts';
import { afterChanges } from '../../state/effects/follow.ts';
import type { AppTools } from '../../state/use-app.ts';
import { wordsOf } from '../../state/use-words.ts';
import { keeping, ownWeatherFor, type RoundFiles, wishesFor } from '../state/kept-wishes.ts';
import { oneDay } from '../state/one-day.ts';
import type { Wishes } from '../state/round-state.ts';
import type { RoundStore } from '../state/use-round.ts';

type AppStore = AppTools['store'];

export function keepWishes({ store }: Pick<AppTools, 'store'>, round: RoundStore): void {
  let files: RoundFiles | null = null;
  /** As restored or as last kept. */
  let known: Wishes = round.state().wishes;

  const look = (): void => {
    const { wishes } = round.state();
    // What was typed belongs to the files that were open then, even if others have been opened since.
    if (files !== null && wishes !== known) {
      known = wishes;
      keepFor(store, files, wishes);
    }
    const open = openFiles(store.state());
    if (open === null || (files?.course === open.course && files.player === open.player)) return;
    files = open;
    known = wishesFor(open, store.state().settings.rounds ?? []);
    round.dispatch({ type: 'wishes-restored', wishes: known });
    known = round.state().wishes;
    queueMicrotask(() => joinDays(store, open, known));
  };
  // At once, before the room is drawn for the first time.
  look();
  afterChanges(store, look);
  round.subscribe(() => queueMicrotask(look));
}

/** A round of earlier days that kept weather of its own: it joins the course's day, in one step that undo takes back. */
function joinDays(store: AppStore, files: RoundFiles, wishes: Wishes): void {
  const state = store.state();
  const own = ownWeatherFor(files, state.settings.rounds ?? []);
  const open = openFiles(state);
  if (own === null || open?.course !== files.course || open.player !== files.player) return;
  const words = wordsOf(state);
  const { present } = state.history;
  const { conditions, notes } = oneDay(present.conditions, own, words);
  const label = words.day.oneDay.step;
  if (conditions !== present.conditions)
    store.dispatch({ type: 'situation-taken', situation: { ...present, conditions }, label });
  if (notes.length > 0)
    store.dispatch({ type: 'trouble-met', title: words.day.oneDay.title, message: notes.join(' ') });
  // Written without it from now on, so that it joins once.
  keepFor(store, files, wishes);
}

function openFiles({ course, player }: AppState): RoundFiles | null {
  return course === null || player === null
    ? null
    : { course: course.entry.token, player: player.entry.token };
}

/** Also for a file that is about to be opened in the place of another, such as a player's copy with new shots. */
export function keepFor(store: AppStore, files: RoundFiles, wishes: Wishes): void {
  const { settings } = store.state();
  const rounds = keeping(files, wishes, settings.rounds ?? []);
  store.dispatch({ type: 'settings-read', settings: { ...settings, rounds } });
}
