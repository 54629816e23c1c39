/** Notices shots that a player file or an earlier row holds already. */

import type { RecordedShot } from '../format.ts';

/** Two readings are the same if they agree to a decimetre and a tenth of a degree, club, swing and time included. */
function keyOf(shot: RecordedShot): string {
  const round = (value: number | undefined): string =>
    value === undefined ? '' : (Math.round(value * 10) / 10).toFixed(1);
  return [
    shot.club,
    shot.swing ?? 'full',
    round(shot.carryM),
    round(shot.offlineM),
    round(shot.directionDeg),
    shot.at ?? '',
  ].join('\n');
}

export class DuplicateWatch {
  private readonly known: ReadonlySet<string>;
  private readonly rows = new Map<string, number>();

  constructor(existing: readonly RecordedShot[]) {
    this.known = new Set(existing.map(keyOf));
  }

  /**
   * 0 where the player has this shot already, the line of an earlier row with the very same cells, else null. Rows
   * that differ in any cell, be it a running number, are two shots.
   */
  check(shot: RecordedShot, line: number, cells: readonly string[]): number | null {
    if (this.known.has(keyOf(shot))) return 0;
    const row = cells.join('\u001f');
    const before = this.rows.get(row);
    if (before !== undefined) return before;
    this.rows.set(row, line);
    return null;
  }
}
