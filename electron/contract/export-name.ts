/** What may be taken out of the program: data and drawings by their endings, nothing that a system would run. */

const ENDINGS = ['.geojson', '.json', '.csv', '.svg', '.png'] as const;

export type ExportEnding = (typeof ENDINGS)[number];

/** The ending of a name in small letters; null where it is none of those. */
export function exportEnding(name: string): ExportEnding | null {
  const lower = name.toLowerCase();
  return ENDINGS.find((ending) => lower.endsWith(ending)) ?? null;
}
