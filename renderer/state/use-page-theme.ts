/** The theme that the page shows at the moment, whatever decided it. */

import { useEffect, useState } from 'preact/hooks';
import type { Theme } from '../map/palette.ts';

function themeOf(page: HTMLElement): Theme {
  return page.dataset['theme'] === 'dark' ? 'dark' : 'light';
}

export function usePageTheme(): Theme {
  const page = document.documentElement;
  const [theme, setTheme] = useState(() => themeOf(page));
  useEffect(() => {
    const watcher = new MutationObserver(() => setTheme(themeOf(page)));
    watcher.observe(page, { attributes: true, attributeFilter: ['data-theme'] });
    return () => watcher.disconnect();
  }, [page]);
  return theme;
}
