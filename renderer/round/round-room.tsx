/** The round: a target to beat, a card to carry, a day to prepare, a score to learn from. */

import '../styles/round.css';
import type { ComponentType } from 'preact';
import { PlannedDay } from '../conditions/planned-day.tsx';
import { Notices } from '../panels/notices.tsx';
import { WorkStatus } from '../panels/work-status.tsx';
import type { Room } from '../rooms/room.ts';
import { useApp, useTools } from '../state/use-app.ts';
import type { PageName } from './state/round-state.ts';
import { AfterPage } from './after/after-page.tsx';
import { roundFileDesk } from './after/use-round-file.ts';
import { CardsPage } from './cards/cards-page.tsx';
import { DayPage } from './day/day-page.tsx';
import { OverPage } from './over/over-page.tsx';
import { PlayingPage } from './playing/playing-page.tsx';
import { roundStoreOf, useOutlook, useRound, useRoundDispatch, useRoundHoles } from './state/use-round.ts';
import { SharePage } from './share/share-page.tsx';
import { TryPage } from './trying/try-page.tsx';
import { chanceWords } from './target/odds-panel.tsx';
import { TargetPage } from './target/target-page.tsx';
import { useWords } from '../state/use-words.ts';

export const roundRoom: Room | null = { name: 'round', View: RoundView };

interface Page {
  readonly name: PageName;
  readonly View: ComponentType;
}

const PAGES: readonly Page[] = [
  { name: 'target', View: TargetPage },
  { name: 'playing', View: PlayingPage },
  { name: 'cards', View: CardsPage },
  { name: 'day', View: DayPage },
  { name: 'after', View: AfterPage },
  { name: 'over', View: OverPage },
  { name: 'try', View: TryPage },
  { name: 'share', View: SharePage },
];

function RoundView() {
  const page = useRound((state) => state.page);
  const hasCourse = useApp((state) => state.course !== null);
  const hasPlayer = useApp((state) => state.player !== null);
  const tools = useTools();
  // Typing is one step of undo until another field is entered.
  const leaveField = (): void => {
    roundStoreOf(tools).dispatch({ type: 'wish-field-left' });
    roundFileDesk(tools).store.dispatch({ type: 'field-left' });
  };
  const { View } = PAGES.find(({ name }) => name === page) ?? PAGES[0]!;
  return (
    <main class="round" onFocusIn={leaveField}>
      <RoundPages />
      <div class="round-content" data-page={page}>
        {hasCourse && hasPlayer ? <View /> : <EmptyRound />}
      </div>
      <Notices />
    </main>
  );
}

function RoundPages() {
  const words = useWords();
  const page = useRound((state) => state.page);
  const dispatch = useRoundDispatch();
  return (
    <nav class="round-pages" aria-label={words.round.pagesName}>
      <WorkStatus />
      <PlannedDay />
      {PAGES.map(({ name }) => (
        <button
          key={name}
          data-page={name}
          type="button"
          aria-current={name === page ? 'page' : undefined}
          onClick={() => dispatch({ type: 'page-shown', page: name })}
        >
          {words.round.pages[name]}
          {name === 'target' && <TargetNote />}
        </button>
      ))}
    </nav>
  );
}

function TargetNote() {
  const words = useWords();
  const outlook = useOutlook();
  const holes = useRoundHoles();
  if (outlook === null) return null;
  const isWhole = holes.ready.length === holes.all.length;
  return (
    <small>
      {outlook.words}
      {isWhole ? `: ${chanceWords(outlook.odds.target?.chance ?? 0, words)}` : ''}
    </small>
  );
}

function EmptyRound() {
  const words = useWords();
  const { duties } = useTools();
  const hasCourse = useApp((state) => state.course !== null);
  const kind = hasCourse ? 'player' : 'course';
  return (
    <section class="empty-state">
      <h2>{hasCourse ? words.round.whoseRound : words.round.noCourse}</h2>
      <p>{words.round.needsBoth}</p>
      <p>
        <button type="button" class="main-button" onClick={() => void duties.importFile(kind)}>
          {words.bar.files[kind].bring}
        </button>
      </p>
    </section>
  );
}
