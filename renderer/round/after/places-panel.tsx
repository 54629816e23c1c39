/** Where the shots of one hole ended, clicked on the map in the order in which they were played. */

import { useMemo, useState } from 'preact/hooks';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import type { Course, Hole } from '../../../core/course/model.ts';
import { lieOfPlace } from '../../../core/round/place-lie.ts';
import { LIE_NAMES } from '../../../core/ground/lies.ts';
import type { Spot } from '../../../core/plan/model.ts';
import {
  PENALTY_KINDS,
  type PenaltyKind,
  type RecordedStroke,
  type RoundDocument,
} from '../../../core/round/format.ts';
import {
  joinedAfter,
  likelyPenalty,
  needsDrop,
  startAfter,
  sumOfHole,
  withPenalty,
  withShots,
} from '../../../core/round/penalties.ts';
import { withHole } from '../../../core/round/record.ts';
import { plannedHole } from '../../../core/round/review.ts';
import type { PlayerModel } from '../../../core/player/model.ts';
import { lengthText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { HoleMap, pathOf } from './hole-map.tsx';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly course: Course;
  readonly hole: Hole;
  readonly player: PlayerModel | null;
  readonly round: RoundDocument;
  readonly tee: readonly [number, number];
  readonly pin: readonly [number, number];
  readonly change: (label: string, round: RoundDocument) => void;
  readonly close: () => void;
}

