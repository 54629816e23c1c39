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
import { useWords } from '../state/use-words.ts';

export function ComparisonPanel() {
  const words = useWords();
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
    <section class="comparison" aria-label={words.plan.comparison}>
      <div class="comparison-head">
        <h3>{words.plan.twoShots}</h3>
        <button type="button" class="small-button" onClick={end}>
          {words.plan.endComparing}
        </button>
      </div>
      {a === null || b === null ? (
        <p>
          {words.plan.nowChoose({
            shot: shotPhrase((a ?? b)!, words),
            side: a === null ? 'B' : 'A',
            other: a === null ? 'A' : 'B',
          })}
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
  const words = useWords();
  if (answer === null) return <p role="status">{words.plan.comparing}</p>;
  const { difference, standardError, tooCloseToCall } = answer.comparison;
  const better = difference <= 0 ? a : b;
  const worse = difference <= 0 ? b : a;
  const size = words.plan.verdictSize({
    strokes: strokesText(Math.abs(difference), words),
    error: errorText(standardError, words),
  });
  return (
    <p class="verdict" role="status">
      {tooCloseToCall ? (
        <>
          <strong>{words.plan.tooClose}</strong>{' '}
          {words.plan.closeVerdict({ shot: shotPhrase(better, words), size })}
        </>
      ) : (
        <>
          <strong>{shotPhrase(better, words)}</strong>{' '}
          {words.plan.savesOver({ size, other: shotPhrase(worse, words) })}
        </>
      )}
    </p>
  );
}

function SideBySide({ a, b }: { readonly a: Option; readonly b: Option }) {
  const words = useWords();
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
            <span class="unseen">{words.plan.number}</span>
          </th>
          <th scope="col">
            <SideMark side="A" /> {shotPhrase(a, words)}
          </th>
          <th scope="col">
            <SideMark side="B" /> {shotPhrase(b, words)}
          </th>
        </tr>
      </thead>
      <tbody>
        {row(
          words.plan.columns.strokes,
          (option) => `${strokesText(option.meanStrokes, words)} ± ${errorText(option.standardError, words)}`,
        )}
        {row(words.plan.compared.odds, odds)}
        {row(words.plan.compared.carry, (option) => lengthText(option.carryM, units))}
        {row(words.plan.columns.leaves, (option) => toHoleText(option.leave.medianM, false, units, words))}
        {row(words.plan.columns.trouble, (option) => {
          const list = troubleList(option.trouble, true, words);
          return list.length === 0
            ? words.plan.hardlyAny
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
