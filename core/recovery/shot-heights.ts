/** A shot as recoveries see it: how high it is along its way, and how much that varies. */

import type { Conditions } from '../conditions/conditions.ts';
import { curveAt, flightOf, heightAt, lineFactorAt, windAngle } from '../flight/flight-table.ts';
import type { ShotSpread } from '../player/model.ts';

export interface RecoveryShot {
  readonly club: string;
  readonly swing: ShotSpread['swing'];
  /** Solid strikes from the lie, on the day, that come down along the bearing asked for: metres along that line. */
  readonly carryM: (bearing: number) => number;
  readonly carrySd: number;
  readonly directionMean: number;
  readonly directionSd: number;
  /** Height above the start of a shot of that carry, metres along its way. */
  readonly heightAt: (carryM: number, alongM: number, bearing: number) => number;
  /** A draw or fade: metres right of the starting line at `alongM`; absent for a straight shot. */
  readonly sideAt?: (carryM: number, alongM: number) => number;
}

/** Standard deviation of a height that is not the carry's doing, as a share of the height. Common practice, no source. */
export const HEIGHT_SD_SHARE = 0.12;

/**
 * From the player's spread (as the lie has changed it) and the flight of the day. `curveShare`: how far right of its
 * starting line the shot lands on purpose, as a share of its carry; a fade of a right-hander is positive.
 */
export function recoveryShot(spread: ShotSpread, conditions: Conditions, curveShare = 0): RecoveryShot {
  const table = flightOf(spread.club, spread.swing, spread.carryMean, conditions);
  return {
    club: spread.club.name,
    swing: spread.swing,
    carryM: (bearing) => spread.carryMean * lineFactorAt(table, windAngle(conditions, bearing)),
    carrySd: spread.carrySd,
    directionMean: spread.directionMean,
    directionSd: spread.directionSd,
    heightAt: (carryM, alongM, bearing) => heightAt(table, carryM, alongM, windAngle(conditions, bearing)),
    ...(curveShare === 0
      ? {}
      : {
          sideAt: (carryM: number, alongM: number) => curveAt(table, carryM, alongM, curveShare * carryM),
        }),
  };
}

/** Mean height at a distance and its standard deviation, from the spread of carry and of launch, metres. */
export function heightThere(
  shot: RecoveryShot,
  bearing: number,
  alongM: number,
): { readonly mean: number; readonly sd: number } {
  const carry = shot.carryM(bearing);
  const mean = shot.heightAt(carry, alongM, bearing);
  const long = shot.heightAt(carry + shot.carrySd, alongM, bearing);
  const short = shot.heightAt(Math.max(1, carry - shot.carrySd), alongM, bearing);
  return { mean, sd: Math.hypot((long - short) / 2, HEIGHT_SD_SHARE * mean) };
}
