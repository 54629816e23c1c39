/** Two shots side by side, and what the numbers can say about the difference. */

import type { ComponentChildren } from 'preact';
import type { Option } from '../../core/plan/model.ts';
import {
  chanceText,
  errorText,
  lengthText,
  strokesText,
  toHoleText,
  wholePercents,
} from '../state/measures.ts';
import type { ComparisonAnswer } from '../state/app-state.ts';
import { optionOf } from '../state/selectors.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { shotPhrase, troubleList } from './shot-words.ts';

export function ComparisonPanel() {
  const idA = useApp((state) => state.view.compareA);
  const idB = useApp((state) => state.view.compareB);
  const a = useApp((state) => optionOf(state, state.view.compareA));
  const b = useApp((state) => optionOf(state, state.view.compareB));
  const answer = useApp((state) => state.answers.comparison);
  const dispatch = useDispatch();
  if (a === null && b === null) return null;
  const known = answer !== null && answer.a === idA && answer.b === idB ? answer : null;
  const end = (): void => {
    dispatch({ type: 'compare-set', side: 'A', shot: null });
    dispatch({ type: 'compare-set', side: 'B', shot: null });
  };
  return (
    <section class="comparison" aria-label="Comparison">
      <div class="comparison-head">
        <h3>Two shots side by side</h3>
        <button type="button" class="small-button" onClick={end}>
          End comparing
        </button>
      </div>
      {a === null || b === null ? (
        <p>
          {shotPhrase((a ?? b)!)} is {a === null ? 'B' : 'A'}. Now choose {a === null ? 'A' : 'B'} in another
          row of the table.
        </p>
      ) : (
        <>
          <Verdict a={a} b={b} answer={known} />
          <SideBySide a={a} b={b} />
        </>
      )}
    </section>
  );
}

function Verdict({
  a,
  b,
  answer,
}: {
  readonly a: Option;
  readonly b: Option;
  readonly answer: ComparisonAnswer | null;
}) {
  if (answer === null) return <p role="status">Comparing them on the same shots …</p>;
  const { difference, standardError, tooCloseToCall } = answer.comparison;
  const better = difference <= 0 ? a : b;
  const worse = difference <= 0 ? b : a;
  const size = `${strokesText(Math.abs(difference))} ± ${errorText(standardError)} strokes`;
  return (
    <p class="verdict" role="status">
      {tooCloseToCall ? (
        <>
          <strong>Too close to call:</strong> {shotPhrase(better)} comes out {size} lower.
        </>
      ) : (
        <>
          <strong>{shotPhrase(better)}</strong> saves {size} over {shotPhrase(worse)}.
        </>
      )}
    </p>
  );
}

function SideBySide({ a, b }: { readonly a: Option; readonly b: Option }) {
  const units = useApp((state) => state.settings.units);
  const row = (name: string, tell: (option: Option) => ComponentChildren): ComponentChildren => (
    <tr>
      <th scope="row">{name}</th>
      <td>{tell(a)}</td>
      <td>{tell(b)}</td>
    </tr>
  );
  const odds = (option: Option): string => {
    const { parOrBetter, bogey, doubleOrWorse } = option.parOdds;
    return wholePercents([parOrBetter, bogey, doubleOrWorse]).join(' / ');
  };
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">
            <span class="unseen">Number</span>
          </th>
          <th scope="col">
            <SideMark side="A" /> {shotPhrase(a)}
          </th>
          <th scope="col">
            <SideMark side="B" /> {shotPhrase(b)}
          </th>
        </tr>
      </thead>
      <tbody>
        {row(
          'Strokes',
          (option) => `${strokesText(option.meanStrokes)} ± ${errorText(option.standardError)}`,
        )}
        {row('Par / bogey / double +, %', odds)}
        {row('Carry', (option) => lengthText(option.carryM, units))}
        {row('Leaves', (option) => toHoleText(option.leave.medianM, false, units))}
        {row('Trouble', (option) => {
          const list = troubleList(option.trouble, true);
          return list.length === 0
            ? 'hardly any'
            : list.map((entry) => `${entry.words} ${chanceText(entry.chance)}`).join(', ');
        })}
      </tbody>
    </table>
  );
}

/** The line and ball of a side, as on the map. */
function SideMark({ side }: { readonly side: 'A' | 'B' }) {
  return (
    <svg class={`side-mark side-${side}`} viewBox="0 0 34 12" width="34" height="12" aria-hidden="true">
      <path d="M1 6H21" />
      {side === 'A' ? (
        <circle cx="27" cy="6" r="4" />
      ) : (
        <path d="M27 1.5L31.5 6L27 10.5L22.5 6Z" class="closed" />
      )}
    </svg>
  );
}
