/** Shots of the round into the player's measured ones, with consent for this round only; then what the next plan changes. */

import { useMemo, useState } from 'preact/hooks';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import { parsePlayerDocumentText } from '../../../core/player/parse.ts';
import { countAmong } from '../../../core/round/fed-shots.ts';
import { shotsForSpread } from '../../../core/round/feed-spread.ts';
import type { RoundDocument } from '../../../core/round/format.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { feedShots, takeShotsOut } from '../effects/feed-shots.ts';
import { roundStoreOf, useOutlook, useRoundHoles } from '../state/use-round.ts';
import { NextPlan } from './next-plan.tsx';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly round: RoundDocument;
  readonly isFixed: boolean;
  readonly change: (label: string, round: RoundDocument) => void;
}

export function FeedPanel({ round, isFixed, change }: Props) {
  const words = useWords();
  const tools = useTools();
  const course = useApp((app) => app.course?.value ?? null);
  const player = useApp((app) => app.player?.value ?? null);
  const entry = useApp((app) => app.player?.entry ?? null);
  const playerText = useApp((app) => app.player?.text ?? null);
  const holes = useRoundHoles();
  const outlook = useOutlook();
  const [isBusy, setBusy] = useState(false);
  const given = useMemo(() => {
    if (player === null || course === null) return null;
    const same = course.name === round.course.name;
    return shotsForSpread(
      round,
      player,
      (number) => {
        const hole = course.holes.find((one) => one.number === number);
        const middle = hole?.line[Math.floor(hole.line.length / 2)];
        return !same || middle === undefined ? null : makeLocalFrame(middle);
      },
      words,
    );
  }, [round, player, course, words]);
  const kept = useMemo(() => {
    const parsed = playerText === null ? null : parsePlayerDocumentText(playerText);
    return parsed?.ok === true ? (parsed.value.document.shots ?? []) : [];
  }, [playerText]);
  if (given === null || entry === null || player === null) return null;
  const { held, current } = countAmong(kept, given.shots);
  const toAdd = given.shots.length - current;
  const run = (work: Promise<unknown>): void => {
    setBusy(true);
    void work.finally(() => setBusy(false));
  };
  const isOther = player.name !== round.player.name;
  return (
    <section class="table-box" aria-label={words.round.feed.name}>
      <h3>{words.round.feed.title}</h3>
      <label class="switch">
        <input
          type="checkbox"
          checked={round.feedsSpread === true}
          disabled={isFixed || held > 0}
          onChange={(event) =>
            change(words.round.feed.consentStep, { ...round, feedsSpread: event.currentTarget.checked })
          }
        />
        {words.round.feed.consent}
      </label>
      {given.consented && (
        <>
          <p>
            {words.round.feed.say({ count: given.shots.length })}
            {given.leftOut.length > 0 && (
              <details>
                <summary>{words.round.feed.leftOut({ count: given.leftOut.length })}</summary>
                <ul>
                  {given.leftOut.map(({ hole, shot, reason }) => (
                    <li key={`${hole} ${shot}`}>{words.round.feed.because({ hole, shot, reason })}</li>
                  ))}
                </ul>
              </details>
            )}
          </p>
          {isOther && (
            <p class="warning">
              {words.round.feed.otherPlayer({ owner: round.player.name, open: player.name })}
            </p>
          )}
          {held > 0 && (
            <p>
              {words.round.feed.joined({ held, count: given.shots.length })}{' '}
              <button
                type="button"
                class="small-button"
                disabled={isBusy || isOther || entry.readOnly}
                onClick={() => run(takeShotsOut(tools, given.shots))}
              >
                {words.round.feed.takeOut}
              </button>
            </p>
          )}
          {(toAdd > 0 || held === 0) && (
            <button
              type="button"
              class="main-button"
              disabled={toAdd === 0 || isBusy || isOther || isFixed}
              onClick={() => run(feedShots(tools, roundStoreOf(tools), given.shots, holes, outlook))}
            >
              {words.round.feed.add({
                count: toAdd,
                player: entry.readOnly ? words.round.feed.copyOf({ name: player.name }) : player.name,
              })}
            </button>
          )}
        </>
      )}
      <NextPlan />
    </section>
  );
}
