/** The day as the commands repeat it in their JSON: as the schema of conditions, with every member filled in. */

import { readFileSync } from 'node:fs';

type Part = Readonly<Record<string, unknown>> & { readonly properties?: Readonly<Record<string, Part>> };

const LEFT_OUT = ['$schema', 'title', 'default'];

export function usedDaySchema(): Part {
  const text = readFileSync(new URL('../../maps/schemas/conditions.schema.json', import.meta.url), 'utf8');
  return { ...filledIn(JSON.parse(text) as Part), description: 'The day that the numbers are for' };
}

function filledIn(part: Part): Part {
  const kept = Object.fromEntries(Object.entries(part).filter(([name]) => !LEFT_OUT.includes(name)));
  if (part.properties === undefined) return kept;
  const members = Object.entries(part.properties).map(([name, member]) => [name, filledIn(member)] as const);
  return {
    ...kept,
    properties: Object.fromEntries(members),
    // Without a pressure that of the standard atmosphere is taken.
    required: members.map(([name]) => name).filter((name) => name !== 'pressureHpa'),
    additionalProperties: false,
  };
}
