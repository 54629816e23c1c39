/**
 * How the columns of a table are to be read: which one holds what, in which unit and with which signs. Plain data, kept
 * in the player file per source, so that the next file of the same device needs no questions.
 */

import * as v from 'valibot';
import { SWINGS } from '../model.ts';

const text = (longest: number) => v.pipe(v.string(), v.maxLength(longest));
const name = (longest: number) => v.pipe(v.string(), v.minLength(1), v.maxLength(longest));

/** What a column can hold. `side` is a letter for left or right that goes with an offline distance without a sign. */
export const COLUMN_FIELDS = [
  'club',
  'swing',
  'carry',
  'total',
  'intended',
  'offline',
  'direction',
  'side',
  'lie',
  'wind',
  'windFrom',
  'temperature',
  'altitude',
  'date',
  'time',
] as const;
export type ColumnField = (typeof COLUMN_FIELDS)[number];

const ColumnRuleSchema = v.looseObject({
  /** Which column, counted from 0. */
  index: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(999)),
  /** Its name in the file, as a reminder and to find the same source again. */
  header: text(120),
  field: v.picklist(COLUMN_FIELDS),
  /** Of lengths, directions, wind and temperature; a unit in the cell itself counts more. */
  unit: v.optional(v.picklist(['m', 'yd', 'ft', 'deg', 'rad', 'm/s', 'km/h', 'mph', 'kn', 'C', 'F'])),
  /** Which side a number without a letter and without a minus means. */
  positive: v.optional(v.picklist(['right', 'left'])),
});
export type ColumnRule = v.InferOutput<typeof ColumnRuleSchema>;

const between = (least: number, most: number) =>
  v.optional(v.pipe(v.number(), v.minValue(least), v.maxValue(most)));

/** What holds for every shot of a table, where no column says otherwise. Members as in the player file. */
const TableConditionsSchema = v.looseObject({
  lie: v.optional(name(40)),
  windMps: between(0, 80),
  windFromDeg: between(-360, 360),
  temperatureC: between(-60, 70),
  altitudeM: between(-500, 9000),
});
export type TableConditions = v.InferOutput<typeof TableConditionsSchema>;

export const ShotMappingSchema = v.looseObject({
  delimiter: v.picklist([',', ';', '\t', '|']),
  decimal: v.picklist(['.', ',']),
  /** Rows before the first shot, counted without empty ones: names, units, and what stands above them. */
  skipRows: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(200)),
  columns: v.pipe(v.array(ColumnRuleSchema), v.minLength(1), v.maxLength(60)),
  /** Names of clubs in the file and in the bag. */
  clubNames: v.optional(v.record(name(60), name(60))),
  swingNames: v.optional(v.record(name(60), v.picklist(SWINGS))),
  /** For a table without a column of clubs: the club that all its shots were hit with. */
  club: v.optional(name(60)),
  conditions: v.optional(TableConditionsSchema),
  leftWords: v.optional(v.pipe(v.array(name(20)), v.maxLength(20))),
  rightWords: v.optional(v.pipe(v.array(name(20)), v.maxLength(20))),
  dates: v.optional(v.picklist(['iso', 'day-first', 'month-first'])),
});
export type ShotMapping = v.InferOutput<typeof ShotMappingSchema>;

/** A mapping that is remembered. `headers` are the column names by which its files are known again. */
export const ShotSourceSchema = v.looseObject({
  name: name(60),
  headers: v.pipe(v.array(text(120)), v.maxLength(200)),
  mapping: ShotMappingSchema,
});
export type ShotSource = v.InferOutput<typeof ShotSourceSchema>;

/** The rule for a field, if a column holds it. */
export function ruleOf(mapping: ShotMapping, field: ColumnField): ColumnRule | undefined {
  return mapping.columns.find((rule) => rule.field === field);
}
