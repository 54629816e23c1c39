/** Makes small MBTiles files with the SQLite that the program reads them with, in memory. */

import init from '@sqlite.org/sqlite-wasm';

/** The bytes of an SQLite file after these statements; blobs as `x'…'`. */
export async function sqliteFile(statements: string): Promise<Uint8Array> {
  const quiet = (): void => undefined;
  const sqlite = await init({ print: quiet, printErr: quiet });
  const db = new sqlite.oo1.DB(':memory:', 'c');
  try {
    db.exec(statements);
    return sqlite.capi.sqlite3_js_db_export(db);
  } finally {
    db.close();
  }
}

export const TILE_TABLES = `
  CREATE TABLE metadata (name text, value text);
  CREATE TABLE tiles (zoom_level integer, tile_column integer, tile_row integer, tile_data blob);
  CREATE UNIQUE INDEX tile_index on tiles (zoom_level, tile_column, tile_row);
`;

/** First bytes of a PNG, then one that tells tiles apart. */
export function tileBytes(mark: number): Buffer {
  return Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0, 0, 0, 0, 0, mark]);
}

/** `INSERT` of a tile whose row is counted from the south, as the file has it. */
export function insertTile(zoom: number, column: number, rowFromSouth: number, mark: number): string {
  return `INSERT INTO tiles VALUES (${zoom}, ${column}, ${rowFromSouth}, x'${tileBytes(mark).toString('hex')}');`;
}
