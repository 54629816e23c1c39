/** A day in words: only what differs from an ordinary one, so that the line stays short and nothing of note is left out. */

import { M_PER_FOOT } from '../words/lengths.ts';
import { capital, type Words } from '../words/words.ts';
import { type Conditions, DEFAULT_CONDITIONS } from './conditions.ts';

/** Wind, temperature and altitude follow the unit of lengths; a Stimpmeter is read in feet everywhere. */
export type DayUnits = 'yards' | 'metres';

/** Metres per second in a mile per hour (international mile, 1609.344 m). */
export const MPS_PER_MPH = 0.44704;

/** Points of the compass, from north clockwise. */
const POINTS = 16;

/** Degrees from 0 up to 360, clockwise from north. */
export function wholeTurn(degrees: number): number {
  const turn = degrees % 360;
  return turn < 0 ? turn + 360 : turn === 0 ? 0 : turn;
}

/** The nearest of the sixteen points of the compass. */
export function compassPoint(degrees: number, { golf }: Words): string {
  const index = Math.round(wholeTurn(degrees) / 22.5) % POINTS;
  const points: Readonly<Record<number, string>> = golf.compass;
  return points[index] ?? '';
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
export function windPhrase({ wind }: Conditions, units: DayUnits, words: Words): string {
  const { parts } = words.day;
  const { speedMps, fromDeg, gustSdMps } = wind;
  const gusts = gustSdMps === 0 ? '' : parts.gusts({ speed: speedText(gustSdMps, units, words) });
  if (speedMps === 0) return gusts === '' ? parts.still : parts.hardlyAny({ gusts });
  const speed = speedText(speedMps, units, words);
  return parts.wind({ speed, point: compassPoint(fromDeg, words), gusts });
}

/** `5 m/s`, `2.5 m/s`, `11 mph`. */
export function speedText(speedMps: number, units: DayUnits, { figures }: Words): string {
  const speed = units === 'yards' ? speedMps / MPS_PER_MPH : speedMps;
  const told = figures.short(speed, units === 'yards' && speed >= 2 ? 0 : 1);
  return `${told} ${units === 'yards' ? 'mph' : 'm/s'}`;
}

/** `12 °C`, or `54 °F (12 °C)`: in many places that play in yards the weather is told in Celsius. */
export function temperatureText(celsius: number, units: DayUnits): string {
  const degrees = `${Math.round(celsius)} °C`;
  return units === 'yards' ? `${Math.round(fahrenheit(celsius))} °F (${degrees})` : degrees;
}

function altitudeText(altitudeM: number, units: DayUnits, { day }: Words): string {
  const height = Math.round(units === 'yards' ? altitudeM / M_PER_FOOT : altitudeM);
  return day.parts.altitude({ height: `${height} ${units === 'yards' ? 'ft' : 'm'}` });
}

/** What is not as on an ordinary day, the most telling first; empty for an ordinary day. */
export function dayParts(conditions: Conditions, units: DayUnits, words: Words): readonly string[] {
  const usual = DEFAULT_CONDITIONS;
  const told = words.day.parts;
  const { wind, temperatureC, altitudeM, pressureHpa, humidity, firmness, greenSpeedFt, season, rules } =
    conditions;
  const parts: (string | false)[] = [
    (wind.speedMps > 0 || wind.gustSdMps > 0) && windPhrase(conditions, units, words),
    temperatureC !== usual.temperatureC && temperatureText(temperatureC, units),
    altitudeM !== usual.altitudeM && altitudeText(altitudeM, units, words),
    pressureHpa !== undefined && `${Math.round(pressureHpa)} hPa`,
    humidity !== usual.humidity && told.humidity({ percent: Math.round(100 * humidity) }),
    firmness !== usual.firmness && told.ground[firmness],
    greenSpeedFt !== usual.greenSpeedFt && told.greens({ feet: words.figures.short(greenSpeedFt, 1) }),
    season !== usual.season && told.bare,
    rules.strokeAndDistanceAlternative && told.ruleE5,
    rules.preferredLies && told.ruleE3,
  ];
  return parts.filter((part) => part !== false);
}

/** The whole line, without a full stop. */
export function dayWords(conditions: Conditions, units: DayUnits, words: Words): string {
  const parts = dayParts(conditions, units, words);
  if (parts.length > 0) return capital(parts.join(', '));
  const { temperatureC, greenSpeedFt } = DEFAULT_CONDITIONS;
  return words.day.ordinary({
    temperature: temperatureText(temperatureC, units),
    feet: words.figures.short(greenSpeedFt, 1),
  });
}
