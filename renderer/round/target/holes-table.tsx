/** Hole by hole: par, index, budget, what the plan expects and how often the budget is met, and what to hit. */

import { chanceOfAtMost, meanOf } from '../../../core/round/distribution.ts';
import { recommendedOf } from '../../../core/round/round-hole.ts';
import { OddsBar, OddsKey } from '../../panels/odds-bar.tsx';
import { shotPhrase } from '../../panels/shot-words.ts';
import { lengthNumber, lengthText, strokesText, unitShort } from '../../state/measures.ts';
import { useApp, useDispatch } from '../../state/use-app.ts';
import { type Outlook, parOf, type RoundHoles } from '../state/planned-holes.ts';
import { useWords } from '../../state/use-words.ts';
import { budgetWords } from '../../../core/round/budget.ts';

interface Props {
  readonly outlook: Outlook;
  readonly holes: RoundHoles;
}

export function HolesTable({ outlook, holes }: Props) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const dispatch = useDispatch();
  const isWhole = holes.ready.length === holes.all.length;
  const sum = holes.ready.reduce((total, { result }) => total + result.lengthM, 0);
  return (
    <section aria-label={words.round.table.name} class="table-box">
      <div class="table-head">
        <h3>{words.round.table.name}</h3>
        <OddsKey />
      </div>
      <table class="plain-table holes-table">
        <thead>
          <tr>
            <th scope="col">{words.round.hole}</th>
            <th scope="col" class="number">
              {words.round.par}
            </th>
            <th scope="col" class="number">
              {words.round.table.index}
            </th>
            <th scope="col" class="number">
              {unitShort(units)}
            </th>
            <th scope="col">{words.round.table.fromTee}</th>
            <th scope="col" class="number">
              {words.round.budget}
            </th>
            <th scope="col" class="number">
              {words.round.expected}
            </th>
            <th scope="col" class="number">
              {words.round.table.met}
            </th>
            <th scope="col">{words.round.table.odds}</th>
            <th scope="col">{words.round.table.playFor}</th>
          </tr>
        </thead>
        <tbody>
          {holes.ready.map((hole, i) => {
            const option = recommendedOf(hole.plan);
            const scores = outlook.scores[i]!;
            const budget = outlook.budget.holes[i]!;
            return (
              <tr key={hole.hole}>
                <th scope="row">
                  <button
                    type="button"
                    class="link-button"
                    title={words.round.table.show({ hole: hole.hole })}
                    onClick={() => {
                      dispatch({ type: 'hole-shown', hole: hole.hole });
                      dispatch({ type: 'room-shown', room: 'plan' });
                    }}
                  >
                    {hole.hole}
                  </button>
                </th>
                <td class="number">{hole.par}</td>
                <td class="number">{hole.strokeIndex ?? '–'}</td>
                <td class="number">{lengthNumber(hole.result.lengthM, units)}</td>
                <td>
                  {shotPhrase(option, words)} <span class="faint">{lengthText(option.carryM, units)}</span>
                </td>
                <td class="number">
                  <strong>{isWhole ? budget.budget : '…'}</strong>
                </td>
                <td class="number">{strokesText(meanOf(scores), words)}</td>
                <td class="number">
                  {isWhole ? `${Math.round(100 * chanceOfAtMost(scores, budget.budget))} %` : '…'}
                </td>
                <td class="odds-cell">
                  <OddsBar odds={option.parOdds} />
                </td>
                <td class="words-cell">
                  {isWhole ? budgetWords(budget.budget, hole.par, words).replace(/\.$/u, '') : ''}
                </td>
              </tr>
            );
          })}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{words.round.sum}</th>
            <td class="number">{parOf(holes.ready)}</td>
            <td />
            <td class="number">{lengthNumber(sum, units)}</td>
            <td />
            <td class="number">
              <strong>
                {isWhole ? outlook.budget.holes.reduce((total, { budget }) => total + budget, 0) : '…'}
              </strong>
            </td>
            <td class="number">{words.figures.fixed(outlook.odds.expected, 1)}</td>
            <td />
            <td />
            <td />
          </tr>
        </tfoot>
      </table>
      {isWhole && !outlook.budget.possible && (
        <p class="warning">{words.round.table.impossible({ target: outlook.target })}</p>
      )}
    </section>
  );
}
