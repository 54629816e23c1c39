/** Which properties a kind has for the panel, in words, and how text typed in becomes what the file holds. */

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

const WORDS: Readonly<Record<PropertyKey, Omit<Field, 'key'>>> = {
  ref: { words: 'Hole', numeric: true },
  name: { words: 'Name', numeric: false },
  par: { words: 'Par', numeric: true },
  handicap: { words: 'Stroke index', numeric: true },
  height: { words: 'Height', unit: 'm', numeric: true },
  diameter_crown: { words: 'Crown, across', unit: 'm', numeric: true },
  canopy_base_m: { words: 'Lowest branches', unit: 'm', numeric: true },
  canopy_density_per_m: { words: 'Density', unit: 'per m', numeric: true },
  leaf_type: { words: 'Leaves', numeric: false, choices: LEAF_TYPES },
  leaf_cycle: { words: 'Keeps its leaves', numeric: false, choices: LEAF_CYCLES },
  lip_m: { words: 'Lip above the sand', unit: 'm', numeric: true },
  slope_percent: { words: 'Falls by', unit: '%', numeric: true },
  downhill_deg: { words: 'Downhill to', unit: '° from north', numeric: true },
  ele: { words: 'Above sea level', unit: 'm', numeric: true },
};

export function fieldsOf(kind: FeatureKind, units: Units): readonly Field[] {
  const rule = KIND_RULES[kind];
  const fields = [...rule.required, ...rule.optional].map(
    (key): Field => ({ key, ...WORDS[key], ...standardOf(kind, key) }),
  );
  if (kind === 'tee-marker') {
    fields.push({
      key: CARD_LENGTH_MEMBER,
      words: 'Length on the card',
      unit: units === 'yards' ? 'yd' : 'm',
      numeric: true,
    });
    return fields.map((field) => (field.key === 'name' ? { ...field, words: 'Name' } : field));
  }
  return fields;
}

function standardOf(kind: FeatureKind, key: PropertyKey): { readonly standard?: string } {
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
      return { standard: 'by its leaves' };
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
