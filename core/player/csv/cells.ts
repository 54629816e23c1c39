/** One cell of a table as a number, a length, an angle, a side or a date. Text stays text: nothing is ever worked out. */

import { type Result, refuse, succeed } from '../../result.ts';
import { told, type Told } from '../../words/told.ts';

export type Decimal = '.' | ',';
export type LengthUnitName = 'm' | 'yd' | 'ft';
export type AngleUnitName = 'deg' | 'rad';
export type DateOrder = 'iso' | 'day-first' | 'month-first';

const METRES: Readonly<Record<LengthUnitName, number>> = { m: 1, yd: 0.9144, ft: 0.3048 };
const DEGREES: Readonly<Record<AngleUnitName, number>> = { deg: 1, rad: 180 / Math.PI };

export function metresOf(value: number, unit: LengthUnitName): number {
  return value * METRES[unit];
}

export function degreesOf(value: number, unit: AngleUnitName): number {
  return value * DEGREES[unit];
}

/** Longest cell that is looked at as anything but text. */
const MOST_CHARACTERS = 60;

/** Spaces of every kind away, signs made plain. */
function tidy(cell: string): string {
  return cell
    .replace(/[\s\u00a0\u2007\u2009\u202f]+/gu, ' ')
    .trim()
    .replace(/[\u2212\u2012\u2013]/gu, '-');
}

