/** The length that the club's card gives for a tee: `card_length_m` on a tee marker, metres. */

import * as v from 'valibot';

export const CARD_LENGTH_MEMBER = 'card_length_m';

export const CardLengthSchema = v.nullish(v.pipe(v.number(), v.minValue(20), v.maxValue(2000)));

/** Metres; undefined where the properties have none that can be read. */
export function cardLengthOf(properties: Readonly<Record<string, unknown>>): number | undefined {
  const parsed = v.safeParse(CardLengthSchema, properties[CARD_LENGTH_MEMBER]);
  return parsed.success ? (parsed.output ?? undefined) : undefined;
}
