/** What to play from each tee to reach the aim, given how the round stands. */

import { strokesWords } from '../../../core/round/strokes-words.ts';
import { useApp } from '../../state/use-app.ts';
import { missingFor, playingNow } from '../effects/follow-playing.ts';
import { useRound, useRoundHoles } from '../state/use-round.ts';
import { tenthText } from '../target/odds-panel.tsx';
import { DeparturesTable } from './departures-table.tsx';
import { GameForm } from './game-form.tsx';
import { HelpPanel } from './help-panel.tsx';
import { StandingForm } from './standing-form.tsx';

export function PlayingPage() {
  const state = useRound((round) => round);
  const holes = useRoundHoles();
  const missing = useApp((app) => missingFor(app, state));
  const answer = useApp((app) => playingNow(app, state));
  return (
    <>
      <h2>Playing to the target</h2>
      <GameForm />
      {missing !== null ? (
        <p class="faint" role="status">
          {missing === 'holes'
            ? `${holes.ready.length} of ${holes.all.length} holes are worked out; this needs all of them.`
            : 'The opponent’s scores come with the ledger on the first page; it is being counted.'}
        </p>
      ) : answer === null ? (
        <p class="faint" role="status">
          Working out what to play from each tee …
        </p>
      ) : (
        <>
          <section class="advice-card" aria-label="Odds by the best choices">
            <div class="odds-line">
              <strong class="big-odds">{tenthText(answer.plan.withForm.chance)}</strong>
              <p>
                with the best choice on each tee, as the round goes;{' '}
                {tenthText(answer.plan.withForm.chanceByLowestMean)} with the lowest mean on each
                {differenceWords(answer.plan.withForm.chance - answer.plan.withForm.chanceByLowestMean)}
                {state.wishes.game === 'match' ? ' A halved match counts half.' : ''}
              </p>
            </div>
            {answer.plan.aim.kind !== 'score' && (
              <p class="faint">
                {strokesWords(
                  answer.plan.aim.received,
                  holes.all.map(({ number }) => number),
                )}
              </p>
            )}
          </section>
          <section class="table-box" aria-label="Departures from the lowest mean">
            <DeparturesTable answer={answer} holes={holes} />
          </section>
          <StandingForm answer={answer} holes={holes} />
        </>
      )}
      <HelpPanel />
    </>
  );
}

function differenceWords(difference: number): string {
  const points = 100 * difference;
  return points < 0.05 ? ': the same, to a tenth of a per cent.' : `, ${points.toFixed(1)} points fewer.`;
}