/** True for what a spreadsheet would work out: it is never a reading. */
export function isFormula(cell: string): boolean {
  const text = tidy(cell);
  return (
    /^[=@]/u.test(text) ||
    (/^[+-]/u.test(text) &&
      /[A-Za-z(!:*/]/u.test(text.slice(1)) &&
      !/^[+-][\d.,' ]+ ?[A-Za-z°]*$/u.test(text))
  );
}

/** The number of a cell: `1 234,5`, `1.234,5`, `1'234.5`, `-3`, `+0.4`; null where there is none. */
export function readNumber(cell: string, decimal: Decimal): number | null {
  if (cell.length > MOST_CHARACTERS) return null;
  const text = tidy(cell);
  const grouped =
    decimal === '.'
      ? /^([+-]?\d{1,3})((?:[ ,'\u2019]\d{3})+)(\.\d+)?$/u
      : /^([+-]?\d{1,3})((?:[ .'\u2019]\d{3})+)(,\d+)?$/u;
  const parts = grouped.exec(text);
  const plain = parts === null ? text : `${parts[1]!}${parts[2]!.replace(/\D/gu, '')}${parts[3] ?? ''}`;
  const dotted = decimal === '.' ? plain : plain.replace(',', '.');
  if (decimal === ',' && plain.includes('.')) return null;
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)$/u.test(dotted)) return null;
  const value = Number(dotted);
  return Number.isFinite(value) ? value : null;
}

/** Words for units as tables write them. */
const LENGTH_WORDS: Readonly<Record<string, LengthUnitName>> = {
  m: 'm',
  meter: 'm',
  meters: 'm',
  metre: 'm',
  metres: 'm',
  mtr: 'm',
  yd: 'yd',
  yds: 'yd',
  yard: 'yd',
  yards: 'yd',
  y: 'yd',
  ft: 'ft',
  feet: 'ft',
  foot: 'ft',
  "'": 'ft',
};
const ANGLE_WORDS: Readonly<Record<string, AngleUnitName>> = {
  deg: 'deg',
  degs: 'deg',
  degree: 'deg',
  degrees: 'deg',
  grad: 'deg',
  '°': 'deg',
  rad: 'rad',
  radians: 'rad',
};

export function lengthUnitOf(word: string): LengthUnitName | undefined {
  return LENGTH_WORDS[word.toLowerCase().replace(/\.$/u, '')];
}

export function angleUnitOf(word: string): AngleUnitName | undefined {
  return ANGLE_WORDS[word.toLowerCase().replace(/\.$/u, '')];
}

export type SpeedUnitName = 'm/s' | 'km/h' | 'mph' | 'kn';
export type HeatUnitName = 'C' | 'F';

const METRES_PER_SECOND: Readonly<Record<SpeedUnitName, number>> = {
  'm/s': 1,
  'km/h': 1 / 3.6,
  mph: 0.44704,
  kn: 1852 / 3600,
};
const SPEED_WORDS: Readonly<Record<string, SpeedUnitName>> = {
  'm/s': 'm/s',
  mps: 'm/s',
  ms: 'm/s',
  'km/h': 'km/h',
  kmh: 'km/h',
  kph: 'km/h',
  mph: 'mph',
  kn: 'kn',
  kt: 'kn',
  kts: 'kn',
  knots: 'kn',
};
const HEAT_WORDS: Readonly<Record<string, HeatUnitName>> = {
  c: 'C',
  '°c': 'C',
  degc: 'C',
  celsius: 'C',
  f: 'F',
  '°f': 'F',
  degf: 'F',
  fahrenheit: 'F',
};

export function speedUnitOf(word: string): SpeedUnitName | undefined {
  const plain = word.toLowerCase();
  return Object.hasOwn(SPEED_WORDS, plain) ? SPEED_WORDS[plain] : undefined;
}

export function heatUnitOf(word: string): HeatUnitName | undefined {
  const plain = word.toLowerCase().replace(/\s/gu, '');
  return Object.hasOwn(HEAT_WORDS, plain) ? HEAT_WORDS[plain] : undefined;
}

export function metresPerSecondOf(value: number, unit: SpeedUnitName): number {
  return value * METRES_PER_SECOND[unit];
}

export function celsiusOf(value: number, unit: HeatUnitName): number {
  return unit === 'C' ? value : ((value - 32) * 5) / 9;
}

/** A number with a unit behind it at most: `4,5 m/s`, `61 °F`; null where it is something else. */
export function readQuantity(
  cell: string,
  decimal: Decimal,
): { readonly value: number; readonly unit: string } | null {
  if (cell.length > MOST_CHARACTERS || isFormula(cell)) return null;
  const found = /^([+-]?[\d.,'\u2019]*\d[.,]?)\s*([^\d\s][^\d]*)?$/u.exec(tidy(cell));
  const value = found === null ? null : readNumber(found[1]!, decimal);
  return value === null ? null : { value, unit: (found![2] ?? '').trim() };
}

/** Where a wind comes from, in words, clockwise from ahead. */
const WIND_WORDS: readonly (readonly [RegExp, number])[] = [
  [/^(?:into|head|headwind|against|ahead|front|from ahead|from the front|gegen|gegenwind)$/iu, 0],
  [/^(?:tail|tailwind|down|downwind|behind|with|helping|from behind|r(?:ü|ue)ckenwind)$/iu, 180],
  [/^(?:from (?:the )?right|right|r|right to left|r\s*[-/>]+\s*l|von rechts)$/iu, 90],
  [/^(?:from (?:the )?left|left|l|left to right|l\s*[-/>]+\s*r|von links)$/iu, 270],
];

/** Degrees clockwise from ahead, from a number or from words such as `from the left`; null where it is neither. */
export function readWindFrom(cell: string, decimal: Decimal): number | null {
  const quantity = readQuantity(cell, decimal);
  if (quantity !== null) {
    const unit = quantity.unit === '' ? 'deg' : angleUnitOf(quantity.unit);
    return unit === undefined ? null : degreesOf(quantity.value, unit);
  }
  if (cell.length > MOST_CHARACTERS) return null;
  return WIND_WORDS.find(([words]) => words.test(tidy(cell)))?.[1] ?? null;
}

/** What letters and words stand for left and right, in small letters. */
export interface SideWords {
  readonly left: readonly string[];
  readonly right: readonly string[];
}

export const USUAL_SIDE_WORDS: SideWords = { left: ['l', 'left'], right: ['r', 'right'] };

/** -1 left, 1 right, 0 for neither; null where the cell says something else. */
export function readSide(cell: string, words: SideWords): -1 | 0 | 1 | null {
  const text = tidy(cell).toLowerCase();
  if (words.left.includes(text)) return -1;
  if (words.right.includes(text)) return 1;
  return text === '' || text === '-' || text === 'c' || text === 'center' || text === 'centre' ? 0 : null;
}

/** A number with what may stand around it: a unit, and a letter for the side. */
export interface Measure {
  readonly value: number;
  readonly unit: string | null;
  readonly side: -1 | 1 | null;
}

/** `12.3`, `12.3 yd`, `12.3L`, `R 4`, `4 m left`; the reason in words where it cannot be read. */
export function readMeasure(cell: string, decimal: Decimal, words: SideWords): Result<Measure, Told> {
  const shown = cell.length > 24 ? `${cell.slice(0, 24)}…` : cell;
  if (tidy(cell) === '') return refuse(told(({ faults }) => faults.table.empty));
  if (isFormula(cell)) return refuse(told(({ faults }) => faults.table.formula, { cell: shown }));
  if (cell.length > MOST_CHARACTERS)
    return refuse(told(({ faults }) => faults.table.cellTooLong, { cell: shown }));
  const text = tidy(cell);
  const plain = readNumber(text, decimal);
  if (plain !== null) return succeed({ value: plain, unit: null, side: null });
  const found = /^(?<before>[^\d+.,-]*)(?<number>[+-]?[\d.,'\u2019 ]*\d[.,]?)(?<after>\D*)$/u.exec(text);
  const number = found === null ? null : readNumber(found.groups!['number']!, decimal);
  if (found === null || number === null) {
    const other = decimal === '.' ? ',' : '.';
    const hint =
      readNumber(text, other) === null
        ? told(({ faults }) => faults.table.typeNumber)
        : told(({ faults }) => faults.table.otherDecimal, { sign: other });
    return refuse(told(({ faults }) => faults.table.noNumber, { cell: shown, hint }));
  }
  let side: -1 | 1 | null = null;
  let unit: string | null = null;
  for (const word of `${found.groups!['before']!} ${found.groups!['after']!}`.split(/[\s()[\]]+/u)) {
    if (word === '') continue;
    const asSide = readSide(word, words);
    if (asSide !== null && asSide !== 0) side = asSide;
    else if (lengthUnitOf(word) !== undefined || angleUnitOf(word) !== undefined) unit = word;
    else return refuse(told(({ faults }) => faults.table.neither, { cell: shown, word }));
  }
  return succeed({ value: number, unit, side });
}

/** A date and time as ISO 8601, without a zone as none is known; null where the text is none. */
export function readDate(date: string, time: string, order: DateOrder): string | null {
  const text = tidy(date);
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ]+(.+))?$/u.exec(text);
  const local = /^(\d{1,2})[-/. ]+(\d{1,2})[-/. ]+(\d{4}|\d{2})(?:[T ,]+(.+))?$/u.exec(text);
  let parts: readonly [number, number, number];
  let clock: string;
  if (iso !== null) {
    parts = [Number(iso[1]), Number(iso[2]), Number(iso[3])];
    clock = iso[4] ?? '';
  } else if (local !== null && order !== 'iso') {
    const [first, second] = [Number(local[1]), Number(local[2])];
    const year = local[3]!.length === 2 ? 2000 + Number(local[3]) : Number(local[3]);
    parts = order === 'day-first' ? [year, second, first] : [year, first, second];
    clock = local[4] ?? '';
  } else {
    return null;
  }
  const [year, month, day] = parts;
  const check = new Date(Date.UTC(year, month - 1, day));
  if (month < 1 || month > 12 || check.getUTCMonth() !== month - 1 || check.getUTCDate() !== day) return null;
  const pad = (value: number, width = 2): string => String(value).padStart(width, '0');
  const head = `${pad(year, 4)}-${pad(month)}-${pad(day)}`;
  const wanted = tidy(clock === '' ? time : clock);
  if (wanted === '') return head;
  const at = readClock(wanted);
  return at === null ? null : `${head}T${at}`;
}

/** `14:05`, `2:05:09 pm`, `14:05:09.5Z`. */
function readClock(text: string): string | null {
  const parts =
    /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)? ?(am|pm|a\.m\.|p\.m\.)?(Z|[+-]\d{2}:?\d{2})?$/iu.exec(text);
  if (parts === null) return null;
  let hour = Number(parts[1]);
  const half = parts[4]?.toLowerCase().charAt(0);
  if (half !== undefined && (hour < 1 || hour > 12)) return null;
  if (half === 'p' && hour < 12) hour += 12;
  if (half === 'a' && hour === 12) hour = 0;
  if (hour > 23 || Number(parts[2]) > 59 || Number(parts[3] ?? 0) > 59) return null;
  const zone = parts[5] === undefined ? '' : parts[5].toUpperCase();
  return `${String(hour).padStart(2, '0')}:${parts[2]!}:${parts[3] ?? '00'}${zone}`;
}
