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
import { CardsPage } from './cards/cards-page.tsx';
import { DayPage } from './day/day-page.tsx';
import { OverPage } from './over/over-page.tsx';
import { PlayingPage } from './playing/playing-page.tsx';
import { useOutlook, useRound, useRoundDispatch, useRoundHoles } from './state/use-round.ts';
import { SharePage } from './share/share-page.tsx';
import { TryPage } from './trying/try-page.tsx';
import { chanceWords } from './target/odds-panel.tsx';
import { TargetPage } from './target/target-page.tsx';

export const roundRoom: Room | null = { name: 'round', View: RoundView };

interface Page {
  readonly name: PageName;
  readonly words: string;
  readonly View: ComponentType;
}

const PAGES: readonly Page[] = [
  { name: 'target', words: 'Target', View: TargetPage },
  { name: 'playing', words: 'Playing to it', View: PlayingPage },
  { name: 'cards', words: 'Cards', View: CardsPage },
  { name: 'day', words: 'The day', View: DayPage },
  { name: 'after', words: 'After the round', View: AfterPage },
  { name: 'over', words: 'Over rounds', View: OverPage },
  { name: 'try', words: 'Try it out', View: TryPage },
  { name: 'share', words: 'Share', View: SharePage },
];

function RoundView() {
  const page = useRound((state) => state.page);
  const hasCourse = useApp((state) => state.course !== null);
  const hasPlayer = useApp((state) => state.player !== null);
  const { View } = PAGES.find(({ name }) => name === page) ?? PAGES[0]!;
  return (
    <main class="round">
      <RoundPages />
      <div class="round-content" data-page={page}>
        {hasCourse && hasPlayer ? <View /> : <EmptyRound />}
      </div>
      <Notices />
    </main>
  );
}

function RoundPages() {
  const page = useRound((state) => state.page);
  const dispatch = useRoundDispatch();
  return (
    <nav class="round-pages" aria-label="Pages of the round">
      <WorkStatus />
      <PlannedDay />
      {PAGES.map(({ name, words }) => (
        <button
          key={name}
          type="button"
          aria-current={name === page ? 'page' : undefined}
          onClick={() => dispatch({ type: 'page-shown', page: name })}
        >
          {words}
          {name === 'target' && <TargetNote />}
        </button>
      ))}
    </nav>
  );
}

function TargetNote() {
  const outlook = useOutlook();
  const holes = useRoundHoles();
  if (outlook === null) return null;
  const isWhole = holes.ready.length === holes.all.length;
  return (
    <small>
      {outlook.words}
      {isWhole ? `: ${chanceWords(outlook.odds.target?.chance ?? 0)}` : ''}
    </small>
  );
}

function EmptyRound() {
  const { duties } = useTools();
  const hasCourse = useApp((state) => state.course !== null);
  const kind = hasCourse ? 'player' : 'course';
  return (
    <section class="empty-state">
      <h2>{hasCourse ? 'Whose round?' : 'No course is open'}</h2>
      <p>A round needs a course and a player. Choose them from the lists at the top, or bring in a file.</p>
      <p>
        <button type="button" class="main-button" onClick={() => void duties.importFile(kind)}>
          Bring in a {kind} file
        </button>
      </p>
    </section>
  );
}
