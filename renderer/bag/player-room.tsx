/** The player: bag, measured shots, what they say, and how sure that is. */

import '../styles/bag.css';
import { useLayoutEffect } from 'preact/hooks';
import type { Room } from '../rooms/room.ts';
import { useApp, useTools } from '../state/use-app.ts';
import { ClubList } from './club/club-list.tsx';
import { ClubsPage } from './club/clubs-page.tsx';
import { DistancesPage } from './distances/distances-page.tsx';
import { FieldPage } from './measure/field-page.tsx';
import { NewPlayer } from './new-player.tsx';
import { PersonCard, WhoseNumbers } from './person-card.tsx';
import { PlayersPage } from './pupils/players-page.tsx';
import { RoomNotices } from './room-notices.tsx';
import { ShortPage } from './short-game/short-page.tsx';
import { ShotsPage } from './shots/shots-page.tsx';
import { PAGES } from './state/bag-state.ts';
import { useBag, useDesk } from './state/use-bag.ts';
import { useWords } from '../state/use-words.ts';

export const playerRoom: Room | null = { name: 'player', View: PlayerView };

function PlayerView() {
  const words = useWords();
  const { undo } = useTools();
  const desk = useDesk();
  const hasFile = useBag((state) => state.file !== null);
  const making = useBag((state) => state.making);
  const hasPlayer = useApp((state) => state.player !== null);
  const filesKnown = useApp((state) => state.files !== null);
  useLayoutEffect(() => undo.bring('player', desk.undoSource), [undo, desk]);
  useLayoutEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 's') return;
      event.preventDefault();
      // A field that is being typed in takes its text first.
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      void desk.save();
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [desk]);
  if (making || (!hasPlayer && filesKnown))
    return (
      <main class="bag-room single">
        <NewPlayer />
      </main>
    );
  if (!hasFile)
    return (
      <main class="bag-room single">
        <p class="faint" role="status">
          {words.player.reading}
        </p>
      </main>
    );
  return (
    <main class="bag-room">
      <aside class="bag-side" aria-label={words.player.playerAndBag}>
        <PersonCard />
        <ClubList />
      </aside>
      <div class="bag-main">
        <RoomNotices />
        <WhoseNumbers />
        <PageTabs />
        <PageShown />
      </div>
    </main>
  );
}

function PageTabs() {
  const words = useWords();
  const desk = useDesk();
  const shown = useBag((state) => state.page);
  return (
    <nav class="page-tabs" aria-label={words.player.pagesName}>
      {PAGES.map((page) => (
        <button
          key={page}
          data-page={page}
          type="button"
          aria-current={page === shown ? 'page' : undefined}
          onClick={() => desk.store.dispatch({ type: 'page-shown', page })}
        >
          {words.player.pages[page]}
        </button>
      ))}
    </nav>
  );
}

function PageShown() {
  const page = useBag((state) => state.page);
  switch (page) {
    case 'shots':
      return <ShotsPage />;
    case 'short':
      return <ShortPage />;
    case 'distances':
      return <DistancesPage />;
    case 'field':
      return <FieldPage />;
    case 'players':
      return <PlayersPage />;
    case 'clubs':
      return <ClubsPage />;
  }
}
