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
  const laws = spreadChanges(before.player, player, units);
  const isWhole = holes.ready.length === holes.all.length;
  const changes = holes.ready.flatMap((hole) => {
    const was = before.holes.find((one) => one.hole === hole.hole);
    return was === undefined ? [] : [{ hole: hole.hole, was, now: recommendedOf(hole.plan) }];
  });
  const others = changes.filter(({ was, now }) => shotPhrase(was.option, words) !== shotPhrase(now, words));
  return (
    <section class="table-box" aria-label="The next plan">
      <h3>The next plan changes</h3>
      {laws.length === 0 ? (
        <p>No club’s law has changed.</p>
      ) : (
        <ul class="review-words">
          {laws.map(({ club, swing, words }) => (
            <li key={`${club} ${swing}`}>{words}</li>
          ))}
        </ul>
      )}
      <p role="status">
        {isWhole && outlook !== null && before.expected !== null
          ? `Expected score ${before.expected.toFixed(1)} → ${outlook.odds.expected.toFixed(1)} (${signedText(outlook.odds.expected - before.expected, words)}); chance to ${outlook.words} ${chanceWords(before.chance ?? 0)} → ${chanceWords(outlook.odds.target?.chance ?? 0)}.`
          : `${holes.ready.length} of ${holes.all.length} holes are planned anew; odds and choices follow.`}
      </p>
      {isWhole && (
        <p>
          {others.length === 0
            ? 'The club from every tee stays the same.'
            : `Another club from ${others.length === 1 ? 'one tee' : `${others.length} tees`}: ${others
                .map(
                  ({ hole, was, now }) =>
                    `hole ${hole} ${shotPhrase(was.option, words)} → ${shotPhrase(now, words)} (${strokesText(was.expected, words)} → ${strokesText(now.meanStrokes, words)})`,
                )
                .join('; ')}.`}
        </p>
      )}
    </section>
  );
}
