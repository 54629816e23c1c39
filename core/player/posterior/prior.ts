/**
 * What is believed of a player before any shot, and how firmly. Location: the preset for the level (or what the
 * player states), bent along the bag to a smooth curve through the clubs that are known. Strength: no published
 * figure was found for how much players of one level differ, so each strength below is common practice, no source,
 * with its reason beside it; the averages of club golfers lie about 8 % apart from one band of handicaps to the next
 * (R&A/USGA Distance Insights), so players within a band differ by at least that.
 */

import type { Club, ShotSpread, Swing } from '../model.ts';

/** Standard deviations of a deviation from what is expected, by what the deviation has in common. */
export interface DeviationPrior {
  /** Of the whole bag. */
  readonly bag: number;
  /** Of long clubs against short ones: at one unit of `bagPlace` from the middle of the bag. */
  readonly tilt: number;
  /** Of a smooth bend along the bag, shared by neighbours (squared-exponential, `BEND_REACH`). */
  readonly bend: number;
  /** Of one club alone. */
  readonly club: number;
  /** Of one manner of swing (all punches, say), full swings aside. */
  readonly swing: number;
  /** Of one manner of swing with one club. */
  readonly clubSwing: number;
  /** Of one club and swing from one period to another; only where periods are compared. */
  readonly period: number;
}

export interface BagPrior {
  /** Mean carry, as a share of what is expected. */
  readonly carry: DeviationPrior;
  /** Mean direction, in expected standard deviations of direction. */
  readonly direction: DeviationPrior;
  /** What is expected of a club's spread counts as this many shots. */
  readonly spreadShots: number;
  /** Shape of the gamma law of the whole bag's variance factor, mean of its root 1. */
  readonly bagSpreadShape: number;
  /** What is expected of a club's poor share counts as this many shots. */
  readonly poorShareShots: number;
  /** Standard deviation of the logarithm of the whole bag's factor on the expected poor shares. */
  readonly poorLevelSd: number;
  /** Standard deviation of the mean carry of poor strikes, as a share of solid carry. */
  readonly poorCarrySd: number;
  /** What is expected of the widths of poor strikes counts as this many poor strikes. */
  readonly poorLawStrikes: number;
  /** Standard deviation of a carry that the player states without having measured it, as a share of it. */
  readonly statedSd: number;
}

export const BAG_PRIOR: BagPrior = {
  carry: {
    // One band of handicaps up or down.
    bag: 0.1,
    tilt: 0.04,
    bend: 0.03,
    // A shaft or a face of another make: a third of the gap to the next club.
    club: 0.03,
    // How far a player takes a punch or a half swing back is a habit.
    swing: 0.12,
    clubSwing: 0.04,
    // A season's change.
    period: 0.04,
  },
  direction: {
    // A player's curve shows with every club, most with the long ones.
    bag: 0.35,
    tilt: 0.2,
    bend: 0.1,
    club: 0.25,
    swing: 0.2,
    clubSwing: 0.15,
    period: 0.3,
  },
  // Leaves a club's standard deviation open by about a quarter either way.
  spreadShots: 8,
  // The same for the whole bag: the root of a gamma variable of shape 4 varies by a quarter.
  bagSpreadShape: 4,
  // None in twenty is not "never", one in five not "always".
  poorShareShots: 6,
  // One player has twice or half the poor strikes of another of the same handicap.
  poorLevelSd: 0.7,
  poorCarrySd: 0.08,
  // The preset's widths are good to about a quarter.
  poorLawStrikes: 10,
  // Players remember their good ones and round to five yards.
  statedSd: 0.05,
};

/** One club and swing as the prior sees it. */
export interface BagEntry {
  readonly club: Club;
  readonly swing: Swing;
  readonly expected: ShotSpread;
  /** Tells periods of the same club and swing apart. */
  readonly period?: number;
}

/** Reach of the bend along the bag in units of `bagPlace`: neighbours bend alike, the ends go their own way. */
const BEND_REACH = 0.6;

/** Where a club stands in the bag: 0 at 32 degrees of loft, about -1 for a driver and +1 for a sand wedge. */
export function bagPlace(club: Club): number {
  return (club.loftDeg - 32) / 22;
}

/** Covariance of the deviations of all entries, row by row. */
export function deviationCovariance(entries: readonly BagEntry[], prior: DeviationPrior): Float64Array {
  const size = entries.length;
  const covariance = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      const value = covarianceOf(entries[i]!, entries[j]!, i === j, prior);
      covariance[i * size + j] = value;
      covariance[j * size + i] = value;
    }
  }
  return covariance;
}

function covarianceOf(a: BagEntry, b: BagEntry, isSame: boolean, prior: DeviationPrior): number {
  const x = bagPlace(a.club);
  const y = bagPlace(b.club);
  let sum = prior.bag ** 2 + prior.tilt ** 2 * x * y;
  sum += prior.bend ** 2 * Math.exp(-((x - y) ** 2) / (2 * BEND_REACH ** 2));
  const isSameClub = a.club.name === b.club.name;
  const isSameSwing = a.swing === b.swing;
  if (isSameClub) sum += prior.club ** 2;
  if (isSameSwing && a.swing !== 'full') {
    sum += prior.swing ** 2;
    if (isSameClub) sum += prior.clubSwing ** 2;
  }
  if (isSame && a.period !== undefined) sum += prior.period ** 2;
  return sum;
}
