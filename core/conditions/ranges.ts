/** Between what each number of a day lies, for the schema of conditions, fields, options and their messages. */

export interface Range {
  readonly least: number;
  readonly most: number;
}

export const DAY_RANGES = {
  windMps: { least: 0, most: 40 },
  windFromDeg: { least: -360, most: 360 },
  gustSdMps: { least: 0, most: 15 },
  temperatureC: { least: -30, most: 55 },
  altitudeM: { least: -430, most: 5000 },
  pressureHpa: { least: 500, most: 1100 },
  humidity: { least: 0, most: 1 },
  greenSpeedFt: { least: 5, most: 15 },
} as const satisfies Readonly<Record<string, Range>>;

/**
 * How far a look at other days goes. Beyond a gale (8 Beaufort ends at 20.7 m/s), frost and great heat hardly anybody plays;
 * common practice, no source.
 */
export const LOOKED_RANGES = {
  windMps: { least: 0, most: 20 },
  temperatureC: { least: -5, most: 40 },
  greenSpeedFt: DAY_RANGES.greenSpeedFt,
} as const satisfies Readonly<Record<string, Range>>;

export type DayNumber = keyof typeof DAY_RANGES;
