/** The day that a round was played under. */

import { type Conditions, DEFAULT_CONDITIONS } from '../conditions/conditions.ts';
import { DAY_RANGES, type Range } from '../conditions/ranges.ts';
import type { RoundDocument } from './format.ts';

/** As the round keeps it, else made of the weather that older files note; null where nothing is noted. */
export function dayOfRound({ day, conditions }: RoundDocument): Conditions | null {
  if (day !== undefined) return day;
  if (conditions === undefined) return null;
  const { windMps, windFromDeg, temperatureC, firmness, greenSpeedFt } = conditions;
  const noted = [windMps, temperatureC, firmness, greenSpeedFt].some((value) => value !== undefined);
  if (!noted) return null;
  const usual = DEFAULT_CONDITIONS;
  return {
    ...usual,
    // A speed without a direction says nothing of any hole.
    wind:
      windMps === undefined || windFromDeg === undefined
        ? usual.wind
        : { speedMps: windMps, fromDeg: windFromDeg, gustSdMps: 0 },
    temperatureC: temperatureC ?? usual.temperatureC,
    firmness: firmness ?? usual.firmness,
    greenSpeedFt:
      greenSpeedFt === undefined ? usual.greenSpeedFt : clamped(greenSpeedFt, DAY_RANGES.greenSpeedFt),
  };
}

function clamped(value: number, { least, most }: Range): number {
  return Math.min(most, Math.max(least, value));
}
