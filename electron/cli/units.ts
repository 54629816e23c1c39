/** Lengths as people of the chosen unit write them. */

export type LengthUnit = 'yards' | 'metres';

const YARD_M = 0.9144;
const FOOT_M = 0.3048;

export function lengthWords(metres: number, unit: LengthUnit): string {
  return unit === 'yards' ? `${Math.round(metres / YARD_M)} yd` : `${Math.round(metres)} m`;
}

/** On and around the green: feet where yards are in use. */
export function puttWords(metres: number, unit: LengthUnit): string {
  return unit === 'yards' ? `${Math.round(metres / FOOT_M)} ft` : `${metres.toFixed(1)} m`;
}
