/** Which properties a kind has for the panel, in words, and how text typed in becomes what the file holds. */

import type { Words } from '../../core/words/words.ts';
import type { FeatureKind } from '../../core/course/feature-kind.ts';
import {
  KIND_RULES,
  LEAF_CYCLES,
  LEAF_TYPES,
  LENGTH_BOUNDS_M,
  type PropertyKey,
} from '../../core/course/schema.ts';
import { CARD_LENGTH_BOUNDS_M, CARD_LENGTH_MEMBER } from '../../core/course/card-length.ts';
import { type EditResult, refuseEdit } from '../../core/course/edits/edit.ts';
import { M_PER_FOOT, M_PER_YARD } from '../../core/words/lengths.ts';
import { told, type Told } from '../../core/words/told.ts';
import { DEFAULT_LIP_M, TREE_CANOPY, TREE_CROWN_RADIUS_M, WOODS_CANOPY } from '../../core/course/defaults.ts';
import type { Units } from '../state/measures.ts';

export interface Field {
  readonly key: PropertyKey | typeof CARD_LENGTH_MEMBER;
  readonly words: string;
  readonly unit?: string;
  readonly numeric: boolean;
  /** What is taken where nothing is written. */
  readonly standard?: string;
  /** What the file may hold, and how it is called. */
  readonly options?: readonly { readonly value: string; readonly words: string }[];
}

/** Small lengths of the file, in metres there: told in feet where yards are chosen. */
const HEIGHTS: readonly Field['key'][] = ['height', 'diameter_crown', 'canopy_base_m', 'lip_m', 'ele'];

/** Metres in the unit that the field shows. */
function metresPer(key: Field['key'], units: Units): number {
  if (units === 'metres') return 1;
  return key === CARD_LENGTH_MEMBER ? M_PER_YARD : HEIGHTS.includes(key) ? M_PER_FOOT : 1;
}

type Shape = Omit<Field, 'key' | 'words'>;
const TEXT: Shape = { numeric: false };

function shapeOf(key: PropertyKey, units: Units, { drawing }: Words): Shape {
  const { fields } = drawing;
  switch (key) {
    case 'name':
      return TEXT;
    case 'ref':
    case 'par':
    case 'handicap':
      return { numeric: true };
    case 'canopy_density_per_m':
      return { unit: fields.perMetre, numeric: true };
    case 'leaf_type':
      return { ...TEXT, options: LEAF_TYPES.map((value) => ({ value, words: drawing.leafTypes[value] })) };
    case 'leaf_cycle':
      return { ...TEXT, options: LEAF_CYCLES.map((value) => ({ value, words: drawing.leafCycles[value] })) };
    case 'slope_percent':
      return { unit: '%', numeric: true };
    case 'downhill_deg':
      return { unit: fields.fromNorth, numeric: true };
    default:
      return { unit: units === 'yards' ? 'ft' : 'm', numeric: true };
  }
}

export function fieldsOf(kind: FeatureKind, units: Units, words: Words): readonly Field[] {
  const rule = KIND_RULES[kind];
  const fields = [...rule.required, ...rule.optional].map(
    (key): Field => ({
      key,
      words: words.drawing.fields[key],
      ...shapeOf(key, units, words),
      ...standardOf(kind, key, units, words),
    }),
  );
  if (kind === 'tee-marker') {
    fields.push({
      key: CARD_LENGTH_MEMBER,
      words: words.drawing.fields.cardLength,
      unit: units === 'yards' ? 'yd' : 'm',
      numeric: true,
    });
  }
  return fields;
}

function standardOf(
  kind: FeatureKind,
  key: PropertyKey,
  units: Units,
  words: Words,
): { readonly standard?: string } {
  const length = (metres: number) => ({ standard: words.figures.short(metres / metresPer(key, units), 1) });
  if (key === 'lip_m') return length(DEFAULT_LIP_M);
  const canopy = kind === 'woods' ? WOODS_CANOPY : kind === 'tree' ? TREE_CANOPY : undefined;
  if (canopy === undefined) return {};
  switch (key) {
    case 'height':
      return length(canopy.topM);
    case 'canopy_base_m':
      return length(canopy.baseM);
    case 'canopy_density_per_m':
      return { standard: words.figures.short(canopy.densityPerM, 3) };
    case 'diameter_crown':
      return length(2 * TREE_CROWN_RADIUS_M);
    case 'leaf_type':
      return { standard: words.drawing.leafTypes.broadleaved };
    case 'leaf_cycle':
      return { standard: words.drawing.fields.byLeaves };
    default:
      return {};
  }
}

/** The property as the field shows it. */
export function shownValue(field: Field, value: unknown, units: Units): string {
  if (typeof value !== 'string' && typeof value !== 'number') return '';
  const per = metresPer(field.key, units);
  const metres = Number(value);
  return per !== 1 && Number.isFinite(metres) ? String(Math.round((metres / per) * 10) / 10) : String(value);
}

/**
 * What is written: a number where the text is one, `ref` as text (as in OpenStreetMap), an empty text to take it
 * away. A decimal comma is read as a point.
 */
export function typedValue(field: Field, text: string, units: Units): unknown {
  const trimmed = text.trim();
  if (trimmed === '' || !field.numeric) return trimmed;
  const number = Number(trimmed.replace(',', '.'));
  if (!Number.isFinite(number) || field.key === 'ref') return trimmed;
  const per = metresPer(field.key, units);
  return per === 1 ? number : Math.round(number * per * 100) / 100;
}

/** A refusal of what was typed names the field as the panel does, and tells value and bounds in the unit it shows. */
export function asTyped(
  made: EditResult,
  { key, unit }: Pick<Field, 'key' | 'unit'>,
  text: string,
  units: Units,
): EditResult {
  const message = made.ok ? undefined : made.error.told;
  if (made.ok || message?.values['key'] !== key) return made;
  const label = key === CARD_LENGTH_MEMBER ? 'cardLength' : key;
  const isNumber = Number.isFinite(Number(text.trim().replace(',', '.')));
  const wanted = unit === undefined ? undefined : boundsIn(key, unit, units);
  return refuseEdit(
    made.error.reason,
    {
      ...message,
      values: {
        ...message.values,
        key: told(({ features }) => features.quoted, { name: told(({ drawing }) => drawing.fields[label]) }),
        ...(isNumber ? { value: unit === undefined ? text.trim() : `${text.trim()} ${unit}` } : {}),
        ...(wanted === undefined ? {} : { wanted }),
      },
    },
    made.error.feature,
  );
}

/** Undefined where the file's own unit is shown. */
function boundsIn(key: Field['key'], unit: string, units: Units): Told | undefined {
  const per = metresPer(key, units);
  const bounds =
    key === CARD_LENGTH_MEMBER
      ? CARD_LENGTH_BOUNDS_M
      : key in LENGTH_BOUNDS_M
        ? LENGTH_BOUNDS_M[key as keyof typeof LENGTH_BOUNDS_M]
        : undefined;
  if (per === 1 || bounds === undefined) return undefined;
  const [least, most] = bounds;
  return told(({ courseReading }) => courseReading.lengthIn, {
    least: Math.ceil(least / per),
    most: Math.floor(most / per),
    unit,
  });
}
