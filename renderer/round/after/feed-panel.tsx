/** Shots of the round into the player's measured ones, with consent for this round only; then what the next plan changes. */

import { useMemo, useState } from 'preact/hooks';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import { shotsForSpread } from '../../../core/round/feed-spread.ts';
import type { RoundDocument } from '../../../core/round/format.ts';
import { countText } from '../../state/measures.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { feedShots } from '../effects/feed-shots.ts';
import { roundStoreOf, useOutlook, useRoundHoles } from '../state/use-round.ts';
import { NextPlan } from './next-plan.tsx';

interface Props {
  readonly round: RoundDocument;
  readonly isFixed: boolean;
  readonly change: (label: string, round: RoundDocument) => void;
}

export function FeedPanel({ round, isFixed, change }: Props) {
  const tools = useTools();
  const course = useApp((app) => app.course?.value ?? null);
  const player = useApp((app) => app.player?.value ?? null);
  const entry = useApp((app) => app.player?.entry ?? null);
  const holes = useRoundHoles();
  const outlook = useOutlook();
  const [isBusy, setBusy] = useState(false);
  const given = useMemo(() => {
    if (player === null || course === null) return null;
    const same = course.name === round.course.name;
    return shotsForSpread(round, player, (number) => {
      const hole = course.holes.find((one) => one.number === number);
      const middle = hole?.line[Math.floor(hole.line.length / 2)];
      return !same || middle === undefined ? null : makeLocalFrame(middle);
    });
  }, [round, player, course]);
  if (given === null || entry === null || player === null) return null;
  const fed = typeof round['fed'] === 'object' && round['fed'] !== null;
  const isOther = player.name !== round.player.name;
  return (
    <section class="table-box" aria-label="Shots for the spread">
      <h3>Shots for your spread</h3>
      <label class="switch">
        <input
          type="checkbox"
          checked={round.feedsSpread === true}
          disabled={isFixed || fed}
          onChange={(event) =>
            change('consent to use the shots', { ...round, feedsSpread: event.currentTarget.checked })
          }
        />
        I allow the shots of this round to join my measured shots
      </label>
      {given.consented && (
        <>
          <p>
            {countText(given.shots.length, 'shot says', 'shots say')} something about a club: a full swing
            from a good lie with its start, aim and end.{' '}
            {given.leftOut.length > 0 && (
              <details>
                <summary>{countText(given.leftOut.length, 'shot is', 'shots are')} left out</summary>
                <ul>
                  {given.leftOut.map(({ hole, shot, reason }) => (
                    <li key={`${hole} ${shot}`}>
                      Hole {hole}, shot {shot}: {reason}.
                    </li>
                  ))}
                </ul>
              </details>
            )}
          </p>
          {isOther && (
            <p class="warning">
              The round is {round.player.name}’s, but {player.name} is open. Open the right player first.
            </p>
          )}
          {fed ? (
            <p>They have joined the measured shots.</p>
          ) : (
            <button
              type="button"
              class="main-button"
              disabled={given.shots.length === 0 || isBusy || isOther || isFixed}
              onClick={() => {
                setBusy(true);
                void feedShots(tools, roundStoreOf(tools), given.shots, holes, outlook).then((done) => {
                  setBusy(false);
                  if (done) change('use the shots', { ...round, fed: { shots: given.shots.length } });
                });
              }}
            >
              Add {countText(given.shots.length, 'shot', 'shots')} to{' '}
              {entry.readOnly ? `a copy of ${player.name}` : player.name}
            </button>
          )}
        </>
      )}
      <NextPlan />
    </section>
  );
}
