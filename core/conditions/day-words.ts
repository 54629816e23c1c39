/** A day in words: only what differs from an ordinary one, so that the line stays short and nothing of note is left out. */

import { type Conditions, DEFAULT_CONDITIONS } from './conditions.ts';

/** Wind, temperature and altitude follow the unit of lengths; a Stimpmeter is read in feet everywhere. */
export type DayUnits = 'yards' | 'metres';

/** Metres per second in a mile per hour (international mile, 1609.344 m), metres in a foot. */
export const MPS_PER_MPH = 0.44704;
export const M_PER_FOOT = 0.3048;

const POINTS = [
  'north',
  'north-north-east',
  'north-east',
  'east-north-east',
  'east',
  'east-south-east',
  'south-east',
  'south-south-east',
  'south',
  'south-south-west',
  'south-west',
  'west-south-west',
  'west',
  'west-north-west',
  'north-west',
  'north-north-west',
] as const;

/** Degrees from 0 up to 360, clockwise from north. */
export function wholeTurn(degrees: number): number {
  const turn = degrees % 360;
  return turn < 0 ? turn + 360 : turn === 0 ? 0 : turn;
}

/** The nearest of the sixteen points of the compass. */
export function compassPoint(degrees: number): string {
  return POINTS[Math.round(wholeTurn(degrees) / 22.5) % POINTS.length]!;
}

export function fahrenheit(celsius: number): number {
  return celsius * 1.8 + 32;
}

/**
 * Equal keys, equal days: where there is no wind its direction counts for nothing. Short enough to stand in the name
 * of a piece of work.
 */
export function dayKey({
  wind,
  temperatureC,
  altitudeM,
  pressureHpa,
  humidity,
  firmness,
  greenSpeedFt,
  season,
  rules,
}: Conditions): string {
  const isStill = wind.speedMps === 0 && wind.gustSdMps === 0;
  return [
    ...[wind.speedMps, isStill ? 0 : wholeTurn(wind.fromDeg), wind.gustSdMps],
    ...[temperatureC, altitudeM, pressureHpa ?? 'standard', humidity],
    ...[firmness, greenSpeedFt, season],
    ...[rules.strokeAndDistanceAlternative ? 'E-5' : '', rules.preferredLies ? 'E-3' : ''],
  ].join(' ');
}

const ORDINARY_KEY = dayKey(DEFAULT_CONDITIONS);

export function isOrdinaryDay(conditions: Conditions): boolean {
  return dayKey(conditions) === ORDINARY_KEY;
}

/** `wind 5 m/s from the west, gusts ± 1 m/s`, or `still air`. */
export function windPhrase({ wind }: Conditions, units: DayUnits): string {
  const { speedMps, fromDeg, gustSdMps } = wind;
  const gusts = gustSdMps === 0 ? '' : `, gusts ± ${speedText(gustSdMps, units)}`;
  if (speedMps === 0) return gusts === '' ? 'still air' : `hardly any wind${gusts}`;
  return `wind ${speedText(speedMps, units)} from the ${compassPoint(fromDeg)}${gusts}`;
}

/** `5 m/s`, `2.5 m/s`, `11 mph`. */
export function speedText(speedMps: number, units: DayUnits): string {
  const speed = units === 'yards' ? speedMps / MPS_PER_MPH : speedMps;
  return `${Number(speed.toFixed(units === 'yards' && speed >= 2 ? 0 : 1))} ${units === 'yards' ? 'mph' : 'm/s'}`;
}

/** `12 °C`, or `54 °F (12 °C)`: in many places that play in yards the weather is told in Celsius. */
export function temperatureText(celsius: number, units: DayUnits): string {
  const degrees = `${Math.round(celsius)} °C`;
  return units === 'yards' ? `${Math.round(fahrenheit(celsius))} °F (${degrees})` : degrees;
}

function altitudeText(altitudeM: number, units: DayUnits): string {
  const height = Math.round(units === 'yards' ? altitudeM / M_PER_FOOT : altitudeM);
  return `${height} ${units === 'yards' ? 'ft' : 'm'} above the sea`;
}

/** What is not as on an ordinary day, the most telling first; empty for an ordinary day. */
export function dayParts(conditions: Conditions, units: DayUnits): readonly string[] {
  const usual = DEFAULT_CONDITIONS;
  const { wind, temperatureC, altitudeM, pressureHpa, humidity, firmness, greenSpeedFt, season, rules } =
    conditions;
  const parts: (string | false)[] = [
    (wind.speedMps > 0 || wind.gustSdMps > 0) && windPhrase(conditions, units),
    temperatureC !== usual.temperatureC && temperatureText(temperatureC, units),
    altitudeM !== usual.altitudeM && altitudeText(altitudeM, units),
    pressureHpa !== undefined && `${Math.round(pressureHpa)} hPa`,
    humidity !== usual.humidity && `humidity ${Math.round(100 * humidity)} %`,
    firmness !== usual.firmness && `${firmness} ground`,
    greenSpeedFt !== usual.greenSpeedFt && `greens ${Number(greenSpeedFt.toFixed(1))} ft`,
    season !== usual.season && 'bare trees',
    rules.strokeAndDistanceAlternative && 'Local Rule E-5',
    rules.preferredLies && 'preferred lies (E-3)',
  ];
  return parts.filter((part) => part !== false);
}

/** The whole line, without a full stop. */
export function dayWords(conditions: Conditions, units: DayUnits): string {
  const parts = dayParts(conditions, units);
  if (parts.length > 0) return capital(parts.join(', '));
  const { temperatureC, greenSpeedFt } = DEFAULT_CONDITIONS;
  return `An ordinary day: still air, ${temperatureText(temperatureC, units)}, medium ground, greens ${greenSpeedFt} ft`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
