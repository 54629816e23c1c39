/** The bag at the side: which clubs go out, what each carries, how sure that is. */

import { addClub, changeClub } from '../../../core/player/edits/clubs.ts';
import { type BagClub, MOST_CLUBS_IN_PLAY } from '../../../core/player/format.ts';
import { clubsInRound, isInRound } from '../../../core/player/in-play.ts';
import { unitShort } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import type { SpreadLine } from '../work/bag-report.ts';
import { lengthEstimate, sourceText } from '../words.ts';

export function ClubList() {
  const desk = useDesk();
  const bag = useBag((state) => state.file?.history.present.bag ?? NO_CLUBS);
  const report = useBag((state) => state.file?.estimate.report ?? null);
  const shown = useBag((state) => state.shown?.club ?? state.file?.history.present.bag[0]?.name ?? null);
  const page = useBag((state) => state.page);
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const out = clubsInRound(bag).length;
  return (
    <section class="club-list" aria-label="Bag">
      <div class="club-list-head">
        <h2>Bag</h2>
        <p class={out > MOST_CLUBS_IN_PLAY ? 'warning' : 'faint'} role="status">
          {out} of {MOST_CLUBS_IN_PLAY} for the round
          {out > MOST_CLUBS_IN_PLAY && ': too many (Rule 4.1b)'}
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
          const name = freeName(bag);
          const club: BagClub = { name, kind: 'iron', loftDeg: 30, swings: ['full'] };
          if (desk.edit('add a club', (document) => addClub(document, club))) {
            desk.store.dispatch({ type: 'page-shown', page: 'clubs' });
            desk.store.dispatch({ type: 'club-shown', shown: { club: name, swing: 'full' } });
          }
        }}
      >
        Add a club
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
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const carry = line === undefined ? null : lengthEstimate(line.estimates.carryMean, units);
  const goesOut = isInRound(club);
  return (
    <li class={goesOut ? 'club-row' : 'club-row stays'}>
      <input
        type="checkbox"
        checked={goesOut}
        disabled={locked}
        aria-label={`${club.name} goes out for the round`}
        title="Goes out for the round"
        onChange={(event) => {
          const on = event.currentTarget.checked;
          desk.edit(on ? `take ${club.name} along` : `leave ${club.name} at home`, (document) =>
            changeClub(document, club.name, { inRound: on ? undefined : false }),
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
            ? 'see Short game'
            : line === undefined
              ? ''
              : sourceText(line.spread.source)}
        </small>
      </button>
    </li>
  );
}

function freeName(bag: readonly BagClub[]): string {
  for (let i = 1; ; i++) {
    const name = i === 1 ? 'New club' : `New club ${i}`;
    if (!bag.some((club) => club.name === name)) return name;
  }
}
