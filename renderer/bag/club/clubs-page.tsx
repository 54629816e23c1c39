/** One club in full: what it is, its numbers, its pictures. */

import { removeClub } from '../../../core/player/edits/clubs.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import type { SpreadLine } from '../work/bag-report.ts';
import { clubSwing } from '../words.ts';
import { ClubForm } from './club-form.tsx';
import { EstimatesTable } from './estimates-table.tsx';
import { FanPicture } from './fan-picture.tsx';
import { LandingPicture } from './landing-picture.tsx';

export function ClubsPage() {
  const bag = useBag((state) => state.file?.history.present.bag ?? null);
  const desk = useDesk();
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const shown = useBag((state) => state.shown);
  const report = useBag((state) => state.file?.estimate.report ?? null);
  const club = bag?.find(({ name }) => name === shown?.club) ?? bag?.[0];
  if (club === undefined) return null;
  const lines = (report?.lines ?? []).filter(({ spread }) => spread.club.name === club.name);
  const order = club.swings as readonly string[];
  const own = [...lines].sort((a, b) => order.indexOf(a.spread.swing) - order.indexOf(b.spread.swing));
  const line = own.find(({ spread }) => spread.swing === shown?.swing) ?? own[0];
  return (
    <div class="clubs-page">
      <div class="club-about">
        <div class="page-head">
          <h2>{club.name}</h2>
          <button
            type="button"
            class="small-button"
            disabled={locked}
            onClick={() => desk.edit(`take out ${club.name}`, (document) => removeClub(document, club.name))}
          >
            Take this club out
          </button>
        </div>
        <ClubForm key={club.name} club={club} />
      </div>
      {club.kind === 'putter' ? (
        <p class="faint">
          Putting comes from putts on record: see “Short game and putting” for the ten-minute test and the
          log.
        </p>
      ) : (
        <>
          {own.length === 0 && <p class="faint">The numbers appear when the estimates are worked out.</p>}
          <div
            class="table-scroll"
            hidden={own.length === 0}
            tabIndex={0}
            role="region"
            aria-label={`Estimates of ${club.name}`}
          >
            {own.length > 0 && <EstimatesTable lines={own} />}
          </div>
          <p class="faint small-print" hidden={own.length === 0}>
            Below each number: the interval that holds the truth nine times in ten. ± is the standard
            deviation of solid strikes; R and L are right and left of the aim.{' '}
            {line !== undefined && restsOn(line)}
          </p>
          {line !== undefined && (
            <div class="picture-pair">
              <LandingPicture line={line} />
              <FanPicture line={line} all={report?.lines ?? []} />
            </div>
          )}
        </>
      )}
    </div>
  );
}

function restsOn(line: SpreadLine): string {
  const name = clubSwing(line.spread.club.name, line.spread.swing);
  const strays =
    line.strays === 0 ? '' : ` ${line.strays} of its readings are left out, too long to be true.`;
  switch (line.spread.source.from) {
    case 'measured':
      return `${name} rests on your own shots, leaning on its neighbours in the bag where they are few.${strays}`;
    case 'stated':
      return `${name} rests on what you state, not on measured shots.`;
    case 'preset':
      return `${name} has no measured shots: these are preset numbers, fitted to the clubs that have some.`;
    case 'derived':
      return `${name} has no shots of its own: it is taken from the ${line.spread.source.fromSwing} swing.`;
  }
}
