/** What the putts on record say: error of direction and of length, and the chance to hole that follows. */

import { TEST_DISTANCES_FT } from '../../../core/player/edits/putting.ts';
import type { PuttingReading } from '../../../core/player/read-putting.ts';
import { chanceToHole } from '../../../core/putting/capture.ts';
import { chanceText } from '../../state/measures.ts';
import { sourceText } from '../words.ts';

const DEGREE = Math.PI / 180;
const FOOT_M = 0.3048;

export function PuttingResult({ reading }: { readonly reading: PuttingReading }) {
  const { skill, fit, source, warning } = reading;
  const direction = fit?.intervals.directionSd;
  const length = fit?.intervals.distanceSdShare;
  const chance = (distanceFt: number): number => chanceToHole(distanceFt * FOOT_M, skill);
  return (
    <section class="bag-card" aria-label="Putting">
      <h2>Putting</h2>
      <dl class="bag-figures">
        <div>
          <dt>Direction ±</dt>
          <dd>
            <strong>{(skill.directionSd / DEGREE).toFixed(2)}°</strong>
            {direction !== undefined && (
              <small>
                {(direction.low / DEGREE).toFixed(2)} to {(direction.high / DEGREE).toFixed(2)}
              </small>
            )}
          </dd>
        </div>
        <div>
          <dt>Length ±</dt>
          <dd>
            <strong>{(100 * skill.distanceSdShare).toFixed(0)} %</strong>
            {length !== undefined && (
              <small>
                {(100 * length.low).toFixed(0)} to {(100 * length.high).toFixed(0)}
              </small>
            )}
          </dd>
        </div>
      </dl>
      <table class="bag-table">
        <caption class="unseen">Chance to hole by distance</caption>
        <thead>
          <tr>
            <th scope="col">From</th>
            {TEST_DISTANCES_FT.map((feet) => (
              <th key={feet} scope="col">
                {feet} ft
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Chance to hole</th>
            {TEST_DISTANCES_FT.map((feet) => (
              <td key={feet}>{chanceText(chance(feet))}</td>
            ))}
          </tr>
        </tbody>
      </table>
      {warning !== undefined && (
        <p class="warning" role="alert">
          {warning.message}
        </p>
      )}
      <p class="faint small-print">{restsOn(reading, sourceText(source))}</p>
    </section>
  );
}

function restsOn({ source, fit }: PuttingReading, words: string): string {
  if (source.from === 'measured') {
    const open = fit === undefined ? [] : unsettled(fit.isSettled);
    const more =
      open.length === 0
        ? ''
        : ` The record hardly tells the error of ${open.join(' and of ')} yet: it leans on what is expected. ${open.includes('length') ? 'Putts of 20 feet and more tell most.' : 'Putts of 3 to 10 feet tell most.'}`;
    return `From ${source.shots} putts on record, by maximum likelihood; below each number the interval that holds the truth nine times in ten.${more}`;
  }
  if (source.from === 'stated')
    return 'As the file states it, not from putts on record. The test takes ten minutes.';
  return `From the ${words}: not your putts. The test takes ten minutes.`;
}

function unsettled(isSettled: {
  readonly directionSd: boolean;
  readonly distanceSdShare: boolean;
}): string[] {
  return [...(isSettled.directionSd ? [] : ['direction']), ...(isSettled.distanceSdShare ? [] : ['length'])];
}
