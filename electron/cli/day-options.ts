/** The day of a command: a file of conditions, and single options that win over it. */

import { readFile } from 'node:fs/promises';
import {
  type Conditions,
  ConditionsSchema,
  DEFAULT_CONDITIONS,
  FIRMNESSES,
  parseConditions,
  SEASONS,
} from '../../core/conditions/conditions.ts';
import { DAY_RANGES, type DayNumber } from '../../core/conditions/ranges.ts';
import { EXIT, optionalText, Stop, stopForFaults, stopForUsage, stopUnread } from './command.ts';

const text = { type: 'string' } as const;

/** For `readArguments`. */
export const DAY_OPTIONS = {
  ...{ conditions: text, 'wind-mps': text, 'wind-from-deg': text, 'gust-sd-mps': text },
  ...{ 'temperature-c': text, 'altitude-m': text, 'pressure-hpa': text, 'humidity-percent': text },
  ...{ firmness: text, 'green-speed-ft': text, season: text, 'local-rules': text },
};

export const DAY_USAGE = `       The day: [--conditions FILE] [--wind-mps W --wind-from-deg D] [--gust-sd-mps G] [--temperature-c T] [--altitude-m H]
       [--pressure-hpa P] [--humidity-percent H] [--firmness firm|medium|soft] [--green-speed-ft S] [--season leaf|bare]
       [--local-rules none|E-5,E-3]
The wind's direction is where it comes from, clockwise from north. Single options win over the file; what neither says is
as on an ordinary day: still air, ${DEFAULT_CONDITIONS.temperatureC} °C, sea level, medium ground, greens of ${DEFAULT_CONDITIONS.greenSpeedFt} ft, trees in leaf, no local rules.`;

const LOCAL_RULES = ['E-5', 'E-3'] as const;
/** No day takes more. */
const MOST_BYTES = 64 * 1024;

type Values = Parameters<typeof optionalText>[0];

/** An ordinary day where nothing is said of it. */
export async function readDay(values: Values, usage: string): Promise<Conditions> {
  const file = optionalText(values, 'conditions');
  const base = file === undefined ? DEFAULT_CONDITIONS : await readDayFile(file);
  const number = (option: string, name: DayNumber, unit = 1): number | undefined => {
    const given = optionalText(values, option);
    if (given === undefined) return undefined;
    const value = given.trim() === '' ? NaN : Number(given);
    const least = DAY_RANGES[name].least * unit;
    const most = DAY_RANGES[name].most * unit;
    if (!(value >= least && value <= most))
      throw stopForUsage(`--${option} takes a number from ${least} to ${most}, not “${given}”.`, usage);
    return value / unit;
  };
  const oneOf = <Name extends string>(option: string, names: readonly Name[]): Name | undefined => {
    const given = optionalText(values, option);
    if (given === undefined) return undefined;
    const found = names.find((name) => name === given.toLowerCase());
    if (found === undefined)
      throw stopForUsage(`--${option} takes ${names.join(', ')}, not “${given}”.`, usage);
    return found;
  };
  const speedMps = number('wind-mps', 'windMps');
  const fromDeg = number('wind-from-deg', 'windFromDeg');
  if (speedMps !== undefined && speedMps > 0 && fromDeg === undefined && base.wind.speedMps === 0)
    throw stopForUsage('--wind-mps needs --wind-from-deg: where the wind comes from.', usage);
  if (fromDeg !== undefined && speedMps === undefined && base.wind.speedMps === 0)
    throw stopForUsage('--wind-from-deg needs --wind-mps: how fast the wind is.', usage);
  const pressureHpa = number('pressure-hpa', 'pressureHpa') ?? base.pressureHpa;
  return {
    ...base,
    wind: {
      speedMps: speedMps ?? base.wind.speedMps,
      fromDeg: fromDeg ?? base.wind.fromDeg,
      gustSdMps: number('gust-sd-mps', 'gustSdMps') ?? base.wind.gustSdMps,
    },
    temperatureC: number('temperature-c', 'temperatureC') ?? base.temperatureC,
    altitudeM: number('altitude-m', 'altitudeM') ?? base.altitudeM,
    ...(pressureHpa === undefined ? {} : { pressureHpa }),
    humidity: number('humidity-percent', 'humidity', 100) ?? base.humidity,
    firmness: oneOf('firmness', FIRMNESSES) ?? base.firmness,
    greenSpeedFt: number('green-speed-ft', 'greenSpeedFt') ?? base.greenSpeedFt,
    season: oneOf('season', SEASONS) ?? base.season,
    rules: localRules(optionalText(values, 'local-rules'), usage) ?? base.rules,
  };
}

function localRules(given: string | undefined, usage: string): Conditions['rules'] | undefined {
  if (given === undefined) return undefined;
  const names =
    given.toLowerCase() === 'none' ? [] : given.split(',').map((name) => name.trim().toUpperCase());
  const unknown = names.find((name) => !LOCAL_RULES.some((known) => known === name));
  if (unknown !== undefined)
    throw stopForUsage(`--local-rules takes none, E-5, E-3 or E-5,E-3, not “${given}”.`, usage);
  return {
    strokeAndDistanceAlternative: names.includes('E-5'),
    preferredLies: names.includes('E-3'),
  };
}

async function readDayFile(file: string): Promise<Conditions> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (error) {
    throw stopUnread(file, error);
  }
  const refuse = (words: string): Stop => new Stop(EXIT.badInput, [`${file}: error: ${words}`]);
  if (bytes.length > MOST_BYTES) throw refuse('it is too large for a file of conditions. Check the path.');
  let data: unknown;
  try {
    data = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw refuse(`it is no JSON text in UTF-8 (${why}). See maps/schemas/conditions.schema.json.`);
  }
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    throw refuse('conditions: it holds no object of conditions. See maps/schemas/conditions.schema.json.');
  const strangers = unknownMembers(data);
  if (strangers.length > 0)
    throw refuse(
      `conditions.${strangers[0]!}: there is no such member. Correct its name or take it out; see maps/schemas/conditions.schema.json.`,
    );
  const parsed = parseConditions(data);
  if (!parsed.ok) throw stopForFaults(file, parsed.error);
  return parsed.value;
}

/** A mistyped name would otherwise leave its value out without a word. Names that begin with `$` are remarks. */
function unknownMembers(data: object): readonly string[] {
  const known = (members: object, names: readonly string[], before: string): string[] =>
    Object.keys(members)
      .filter((name) => !name.startsWith('$') && !names.includes(name))
      .map((name) => before + name);
  const parts: Readonly<Record<string, unknown>> = { ...data };
  const inside = (part: 'wind' | 'rules'): string[] => {
    const members = parts[part];
    return typeof members === 'object' && members !== null
      ? known(members, Object.keys(ConditionsSchema.entries[part].wrapped.entries), `${part}.`)
      : [];
  };
  return [...known(data, Object.keys(ConditionsSchema.entries), ''), ...inside('wind'), ...inside('rules')];
}