export function PlacesPanel({ course, hole, player, round, tee, pin, change, close }: Props) {
  const words = useWords();
  const units = useApp((app) => app.settings.units);
  const played = round.played.find((one) => one.hole === hole.number);
  const frame = useMemo(
    () => makeLocalFrame(hole.line[Math.floor(hole.line.length / 2)] ?? tee),
    [hole, tee],
  );
  const [asked, setAsked] = useState<number | null>(null);
  if (played === undefined) return null;
  const shots = played.shots ?? [];
  const planned = plannedHole(round, hole.number);
  const chosen = planned?.options.find(({ id }) => id === planned.chosen);
  const clubs = [...new Set((player?.spreads ?? []).map(({ club }) => club.name))];
  const starts = [tee, ...shots.flatMap(({ to }) => (to === undefined ? [] : [to]))];
  /** The shot whose drop the next click gives: one that was asked for, or the last. */
  const dropOf =
    asked !== null && shots[asked] !== undefined
      ? asked
      : shots.length > 0 && needsDrop(shots.at(-1)!)
        ? shots.length - 1
        : null;
  const put = (next: readonly RecordedStroke[]): void => {
    setAsked(null);
    change(words.round.places.step({ hole: hole.number }), withHole(round, withShots(played, next)));
  };
  const choose = (spot: Spot): void => {
    if (dropOf === null) {
      add(spot);
      return;
    }
    const [lon, lat] = frame.toLonLat(spot);
    alter(dropOf, { drop: [lon, lat], dropLie: lieOfPlace(course, [lon, lat]) });
  };
  const add = (spot: Spot): void => {
    const last = shots.at(-1);
    const from = last === undefined ? tee : (startAfter(last)?.at ?? starts.at(-1) ?? tee);
    const isFirst = shots.length === 0;
    const club = isFirst ? (played.teeClub ?? chosen?.club) : undefined;
    const [lon, lat] = frame.toLonLat(spot);
    // Later shots were aimed nobody knows where: without an aim they say nothing about the spread.
    const aim = chosen !== undefined && chosen.club === club ? chosen.aim : pin;
    const fromLie = last === undefined ? 'tee' : startAfter(last)?.lie;
    const toLie = lieOfPlace(course, [lon, lat]);
    put([
      ...shots,
      withPenalty(
        {
          club: club ?? likelyClub(player, distance(frame.toSpot(from), frame.toSpot(pin))),
          ...(isFirst ? { swing: chosen?.swing ?? ('full' as const) } : {}),
          from: [from[0], from[1]],
          ...(fromLie === undefined ? {} : { fromLie }),
          ...(isFirst ? { aim: [aim[0], aim[1]] as const } : {}),
          to: [lon, lat],
          toLie,
        },
        likelyPenalty(toLie),
      ),
    ]);
  };
  const alter = (index: number, part: Partial<RecordedStroke>): void =>
    replace(index, { ...shots[index]!, ...part });
  const replace = (index: number, by: RecordedStroke): void => {
    const next = shots.map((shot, i) => (i === index ? by : shot));
    const { penaltyKind: was, drop: wasAt } = shots[index]!;
    // Only what moves the ball moves the start of the next stroke.
    put(was === by.penaltyKind && wasAt === by.drop ? next : joinedAfter(next, index));
  };
  const sum = sumOfHole(played);
  return (
    <section class="places" aria-label={words.round.places.name({ hole: hole.number })}>
      <HoleMap
        {...{ course, hole, frame }}
        also={[frame.toSpot(tee), frame.toSpot(pin)]}
        label={
          dropOf === null
            ? words.round.places.where({ hole: hole.number, shot: shots.length + 1 })
            : words.round.places.whereDropped({ hole: hole.number, shot: dropOf + 1 })
        }
        choose={choose}
      >
        {(place) => (
          <>
            {chosen !== undefined && (
              <path
                class="map-plan"
                d={pathOf([tee, chosen.aim].map((at) => place(frame.toSpot(pair(at)))))}
              />
            )}
            {shots.map(
              ({ from, to }, i) =>
                from !== undefined &&
                to !== undefined && (
                  <path
                    key={i}
                    class="map-shot"
                    d={pathOf([from, to].map((at) => place(frame.toSpot(pair(at)))))}
                  />
                ),
            )}
            {shots.map(({ drop }, i) => {
              if (drop === undefined) return null;
              const [x, y] = place(frame.toSpot(pair(drop)));
              return (
                <rect key={i} class="map-ball" x={x - 4} y={y - 4} width="8" height="8" data-drop={i + 1} />
              );
            })}
            {starts.map((at, i) => {
              const [x, y] = place(frame.toSpot(pair(at)));
              return (
                <g key={i}>
                  <circle class="map-ball" cx={x} cy={y} r="4.5" />
                  <text x={x + 8} y={y + 4}>
                    {i === 0 ? words.round.lies.tee : i}
                  </text>
                </g>
              );
            })}
            <Hole at={place(frame.toSpot(pin))} />
          </>
        )}
      </HoleMap>
      <div class="places-list">
        <div class="table-head">
          <h3>{words.round.places.title({ hole: hole.number })}</h3>
          <button type="button" class="small-button" onClick={close}>
            {words.round.places.done}
          </button>
        </div>
        <p class={dropOf === null ? 'faint' : undefined} role="status">
          {dropOf === null
            ? words.round.places.click({ shot: shots.length + 1 })
            : words.round.places.clickDrop({ shot: dropOf + 1 })}{' '}
          {dropOf !== null && shots[dropOf]?.from !== undefined && (
            <button
              type="button"
              class="small-button"
              onClick={() => {
                const { from, fromLie } = shots[dropOf]!;
                if (from !== undefined)
                  alter(dropOf, {
                    drop: [from[0], from[1]],
                    ...(fromLie === undefined ? {} : { dropLie: fromLie }),
                  });
              }}
            >
              {words.round.places.sameSpot}
            </button>
          )}
        </p>
        <ol>
          {shots.map((shot, i) => (
            <li key={i}>
              <select
                aria-label={words.round.places.clubOf({ shot: i + 1 })}
                value={shot.club}
                onChange={(event) => alter(i, { club: event.currentTarget.value })}
              >
                {[...new Set([...clubs, shot.club, 'Putter'])].map((club) => (
                  <option key={club} value={club}>
                    {club}
                  </option>
                ))}
              </select>{' '}
              {lengthText(distanceOf(frame, shot), units)} {words.round.places.to}{' '}
              <select
                aria-label={words.round.places.lieAfter({ shot: i + 1 })}
                value={shot.toLie ?? ''}
                onChange={(event) => {
                  const lie = LIE_NAMES.find((name) => name === event.currentTarget.value);
                  if (lie !== undefined) alter(i, { toLie: lie });
                }}
              >
                {LIE_NAMES.map((name) => (
                  <option key={name} value={name}>
                    {words.round.lies[name]}
                  </option>
                ))}
              </select>{' '}
              <label class="switch">
                <input
                  type="checkbox"
                  checked={shot.poor === true}
                  onChange={(event) => alter(i, { poor: event.currentTarget.checked })}
                />
                {words.round.places.poor}
              </label>{' '}
              <select
                aria-label={words.round.places.penaltyOf({ shot: i + 1 })}
                value={shot.penaltyKind ?? ''}
                onChange={(event) => {
                  const kind = PENALTY_KINDS.find((name) => name === event.currentTarget.value) ?? null;
                  replace(i, withPenalty(shot, kind));
                }}
              >
                <option value="">
                  {shot.penaltyKind === undefined && (shot.penalty ?? 0) > 0
                    ? words.round.places.penaltyPlain({ count: shot.penalty ?? 0 })
                    : words.round.places.noPenalty}
                </option>
                {PENALTY_KINDS.map((kind: PenaltyKind) => (
                  <option key={kind} value={kind}>
                    {words.round.places.penaltyKinds[kind]}
                  </option>
                ))}
              </select>
              {(shot.penaltyKind === 'penaltyArea' || shot.penaltyKind === 'unplayable') && (
                <>
                  {' '}
                  <button
                    type="button"
                    class="small-button"
                    aria-pressed={dropOf === i}
                    onClick={() => setAsked(i)}
                  >
                    {shot.drop === undefined ? words.round.places.giveDrop : words.round.places.moveDrop}
                    <span class="unseen">{words.round.places.dropOf({ shot: i + 1 })}</span>
                  </button>
                </>
              )}
            </li>
          ))}
        </ol>
        {shots.length > 0 && (
          <p class={sum.missing < 0 ? 'warning' : 'faint'} data-missing={sum.missing}>
            {words.round.places.sum({ ...sum, score: played.score })}
          </p>
        )}
        {shots.length > 0 && (
          <button type="button" class="text-button" onClick={() => put(shots.slice(0, -1))}>
            {words.round.places.takeAway}
          </button>
        )}
      </div>
    </section>
  );
}

function pair(at: readonly [number, number]): [number, number] {
  return [at[0], at[1]];
}

function distance(a: Spot, b: Spot): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function distanceOf(frame: ReturnType<typeof makeLocalFrame>, { from, to }: RecordedStroke): number {
  return from === undefined || to === undefined
    ? 0
    : distance(frame.toSpot(pair(from)), frame.toSpot(pair(to)));
}

/** The club whose full carry is nearest to what was left. */
function likelyClub(player: PlayerModel | null, leftM: number): string {
  const full = (player?.spreads ?? []).filter(({ swing }) => swing === 'full');
  const nearest = full.reduce<(typeof full)[number] | null>(
    (best, spread) =>
      best === null || Math.abs(spread.carryMean - leftM) < Math.abs(best.carryMean - leftM) ? spread : best,
    null,
  );
  return nearest?.club.name ?? 'Putter';
}

function Hole({ at: [x, y] }: { readonly at: readonly [number, number] }) {
  return <path d={`M${x} ${y}v-14l9 3.5l-9 3.5`} fill="#b34700" stroke="#111111" stroke-width="1" />;
}
