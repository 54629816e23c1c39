/** Green speed of the day from how far a putt rolls out. */

/**
 * True roll of a surface from rolls up and down the same slope: 2ab / (a + b) (Brede; formula from memory). In the unit
 * of the arguments.
 */
export function levelRoll(up: number, down: number): number {
  if (!(up > 0) || !(down > 0)) throw new RangeError(`Unexpected rolls: ${up} and ${down}`);
  return (2 * up * down) / (up + down);
}

/** A stroke of the player's own, measured once on a green of known speed. */
export interface KnownStroke {
  readonly rollM: number;
  /** Stimpmeter reading of that green, feet. */
  readonly greenSpeedFt: number;
}

/**
 * Stimpmeter reading in feet of today's green, from the same stroke rolled both ways. At one starting speed the roll is in
 * proportion to the reading, since both are v² / 2a (derived from the meter's constant release speed, USGA).
 */
export function greenSpeedToday(upM: number, downM: number, known: KnownStroke): number {
  if (!(known.rollM > 0) || !(known.greenSpeedFt > 0))
    throw new RangeError(`Unexpected stroke: ${known.rollM} m on a green of ${known.greenSpeedFt} ft`);
  return (known.greenSpeedFt * levelRoll(upM, downM)) / known.rollM;
}
