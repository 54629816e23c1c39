/** How a player's part swings scatter with the length asked for, measured; and the law of one such swing. */

/**
 * Standard deviation of carry at c metres: `carrySdAt10M` (c / 10)^`growth`. A growth of 1 is an error in proportion,
 * one of 0 the same for every length.
 */
export interface PartLaw {
  readonly carrySdAt10M: number;
  readonly growth: number;
  /** Mean error of carry as a share of what was asked for; positive: too long. */
  readonly carryBiasShare: number;
}

/** Standard deviation of carry, metres, when `carryM` is asked for. */
export function partCarrySd(law: PartLaw, carryM: number): number {
  return law.carrySdAt10M * (carryM / 10) ** law.growth;
}
