/** A first guess at the mapping from names, units and the look of the cells; what is in doubt is said. */

import type { BagClub } from '../format.ts';
import type { Swing } from '../model.ts';
import {
  angleUnitOf,
  type DateOrder,
  heatUnitOf,
  lengthUnitOf,
  readSide,
  speedUnitOf,
  USUAL_SIDE_WORDS,
} from './cells.ts';
import { matchClubs } from './club-names.ts';
import type { ColumnField, ColumnRule, ShotMapping } from './mapping.ts';
import { findSwing } from './swing-names.ts';
import { type CsvShape, unitWord } from './sniff.ts';
import { told, type Told } from '../../words/told.ts';

export interface Suggestion {
  readonly mapping: ShotMapping;
  /** What the person should look at, in whole sentences; empty where nothing is in doubt. */
  readonly doubts: readonly Told[];
}

/** Words in a column's name that speak for a field, and words that speak against it. English, German, French, Spanish. */
const CLUES: Readonly<Record<ColumnField, { readonly for: RegExp; readonly against?: RegExp }>> = {
  club: {
    for: /\b(?:club|clubs|schl(?:ä|ae)ger|b(?:â|a)ton|palo)\b/iu,
    against: /speed|path|face|loft|angle|head/iu,
  },
  swing: { for: /\b(?:swing|swing type|schwung|effort)\b/iu, against: /speed|path|tempo|plane|direction/iu },
  carry: {
    for: /\bcarry|\bflug(?:weite|l(?:ä|ae)nge)|\bport(?:é|e)e\b|\bvuelo\b|\blanded?\b/iu,
    against: /side|off.?line|devi|lateral|angle|time/iu,
  },
  total: {
    for: /\btotal\b|\bgesamt|\bfinal\b|\bat rest\b/iu,
    against: /side|off.?line|devi|lateral|spin|time/iu,
  },
  intended: { for: /\bintended|\btarget dist|\bmeant|\bziel(?:weite|distanz)|\bwanted/iu },
  offline: {
    for: /\boff[- ]?line|\blateral|\bside\b|\bdevi|\bseit(?:e|lich)|\babweich|\b(?:é|e)cart|\bdesv|\bleft\W*right|\bdispersion|\bmiss\b/iu,
    against: /spin|angle|winkel|axis/iu,
  },
  direction: {
    for: /\b(?:direction|azimuth|bearing|heading|richtung|offline angle|side angle|start angle|h(?:orizontal)? angle|launch direction)\b|\bseitenwinkel/iu,
    against: /wind/iu,
  },
  side: { for: /^\W*(?:l\s*\/\s*r|left\s*(?:\/|or)\s*right|side|hand)\W*$/iu },
  lie: { for: /\b(?:lie|surface|untergrund|lage)\b/iu, against: /angle/iu },
  wind: {
    for: /\bwind|\bviento|\bvent\b/iu,
    against: /dir|from|angle|bearing|richtung|winkel|side|chill/iu,
  },
  windFrom: { for: /\b(?:wind|viento|vent)(?=.*(?:dir|from|angle|bearing|richtung|winkel|side))/iu },
  temperature: { for: /\btemp(?:erat|\b)/iu, against: /ball|feel|chill/iu },
  altitude: {
    for: /\b(?:altitude|elevation|h(?:ö|oe)he (?:ü|ue)ber|above sea|masl|altitud)\b/iu,
    against: /change|diff|max|apex|ball|delta/iu,
  },
  date: { for: /\b(?:date|datum|fecha|day|timestamp|when|zeitpunkt)\b/iu },
  time: { for: /\b(?:time|uhrzeit|zeit|heure|hora)\b/iu, against: /flight|hang|air|flug|stamp/iu },
};

