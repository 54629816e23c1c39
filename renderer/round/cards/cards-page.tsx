/** The cards as they will be printed: paper, style, what is on them, and the sheets to look at. */

import { useMemo } from 'preact/hooks';
import { meanOf } from '../../../core/round/distribution.ts';
import { departureWords } from '../../../core/round/departures.ts';
import type { CardHole } from '../../../core/card/model.ts';
import type { PlayingAnswer } from '../../workers/round-api.ts';
import { Choice } from '../../panels/choice.tsx';
import { Field } from '../../panels/field.tsx';
import { currentDay } from '../../state/selectors.ts';
import { useApp } from '../../state/use-app.ts';
import { notesOf } from '../day/day-plan.ts';
import { useCards, usePreparation } from '../day/use-day.ts';
import { playingNow } from '../effects/follow-playing.ts';
import { optionWords } from '../playing/option-words.ts';
import type { Outlook, RoundHoles } from '../state/planned-holes.ts';
import type { PaperKind, PaperWishes } from '../state/round-state.ts';
import { useOutlook, useRound, useRoundDispatch, useRoundHoles } from '../state/use-round.ts';
import { chanceWords } from '../target/odds-panel.tsx';
import { layoutOf, PAPERS } from './paper.ts';
import { PrintButtons } from './print-buttons.tsx';
import { Sheets } from './sheets.tsx';
import { useWords } from '../../state/use-words.ts';
import type { Words } from '../../../core/words/words.ts';

export function CardsPage() {
  const words = useWords();
  const wished = useRound((state) => state.wishes.paper);
  const conditions = useApp(currentDay);
  const units = useApp((app) => app.settings.units);
  const holes = useRoundHoles();
  const all = useCards();
  const paper = useMemo(() => onCourse(wished, holes), [wished, holes]);
  const course = useApp((app) => app.course?.value ?? null);
  const player = useApp((app) => app.player?.value.name ?? '');
  const preparation = usePreparation();
  const odds = useOverviewLines(holes);
  const layout = useMemo(() => layoutOf(paper), [paper]);
  const cards = useMemo(
    () => (paper.hole === null ? all : all.filter(({ hole }) => hole === paper.hole)),
    [all, paper.hole],
  );
  const lines = useMemo(() => [...dayLines(cards), ...odds], [cards, odds]);
  // Drawn anew only when something on it changes: eighteen drawings take a moment.
  const sheets = useMemo(() => {
    if (course === null || cards.length === 0) return null;
    const tee = cards[0]?.tee ?? '';
    return (
      <Sheets
        cards={cards}
        overview={paper.hole === null ? { course: course.name, player, tee, lines } : null}
        notesOf={notesOf(conditions, units, preparation, course, words)}
        layout={layout}
        hasGreens={paper.hasGreens}
      />
    );
  }, [cards, course, player, lines, conditions, units, preparation, layout, paper, words]);
  if (course === null) return null;
  return (
    <>
      <div class="screen-only">
        <h2>{words.cards.title}</h2>
        <PaperForm holes={holes} paper={paper} />
        <p role="status" class="faint">
          {all.length < holes.all.length
            ? words.cards.someMade({ made: all.length, total: holes.all.length })
            : words.cards.allMade({ count: all.length })}
        </p>
        <PrintButtons name={words.cards.fileName({ course: course.name })} isReady={cards.length > 0} />
        {layout.isBooklet && <p class="faint">{words.cards.booklet}</p>}
      </div>
      {sheets}
    </>
  );
}

/** A hole that was wished for once may be gone from the course: then all are printed. */
function onCourse(paper: PaperWishes, { all }: RoundHoles): PaperWishes {
  return all.some(({ number }) => number === paper.hole) ? paper : { ...paper, hole: null };
}

function PaperForm({ holes, paper }: { readonly holes: RoundHoles; readonly paper: PaperWishes }) {
  const words = useWords();
  const dispatch = useRoundDispatch();
  const wish = (change: Partial<typeof paper>): void => dispatch({ type: 'paper-wished', change });
  return (
    <section class="round-form" aria-label={words.cards.paper}>
      <div class="form-line">
        <Field
          name={words.cards.paper}
          control={(id) => (
            <select
              id={id}
              value={paper.kind}
              onChange={(event) => wish({ kind: event.currentTarget.value as PaperKind })}
            >
              {PAPERS.map((kind) => (
                <option key={kind} value={kind}>
                  {words.cards.papers[kind]}
                </option>
              ))}
            </select>
          )}
        />
        <Choice
          label={words.cards.style}
          name="print-style"
          value={paper.style}
          entries={[
            ['plain', words.cards.styles.plain],
            ['ink-saving', words.cards.styles['ink-saving']],
            ['large-print', words.cards.styles['large-print']],
          ]}
          choose={(style) => wish({ style })}
        />
      </div>
      <div class="form-line">
        <Field
          name={words.cards.holes}
          control={(id) => (
            <select
              id={id}
              value={paper.hole ?? ''}
              onChange={(event) => {
                const { value } = event.currentTarget;
                wish({ hole: value === '' ? null : Number(value) });
              }}
            >
              <option value="">{words.cards.allHoles}</option>
              {holes.all.map(({ number }) => (
                <option key={number} value={number}>
                  {words.cards.holeOption({ number })}
                </option>
              ))}
            </select>
          )}
        />
        <label class="switch">
          <input
            type="checkbox"
            checked={paper.hasGreens}
            onChange={(event) => wish({ hasGreens: event.currentTarget.checked })}
          />
          {words.cards.greens}
        </label>
      </div>
    </section>
  );
}

/** The day that the cards are made for, as on each of them; none for an ordinary one. */
function dayLines(cards: readonly CardHole[]): readonly string[] {
  const day = cards[0]?.day ?? null;
  return day === null ? [] : [`${day}.`];
}

/** What the card of the round says of the odds, and the departures worth carrying. */
function useOverviewLines(holes: RoundHoles): readonly string[] {
  const words = useWords();
  const outlook = useOutlook();
  const state = useRound((round) => round);
  const playing = useApp((app) => playingNow(app, state));
  return useMemo(() => {
    if (outlook === null || holes.ready.length < holes.all.length) return [];
    return [oddsLine(outlook, words), ...departureLines(playing, holes, words), words.cards.estimates];
  }, [outlook, playing, holes, words]);
}

function oddsLine({ odds, target, scores }: Outlook, words: Words): string {
  const chance = chanceWords(odds.target?.chance ?? 0, words);
  const expected = scores.reduce((sum, hole) => sum + meanOf(hole), 0);
  return words.cards.oddsLine({
    target,
    chance,
    expected: words.figures.fixed(expected, 1),
    low: odds.range.low,
    high: odds.range.high,
  });
}

const MOST_DEPARTURES = 3;

function departureLines(playing: PlayingAnswer | null, holes: RoundHoles, words: Words): readonly string[] {
  return (playing?.departures ?? []).slice(0, MOST_DEPARTURES).map((departure) => {
    const planned = holes.ready.find(({ hole }) => hole === departure.hole);
    return departureWords(departure, playing!.plan.aim, words, (id) =>
      planned === undefined ? id : optionWords(planned.plan, id, words),
    );
  });
}
