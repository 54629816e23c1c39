/** Sorts a file's shots by club and swing, and says which are left out of the estimates and why. */

import type { Fault } from '../result.ts';
import type { BagClub, RecordedShot } from './format.ts';
import type { MeasuredShot } from './measured-shot.ts';
import type { Swing } from './model.ts';
import { dayOf } from './recency.ts';
import type { PartShot } from './short-game.ts';

const DEGREE = Math.PI / 180;

/** Lies that are no measure of the club: their shots are kept in the file and not counted. */
const BAD_LIES: ReadonlySet<string> = new Set([
  'rough',
  'longRough',
  'long-rough',
  'bunker',
  'woods',
  'penaltyRed',
  'penaltyYellow',
]);

/** No carry shorter than this can be told from a missed ball. */
const LEAST_CARRY_M = 1;

export interface GroupedShots {
  /** By `groupKey`. */
  readonly groups: ReadonlyMap<string, readonly MeasuredShot[]>;
  /** Part swings whose intended length is known, by name of the club. */
  readonly partShots: ReadonlyMap<string, readonly PartShot[]>;
  readonly warnings: readonly Fault[];
}

export function groupKey(clubName: string, swing: Swing): string {
  return `${clubName}\n${swing}`;
}

type LeftOut =
  | 'shot-of-unknown-club'
  | 'shot-of-unknown-swing'
  | 'shot-of-putter'
  | 'part-shot-unused'
  | 'shot-from-bad-lie'
  | 'shot-without-direction'
  | 'shot-impossible';

/** What follows "3 shots left out: ". */
const WHY: Readonly<Record<LeftOut, (club: string) => string>> = {
  'shot-of-unknown-club': (club) =>
    `"${club}" is not in the bag. Add the club to the bag, or correct its name in the shots.`,
  'shot-of-unknown-swing': (club) =>
    `the bag does not list this swing for the ${club}. Add the swing to the club in the bag.`,
  'shot-of-putter': (club) => `the ${club} is a putter. Give putting by its two spreads instead.`,
  'part-shot-unused': (club) =>
    `part swings with the ${club} have no intended length. Add intendedM; until then they are taken from its full swing.`,
  'shot-from-bad-lie': (club) =>
    `with the ${club} from rough, sand or trees. Only shots from good lies tell of the club itself.`,
  'shot-without-direction': (club) => `no direction with the ${club}. Add offlineM or directionDeg.`,
  'shot-impossible': (club) =>
    `the ${club} carried less than ${LEAST_CARRY_M} m, or landed farther off line than it carried. Check the readings.`,
};

/** Shots usable for estimates, by club and swing; everything else as one warning per reason and club. */
export function groupShots(bag: readonly BagClub[], shots: readonly RecordedShot[]): GroupedShots {
  const clubs = new Map(bag.map((club) => [club.name, club]));
  const groups = new Map<string, MeasuredShot[]>();
  const partShots = new Map<string, PartShot[]>();
  const leftOut = new Map<string, { why: LeftOut; club: string; indices: number[] }>();
  shots.forEach((shot, index) => {
    const swing = shot.swing ?? 'full';
    const reading = readShot(clubs.get(shot.club), swing, shot);
    if (typeof reading === 'string') {
      const key = `${reading}\n${shot.club}`;
      const entry = leftOut.get(key) ?? { why: reading, club: shot.club, indices: [] };
      entry.indices.push(index);
      leftOut.set(key, entry);
      return;
    }
    if (swing === 'part') {
      const { carryM, direction } = reading;
      const known = partShots.get(shot.club) ?? [];
      known.push({ intendedM: shot.intendedM!, carryM, direction });
      partShots.set(shot.club, known);
      return;
    }
    const key = groupKey(shot.club, swing);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [reading]);
    else group.push(reading);
  });
  const warnings = [...leftOut.values()].map(
    ({ why, club, indices }): Fault => ({
      severity: 'warning',
      code: why,
      where: `shots[${indices[0]!}]${indices.length > 1 ? ` and ${indices.length - 1} more` : ''}`,
      message: `${indices.length} ${indices.length === 1 ? 'shot' : 'shots'} left out: ${WHY[why](club)}`,
    }),
  );
  return { groups, partShots, warnings };
}

function readShot(club: BagClub | undefined, swing: Swing, shot: RecordedShot): MeasuredShot | LeftOut {
  if (club === undefined) return 'shot-of-unknown-club';
  if (club.kind === 'putter') return 'shot-of-putter';
  if (swing === 'part' && !((shot.intendedM ?? 0) >= LEAST_CARRY_M)) return 'part-shot-unused';
  if (!club.swings.includes(swing)) return 'shot-of-unknown-swing';
  if (shot.lie !== undefined && BAD_LIES.has(shot.lie)) return 'shot-from-bad-lie';
  if (shot.carryM < LEAST_CARRY_M) return 'shot-impossible';
  const day = dayOf(shot.at);
  const dated = day === undefined ? {} : { day };
  if (shot.directionDeg !== undefined)
    return { carryM: shot.carryM, direction: shot.directionDeg * DEGREE, ...dated };
  if (shot.offlineM === undefined) return 'shot-without-direction';
  const sine = shot.offlineM / shot.carryM;
  if (Math.abs(sine) > 1) return 'shot-impossible';
  return { carryM: shot.carryM, direction: Math.asin(sine), ...dated };
}
