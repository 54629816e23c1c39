/** The length that the club's card gives for a tee: `card_length_m` on a tee marker, metres. */

import * as v from 'valibot';

export const CARD_LENGTH_MEMBER = 'card_length_m';

/** Least and most, metres. */
export const CARD_LENGTH_BOUNDS_M = [20, 2000] as const;
const [least, most] = CARD_LENGTH_BOUNDS_M;

export const CardLengthSchema = v.nullish(v.pipe(v.number(), v.minValue(least), v.maxValue(most)));

/** Metres; undefined where the properties have none that can be read. */
export function cardLengthOf(properties: Readonly<Record<string, unknown>>): number | undefined {
  const parsed = v.safeParse(CardLengthSchema, properties[CARD_LENGTH_MEMBER]);
  return parsed.success ? (parsed.output ?? undefined) : undefined;
}
