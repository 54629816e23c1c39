/** The properties of one feature that its kind calls for, numbers written as text included. */

import * as v from 'valibot';
import type { Fault } from '../result.ts';
import type { FeatureKind } from './feature-kind.ts';
import { KIND_RULES, type Properties, PropertiesSchema, PROPERTY_WORDS, type PropertyKey } from './schema.ts';

/** Which feature a fault is about. */
export interface FeatureContext {
  readonly index: number;
  readonly kind: FeatureKind;
  readonly where: string;
}

/** An unreadable value is left out with a warning, unless the kind cannot do without it. */
export function readProperties(
  raw: Readonly<Record<string, unknown>>,
  context: FeatureContext,
): { value: Properties; faults: readonly Fault[] } {
  const { required, optional } = KIND_RULES[context.kind];
  const wanted = Object.fromEntries([...required, ...optional].map((key) => [key, raw[key]]));
  const faults: Fault[] = [];
  const parsed = v.safeParse(PropertiesSchema, wanted);
  const bad = new Set(parsed.success ? [] : parsed.issues.map((issue) => issue.path?.[0].key as PropertyKey));
  for (const key of bad) {
    const needed = required.includes(key);
    faults.push({
      severity: needed ? 'error' : 'warning',
      code: 'value-unreadable',
      where: context.where,
      message: `${key} is ${inWords(raw[key])}; write ${PROPERTY_WORDS[key]}.${needed ? '' : ' It is read as absent.'}`,
      featureIndex: context.index,
    });
  }
  const value = v.parse(
    PropertiesSchema,
    Object.fromEntries(Object.entries(wanted).filter(([key]) => !bad.has(key as PropertyKey))),
  );
  for (const key of required) {
    if (bad.has(key) || (value[key] ?? undefined) !== undefined) continue;
    faults.push({
      severity: 'error',
      code: 'value-missing',
      where: context.where,
      message: `${key} is missing; write ${PROPERTY_WORDS[key]}.`,
      featureIndex: context.index,
    });
  }
  return { value, faults };
}

function inWords(value: unknown): string {
  const text = JSON.stringify(value) as string | undefined;
  return text === undefined ? 'absent' : text.length <= 60 ? text : `${text.slice(0, 59)}…`;
}
