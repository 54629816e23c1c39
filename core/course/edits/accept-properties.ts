/** Whether a value may be written into a property: what reading would refuse is refused at the desk. */

import { kindTold } from './words.ts';
import * as v from 'valibot';
import { type Result, succeed } from '../../result.ts';
import type { DocumentFeature } from '../document.ts';
import { type FeatureKind } from '../feature-kind.ts';
import { wantedFor } from '../read-properties.ts';
import { KIND_RULES, PropertiesSchema, type PropertyKey } from '../schema.ts';
import { CARD_LENGTH_BOUNDS_M, CARD_LENGTH_MEMBER, CardLengthSchema } from '../card-length.ts';
import { type Refusal, refuseEdit } from './edit.ts';
import { told, type Told } from '../../words/told.ts';

const [LEAST_CARD_M, MOST_CARD_M] = CARD_LENGTH_BOUNDS_M;

/** Narrower than what a file may hold, for values that are typed in: rules/par.ts and rules/stroke-index.ts. */
const NARROWER: Readonly<Partial<Record<string, { readonly least: number; readonly most: number }>>> = {
  par: { least: 3, most: 6 },
  handicap: { least: 1, most: 18 },
};

/** Refuses values of known properties that could not be read back; unknown properties take any JSON value. */
export function acceptProperties(
  feature: DocumentFeature,
  kind: FeatureKind | undefined,
  properties: Readonly<Record<string, unknown>>,
): Result<null, Refusal> {
  for (const [key, value] of Object.entries(properties)) {
    const wanted = faultOf(key, value);
    if (wanted === undefined) continue;
    return refuseEdit(
      'value-not-accepted',
      told(({ courseEdits }) => courseEdits.cannotBe, { key, value: inWords(value), wanted }),
      feature.id,
    );
  }
  for (const key of kind === undefined ? [] : KIND_RULES[kind].required) {
    const value = properties[key];
    if (value !== undefined && value !== null && value !== '') continue;
    return refuseEdit(
      'value-missing',
      told(({ courseEdits }) => courseEdits.needs, {
        kind: kindTold(kind!),
        key,
        wanted: wantedFor(key),
      }),
      feature.id,
    );
  }
  return succeed(null);
}

function faultOf(key: string, value: unknown): Told | undefined {
  if (key === CARD_LENGTH_MEMBER) {
    return v.is(CardLengthSchema, value)
      ? undefined
      : told(({ courseReading }) => courseReading.cardLength, { least: LEAST_CARD_M, most: MOST_CARD_M });
  }
  if (!Object.hasOwn(PropertiesSchema.entries, key)) return undefined;
  const known = key as PropertyKey;
  if (!v.is(PropertiesSchema.entries[known], value)) return wantedFor(known);
  const narrow = NARROWER[key];
  if (narrow === undefined || value === null || value === undefined) return undefined;
  const number = Number(value);
  return Number.isInteger(number) && number >= narrow.least && number <= narrow.most
    ? undefined
    : told(({ courseReading }) => courseReading.wholeNumber, narrow);
}

function inWords(value: unknown): string | Told {
  const text = JSON.stringify(value) as string | undefined;
  if (text === undefined) return told(({ features }) => features.nothing);
  return text.length <= 40 ? text : `${text.slice(0, 39)}…`;
}
