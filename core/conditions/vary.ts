/**
 * A day with one of its conditions moved and the rest as they are. Wind is taken apart along and across a line of play, so that
 * one part can be moved alone; firmness and season count in steps.
 */

import { type Conditions, FIRMNESSES, SEASONS, windAlong } from './conditions.ts';
import { LOOKED_RANGES, type Range } from './ranges.ts';

export const VARIED_CONDITIONS = [
  'wind-along',
  'wind-across',
  'temperature',
  'firmness',
  'green-speed',
  'season',
] as const;
export type VariedCondition = (typeof VARIED_CONDITIONS)[number];

/** `step`: a place in `FIRMNESS_STEPS` or `SEASON_STEPS`. */
export type VariedUnit = 'm/s' | '°C' | 'ft' | 'step';

export const UNIT_OF_CONDITION: Readonly<Record<VariedCondition, VariedUnit>> = {
  'wind-along': 'm/s',
  'wind-across': 'm/s',
  temperature: '°C',
  firmness: 'step',
  'green-speed': 'ft',
  season: 'step',
};

/** From soft to firm. */
export const FIRMNESS_STEPS = [...FIRMNESSES].reverse();
export const SEASON_STEPS = SEASONS;

/**
 * Its value on that day. Wind: metres per second; along, positive from behind, negative against; across, positive from the
 * left to the right. `bearing` of the line of play in radians clockwise from north.
 */
export function conditionOf(day: Conditions, name: VariedCondition, bearing: number): number {
  switch (name) {
    case 'wind-along':
      return windAlong(day, bearing).along;
    case 'wind-across':
      return windAlong(day, bearing).right;
    case 'temperature':
      return day.temperatureC;
    case 'firmness':
      return FIRMNESS_STEPS.indexOf(day.firmness);
    case 'green-speed':
      return day.greenSpeedFt;
    case 'season':
      return SEASON_STEPS.indexOf(day.season);
  }
}

/** The day with that one moved; a step is rounded to the nearest. */
export function withCondition(
  day: Conditions,
  name: VariedCondition,
  bearing: number,
  value: number,
): Conditions {
  switch (name) {
    case 'wind-along':
      return withWind(day, bearing, value, windAlong(day, bearing).right);
    case 'wind-across':
      return withWind(day, bearing, windAlong(day, bearing).along, value);
    case 'temperature':
      return { ...day, temperatureC: value };
    case 'firmness':
      return { ...day, firmness: FIRMNESS_STEPS[Math.round(value)] ?? day.firmness };
    case 'green-speed':
      return { ...day, greenSpeedFt: value };
    case 'season':
      return { ...day, season: SEASON_STEPS[Math.round(value)] ?? day.season };
  }
}

function withWind(day: Conditions, bearing: number, along: number, right: number): Conditions {
  const towards = bearing + Math.atan2(right, along);
  const fromDeg = ((((towards * 180) / Math.PI + 180) % 360) + 360) % 360;
  return { ...day, wind: { ...day.wind, speedMps: Math.hypot(along, right), fromDeg } };
}

/** How far it is moved: to the ends of what is looked at, or to the day's own value where that lies beyond. */
export function rangeOfCondition(day: Conditions, name: VariedCondition, bearing: number): Range {
  const now = conditionOf(day, name, bearing);
  const ends = ((): Range => {
    switch (name) {
      case 'wind-along':
        return componentRange(windAlong(day, bearing).right);
      case 'wind-across':
        return componentRange(windAlong(day, bearing).along);
      case 'temperature':
        return LOOKED_RANGES.temperatureC;
      case 'firmness':
        return { least: 0, most: FIRMNESS_STEPS.length - 1 };
      case 'green-speed':
        return LOOKED_RANGES.greenSpeedFt;
      case 'season':
        return { least: 0, most: SEASON_STEPS.length - 1 };
    }
  })();
  return { least: Math.min(now, ends.least), most: Math.max(now, ends.most) };
}

/** Beside the other part, so that the wind as a whole stays in its range. */
function componentRange(other: number): Range {
  const most = Math.sqrt(Math.max(0, LOOKED_RANGES.windMps.most ** 2 - other ** 2));
  return { least: -most, most };
}