/** The mapping that fits best. `bag` names the clubs that names in the file are matched with. */
export function suggestMapping(shape: CsvShape, bag: readonly BagClub[]): Suggestion {
  const doubts: Told[] = shape.warning === undefined ? [] : [shape.warning];
  const columns: ColumnRule[] = [];
  const taken = new Set<number>();
  const order: readonly ColumnField[] = [
    'carry',
    'total',
    'intended',
    'direction',
    'side',
    'offline',
    'club',
    'swing',
    'lie',
    'windFrom',
    'wind',
    'temperature',
    'altitude',
    'date',
    'time',
  ];
  for (const field of order) {
    const index = findColumn(shape, field, taken);
    if (index < 0) continue;
    taken.add(index);
    columns.push(ruleFor(shape, field, index));
  }
  // An offline distance that holds letters only is the side of another column.
  const has = (field: ColumnField): ColumnRule | undefined => columns.find((rule) => rule.field === field);
  addOnlyDistance(shape, columns, taken, doubts);
  if (has('offline') === undefined && has('direction') === undefined)
    doubts.push(told(({ faults }) => faults.table.doubts.noSide));
  for (const rule of columns) {
    if (rule.unit !== undefined && rule.field !== 'windFrom' && !hasStatedUnit(shape, rule))
      doubts.push(
        told(({ faults }) => faults.table.doubts.unit, { column: rule.header, unit: UNIT_WORDS[rule.unit] }),
      );
  }
  const windFrom = has('windFrom');
  if (windFrom !== undefined)
    doubts.push(told(({ faults }) => faults.table.doubts.windFrom, { column: windFrom.header }));
  if (windFrom === undefined && has('wind') !== undefined)
    doubts.push(told(({ faults }) => faults.table.doubts.noWindFrom));
  const offline = has('offline') ?? has('direction');
  if (offline !== undefined && has('side') === undefined && !hasLetters(shape, offline.index))
    doubts.push(
      told(({ faults }) => faults.table.doubts.sign, {
        column: offline.header,
        side: told(({ faults }) => faults.table.sides[offline.positive ?? 'right']),
      }),
    );

  const club = has('club');
  const names = club === undefined ? [] : distinct(shape, club.index);
  const matched = matchClubs(names, bag);
  const unknown = names.filter((name) => matched[name] === undefined);
  if (club === undefined) doubts.push(told(({ faults }) => faults.table.noClubColumn));
  else if (unknown.length > 0)
    doubts.push(
      told(({ faults }) => faults.table.doubts.notInBag, {
        names: unknown
          .slice(0, 8)
          .map((name) => `“${name}”`)
          .join(', '),
      }),
    );
  const swing = has('swing');
  const swingNames: Record<string, Swing> = {};
  for (const name of swing === undefined ? [] : distinct(shape, swing.index)) {
    const known = name.length > 60 ? undefined : findSwing(name);
    if (known !== undefined && Object.keys(swingNames).length < 40) swingNames[name] = known;
  }
  const date = has('date');
  const dates = date === undefined ? undefined : dateOrder(distinct(shape, date.index), doubts);
  return {
    mapping: {
      delimiter: shape.delimiter,
      decimal: shape.decimal,
      skipRows: shape.skipRows,
      columns,
      ...(Object.keys(matched).length === 0 ? {} : { clubNames: matched }),
      ...(Object.keys(swingNames).length === 0 ? {} : { swingNames }),
      ...(dates === undefined ? {} : { dates }),
    },
    doubts,
  };
}

function findColumn(shape: CsvShape, field: ColumnField, taken: ReadonlySet<number>): number {
  const clue = CLUES[field];
  let found = -1;
  shape.header.forEach((header, i) => {
    if (found >= 0 || taken.has(i)) return;
    // Underscores and capitals inside a word part words too.
    const words = header.replace(/_/gu, ' ').replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2');
    if (!clue.for.test(words) || clue.against?.test(words) === true) return;
    if (field === 'side' && !distinct(shape, i).every((cell) => readSide(cell, USUAL_SIDE_WORDS) !== null))
      return;
    if (field === 'offline' && distinct(shape, i).every((cell) => !/\d/u.test(cell))) return;
    if ((field === 'carry' || field === 'total') && angleUnitOf(unitOf(shape, i)) !== undefined) return;
    found = i;
  });
  return found;
}

/** Where nothing is called carry: a column called distance, or the total, is offered instead, with a word of doubt. */
function addOnlyDistance(shape: CsvShape, columns: ColumnRule[], taken: Set<number>, doubts: Told[]): void {
  if (columns.some((rule) => rule.field === 'carry')) return;
  const at = shape.header.findIndex(
    (name, i) => !taken.has(i) && /dist|length|l(?:ä|ae)nge|weite|yards|metres/iu.test(name),
  );
  if (at >= 0) {
    taken.add(at);
    columns.push(ruleFor(shape, 'carry', at));
    doubts.push(told(({ faults }) => faults.table.doubts.takenAsCarry, { column: shape.header[at]! }));
    return;
  }
  doubts.push(told(({ faults }) => faults.table.doubts.noCarry));
}

/** The rule that a column's own name and units speak for, once it is known what it holds. */
export function ruleFor(shape: CsvShape, field: ColumnField, index: number): ColumnRule {
  const header = shape.header[index]!.slice(0, 120);
  const word = unitOf(shape, index);
  const isLength = ['carry', 'total', 'intended', 'offline', 'altitude'].includes(field);
  if (field === 'wind')
    return { index, header, field, unit: speedUnitOf(unitOf(shape, index, isSpeed)) ?? 'm/s' };
  if (field === 'temperature')
    return { index, header, field, unit: heatUnitOf(unitOf(shape, index, isHeat)) ?? 'C' };
  const length = lengthUnitOf(word);
  const angle = angleUnitOf(word);
  // An offline that is given in degrees is a direction.
  if (field === 'offline' && angle !== undefined)
    return { index, header, field: 'direction', unit: angle, positive: signOf(header) };
  return {
    index,
    header,
    field,
    ...(isLength ? { unit: length ?? 'm' } : {}),
    ...(field === 'direction' ? { unit: angle ?? 'deg' } : {}),
    ...(field === 'offline' || field === 'direction' ? { positive: signOf(header) } : {}),
  };
}

