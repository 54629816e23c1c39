/**
 * Shots of a round among the measured ones of a player: each is known by round, hole and stroke, so that adding it again adds
 * nothing, and it can be taken out again. Shots that were added before they carried that mark are known by what they say.
 */

import type { RecordedShot } from '../player/format.ts';
import type { RoundDocument } from './format.ts';

/** Names one stroke of a round. Rounds without an id of their own go by names and by where the ball ended. */
export function strokeMark(round: RoundDocument, hole: number, stroke: number): string {
  if (round.id !== undefined) return `${round.id}/${hole}/${stroke}`;
  const end = round.played.find((played) => played.hole === hole)?.shots?.[stroke - 1]?.to;
  return `${round.course.name}, ${round.player.name}, ${end?.join(' ') ?? ''}/${hole}/${stroke}`.slice(-300);
}

/** For each of `given` where it stands in `kept`, -1 where it does not. No place is given twice. */
export function placesAmong(
  kept: readonly RecordedShot[],
  given: readonly RecordedShot[],
): readonly number[] {
  const taken = new Set<number>();
  const take = (place: number): number => {
    if (place >= 0) taken.add(place);
    return place;
  };
  const marked = given.map(({ fromRound }) =>
    fromRound === undefined ? -1 : take(kept.findIndex((shot) => shot.fromRound === fromRound)),
  );
  return given.map((shot, i) =>
    marked[i]! >= 0
      ? marked[i]!
      : take(
          kept.findIndex(
            (one, place) => one.fromRound === undefined && !taken.has(place) && saysTheSame(one, shot),
          ),
        ),
  );
}

/** `kept` with all of `given`, each once: what stands there already is brought up to date in its place. */
export function withShotsOfRound(
  kept: readonly RecordedShot[],
  given: readonly RecordedShot[],
): readonly RecordedShot[] {
  const next = [...kept];
  placesAmong(kept, given).forEach((place, i) => {
    if (place >= 0) next[place] = given[i]!;
    else next.push(given[i]!);
  });
  return next;
}

export function withoutShotsOfRound(
  kept: readonly RecordedShot[],
  given: readonly RecordedShot[],
): readonly RecordedShot[] {
  const out = new Set(placesAmong(kept, given));
  return kept.filter((_, place) => !out.has(place));
}

/** Takes an adding back: `now` with each of `given` as it was in `before`, or out where it was not there. */
export function shotsAsBefore(
  now: readonly RecordedShot[],
  before: readonly RecordedShot[],
  given: readonly RecordedShot[],
): readonly RecordedShot[] {
  const earlier = placesAmong(before, given).flatMap((place) => (place < 0 ? [] : [before[place]!]));
  return [...withoutShotsOfRound(now, given), ...earlier];
}

/** How many of `given` stand among `kept`, and how many stand there as they are now. */
export function countAmong(
  kept: readonly RecordedShot[],
  given: readonly RecordedShot[],
): { readonly held: number; readonly current: number } {
  const places = placesAmong(kept, given);
  return {
    held: places.filter((place) => place >= 0).length,
    current: places.filter((place, i) => place >= 0 && saysTheSame(kept[place]!, given[i]!)).length,
  };
}

/** What was measured: the carry is worked back by the player's own laws, which the shots themselves change. */
const SAID = [
  ...(['club', 'swing', 'totalM', 'directionDeg', 'lie', 'at'] as const),
  ...(['windMps', 'windFromDeg', 'temperatureC', 'altitudeM'] as const),
];

function saysTheSame(a: RecordedShot, b: RecordedShot): boolean {
  return SAID.every((member) => a[member] === b[member]);
}
