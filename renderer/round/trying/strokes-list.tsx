/** The strokes so far with what they gained and what the choice cost; other ways with the same luck beneath. */

import { signedText } from '../../state/measures.ts';
import { costOf, type TryHole, type TriedStroke } from './try-state.ts';
import { type Trying, wordsOf } from './use-trying.ts';
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
              <th scope="col">Stroke</th>
              <th scope="col">Ended</th>
              <th scope="col" class="number">
                Choice cost
              </th>
              <th scope="col" class="number">
                Gained
              </th>
              <th scope="col">Same luck</th>
            </tr>
          </thead>
          <tbody>
            {attempt.strokes.map((stroke, i) => (
              <tr key={i}>
                <th scope="row">{stroke.shot.club}</th>
                <td>
                  {endWords(stroke)}
                  {stroke.shot.wasPoor ? ', poor strike' : ''}
                </td>
                <td class="number">{costCell(stroke, words)}</td>
                <td class="number">{signedText(stroke.shot.gained, words)}</td>
                <td>
                  <button
                    type="button"
                    class="small-button"
                    disabled={trying.isBusy}
                    aria-label={`choose anew: stroke ${i + 1} with the same luck`}
                    onClick={() => void trying.backTo(i)}
                  >
                    choose anew
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {attempt.strokes.length > 0 && (
        <p>
          Your choices cost {signedText(costOf(attempt), words)} strokes on average against the plan’s; what
          else was gained or lost was the strike and luck.
        </p>
      )}
      <div class="form-line print-line">
        <button
          type="button"
          class="small-button"
          disabled={trying.isBusy || attempt.strokes.length === 0}
          onClick={() => void trying.again(true)}
        >
          From the tee, same luck
        </button>
        <button
          type="button"
          class="small-button"
          disabled={trying.isBusy}
          onClick={() => void trying.again(false)}
        >
          From the tee, other luck
        </button>
      </div>
      {others.length > 0 && (
        <>
          <h3>Other ways with this luck</h3>
          <ul class="review-words">
            {others.map(({ words }, i) => (
              <li key={i}>{words}</li>
            ))}
            {attempt.ball === null && <li>now {wordsOf(attempt)}</li>}
          </ul>
        </>
      )}
    </>
  );
}

function endWords({ shot }: TriedStroke): string {
  if (shot.kind === 'drop') return 'dropped, one penalty stroke or more';
  if (shot.next === null) return 'holed';
  const penalty = shot.penalty > 0 ? `, ${shot.penalty} penalty` : '';
  return `${END_WORDS[shot.endLie]}${penalty}`;
}

const END_WORDS = {
  ...{ rough: 'rough', fairway: 'fairway', green: 'green', bunker: 'sand', tee: 'tee', woods: 'trees' },
  ...{ longRough: 'long rough', path: 'path', penaltyYellow: 'yellow penalty area' },
  ...{ penaltyRed: 'red penalty area', outOfBounds: 'out of bounds' },
} as const;

function costCell({ cost, shot }: TriedStroke, words: Words): string {
  if (cost === null) return shot.kind === 'swing' ? 'not told' : '–';
  return cost.tooCloseToCall
    ? `${signedText(cost.cost, words)}, too close to call`
    : signedText(cost.cost, words);
}
