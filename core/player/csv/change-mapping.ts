/** Changes of a mapping while a person looks at its preview. */

import type { ColumnField, ColumnRule, ShotMapping, TableConditions } from './mapping.ts';
import type { CsvShape } from './sniff.ts';
import { ruleFor } from './suggest.ts';

/** Reads column `index` as `field`, which no other column is then read as; null reads it as nothing. */
export function withField(
  mapping: ShotMapping,
  shape: CsvShape,
  index: number,
  field: ColumnField | null,
): ShotMapping {
  const others = mapping.columns.filter((rule) => rule.index !== index && rule.field !== field);
  if (field === null) return { ...mapping, columns: others };
  const guessed = index < shape.header.length ? ruleFor(shape, field, index) : { index, header: '', field };
  // The person's word counts, whatever the name of the column speaks for.
  const rule: ColumnRule = { ...guessed, field };
  const columns = [...others, rule].sort((a, b) => a.index - b.index);
  return { ...mapping, columns };
}

export function withUnit(mapping: ShotMapping, index: number, unit: ColumnRule['unit']): ShotMapping {
  return changeRule(mapping, index, (rule) => {
    const next = { ...rule };
    if (unit === undefined) delete next.unit;
    else next.unit = unit;
    return next;
  });
}

export function withPositive(mapping: ShotMapping, index: number, positive: 'right' | 'left'): ShotMapping {
  return changeRule(mapping, index, (rule) => ({ ...rule, positive }));
}

/** What holds for the whole table; undefined takes a value out. */
export function withConditions(
  mapping: ShotMapping,
  change: { readonly [K in keyof TableConditions]?: TableConditions[K] | undefined },
): ShotMapping {
  const entries = Object.entries({ ...mapping.conditions, ...change }).filter(
    ([, value]) => value !== undefined,
  );
  const next = { ...mapping, conditions: Object.fromEntries(entries) as TableConditions };
  if (entries.length === 0) Reflect.deleteProperty(next, 'conditions');
  return next;
}

/** What a name in the table stands for; null forgets it. */
export function withClubName(mapping: ShotMapping, written: string, club: string | null): ShotMapping {
  const others = Object.entries(mapping.clubNames ?? {}).filter(([name]) => name !== written);
  const clubNames = Object.fromEntries(club === null ? others : [...others, [written, club]]);
  return { ...mapping, clubNames };
}

function changeRule(
  mapping: ShotMapping,
  index: number,
  change: (rule: ColumnRule) => ColumnRule,
): ShotMapping {
  return { ...mapping, columns: mapping.columns.map((rule) => (rule.index === index ? change(rule) : rule)) };
}
