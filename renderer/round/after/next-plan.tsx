/** What the next plan changes, now that the player's shots are others: laws of clubs, choices, odds. */

import { spreadChanges } from '../../../core/round/feed-spread.ts';
import { recommendedOf } from '../../../core/round/round-hole.ts';
import { shotPhrase } from '../../panels/shot-words.ts';
import { signedText, strokesText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { useOutlook, useRound, useRoundHoles } from '../state/use-round.ts';
import { chanceWords } from '../target/odds-panel.tsx';
import { useWords } from '../../state/use-words.ts';

export function NextPlan() {
  const words = useWords();
  const before = useRound((state) => state.before);
  const player = useApp((app) => app.player?.value ?? null);
  const units = useApp((app) => app.settings.units);
  const holes = useRoundHoles();
  const outlook = useOutlook();
  if (before === null || player === null || player === before.player) return null;
  const laws = spreadChanges(before.player, player, units, words);
  const isWhole = holes.ready.length === holes.all.length;
  const changes = holes.ready.flatMap((hole) => {
    const was = before.holes.find((one) => one.hole === hole.hole);
    return was === undefined ? [] : [{ hole: hole.hole, was, now: recommendedOf(hole.plan) }];
  });
  const others = changes.filter(({ was, now }) => shotPhrase(was.option, words) !== shotPhrase(now, words));
  return (
    <section class="table-box" aria-label={words.round.next.name}>
      <h3>{words.round.next.title}</h3>
      {laws.length === 0 ? (
        <p>{words.round.next.noLaw}</p>
      ) : (
        <ul class="review-words">
          {laws.map(({ club, swing, words: law }) => (
            <li key={`${club} ${swing}`}>{law}</li>
          ))}
        </ul>
      )}
      <p role="status">
        {isWhole && outlook !== null && before.expected !== null
          ? words.round.next.odds({
              before: words.figures.fixed(before.expected, 1),
              after: words.figures.fixed(outlook.odds.expected, 1),
              difference: signedText(outlook.odds.expected - before.expected, words),
              target: outlook.words,
              chanceBefore: chanceWords(before.chance ?? 0, words),
              chanceAfter: chanceWords(outlook.odds.target?.chance ?? 0, words),
            })
          : words.round.next.soFar({ ready: holes.ready.length, total: holes.all.length })}
      </p>
      {isWhole && (
        <p>
          {others.length === 0
            ? words.round.next.same
            : words.round.next.other({
                count: others.length,
                holes: others
                  .map(({ hole, was, now }) =>
                    words.round.next.hole({
                      hole,
                      was: shotPhrase(was.option, words),
                      now: shotPhrase(now, words),
                      from: strokesText(was.expected, words),
                      to: strokesText(now.meanStrokes, words),
                    }),
                  )
                  .join('; '),
              })}
        </p>
      )}
    </section>
  );
}
