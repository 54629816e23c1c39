/** The odds of the target, the expected score, the range, and what these rest on. */

import { recommendedOf } from '../../../core/round/round-hole.ts';
import { FORM_SD_STROKES } from '../../../core/round/score-distribution.ts';
import { signedText } from '../../state/measures.ts';
import { type Outlook, parOf, type RoundHoles } from '../state/planned-holes.ts';
import { DistributionPicture } from './distribution-picture.tsx';
import { useWords } from '../../state/use-words.ts';
import type { Words } from '../../../core/words/words.ts';

export function OddsPanel({ outlook, holes }: { readonly outlook: Outlook; readonly holes: RoundHoles }) {
  const words = useWords();
  const { odds, target } = outlook;
  const isWhole = holes.ready.length === holes.all.length;
  const par = parOf(holes.ready);
  const error = Math.hypot(...holes.ready.map(({ plan }) => recommendedOf(plan).standardError));
  return (
    <section class="advice-card odds-panel" aria-label={words.round.odds.name}>
      {isWhole ? (
        <>
          <p class="kicker">{words.round.odds.chance({ words: outlook.words, target, par })}</p>
          <div class="odds-line">
            <strong class="big-odds">{chanceWords(odds.target?.chance ?? 0, words)}</strong>
            <dl class="figures">
              <div>
                <dt>{words.round.odds.expectedScore}</dt>
                <dd>
                  {words.figures.fixed(odds.expected, 1)}{' '}
                  <small>
                    {words.round.odds.toPar({ difference: signedText(odds.expected - par, words, 1) })}
                  </small>
                </dd>
              </div>
              <div>
                <dt>{words.round.odds.eightOfTen}</dt>
                <dd>
                  {words.round.odds.range({ low: odds.range.low, high: odds.range.high })}{' '}
                  <small>{words.round.odds.ofHundred({ count: Math.round(100 * odds.range.share) })}</small>
                </dd>
              </div>
            </dl>
          </div>
        </>
      ) : (
        <>
          <p class="kicker">
            {words.round.odds.waiting({
              ready: holes.ready.length,
              count: holes.all.length,
              words: outlook.words,
            })}
          </p>
          <div class="odds-line">
            <strong class="big-odds">{words.figures.fixed(odds.expected, 1)}</strong>
            <p class="faint">{words.round.odds.expectedOver({ holes: holes.ready.length, par })}</p>
          </div>
        </>
      )}
      <DistributionPicture outlook={outlook} par={par} />
      <p class="faint">
        {words.round.odds.note({
          error: words.figures.fixed(error, 2),
          form: words.figures.fixed(odds.formSd, 1),
          source: ` ${odds.formSd === FORM_SD_STROKES ? words.round.odds.assumed : words.round.odds.own}`,
        })}
      </p>
    </section>
  );
}

/** Whole per cents, and what lies beyond them said as such. */
export function chanceWords(chance: number, { round }: Words): string {
  if (chance < 0.005) return chance === 0 ? '0 %' : round.chanceUnder;
  if (chance > 0.995) return round.chanceOver;
  return `${Math.round(100 * chance)} %`;
}

/** To a tenth of a per cent, for chances that are held against each other. */
export function tenthText(chance: number, { figures }: Words): string {
  return `${figures.fixed(100 * chance, 1)} %`;
}
