/** Rejected rows mended by hand: each is read again as the table was, and moves to the shots where it can be. */

import type { BagClub } from '../format.ts';
import type { ShotMapping } from './mapping.ts';
import { RowReader } from './read-row.ts';
import type { AcceptedRow, RejectedRow, ShotTable } from './read-shots.ts';

/** `cells` by line of the file. Rows that still cannot be read stay rejected, with their new cells and reason. */
export function mendRows(
  table: ShotTable,
  cells: ReadonlyMap<number, readonly string[]>,
  mapping: ShotMapping,
  bag: readonly BagClub[],
): ShotTable {
  const reader = new RowReader(mapping, bag);
  const accepted: AcceptedRow[] = [...table.accepted];
  const rejected: RejectedRow[] = [];
  for (const row of table.rejected) {
    const mended = cells.get(row.line);
    if (mended === undefined) {
      rejected.push(row);
      continue;
    }
    const read = reader.read({ cells: mended });
    if (read.ok) accepted.push({ line: row.line, shot: read.value });
    else rejected.push({ line: row.line, cells: mended, ...read.error });
  }
  accepted.sort((a, b) => a.line - b.line);
  return { ...table, accepted, rejected };
}
