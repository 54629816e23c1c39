/** Try it out: the hole shot by shot against the own spread, club and aim chosen oneself; what the choice cost; replays. */

import { useMemo, useState } from 'preact/hooks';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import { LIE_NAMES, Lie } from '../../../core/ground/lies.ts';
import type { Spot } from '../../../core/plan/model.ts';
import type { Decision } from '../../../core/round/own-policy.ts';
import { Field } from '../../panels/field.tsx';
import { lengthText, strokesText, toHoleText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { HoleMap, pathOf, type Place } from '../after/hole-map.tsx';
import { useRoundHoles } from '../state/use-round.ts';
import { StrokesList } from './strokes-list.tsx';
import { choiceTowards, type TryHole } from './try-state.ts';
import { type Trying, useTrying } from './use-trying.ts';
import { useWords } from '../../state/use-words.ts';

export function TryPage() {
  const words = useWords();
  const holes = useRoundHoles();
  const [number, setNumber] = useState<number | null>(null);
  const hole = holes.ready.find((one) => one.hole === number) ?? holes.ready[0] ?? null;
  const trying = useTrying(hole);
  return (
    <>
      <h2>{words.round.pages.try}</h2>
      {hole === null ? (
        <p class="faint">{words.round.try.soon}</p>
      ) : (
        <>
          <div class="form-line print-line">
            <Field
              name={words.round.hole}
              control={(id) => (
                <select
                  id={id}
                  value={hole.hole}
                  onChange={(event) => setNumber(Number(event.currentTarget.value))}
                >
                  {holes.ready.map((one) => (
                    <option key={one.hole} value={one.hole}>
                      {words.round.try.holeOption({ hole: one.hole, par: one.par })}
                    </option>
                  ))}
                </select>
              )}
            />
            <span class="faint">{words.round.try.note}</span>
          </div>
          {trying.state !== null && <TryBoard state={trying.state} trying={trying} />}
        </>
      )}
    </>
  );
}

function TryBoard({ state, trying }: { readonly state: TryHole; readonly trying: Trying }) {
  const words = useWords();
  const course = useApp((app) => app.course?.value ?? null);
  const spreads = useApp((app) => app.player?.value.spreads ?? null);
  const origin = useApp((app) => app.work[state.hole]?.result?.origin ?? null);
  const pinAt = useApp((app) => app.work[state.hole]?.result?.pin ?? null);
  const units = useApp((app) => app.settings.units);
  const [spreadIndex, setSpreadIndex] = useState<number | null>(null);
  const [target, setTarget] = useState<Spot | null>(null);
  const hole = course?.holes.find(({ number }) => number === state.hole);
  const frame = useMemo(() => (origin === null ? null : makeLocalFrame(origin)), [origin]);
  const pin = frame !== null && pinAt !== null ? frame.toSpot(pinAt) : null;
  const first = state.attempt.strokes[0]?.shot.from ?? state.attempt.ball?.spot ?? null;
  const also = useMemo(
    () => [pin, first].flatMap((spot) => (spot === null ? [] : [spot])),
    [pin?.x, pin?.y, first?.x, first?.y],
  );
  if (course === null || hole === undefined || frame === null || pin === null || spreads === null)
    return null;
  const { ball } = state.attempt;
  const own = state.own?.kind === 'swing' ? state.own.choice : null;
  const index = spreadIndex ?? own?.spreadIndex ?? 0;
  const spread = spreads[index];
  const choice =
    ball === null || spread === undefined
      ? null
      : target === null && own?.spreadIndex === index
        ? own
        : choiceTowards(ball, target ?? pin, index, spread);
  const aim =
    ball === null || choice === null
      ? null
      : {
          x: ball.spot.x + Math.sin(choice.bearing) * choice.carryM,
          y: ball.spot.y + Math.cos(choice.bearing) * choice.carryM,
        };
  const isPutt = ball?.lie === Lie.green;
  const go = (decision: Decision): void => {
    setTarget(null);
    setSpreadIndex(null);
    void trying.play(decision);
  };
  return (
    <div class="places">
      <HoleMap
        {...{ course, hole, frame, also }}
        label={words.round.try.chooseAim({ hole: state.hole })}
        choose={(spot) => setTarget(spot)}
      >
        {(place) => (
          <>
            {state.others.map(({ attempt }, i) => (
              <path key={i} class="map-plan" d={trackOf(attempt, place)} />
            ))}
            <path class="map-shot" d={trackOf(state.attempt, place)} />
            {aim !== null && ball !== null && !isPutt && (
              <>
                <path class="map-aim" d={pathOf([place(ball.spot), place(aim)])} />
                <circle class="map-aim" cx={place(aim)[0]} cy={place(aim)[1]} r="7" />
              </>
            )}
            <Pin at={place(pin)} />
            {ball !== null && (
              <circle class="map-ball" cx={place(ball.spot)[0]} cy={place(ball.spot)[1]} r="5" />
            )}
          </>
        )}
      </HoleMap>
      <div class="places-list">
        {ball === null ? (
          <p role="status">
            <strong>{words.round.try.holed({ score: state.attempt.score })}</strong>{' '}
            {words.round.try.planExpects({
              par: hole.par,
              strokes: strokesText(state.attempt.strokes[0]?.shot.expectedBefore ?? NaN, words),
            })}
          </p>
        ) : (
          <>
            <p role="status">
              {words.round.try.stroke({
                number: ball.taken + 1,
                where: words.round.try.where[LIE_NAMES[ball.lie]!],
                length: toHoleText(
                  Math.hypot(pin.x - ball.spot.x, pin.y - ball.spot.y),
                  isPutt,
                  units,
                  words,
                ),
              })}
            </p>
            <div class="form-line">
              {isPutt ? (
                <button
                  type="button"
                  class="main-button"
                  disabled={trying.isBusy}
                  onClick={() => go({ kind: 'putt' })}
                >
                  {words.round.try.putt}
                </button>
              ) : (
                <>
                  <Field
                    name={words.round.try.club}
                    control={(id) => (
                      <select
                        id={id}
                        value={index}
                        onChange={(event) => setSpreadIndex(Number(event.currentTarget.value))}
                      >
                        {spreads.map(({ club, swing, carryMean }, i) => (
                          <option key={`${club.name} ${swing}`} value={i}>
                            {club.name}
                            {swing === 'full' ? '' : `, ${words.golf.swings[swing]}`}{' '}
                            {lengthText(carryMean, units)}
                          </option>
                        ))}
                      </select>
                    )}
                  />
                  <button
                    type="button"
                    class="main-button"
                    disabled={trying.isBusy || choice === null}
                    onClick={() => {
                      if (choice !== null) go({ kind: 'swing', choice });
                    }}
                  >
                    {words.round.try.play}
                  </button>
                </>
              )}
              {state.own !== null && (
                <button
                  type="button"
                  class="text-button"
                  disabled={trying.isBusy}
                  onClick={() => {
                    if (state.own !== null) go(state.own);
                  }}
                >
                  {state.own.kind === 'drop' ? words.round.try.dropAsPlan : words.round.try.playPlan}
                </button>
              )}
              <button
                type="button"
                class="text-button"
                disabled={trying.isBusy}
                onClick={() => void trying.playOut()}
              >
                {words.round.try.planToEnd}
              </button>
            </div>
          </>
        )}
        <StrokesList state={state} trying={trying} />
      </div>
    </div>
  );
}

function trackOf({ strokes }: TryHole['attempt'], place: Place): string {
  return strokes.map(({ shot }) => pathOf([place(shot.from), place(shot.end)])).join('');
}

function Pin({ at: [x, y] }: { readonly at: readonly [number, number] }) {
  return <path d={`M${x} ${y}v-14l9 3.5l-9 3.5`} fill="#b34700" stroke="#111111" stroke-width="1" />;
}
