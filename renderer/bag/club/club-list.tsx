/** The bag at the side: which clubs go out, what each carries, how sure that is. */

import { addClub, changeClub } from '../../../core/player/edits/clubs.ts';
import { type BagClub, MOST_CLUBS_IN_PLAY } from '../../../core/player/format.ts';
import { clubsInRound, isInRound } from '../../../core/player/in-play.ts';
import { unitShort } from '../../state/measures.ts';
import type { Words } from '../../../core/words/words.ts';
import { useApp } from '../../state/use-app.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import type { SpreadLine } from '../work/bag-report.ts';
import { lengthEstimate, sourceText } from '../words.ts';
import { useWords } from '../../state/use-words.ts';

export function ClubList() {
  const words = useWords();
  const desk = useDesk();
  const bag = useBag((state) => state.file?.history.present.bag ?? NO_CLUBS);
  const report = useBag((state) => state.file?.estimate.report ?? null);
  const shown = useBag((state) => state.shown?.club ?? state.file?.history.present.bag[0]?.name ?? null);
  const page = useBag((state) => state.page);
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const out = clubsInRound(bag).length;
  return (
    <section class="club-list" aria-label={words.player.bag.name}>
      <div class="club-list-head">
        <h2>{words.player.bag.name}</h2>
        <p class={out > MOST_CLUBS_IN_PLAY ? 'warning' : 'faint'} role="status">
          {words.player.bag.forTheRound({
            out,
            most: MOST_CLUBS_IN_PLAY,
            tooMany: out > MOST_CLUBS_IN_PLAY ? words.player.bag.tooMany : '',
          })}
        </p>
      </div>
      <ul>
        {bag.map((club) => (
          <ClubRow
            key={club.name}
            club={club}
            line={report?.lines.find(
              ({ spread }) => spread.club.name === club.name && spread.swing === 'full',
            )}
            isShown={page === 'clubs' && club.name === shown}
            locked={locked}
          />
        ))}
      </ul>
      <button
        type="button"
        class="small-button"
        disabled={locked}
        onClick={() => {
          const name = freeName(bag, words);
          const club: BagClub = { name, kind: 'iron', loftDeg: 30, swings: ['full'] };
          if (desk.edit(words.player.bag.addStep, (document) => addClub(document, club))) {
            desk.store.dispatch({ type: 'page-shown', page: 'clubs' });
            desk.store.dispatch({ type: 'club-shown', shown: { club: name, swing: 'full' } });
          }
        }}
      >
        {words.player.bag.add}
      </button>
    </section>
  );
}

const NO_CLUBS: readonly BagClub[] = [];

interface RowProps {
  readonly club: BagClub;
  readonly line: SpreadLine | undefined;
  readonly isShown: boolean;
  readonly locked: boolean;
}

function ClubRow({ club, line, isShown, locked }: RowProps) {
  const words = useWords();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const carry = line === undefined ? null : lengthEstimate(line.estimates.carryMean, units, words);
  const goesOut = isInRound(club);
  return (
    <li class={goesOut ? 'club-row' : 'club-row stays'}>
      <input
        type="checkbox"
        checked={goesOut}
        disabled={locked}
        aria-label={words.player.bag.goesOutNamed({ club: club.name })}
        title={words.player.bag.goesOut}
        onChange={(event) => {
          const on = event.currentTarget.checked;
          desk.edit(
            on
              ? words.player.bag.takeAlong({ club: club.name })
              : words.player.bag.leaveAtHome({ club: club.name }),
            (document) => changeClub(document, club.name, { inRound: on ? undefined : false }),
          );
        }}
      />
      <button
        type="button"
        class="club-name"
        aria-current={isShown ? 'true' : undefined}
        onClick={() => {
          desk.store.dispatch({ type: 'page-shown', page: 'clubs' });
          desk.store.dispatch({ type: 'club-shown', shown: { club: club.name, swing: 'full' } });
        }}
      >
        <span>{club.name}</span>
        {carry === null ? (
          club.kind !== 'putter' && <small>…</small>
        ) : (
          <span class="club-carry">
            <strong>
              {carry.mean}
              <span class="unseen"> {unitShort(units)}</span>
            </strong>
            <small>
              {carry.low}–{carry.high}
            </small>
          </span>
        )}
        <small class={club.kind === 'putter' ? 'club-source alone' : 'club-source'}>
          {club.kind === 'putter'
            ? words.player.bag.seeShortGame
            : line === undefined
              ? ''
              : sourceText(line.spread.source, words)}
        </small>
      </button>
    </li>
  );
}

function freeName(bag: readonly BagClub[], words: Words): string {
  for (let i = 1; ; i++) {
    const name = i === 1 ? words.player.bag.newClub : words.player.bag.newClubNumber({ number: i });
    if (!bag.some((club) => club.name === name)) return name;
  }
}
