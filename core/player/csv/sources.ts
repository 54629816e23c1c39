/** Mappings remembered in the player file, and the one that fits a new table. */

import type { PlayerDocument } from '../format.ts';
import type { ShotMapping, ShotSource } from './mapping.ts';
import type { CsvShape } from './sniff.ts';

/** No more sources are kept; the oldest goes first. */
const MOST_SOURCES = 20;

/** The remembered source whose column names are those of this table, in the same order; the latest wins. */
export function findSource(document: PlayerDocument, shape: CsvShape): ShotSource | undefined {
  const sources = document.settings?.sources ?? [];
  return [...sources].reverse().find(({ headers }) => sameHeaders(headers, shape.header));
}

/** The player file with this mapping kept under `name`; one of the same name or the same columns is replaced. */
export function rememberSource(
  document: PlayerDocument,
  name: string,
  shape: CsvShape,
  mapping: ShotMapping,
): PlayerDocument {
  const kept = (document.settings?.sources ?? []).filter(
    (source) => source.name !== name && !sameHeaders(source.headers, shape.header),
  );
  const headers = shape.header.map((header) => header.slice(0, 120)).slice(0, 200);
  const sources = [...kept, { name: name.slice(0, 60), headers, mapping: withoutWeather(mapping) }].slice(
    -MOST_SOURCES,
  );
  return { ...document, settings: { ...document.settings, sources } };
}

/** The day's wind and temperature are not those of the next table; where a place lies, and its mats, stay. */
function withoutWeather(mapping: ShotMapping): ShotMapping {
  if (mapping.conditions === undefined) return mapping;
  const conditions = { ...mapping.conditions };
  delete conditions.windMps;
  delete conditions.windFromDeg;
  delete conditions.temperatureC;
  const next = { ...mapping, conditions };
  if (Object.keys(conditions).length === 0) Reflect.deleteProperty(next, 'conditions');
  return next;
}

function sameHeaders(a: readonly string[], b: readonly string[]): boolean {
  return a.length === Math.min(200, b.length) && a.every((header, i) => header === b[i]!.slice(0, 120));
}
