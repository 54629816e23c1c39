/** What the putts on record say: error of direction and of length, and the chance to hole that follows. */

import { faultText } from '../../../core/words/told.ts';
import type { Words } from '../../../core/words/words.ts';
import { TEST_DISTANCES_FT } from '../../../core/player/edits/putting.ts';
import type { PuttingReading } from '../../../core/player/read-putting.ts';
import { chanceToHole } from '../../../core/putting/capture.ts';
import { chanceText } from '../../state/measures.ts';
import { sourceText } from '../words.ts';
import { useWords } from '../../state/use-words.ts';

const DEGREE = Math.PI / 180;
const FOOT_M = 0.3048;

export function PuttingResult({ reading }: { readonly reading: PuttingReading }) {
  const words = useWords();
  const { skill, fit, source, warning } = reading;
  const direction = fit?.intervals.directionSd;
  const length = fit?.intervals.distanceSdShare;
  const chance = (distanceFt: number): number => chanceToHole(distanceFt * FOOT_M, skill);
  return (
    <section class="bag-card" aria-label={words.shortGame.putting.name}>
      <h2>{words.shortGame.putting.name}</h2>
      <dl class="bag-figures">
        <div>
          <dt>{words.shortGame.putting.direction}</dt>
          <dd>
            <strong>{words.figures.fixed(skill.directionSd / DEGREE, 2)}°</strong>
            {direction !== undefined && (
              <small>
                {words.player.range({
                  low: words.figures.fixed(direction.low / DEGREE, 2),
                  high: words.figures.fixed(direction.high / DEGREE, 2),
                })}
              </small>
            )}
          </dd>
        </div>
        <div>
          <dt>{words.shortGame.putting.length}</dt>
          <dd>
            <strong>{(100 * skill.distanceSdShare).toFixed(0)} %</strong>
            {length !== undefined && (
              <small>
                {words.player.range({
                  low: (100 * length.low).toFixed(0),
                  high: (100 * length.high).toFixed(0),
                })}
              </small>
            )}
          </dd>
        </div>
      </dl>
      <table class="bag-table">
        <caption class="unseen">{words.shortGame.putting.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.shortGame.from}</th>
            {TEST_DISTANCES_FT.map((feet) => (
              <th key={feet} scope="col">
                {feet} ft
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">{words.shortGame.putting.chance}</th>
            {TEST_DISTANCES_FT.map((feet) => (
              <td key={feet}>{chanceText(chance(feet))}</td>
            ))}
          </tr>
        </tbody>
      </table>
      {warning !== undefined && (
        <p class="warning" role="alert">
          {faultText(warning, words).message}
        </p>
      )}
      <p class="faint small-print">{restsOn(reading, sourceText(source, words), words)}</p>
    </section>
  );
}

function restsOn({ source, fit }: PuttingReading, from: string, words: Words): string {
  if (source.from === 'measured') {
    const { putting } = words.shortGame;
    const isOpen = {
      direction: fit?.isSettled.directionSd === false,
      length: fit?.isSettled.distanceSdShare === false,
    };
    const what = isOpen.direction && isOpen.length ? 'both' : isOpen.direction ? 'direction' : 'length';
    const more =
      isOpen.direction || isOpen.length
        ? putting.hardly({
            what: putting.errors[what],
            tell: isOpen.length ? putting.longTell : putting.shortTell,
          })
        : '';
    return words.shortGame.putting.restsOnPutts({ putts: source.shots, more });
  }
  if (source.from === 'stated') return words.shortGame.putting.stated;
  return words.shortGame.putting.preset({ source: from });
}