/** `(left +)`, `L=+`, `- = R`: only what the name itself says turns the usual sign round. */
function signOf(header: string): 'right' | 'left' {
  const plus = String.raw`(?:\+|pos\w*)`;
  const minus = String.raw`(?:-|neg\w*)`;
  const left = String.raw`(?:left|links|gauche|\bl)`;
  const right = String.raw`(?:right|rechts|droite|\br)`;
  const between = String.raw`\s*[=:(]?\s*`;
  const turned = [
    left + between + plus,
    plus + between + left,
    right + between + minus,
    minus + between + right,
  ];
  return turned.some((pattern) => new RegExp(pattern, 'iu').test(header)) ? 'left' : 'right';
}

/** The unit in the row of units, in the name's brackets or at its end, or beside the numbers themselves. */
function unitOf(shape: CsvShape, index: number, isUnit = isLengthOrAngle): string {
  const inRow = unitWord(shape.units[index] ?? '');
  if (inRow !== '') return inRow;
  const header = shape.header[index] ?? '';
  const words = [
    ...[...header.matchAll(/[([{]([^)\]}]+)[)\]}]/gu)].flatMap((match) => [
      ...match[1]!.split(/[\s,;]+/u),
      ...match[1]!.split(/[\s,;/]+/u),
    ]),
    ...header
      .split(/[\s,;_]+/u)
      .slice(1)
      .reverse(),
    ...header
      .split(/[\s,;_/]+/u)
      .slice(1)
      .reverse(),
  ];
  const named = words.find(isUnit);
  if (named !== undefined) return named;
  for (const row of shape.sample) {
    const after = /\d\s*([\p{L}°]+(?:\/[\p{L}]+)?)\W*$/u.exec((row[index] ?? '').trim())?.[1];
    if (after !== undefined && after.toLowerCase() !== 'l' && after.toLowerCase() !== 'r') return after;
  }
  return '';
}

function isLengthOrAngle(word: string): boolean {
  return lengthUnitOf(word) !== undefined || angleUnitOf(word) !== undefined;
}

function isSpeed(word: string): boolean {
  return speedUnitOf(word) !== undefined;
}

function isHeat(word: string): boolean {
  return heatUnitOf(word) !== undefined;
}

const UNIT_WORDS: Readonly<Record<NonNullable<ColumnRule['unit']>, string>> = {
  m: 'm',
  yd: 'yd',
  ft: 'ft',
  deg: 'deg',
  rad: 'rad',
  'm/s': 'm/s',
  'km/h': 'km/h',
  mph: 'mph',
  kn: 'kn',
  C: '°C',
  F: '°F',
};

function hasStatedUnit(shape: CsvShape, rule: ColumnRule): boolean {
  if (rule.field === 'wind') return isSpeed(unitOf(shape, rule.index, isSpeed));
  if (rule.field === 'temperature') return isHeat(unitOf(shape, rule.index, isHeat));
  const word = unitOf(shape, rule.index);
  return rule.field === 'direction' ? angleUnitOf(word) !== undefined : lengthUnitOf(word) !== undefined;
}

function hasLetters(shape: CsvShape, index: number): boolean {
  return shape.sample.some((row) => /(?:^|\d|\s)(?:l|r|left|right)\b/iu.test(row[index] ?? ''));
}

function distinct(shape: CsvShape, index: number): string[] {
  const cells = shape.scattered.map((row) => (row[index] ?? '').trim()).filter((cell) => cell !== '');
  return [...new Set(cells)];
}

/** A first number above twelve is a day, a second one too; where neither shows, the point speaks for day first. */
function dateOrder(cells: readonly string[], doubts: Told[]): DateOrder {
  const parts = cells.flatMap((cell) => {
    const found = /^(\d{1,2})([-/. ]+)(\d{1,2})[-/. ]+\d{2,4}/u.exec(cell);
    return found === null ? [] : [{ first: Number(found[1]), sign: found[2]!, second: Number(found[3]) }];
  });
  if (parts.length === 0) return 'iso';
  if (parts.some(({ first }) => first > 12)) return 'day-first';
  if (parts.some(({ second }) => second > 12)) return 'month-first';
  if (parts.every(({ sign }) => sign.includes('.'))) return 'day-first';
  doubts.push(told(({ faults }) => faults.table.doubts.dates));
  return 'day-first';
}
