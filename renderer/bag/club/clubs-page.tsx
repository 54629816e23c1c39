/** One club in full: what it is, its numbers, its pictures. */

import { removeClub } from '../../../core/player/edits/clubs.ts';
import type { Words } from '../../../core/words/words.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import type { SpreadLine } from '../work/bag-report.ts';
import { clubSwing } from '../words.ts';
import { ClubForm } from './club-form.tsx';
import { EstimatesTable } from './estimates-table.tsx';
import { FanPicture } from './fan-picture.tsx';
import { LandingPicture } from './landing-picture.tsx';
import { useWords } from '../../state/use-words.ts';

export function ClubsPage() {
  const words = useWords();
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
            onClick={() =>
              desk.edit(words.player.club.takeOutStep({ club: club.name }), (document) =>
                removeClub(document, club.name),
              )
            }
          >
            {words.player.club.takeOut}
          </button>
        </div>
        <ClubForm key={club.name} club={club} />
      </div>
      {club.kind === 'putter' ? (
        <p class="faint">{words.player.club.putterNote}</p>
      ) : (
        <>
          {own.length === 0 && <p class="faint">{words.player.club.noNumbersYet}</p>}
          <div
            class="table-scroll"
            hidden={own.length === 0}
            tabIndex={0}
            role="region"
            aria-label={words.player.club.estimatesOf({ club: club.name })}
          >
            {own.length > 0 && <EstimatesTable lines={own} />}
          </div>
          <p class="faint small-print" hidden={own.length === 0}>
            {words.player.club.belowEach({ restsOn: line === undefined ? '' : restsOn(line, words) })}
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

function restsOn(line: SpreadLine, words: Words): string {
  const name = clubSwing(line.spread.club.name, line.spread.swing, words);
  const strays = line.strays === 0 ? '' : words.player.club.strays({ count: line.strays });
  switch (line.spread.source.from) {
    case 'measured':
      return words.player.club.restsOnShots({ club: name, strays });
    case 'stated':
      return words.player.club.restsOnStated({ club: name });
    case 'preset':
      return words.player.club.restsOnPreset({ club: name });
    case 'derived':
      return words.player.club.restsOnSwing({
        club: name,
        swing: words.golf.shortSwings[line.spread.source.fromSwing],
      });
  }
}
