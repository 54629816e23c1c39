/** Which properties a kind has for the panel, in words, and how text typed in becomes what the file holds. */

import type { Words } from '../../core/words/words.ts';
import type { FeatureKind } from '../../core/course/feature-kind.ts';
import { KIND_RULES, LEAF_CYCLES, LEAF_TYPES, type PropertyKey } from '../../core/course/schema.ts';
import { CARD_LENGTH_MEMBER } from '../../core/course/card-length.ts';
import { DEFAULT_LIP_M, TREE_CANOPY, TREE_CROWN_RADIUS_M, WOODS_CANOPY } from '../../core/course/defaults.ts';
import type { Units } from '../state/measures.ts';

export interface Field {
  readonly key: PropertyKey | typeof CARD_LENGTH_MEMBER;
  readonly words: string;
  readonly unit?: string;
  readonly numeric: boolean;
  /** What is taken where nothing is written. */
  readonly standard?: string;
  readonly choices?: readonly string[];
}

const M_PER_YARD = 0.9144;

type Shape = Omit<Field, 'key' | 'words'>;
const TEXT: Shape = { numeric: false };
const METRES: Shape = { unit: 'm', numeric: true };

function shapeOf(key: PropertyKey, { drawing }: Words): Shape {
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
      return { ...TEXT, choices: LEAF_TYPES };
    case 'leaf_cycle':
      return { ...TEXT, choices: LEAF_CYCLES };
    case 'slope_percent':
      return { unit: '%', numeric: true };
    case 'downhill_deg':
      return { unit: fields.fromNorth, numeric: true };
    default:
      return METRES;
  }
}

export function fieldsOf(kind: FeatureKind, units: Units, words: Words): readonly Field[] {
  const rule = KIND_RULES[kind];
  const fields = [...rule.required, ...rule.optional].map(
    (key): Field => ({
      key,
      words: words.drawing.fields[key],
      ...shapeOf(key, words),
      ...standardOf(kind, key, words),
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

function standardOf(kind: FeatureKind, key: PropertyKey, words: Words): { readonly standard?: string } {
  if (key === 'lip_m') return { standard: String(DEFAULT_LIP_M) };
  const canopy = kind === 'woods' ? WOODS_CANOPY : kind === 'tree' ? TREE_CANOPY : undefined;
  if (canopy === undefined) return {};
  switch (key) {
    case 'height':
      return { standard: String(canopy.topM) };
    case 'canopy_base_m':
      return { standard: String(canopy.baseM) };
    case 'canopy_density_per_m':
      return { standard: String(canopy.densityPerM) };
    case 'diameter_crown':
      return { standard: String(2 * TREE_CROWN_RADIUS_M) };
    case 'leaf_type':
      return { standard: 'broadleaved' };
    case 'leaf_cycle':
      return { standard: words.drawing.fields.byLeaves };
    default:
      return {};
  }
}

/** The property as the field shows it. */
export function shownValue(field: Field, value: unknown, units: Units): string {
  if (typeof value !== 'string' && typeof value !== 'number') return '';
  if (field.key !== CARD_LENGTH_MEMBER || units === 'metres') return String(value);
  const metres = Number(value);
  return Number.isFinite(metres) ? String(Math.round((metres / M_PER_YARD) * 10) / 10) : String(value);
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
  if (field.key === CARD_LENGTH_MEMBER && units === 'yards')
    return Math.round(number * M_PER_YARD * 100) / 100;
  return number;
}
