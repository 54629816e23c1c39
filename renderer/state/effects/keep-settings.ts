/** Writes settings back to the host as they change, what was changed alone; paints the theme, and tells the page its language. */

import type { Host, HostAnswer, Settings } from '../../../electron/contract/host.ts';
import { changeOfSettings } from '../settings-change.ts';
import type { Store } from '../store.ts';
import { shownLanguage, wordsOf } from '../use-words.ts';
import { follow } from './follow.ts';

type SettingsHost = Pick<Host, 'writeSettings'>;

interface Writing {
  /** As the window last handed them to the host. */
  known: Settings;
  last: Promise<HostAnswer<null>>;
}

const writings = new WeakMap<Store, Writing>();

/** `known`: what the host has of them as far as this window knows. */
export function keepSettings(store: Store, host: SettingsHost, known = store.state().settings): () => void {
  writings.set(store, { known, last: Promise.resolve({ ok: true, value: null }) });
  return follow<Settings>(store, {
    question: (state) => state.settings,
    key: (settings) => JSON.stringify(settings),
    answer: async () => {
      const answer = await writeSettings(store, host);
      if (!answer.ok) {
        const title = wordsOf(store.state()).bar.settingsNotKept;
        store.dispatch({ type: 'trouble-met', title, message: answer.message });
      }
    },
  });
}

/** Writes what is not written yet; answered when the disk has it. What is refused goes with the next change. */
export function writeSettings(store: Store, host: SettingsHost): Promise<HostAnswer<null>> {
  const writing = writings.get(store);
  if (writing === undefined) return Promise.resolve({ ok: true, value: null });
  const write = async (): Promise<HostAnswer<null>> => {
    const { settings } = store.state();
    const change = changeOfSettings(writing.known, settings);
    if (change === null) return { ok: true, value: null };
    const answer = await host.writeSettings(change.settings, change.was);
    if (answer.ok) writing.known = settings;
    return answer;
  };
  writing.last = writing.last.then(write, write);
  return writing.last;
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
