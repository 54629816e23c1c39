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

export function EstimatesTable({ lines }: { readonly lines: readonly SpreadLine[] }) {
  const units = useApp((state) => state.settings.units);
  const shown = useBag((state) => state.shown);
  const { store } = useDesk();
  const unit = unitShort(units);
  return (
    <table class="bag-table estimates">
      <caption class="unseen">
        Estimates per swing; below each number the interval that holds the truth nine times in ten
      </caption>
      <thead>
        <tr>
          <th scope="col">Swing</th>
          <th scope="col">Rests on</th>
          <th scope="col">Carry, {unit}</th>
          <th scope="col">Carry ±, {unit}</th>
          <th scope="col">Lean, °</th>
          <th scope="col">Direction ±, °</th>
          <th scope="col">Correlation</th>
          <th scope="col">Poor strikes, %</th>
          <th scope="col">Poor carry, %</th>
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
                    {spread.swing}
                  </button>
                ) : (
                  spread.swing
                )}
              </th>
              <td>
                {sourceText(spread.source)}
                {line.poorShots > 0 && <small>{line.poorShots} poor</small>}
              </td>
              <NumberCell shown={lengthEstimate(estimates.carryMean, units)} />
              <NumberCell shown={lengthEstimate(estimates.carrySd, units, 1)} />
              <NumberCell shown={leanEstimate(estimates.directionMean)} />
              <NumberCell shown={degreeEstimate(estimates.directionSd)} />
              <NumberCell shown={plainEstimate(estimates.correlation)} />
              <NumberCell shown={shareEstimate(estimates.poorShare)} />
              <NumberCell shown={shareEstimate(estimates.poorCarryShareMean)} />
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** A number over its interval. */
export function NumberCell({ shown }: { readonly shown: Shown }) {
  return (
    <td class="number">
      <strong>{shown.mean}</strong>
      <small>
        {shown.low}
        <span aria-hidden="true"> – </span>
        <span class="unseen"> to </span>
        {shown.high}
      </small>
    </td>
  );
}
