/**
 * What a day does to every shot: wind, air, ground, season, and the local rules in force. Plain data with a schema, so that a
 * round can keep it; absent members take the defaults, which stand for still air at 15 °C over ground of medium firmness.
 */

import * as v from 'valibot';
import { airOf, type Air, standardPressureHpa } from '../flight/air.ts';
import type { Wind } from '../flight/ball-flight.ts';
import { refuse, succeed, type Fault, type Result } from '../result.ts';
import { told, toldFault } from '../words/told.ts';
import { DAY_RANGES, type Range } from './ranges.ts';

export const FIRMNESSES = ['firm', 'medium', 'soft'] as const;
export type Firmness = (typeof FIRMNESSES)[number];

/** Deciduous crowns in leaf, or bare. */
export const SEASONS = ['leaf', 'bare'] as const;
export type Season = (typeof SEASONS)[number];

const within = ({ least, most }: Range) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));

export const ConditionsSchema = v.object({
  wind: v.optional(
    v.object({
      speedMps: v.pipe(within(DAY_RANGES.windMps), v.description('Mean wind at 10 m above the ground')),
      fromDeg: v.pipe(
        within(DAY_RANGES.windFromDeg),
        v.description('Where it comes from, clockwise from north'),
      ),
      gustSdMps: v.optional(
        v.pipe(
          within(DAY_RANGES.gustSdMps),
          v.description('Standard deviation of the wind from shot to shot'),
        ),
        0,
      ),
    }),
    { speedMps: 0, fromDeg: 0, gustSdMps: 0 },
  ),
  temperatureC: v.optional(within(DAY_RANGES.temperatureC), 15),
  altitudeM: v.optional(within(DAY_RANGES.altitudeM), 0),
  pressureHpa: v.optional(
    v.pipe(
      within(DAY_RANGES.pressureHpa),
      v.description('At the course; absent: the standard atmosphere’s at its altitude'),
    ),
  ),
  humidity: v.optional(v.pipe(within(DAY_RANGES.humidity), v.description('Share of saturation')), 0.5),
  firmness: v.optional(v.picklist(FIRMNESSES), 'medium'),
  greenSpeedFt: v.optional(v.pipe(within(DAY_RANGES.greenSpeedFt), v.description('Stimpmeter reading')), 10),
  season: v.optional(v.picklist(SEASONS), 'leaf'),
  rules: v.optional(
    v.object({
      strokeAndDistanceAlternative: v.optional(
        v.pipe(v.boolean(), v.description('Model Local Rule E-5 is in force')),
        false,
      ),
      preferredLies: v.optional(
        v.pipe(v.boolean(), v.description('Model Local Rule E-3 is in force')),
        false,
      ),
    }),
    { strokeAndDistanceAlternative: false, preferredLies: false },
  ),
});

export type Conditions = Readonly<v.InferOutput<typeof ConditionsSchema>>;

/** Still air at 15 °C at sea level, medium ground, greens of 10 ft, trees in leaf, no local rules. */
export const DEFAULT_CONDITIONS: Conditions = v.parse(ConditionsSchema, {});

/** Conditions from outside data; each fault names its member. */
export function parseConditions(data: unknown): Result<Conditions, readonly Fault[]> {
  const parsed = v.safeParse(ConditionsSchema, data);
  if (parsed.success) return succeed(parsed.output);
  return refuse(
    parsed.issues.map((issue) =>
      toldFault({
        severity: 'error',
        code: 'conditions-member',
        where: `conditions.${issue.path?.map((item) => String(item.key)).join('.') ?? ''}`,
        message: told(({ faults }) => faults.day, { problem: issue.message }),
      }),
    ),
  );
}

/** The air of these conditions. */
export function airOfConditions(conditions: Conditions): Air {
  return airOf({
    temperatureC: conditions.temperatureC,
    pressureHpa: conditions.pressureHpa ?? standardPressureHpa(conditions.altitudeM),
    altitudeM: conditions.altitudeM,
    humidity: conditions.humidity,
  });
}

/** The mean wind as a shot at `bearing` (radians clockwise from north) meets it. */
export function windAlong(conditions: Conditions, bearing: number): Wind {
  const { speedMps, fromDeg } = conditions.wind;
  // It blows towards the opposite of where it comes from.
  const towards = (fromDeg * Math.PI) / 180 + Math.PI - bearing;
  return { along: speedMps * Math.cos(towards), right: speedMps * Math.sin(towards) };
}
