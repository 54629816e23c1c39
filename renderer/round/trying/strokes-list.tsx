/** The strokes so far with what they gained and what the choice cost; other ways with the same luck beneath. */

import { signedText } from '../../state/measures.ts';
import { costOf, type TryHole, type TriedStroke } from './try-state.ts';
import { type Trying, attemptWords } from './use-trying.ts';
import { useWords } from '../../state/use-words.ts';
import type { Words } from '../../../core/words/words.ts';

export function StrokesList({ state, trying }: { readonly state: TryHole; readonly trying: Trying }) {
  const words = useWords();
  const { attempt, others } = state;
  return (
    <>
      {attempt.strokes.length > 0 && (
        <table class="plain-table">
          <thead>
            <tr>
              <th scope="col">{words.round.try.strokeColumn}</th>
              <th scope="col">{words.round.entry.ended}</th>
              <th scope="col" class="number">
                {words.round.try.choiceCost}
              </th>
              <th scope="col" class="number">
                {words.round.gained}
              </th>
              <th scope="col">{words.round.try.sameLuck}</th>
            </tr>
          </thead>
          <tbody>
            {attempt.strokes.map((stroke, i) => (
              <tr key={i}>
                <th scope="row">{stroke.shot.club}</th>
                <td>
                  {endWords(stroke, words)}
                  {stroke.shot.wasPoor ? words.round.try.poorStrike : ''}
                </td>
                <td class="number">{costCell(stroke, words)}</td>
                <td class="number">{signedText(stroke.shot.gained, words)}</td>
                <td>
                  <button
                    type="button"
                    class="small-button"
                    disabled={trying.isBusy}
                    aria-label={words.round.try.anewOf({ number: i + 1 })}
                    onClick={() => void trying.backTo(i)}
                  >
                    {words.round.try.anew}
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {attempt.strokes.length > 0 && (
        <p>{words.round.try.cost({ strokes: signedText(costOf(attempt), words) })}</p>
      )}
      <div class="form-line print-line">
        <button
          type="button"
          class="small-button"
          disabled={trying.isBusy || attempt.strokes.length === 0}
          onClick={() => void trying.again(true)}
        >
          {words.round.try.teeSame}
        </button>
        <button
          type="button"
          class="small-button"
          disabled={trying.isBusy}
          onClick={() => void trying.again(false)}
        >
          {words.round.try.teeOther}
        </button>
      </div>
      {others.length > 0 && (
        <>
          <h3>{words.round.try.otherWays}</h3>
          <ul class="review-words">
            {others.map(({ words: told }, i) => (
              <li key={i}>{told}</li>
            ))}
            {attempt.ball === null && <li>{words.round.try.now({ words: attemptWords(attempt, words) })}</li>}
          </ul>
        </>
      )}
    </>
  );
}

function endWords({ shot }: TriedStroke, words: Words): string {
  const told = words.round.try;
  if (shot.kind === 'drop') return told.dropped;
  if (shot.next === null) return told.holedShot;
  const penalty = shot.penalty > 0 ? told.penalty({ count: shot.penalty }) : '';
  return `${words.round.lies[shot.endLie]}${penalty}`;
}

function costCell({ cost, shot }: TriedStroke, words: Words): string {
  if (cost === null) return shot.kind === 'swing' ? words.round.try.notTold : '–';
  return cost.tooCloseToCall
    ? words.round.try.close({ cost: signedText(cost.cost, words) })
    : signedText(cost.cost, words);
}
