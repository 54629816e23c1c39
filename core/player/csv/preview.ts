/** The first rows of a table under a mapping, as they would be read. */

import type { Told } from '../../words/told.ts';
import type { BagClub, RecordedShot } from '../format.ts';
import type { ShotMapping } from './mapping.ts';
import { RowReader } from './read-row.ts';
import { csvBlocks } from './rows.ts';

export interface PreviewRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** The shot, or why there is none. */
  readonly shot: RecordedShot | null;
  readonly fault: Told | null;
  /** The cell at fault. */
  readonly column: number | null;
}

export function previewRows(
  text: string,
  mapping: ShotMapping,
  bag: readonly BagClub[],
  most: number,
): readonly PreviewRow[] {
  const reader = new RowReader(mapping, bag);
  const rows: PreviewRow[] = [];
  let skip = mapping.skipRows;
  for (const block of csvBlocks(text, mapping.delimiter)) {
    for (const row of block.rows) {
      if (skip-- > 0) continue;
      const read = reader.read(row);
      rows.push({
        line: row.line,
        cells: row.cells,
        shot: read.ok ? read.value : null,
        fault: read.ok ? null : read.error.message,
        column: read.ok ? null : (read.error.column ?? null),
      });
      if (rows.length >= most) return rows;
    }
  }
  return rows;
}
