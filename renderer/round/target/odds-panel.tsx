/** The odds of the target, the expected score, the range, and what these rest on. */

import { recommendedOf } from '../../../core/round/round-hole.ts';
import { FORM_SD_STROKES } from '../../../core/round/score-distribution.ts';
import { countText, signedText } from '../../state/measures.ts';
import { type Outlook, parOf, type RoundHoles } from '../state/planned-holes.ts';
import { DistributionPicture } from './distribution-picture.tsx';
import { useWords } from '../../state/use-words.ts';

export function OddsPanel({ outlook, holes }: { readonly outlook: Outlook; readonly holes: RoundHoles }) {
  const words = useWords();
  const { odds, target } = outlook;
  const isWhole = holes.ready.length === holes.all.length;
  const par = parOf(holes.ready);
  const error = Math.hypot(...holes.ready.map(({ plan }) => recommendedOf(plan).standardError));
  return (
    <section class="advice-card odds-panel" aria-label="Odds of the target">
      {isWhole ? (
        <>
          <p class="kicker">
            Chance to {outlook.words}: {target} or fewer on par {par}
          </p>
          <div class="odds-line">
            <strong class="big-odds">{chanceWords(odds.target?.chance ?? 0)}</strong>
            <dl class="figures">
              <div>
                <dt>Expected score</dt>
                <dd>
                  {odds.expected.toFixed(1)} <small>{signedText(odds.expected - par, words, 1)} to par</small>
                </dd>
              </div>
              <div>
                <dt>8 of 10 rounds</dt>
                <dd>
                  {odds.range.low} to {odds.range.high}{' '}
                  <small>{Math.round(100 * odds.range.share)} of 100</small>
                </dd>
              </div>
            </dl>
          </div>
        </>
      ) : (
        <>
          <p class="kicker">
            {holes.ready.length} of {countText(holes.all.length, 'hole is', 'holes are')} worked out; the odds
            to {outlook.words} come with the last of them
          </p>
          <div class="odds-line">
            <strong class="big-odds">{odds.expected.toFixed(1)}</strong>
            <p class="faint">
              expected over these {holes.ready.length}, par {par}
            </p>
          </div>
        </>
      )}
      <DistributionPicture outlook={outlook} par={par} />
      <p class="faint">
        An estimate from this player’s shots: ± {error.toFixed(2)} strokes from sampling, and from day to day
        form is taken to move all holes together by a standard deviation of {odds.formSd.toFixed(1)} strokes
        over 18 holes
        {odds.formSd === FORM_SD_STROKES
          ? ' (an assumption: no figure for club players was found; Cotton, McIntyre & Price 2016 and Knuth 2008 bound it)'
          : ' (your own figure)'}
        .
      </p>
    </section>
  );
}

/** Whole per cents, and what lies beyond them said as such. */
export function chanceWords(chance: number): string {
  if (chance < 0.005) return chance === 0 ? '0 %' : 'under 1 %';
  if (chance > 0.995) return 'over 99 %';
  return `${Math.round(100 * chance)} %`;
}

/** To a tenth of a per cent, for chances that are held against each other. */
export function tenthText(chance: number): string {
  return `${(100 * chance).toFixed(1)} %`;
}
