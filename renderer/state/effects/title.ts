/** Keeps the window's title in step: which hole, which course. */

import { currentHole } from '../selectors.ts';
import type { Store } from '../store.ts';
import { wordsOf } from '../use-words.ts';
import { afterChanges } from './follow.ts';

export function titleWindow(store: Store, page: Document): () => void {
  return afterChanges(store, (state) => {
    const hole = currentHole(state);
    const course = state.course?.value.name;
    const parts = [
      hole === null ? null : wordsOf(state).bar.holeTitle({ number: hole.number }),
      course ?? null,
      'Holewright',
    ];
    const title = parts.filter((part) => part !== null).join(' – ');
    if (page.title !== title) page.title = title;
  });
}
