/** Asks the workers for the cards of worked-out holes while a page that shows them is open. */

import { told } from '../../../core/words/told.ts';
import type { AppState } from '../../state/app-state.ts';
import { afterChanges, toldReason } from '../../state/effects/follow.ts';
import type { AppTools } from '../../state/use-app.ts';
import { type PlannedHole, roundHoles } from '../state/planned-holes.ts';
import type { RoundStore } from '../state/use-round.ts';
import type { Language } from '../../../core/words/language.ts';
import { shownLanguage } from '../../state/use-words.ts';

const RETRY_MS = 1000;

export function cardKey(hole: PlannedHole, units: AppState['settings']['units'], language: Language): string {
  return `${hole.result.key} ${units} ${language}`;
}

export function followCards({ store, pool }: Pick<AppTools, 'store' | 'pool'>, round: RoundStore): void {
  const given = new Map<number, string>();

  const make = async (
    hole: PlannedHole,
    units: AppState['settings']['units'],
    language: Language,
  ): Promise<void> => {
    const key = cardKey(hole, units, language);
    given.set(hole.hole, key);
    try {
      const card = await pool.deskOf(hole.hole).card(hole.result.key, { units, language }, null);
      if (card !== null) round.dispatch({ type: 'card-made', hole: hole.hole, key, card });
      else {
        // The worker has let go of the hole, since files were opened anew: it is on its way back.
        await new Promise((resolve) => setTimeout(resolve, RETRY_MS));
        given.delete(hole.hole);
        look();
      }
    } catch (reason) {
      store.dispatch({
        type: 'trouble-met',
        title: told(({ round }) => round.cardFailed),
        message: toldReason(reason),
      });
    }
  };

  const look = (): void => {
    const app = store.state();
    const { page, cards } = round.state();
    if (app.view.room !== 'round' || (page !== 'cards' && page !== 'day')) return;
    const { units } = app.settings;
    const language = shownLanguage(app);
    for (const hole of roundHoles(app).ready) {
      const key = cardKey(hole, units, language);
      if (cards[hole.hole]?.key !== key && given.get(hole.hole) !== key) void make(hole, units, language);
    }
  };
  afterChanges(store, look);
  round.subscribe(() => queueMicrotask(look));
}
