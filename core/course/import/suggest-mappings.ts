/** Looks at the properties that a GeoJSON file's features have and offers which values may mean which kinds. */

import type { Fault, Result } from '../../result.ts';
import { succeed } from '../../result.ts';
import { type FeatureKind, featureKindOf } from '../feature-kind.ts';
import { KIND_RULES, type GeometryType } from '../schema.ts';
import { type KindMapping, readPlainFeatures, valueText } from './geojson.ts';
import { readRef } from './complete-proposal.ts';

export interface SuggestedValue {
  readonly value: string;
  readonly count: number;
  readonly geometryTypes: readonly GeometryType[];
  /** The kind that the word says and the geometry allows; absent where the word says nothing. */
  readonly kind?: FeatureKind;
}

export interface SuggestedProperty {
  readonly property: string;
  /** Most frequent first. */
  readonly values: readonly SuggestedValue[];
}

export interface MappingSuggestions {
  /** Properties with few different values, those with the most features of a suggested kind first. */
  readonly properties: readonly SuggestedProperty[];
  /** The mappings of the best property; none where no word was understood. */
  readonly mappings: readonly KindMapping[];
  /** A property that looks like the number of the hole. */
  readonly holeProperty?: string;
  /** Features that need no mapping, for they have tags that are known. */
  readonly tagged: number;
  readonly features: number;
}

/** A property with more different values names things; it does not sort them. */
const MOST_VALUES = 60;
const MOST_PROPERTIES = 200;

/** English words of the trade, in the order in which they are looked for. */
const WORDS: readonly (readonly [RegExp, readonly FeatureKind[]])[] = [
  [/out[\s_-]*of[\s_-]*bounds|^ob$/, ['out-of-bounds']],
  [/tee[\s_-]*(marker|plate)/, ['tee-marker']],
  [/(hole[\s_-]*position|^pin\b|flag|^cup$)/, ['hole-position']],
  [/(hole[\s_-]*line|centre[\s_-]*line|center[\s_-]*line|line[\s_-]*of[\s_-]*play)/, ['hole']],
  [/\btees?\b|teeing/, ['tee', 'tee-marker']],
  [/fairway/, ['fairway']],
  [/\bgreens?\b|putting/, ['green']],
  [/bunker|\bsand\b|\btraps?\b/, ['bunker']],
  [/(long|deep|heavy|tall|native|fescue)[\s_-]*(rough|grass)?|heather|gorse/, ['long-rough']],
  [/\brough\b/, ['rough']],
  [/lateral|red[\s_-]*(penalty|stakes?)|stream|ditch|creek/, ['penalty-red']],
  [/yellow/, ['penalty-yellow']],
  [/water|pond|lake|hazard|penalty/, ['penalty-red']],
  [/woods?\b|woodland|forest/, ['woods', 'tree']],
  [/\btrees?\b/, ['tree', 'woods']],
  [/path|cart|trail/, ['path']],
  [/boundary|property|perimeter/, ['boundary']],
  [/elevation|height|\bspot\b/, ['ground-level']],
  [/^holes?$/, ['hole']],
];

/** The kind that a word means, among those that can be drawn as all of these geometries. */
export function kindOfWord(word: string, types: readonly GeometryType[]): FeatureKind | undefined {
  const lower = word.toLowerCase().trim();
  for (const [pattern, kinds] of WORDS) {
    if (!pattern.test(lower)) continue;
    const fitting = kinds.find((kind) => types.every((type) => KIND_RULES[kind].geometry.includes(type)));
    if (fitting !== undefined) return fitting;
  }
  return undefined;
}

export function suggestMappings(text: string): Result<MappingSuggestions, readonly Fault[]> {
  const plain = readPlainFeatures(text);
  if (!plain.ok) return plain;
  const seen = new Map<string, Map<string, { count: number; types: Set<GeometryType> }>>();
  const numbers = new Map<string, { holes: number; others: number }>();
  let tagged = 0;
  for (const { properties, geometries } of plain.value) {
    if (featureKindOf(properties) !== undefined) tagged++;
    for (const [property, value] of Object.entries(properties)) {
      const words = valueText(value);
      if (words === undefined || words === '' || words.length > 80) continue;
      if (!seen.has(property) && seen.size >= MOST_PROPERTIES) continue;
      const hole = readRef(value);
      const count = numbers.get(property) ?? { holes: 0, others: 0 };
      if (hole !== undefined && Number(hole) <= 36) count.holes++;
      else count.others++;
      numbers.set(property, count);
      const values = seen.get(property) ?? new Map<string, { count: number; types: Set<GeometryType> }>();
      seen.set(property, values);
      const known = values.get(words);
      // one more than is listed, so that too many can be told
      if (known === undefined && values.size > MOST_VALUES) continue;
      const entry = known ?? { count: 0, types: new Set<GeometryType>() };
      entry.count++;
      for (const { type } of geometries) entry.types.add(type);
      values.set(words, entry);
    }
  }
  const ranked = [...seen]
    .filter(([, values]) => values.size <= MOST_VALUES)
    .map(([property, values]) => {
      const list = [...values]
        .map(([value, { count, types }]): SuggestedValue => {
          const geometryTypes = [...types];
          const kind = kindOfWord(value, geometryTypes);
          return { value, count, geometryTypes, ...(kind === undefined ? {} : { kind }) };
        })
        .sort((a, b) => b.count - a.count);
      const understood = list.reduce((sum, { count, kind }) => sum + (kind === undefined ? 0 : count), 0);
      return { property, values: list, understood };
    })
    .sort((a, b) => b.understood - a.understood);
  const [best] = ranked;
  const mappings =
    best === undefined
      ? []
      : best.values.flatMap(({ value, kind }) =>
          kind === undefined ? [] : [{ property: best.property, value, kind }],
        );
  const holeProperty = [...numbers]
    .filter(
      ([property, { holes, others }]) =>
        /hole|ref|number|\bno\b/i.test(property) && holes > 0 && others <= holes / 4,
    )
    .sort(([, a], [, b]) => b.holes - a.holes)[0]?.[0];
  return succeed({
    properties: ranked.map(({ property, values }) => ({ property, values })),
    mappings,
    ...(holeProperty === undefined ? {} : { holeProperty }),
    tagged,
    features: plain.value.length,
  });
}
