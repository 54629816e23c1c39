/** Every number of a club's swings with the interval that holds the truth nine times in ten. */

import { useApp } from '../../state/use-app.ts';
import { unitShort } from '../../state/measures.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import type { SpreadLine } from '../work/bag-report.ts';
import {
  degreeEstimate,
  leanEstimate,
  lengthEstimate,
  plainEstimate,
  shareEstimate,
  type Shown,
  sourceText,
} from '../words.ts';
import { useWords } from '../../state/use-words.ts';

export function EstimatesTable({ lines }: { readonly lines: readonly SpreadLine[] }) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const shown = useBag((state) => state.shown);
  const { store } = useDesk();
  const unit = unitShort(units);
  return (
    <table class="bag-table estimates">
      <caption class="unseen">{words.player.table.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{words.player.table.swing}</th>
          <th scope="col">{words.player.table.restsOn}</th>
          <th scope="col">{words.player.table.carry({ unit })}</th>
          <th scope="col">{words.player.table.carrySpread({ unit })}</th>
          <th scope="col">{words.player.table.lean}</th>
          <th scope="col">{words.player.table.directionSpread}</th>
          <th scope="col">{words.player.table.correlation}</th>
          <th scope="col">{words.player.table.poorShare}</th>
          <th scope="col">{words.player.table.poorCarry}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => {
          const { spread, estimates } = line;
          const isShown = lines.length > 1 && (shown?.swing ?? 'full') === spread.swing;
          return (
            <tr key={spread.swing} class={isShown ? 'is-shown' : undefined}>
              <th scope="row">
                {lines.length > 1 ? (
                  <button
                    type="button"
                    class="link-button"
                    aria-pressed={isShown}
                    onClick={() =>
                      store.dispatch({
                        type: 'club-shown',
                        shown: { club: spread.club.name, swing: spread.swing },
                      })
                    }
                  >
                    {words.golf.shortSwings[spread.swing]}
                  </button>
                ) : (
                  words.golf.shortSwings[spread.swing]
                )}
              </th>
              <td>
                {sourceText(spread.source, words)}
                {line.poorShots > 0 && (
                  <small>{words.player.table.poorCount({ count: line.poorShots })}</small>
                )}
              </td>
              <NumberCell shown={lengthEstimate(estimates.carryMean, units, words)} />
              <NumberCell shown={lengthEstimate(estimates.carrySd, units, words, 1)} />
              <NumberCell shown={leanEstimate(estimates.directionMean, words)} />
              <NumberCell shown={degreeEstimate(estimates.directionSd, words)} />
              <NumberCell shown={plainEstimate(estimates.correlation, words)} />
              <NumberCell shown={shareEstimate(estimates.poorShare, words)} />
              <NumberCell shown={shareEstimate(estimates.poorCarryShareMean, words)} />
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** A number over its interval. */
export function NumberCell({ shown }: { readonly shown: Shown }) {
  const words = useWords();
  return (
    <td class="number">
      <strong>{shown.mean}</strong>
      <small>
        {shown.low}
        <span aria-hidden="true"> – </span>
        <span class="unseen"> {words.player.table.to} </span>
        {shown.high}
      </small>
    </td>
  );
}
