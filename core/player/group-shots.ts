/** Sorts a file's shots by club and swing, takes them to a good lie in still air, and says which are left out and why. */

import type { Fault } from '../result.ts';
import { type CountedShot, type LeftOut, readShot, ShotCounter } from './count-shot.ts';
import type { BagClub, RecordedShot } from './format.ts';
import type { MeasuredShot } from './measured-shot.ts';
import type { Swing } from './model.ts';
import type { PartShot } from './short-game.ts';
import { told, type Told, toldFault } from '../words/told.ts';
import { isOrdinary, type PlacedShot, type ShotWeather, StillAir, weatherDoubt } from './still-air.ts';

export interface GroupedShots {
  /** By `groupKey`. */
  readonly groups: ReadonlyMap<string, readonly MeasuredShot[]>;
  /** Part swings whose intended length is known, by name of the club. */
  readonly partShots: ReadonlyMap<string, readonly PartShot[]>;
  /** By place in the file: shots that do not simply count as measured, and the reason where one is left out. */
  readonly counted: ReadonlyMap<number, CountedShot | { readonly leftOut: Told }>;
  readonly warnings: readonly Fault[];
}

export interface GroupSettings {
  /** Of the player, for what a bad lie does. */
  readonly handicap?: number | undefined;
  /** Kept from one time to the next, so that known shots need no new flights. */
  readonly air?: StillAir | undefined;
}

/** Shots from one word of progress to the next. */
const STEP_SHOTS = 20;

export function groupKey(clubName: string, swing: Swing): string {
  return `${clubName}\n${swing}`;
}

/** What follows "3 shots left out: ". */
function whyLeftOut(why: LeftOut, club: string): Told {
  return told(({ spread }) => spread.leftOut[why], { club });
}

/** Shots usable for estimates, by club and swing; everything else as one warning per reason and club. */
export function groupShots(
  bag: readonly BagClub[],
  shots: readonly RecordedShot[],
  settings: GroupSettings = {},
): GroupedShots {
  const steps = groupShotsInSteps(bag, shots, settings);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** As `groupShots`; each `next()` tells the share done: shots in wind take a millisecond each. */
export function* groupShotsInSteps(
  bag: readonly BagClub[],
  shots: readonly RecordedShot[],
  settings: GroupSettings = {},
): Generator<number, GroupedShots, void> {
  const clubs = new Map(bag.map((club) => [club.name, club]));
  const placed = shots.map((shot) => readShot(clubs.get(shot.club), shot.swing ?? 'full', shot));
  const air = settings.air ?? new StillAir();
  const typical = yield* typicalCarries(clubs, shots, placed, air);
  const counter = new ShotCounter(settings.handicap, air);
  const groups = new Map<string, MeasuredShot[]>();
  const partShots = new Map<string, PartShot[]>();
  const counted = new Map<number, CountedShot | { readonly leftOut: Told }>();
  const leftOut = new Listed();
  const doubted = new Listed();
  for (const [index, shot] of shots.entries()) {
    if (index % STEP_SHOTS === 0) yield 0.5 + index / shots.length / 2;
    const swing = shot.swing ?? 'full';
    const key = groupKey(shot.club, swing);
    const place = placed[index]!;
    const read =
      typeof place === 'string'
        ? place
        : counter.count(clubs.get(shot.club)!, swing, shot, place, typical.get(key)!);
    if (typeof read === 'string') {
      leftOut.add(read, shot.club, index);
      counted.set(index, { leftOut: whyLeftOut(read, shot.club) });
      continue;
    }
    if (read.isConverted || read.doubts.length > 0) counted.set(index, read);
    for (const doubt of read.doubts) doubted.add(doubt.kind, shot.club, index, doubt.told);
    if (swing === 'part') {
      const { carryM, direction } = read.shot;
      push(partShots, shot.club, { intendedM: shot.intendedM!, carryM, direction });
    } else push(groups, key, read.shot);
  }
  const warnings = [
    ...leftOut.faults(({ why, club }, count) => ({
      code: why,
      message: told(({ spread }) => spread.someLeftOut, { count, why: whyLeftOut(why as LeftOut, club) }),
    })),
    ...doubted.faults(({ club, first }, count) => ({
      code: 'shot-as-measured',
      message: told(({ spread }) => spread.someAsMeasured, { count, club, why: first! }),
    })),
  ];
  return { groups, partShots, counted, warnings };
}

function push<K, T>(lists: Map<K, T[]>, key: K, value: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [value]);
  else list.push(value);
}

/** Usual carry in still air, by `groupKey`; it does not hang on the order of the shots. */
function* typicalCarries(
  clubs: ReadonlyMap<string, BagClub>,
  shots: readonly RecordedShot[],
  placed: readonly (PlacedShot | LeftOut)[],
  air: StillAir,
): Generator<number, ReadonlyMap<string, number>, void> {
  const carries = new Map<string, { carryM: number; weather: ShotWeather | null }[]>();
  shots.forEach((shot, index) => {
    const place = placed[index]!;
    if (typeof place === 'string') return;
    const weather = isOrdinary(shot) || weatherDoubt(shot) !== null ? null : shot;
    push(carries, groupKey(shot.club, shot.swing ?? 'full'), { carryM: place.carryM, weather });
  });
  const typical = new Map<string, number>();
  for (const [key, list] of carries) {
    yield (0.5 * typical.size) / carries.size;
    const [name, swing] = key.split('\n') as [string, Swing];
    typical.set(key, air.typicalStill(clubs.get(name)!, swing, list));
  }
  return typical;
}

interface Listing {
  readonly why: string;
  readonly club: string;
  /** What is said of the first one. */
  readonly first: Told | null;
  readonly indices: number[];
}

/** Places by reason and club, told as one warning each. */
class Listed {
  private readonly lists = new Map<string, Listing>();

  add(why: string, club: string, index: number, first: Told | null = null): void {
    const key = `${why}\n${club}`;
    const known = this.lists.get(key);
    if (known === undefined) this.lists.set(key, { why, club, first, indices: [index] });
    else known.indices.push(index);
  }

  faults(
    say: (listing: Listing, count: number) => { readonly code: string; readonly message: Told },
  ): readonly Fault[] {
    return [...this.lists.values()].map((listing) => {
      const { indices } = listing;
      const place = `shots[${indices[0]!}]`;
      return toldFault({
        severity: 'warning',
        ...say(listing, indices.length),
        where:
          indices.length > 1
            ? told(({ spread }) => spread.andMore, { place, count: indices.length - 1 })
            : place,
      });
    });
  }
}
