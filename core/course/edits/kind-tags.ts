/** The tags that make a feature of a kind: OpenStreetMap's where one exists, else our own. */

import { type FeatureKind, GOLF_TAGS, NATURAL_TAGS, OWN_KINDS } from '../feature-kind.ts';

/** Members that name a kind; on a change of kind all of them go. */
export const KIND_MEMBERS = ['golf', 'natural', 'holewright_kind'] as const;

const TABLES: readonly (readonly [(typeof KIND_MEMBERS)[number], Readonly<Record<string, FeatureKind>>])[] = [
  ['golf', GOLF_TAGS],
  ['natural', NATURAL_TAGS],
  ['holewright_kind', OWN_KINDS],
];

/** `{ golf: 'bunker' }`, `{ natural: 'wood' }`, `{ holewright_kind: 'tee_marker' }`. */
export function tagsOfKind(kind: FeatureKind): Readonly<Record<string, string>> {
  for (const [member, table] of TABLES) {
    const entry = Object.entries(table).find(([, known]) => known === kind);
    if (entry !== undefined) return { [member]: entry[0] };
  }
  throw new Error(`no tag names the kind ${kind}`);
}
