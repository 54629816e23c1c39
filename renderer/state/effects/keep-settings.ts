/** Writes settings back to the host when they change, paints the theme, and tells the page its language. */

import type { Host, Settings } from '../../../electron/contract/host.ts';
import type { Store } from '../store.ts';
import { shownLanguage, wordsOf } from '../use-words.ts';
import { follow } from './follow.ts';

export function keepSettings(store: Store, host: Host): () => void {
  const read = store.state().settings;
  let written = JSON.stringify(read);
  return follow<Settings>(store, {
    question: (state) => state.settings,
    key: (settings) => JSON.stringify(settings),
    answer: async (settings) => {
      const text = JSON.stringify(settings);
      if (text === written) return;
      written = text;
      const answer = await host.writeSettings(settings);
      if (!answer.ok) {
        const title = wordsOf(store.state()).bar.settingsNotKept;
        store.dispatch({ type: 'trouble-met', title, message: answer.message });
      }
    },
  });
}

/** Sets `data-theme` on the page; `system` follows the system's own wish as it changes. */
export function paintTheme(store: Store, page: HTMLElement, dark: MediaQueryList): () => void {
  const paint = (): void => {
    const { theme } = store.state().settings;
    const shownTheme = theme === 'system' ? (dark.matches ? 'dark' : 'light') : theme;
    if (page.dataset['theme'] !== shownTheme) page.dataset['theme'] = shownTheme;
  };
  dark.addEventListener('change', paint);
  const unsubscribe = store.subscribe(paint);
  paint();
  return () => {
    dark.removeEventListener('change', paint);
    unsubscribe();
  };
}

/** The page's language follows the words on it, for those who hear it and for hyphens. */
export function tellLanguage(store: Store, page: HTMLElement): () => void {
  const tell = (): void => {
    const language = shownLanguage(store.state());
    if (page.lang !== language) page.lang = language;
  };
  tell();
  return store.subscribe(tell);
}
