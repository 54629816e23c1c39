/** A panel that asks for one place on the map: it sets the mode and hears of the next click. */

import type { LonLat } from '../../core/course/model.ts';
import type { DrawingDesk } from './desk.ts';
import { CHOOSING } from './drawing-state.ts';

const waiting = new WeakMap<DrawingDesk, (at: LonLat) => void>();

/** `words` tell the person what to click on. Asking again, or Escape, forgets the earlier question. */
export function askForPoint(desk: DrawingDesk, phrase: string, answer: (at: LonLat) => void): void {
  waiting.set(desk, answer);
  desk.store.dispatch({ type: 'mode-set', mode: { do: 'point', words: phrase } });
}

export function takePoint(desk: DrawingDesk, at: LonLat): void {
  const answer = waiting.get(desk);
  waiting.delete(desk);
  desk.store.dispatch({ type: 'mode-set', mode: CHOOSING });
  answer?.(at);
}
