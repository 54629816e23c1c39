/** The help pages beside the map, to be read without leaving it. */

import { useEffect, useRef } from 'preact/hooks';
import guide from '../help/guide.md?raw';
import limits from '../help/limits.md?raw';
import numbers from '../help/numbers.md?raw';
import type { HelpPage } from '../state/app-state.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { Markdown } from './markdown.tsx';
import { Picture } from './pictograms.tsx';

const PAGES: Readonly<Record<HelpPage, { readonly name: string; readonly text: string }>> = {
  guide: { name: 'Guide', text: guide },
  numbers: { name: 'The numbers', text: numbers },
  limits: { name: 'Limits', text: limits },
};

const ORDER: readonly HelpPage[] = ['guide', 'numbers', 'limits'];

export function HelpDrawer() {
  const page = useApp((state) => state.view.help);
  return page === null ? null : <OpenDrawer page={page} />;
}

function OpenDrawer({ page }: { readonly page: HelpPage }) {
  const dispatch = useDispatch();
  const body = useRef<HTMLDivElement>(null);
  const before = useRef<Element | null>(document.activeElement);
  useEffect(() => {
    body.current?.focus();
    body.current?.scrollTo(0, 0);
  }, [page]);
  const close = (): void => {
    dispatch({ type: 'help-shown', page: null });
    if (before.current instanceof HTMLElement) before.current.focus();
  };
  return (
    <section
      class="help-drawer"
      role="dialog"
      aria-label="Help"
      onKeyDown={(event) => {
        if (event.key === 'Escape') close();
      }}
    >
      <div class="help-head">
        <nav aria-label="Help pages">
          {ORDER.map((each) => (
            <button
              key={each}
              type="button"
              class="text-button"
              aria-current={each === page ? 'page' : undefined}
              onClick={() => dispatch({ type: 'help-shown', page: each })}
            >
              {PAGES[each].name}
            </button>
          ))}
        </nav>
        <button
          type="button"
          class="icon-button"
          aria-label="Close help"
          title="Close help (Esc)"
          onClick={close}
        >
          <Picture of="close" />
        </button>
      </div>
      <div class="help-body" ref={body} tabIndex={0}>
        <Markdown text={PAGES[page].text} />
      </div>
    </section>
  );
}
