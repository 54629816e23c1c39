/** The properties of one feature that its kind calls for, numbers written as text included. */

import * as v from 'valibot';
import type { Fault } from '../result.ts';
import { told, type Told, toldFault } from '../words/told.ts';
import type { FeatureKind } from './feature-kind.ts';
import { KIND_RULES, type Properties, PropertiesSchema, type PropertyKey } from './schema.ts';

/** Which feature a fault is about. */
export interface FeatureContext {
  readonly index: number;
  readonly kind: FeatureKind;
  readonly where: Told;
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
    const values = { key, found: inWords(raw[key]), wanted: wantedFor(key) };
    faults.push(
      toldFault({
        severity: needed ? 'error' : 'warning',
        code: 'value-unreadable',
        where: context.where,
        message: needed
          ? told(({ courseReading }) => courseReading.value.unreadable, values)
          : told(({ courseReading }) => courseReading.value.readAsAbsent, values),
        featureIndex: context.index,
      }),
    );
  }
  const value = v.parse(
    PropertiesSchema,
    Object.fromEntries(Object.entries(wanted).filter(([key]) => !bad.has(key as PropertyKey))),
  );
  for (const key of required) {
    if (bad.has(key) || (value[key] ?? undefined) !== undefined) continue;
    faults.push(
      toldFault({
        severity: 'error',
        code: 'value-missing',
        where: context.where,
        message: told(({ courseReading }) => courseReading.value.missing, { key, wanted: wantedFor(key) }),
        featureIndex: context.index,
      }),
    );
  }
  return { value, faults };
}

/** What the property should hold. */
export function wantedFor(key: PropertyKey): Told {
  return told(({ courseReading }) => courseReading.properties[key]);
}

function inWords(value: unknown): string | Told {
  const text = JSON.stringify(value) as string | undefined;
  return text === undefined
    ? told(({ courseReading }) => courseReading.value.absent)
    : text.length <= 60
      ? text
      : `${text.slice(0, 59)}…`;
}
