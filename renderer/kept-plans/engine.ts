/** The engine that this page was built with; see `renderer/vite.config.ts`. */

import type { Engine } from './plan-key.ts';

/** Put in by the build; in tests there is none. */
declare const ENGINE_SOURCES: string | undefined;

export function thisEngine(browser: string): Engine {
  return { sources: typeof ENGINE_SOURCES === 'undefined' ? 'not built' : ENGINE_SOURCES, browser };
}
