/** Numbers as people read them: lengths in the chosen units, strokes, chances, directions. */

import { MINUS, NARROW_GAP } from '../../core/words/figures.ts';
import { M_PER_FOOT, M_PER_YARD } from '../../core/words/lengths.ts';
import type { Words } from '../../core/words/words.ts';
import type { Settings } from '../../electron/contract/host.ts';

export type Units = Settings['units'];

/** Below this a length on the green is told in feet where yards are chosen, metres. */
const PUTTING_LENGTH_M = 30;

export function inUnits(metres: number, units: Units): number {
  return units === 'yards' ? metres / M_PER_YARD : metres;
}

export function unitShort(units: Units): string {
  return units === 'yards' ? 'yd' : 'm';
}

/** `231 yd`; whole units. */
export function lengthText(metres: number, units: Units): string {
  return `${lengthNumber(metres, units)}${NARROW_GAP}${unitShort(units)}`;
}

/** `231`; whole units, for places where the unit stands elsewhere. */
export function lengthNumber(metres: number, units: Units): string {
  return grouped(Math.round(inUnits(metres, units)));
}

/** A length to the hole: feet (or tenths of a metre) on the green, else whole yards or metres. */
export function toHoleText(metres: number, onGreen: boolean, units: Units, words: Words): string {
  if (!onGreen || metres > PUTTING_LENGTH_M) return lengthText(metres, units);
  if (units === 'yards') return `${Math.round(metres / M_PER_FOOT)}${NARROW_GAP}ft`;
  return `${words.figures.fixed(metres, 1)}${NARROW_GAP}m`;
}

/** A small height: tenths of a metre or of a foot. */
export function heightText(metres: number, units: Units, { figures }: Words): string {
  return units === 'yards'
    ? `${figures.fixed(metres / M_PER_FOOT, 1)}${NARROW_GAP}ft`
    : `${figures.fixed(metres, 1)}${NARROW_GAP}m`;
}

/** Strokes with two decimals. */
export function strokesText(strokes: number, words: Words): string {
  return words.figures.fixed(strokes, 2);
}

/** A standard error: two decimals, three where two would read as nothing. */
export function errorText(error: number, { figures }: Words): string {
  if (error < 0.0005) return `< ${figures.fixed(0.001, 3)}`;
  return figures.fixed(error, error < 0.005 ? 3 : 2);
}

/** `+0.12`, `−0.03`, `0.00`. */
export function signedText(value: number, { figures }: Words, decimals = 2): string {
  const size = figures.fixed(Math.abs(value), decimals);
  if (Number(Math.abs(value).toFixed(decimals)) === 0) return size;
  return `${value < 0 ? MINUS : '+'}${size}`;
}

/** `42 %`; small chances keep their size: `< 1 %`. */
export function chanceText(chance: number): string {
  return `${chanceNumber(chance)}${NARROW_GAP}%`;
}

export function chanceNumber(chance: number): string {
  if (chance > 0 && chance < 0.005) return '< 1';
  if (chance < 1 && chance > 0.995) return '> 99';
  return String(Math.round(chance * 100));
}

/**
 * Whole per cents that add up to 100: floors first, then one more to the largest remainders (Hamilton's method).
 * For chances that are shown beside each other and sum to 1.
 */
export function wholePercents(chances: readonly number[]): number[] {
  const exact = chances.map((chance) => chance * 100);
  const whole = exact.map(Math.floor);
  let missing = Math.round(exact.reduce((a, b) => a + b, 0)) - whole.reduce((a, b) => a + b, 0);
  const byRemainder = exact
    .map((value, i) => [value - Math.floor(value), i] as const)
    .sort((a, b) => b[0] - a[0]);
  for (const [, i] of byRemainder) {
    if (missing <= 0) break;
    whole[i] = whole[i]! + 1;
    missing--;
  }
  return whole;
}

/** `6 yd left`, `straight`: how far beside something a point lies. Positive metres are right. */
export function asideText(metres: number, units: Units, words: Words): string {
  const { aside } = words.golf;
  const whole = Math.round(Math.abs(inUnits(metres, units)));
  if (whole === 0) return aside.straight;
  const length = `${whole}${NARROW_GAP}${unitShort(units)}`;
  return metres < 0 ? aside.left({ length }) : aside.right({ length });
}

/** Thousands apart by a narrow gap: `6 412`. */
export function grouped(whole: number): string {
  const digits = String(Math.abs(whole));
  const spaced =
    digits.length > 4 || Math.abs(whole) >= 1000 ? digits.replace(/\B(?=(\d{3})+$)/g, NARROW_GAP) : digits;
  return whole < 0 ? MINUS + spaced : spaced;
}

export function countText(count: number, one: string, many: string): string {
  return `${grouped(count)} ${count === 1 ? one : many}`;
}
