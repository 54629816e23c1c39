/** The help pages beside the map, to be read without leaving it. */

import { useEffect, useRef } from 'preact/hooks';
import germanChanges from '../help/german/changes.md?raw';
import germanChecked from '../help/german/checked.md?raw';
import germanGuide from '../help/german/guide.md?raw';
import germanLicences from '../help/german/licences.md?raw';
import germanLimits from '../help/german/limits.md?raw';
import germanNumbers from '../help/german/numbers.md?raw';
import changes from '../help/changes.md?raw';
import checked from '../help/checked.md?raw';
import guide from '../help/guide.md?raw';
import licences from '../help/licences.md?raw';
import limits from '../help/limits.md?raw';
import numbers from '../help/numbers.md?raw';
import type { Language } from '../../core/words/language.ts';
import type { HelpPage } from '../state/app-state.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { TOUR_STEPS } from '../tour/steps.ts';
import { Markdown } from './markdown.tsx';
import { Picture } from './pictograms.tsx';
import { useWords } from '../state/use-words.ts';

const PAGES: Readonly<Record<Language, Readonly<Record<HelpPage, string>>>> = {
  en: { guide, numbers, limits, checked, changes, licences },
  de: {
    guide: germanGuide,
    numbers: germanNumbers,
    limits: germanLimits,
    checked: germanChecked,
    changes: germanChanges,
    licences: germanLicences,
  },
};

const ORDER: readonly HelpPage[] = ['guide', 'numbers', 'limits', 'checked', 'changes', 'licences'];

export function HelpDrawer() {
  const page = useApp((state) => state.view.help);
  return page === null ? null : <OpenDrawer page={page} />;
}

function OpenDrawer({ page }: { readonly page: HelpPage }) {
  const words = useWords();
  const dispatch = useDispatch();
  const room = useApp((state) => state.view.room);
  const body = useRef<HTMLDivElement>(null);
  const before = useRef<Element | null>(document.activeElement);
  useEffect(() => {
    const shown = body.current;
    shown?.focus();
    shown?.scrollTo(0, 0);
    // The guide is one page for all rooms: it opens where the room on screen is told.
    if (page === 'guide') shown?.querySelector(`[data-room="${room}"]`)?.scrollIntoView();
  }, [page, room]);
  const close = (): void => {
    dispatch({ type: 'help-shown', page: null });
    if (before.current instanceof HTMLElement) before.current.focus();
  };
  return (
    <section
      class="help-drawer"
      role="dialog"
      aria-label={words.bar.help}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        // What is under the drawer stays.
        event.stopPropagation();
        close();
      }}
    >
      <div class="help-head">
        <nav aria-label={words.help.pages}>
          {ORDER.map((each) => (
            <button
              key={each}
              type="button"
              class="text-button"
              aria-current={each === page ? 'page' : undefined}
              onClick={() => dispatch({ type: 'help-shown', page: each })}
            >
              {words.help[each]}
            </button>
          ))}
        </nav>
        <button
          type="button"
          class="icon-button"
          aria-label={words.help.close}
          title={words.help.closeEsc}
          onClick={close}
        >
          <Picture of="close" />
        </button>
      </div>
      <div class="help-body" ref={body} tabIndex={0}>
        <Markdown text={PAGES[words.language][page]} />
      </div>
      {page === 'guide' && (
        <p class="help-foot">
          <button
            type="button"
            class="small-button"
            onClick={() => dispatch({ type: 'tour-shown', step: TOUR_STEPS[0].name })}
          >
            {words.tour.again}
          </button>
        </p>
      )}
    </section>
  );
}
