/** What to play from each tee to reach the aim, given how the round stands. */

import { strokesWords } from '../../../core/round/strokes-words.ts';
import { useApp } from '../../state/use-app.ts';
import { missingFor, playingNow } from '../effects/follow-playing.ts';
import { useRound, useRoundHoles } from '../state/use-round.ts';
import { tenthText } from '../target/odds-panel.tsx';
import { DeparturesTable } from './departures-table.tsx';
import { GameForm } from './game-form.tsx';
import { MissingNote } from './missing-note.tsx';
import { HelpPanel } from './help-panel.tsx';
import { StandingForm } from './standing-form.tsx';
import { useWords } from '../../state/use-words.ts';
import type { Words } from '../../../core/words/words.ts';

export function PlayingPage() {
  const words = useWords();
  const state = useRound((round) => round);
  const holes = useRoundHoles();
  const missing = useApp((app) => missingFor(app, state));
  const answer = useApp((app) => playingNow(app, state));
  return (
    <>
      <h2>{words.round.playing.title}</h2>
      <GameForm />
      {missing !== null ? (
        <MissingNote missing={missing} />
      ) : answer === null ? (
        <p class="faint" role="status">
          {words.round.playing.working}
        </p>
      ) : (
        <>
          <section class="advice-card" aria-label={words.round.playing.oddsName}>
            <div class="odds-line">
              <strong class="big-odds">{tenthText(answer.plan.withForm.chance, words)}</strong>
              <p>
                {words.round.playing.withBest({
                  chance: tenthText(answer.plan.withForm.chanceByLowestMean, words),
                  difference: differenceWords(
                    answer.plan.withForm.chance - answer.plan.withForm.chanceByLowestMean,
                    words,
                  ),
                })}
                {state.wishes.game === 'match' ? ` ${words.round.playing.halved}` : ''}
              </p>
            </div>
            <p data-odds="average-day">
              {words.round.playing.averageDay({
                chance: tenthText(answer.plan.chance, words),
                lowest: tenthText(answer.plan.chanceByLowestMean, words),
              })}
            </p>
            {answer.plan.aim.kind !== 'score' && (
              <p class="faint">
                {strokesWords(
                  answer.plan.aim.received,
                  holes.all.map(({ number }) => number),
                  words,
                )}
              </p>
            )}
          </section>
          <section class="table-box" aria-label={words.round.playing.departures}>
            <DeparturesTable answer={answer} holes={holes} />
          </section>
          <StandingForm answer={answer} holes={holes} />
        </>
      )}
      <HelpPanel />
    </>
  );
}

function differenceWords(difference: number, words: Words): string {
  const points = 100 * difference;
  return points < 0.05
    ? words.round.playing.same
    : words.round.playing.fewer({ points: words.figures.fixed(points, 1) });
}
