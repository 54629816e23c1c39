/**
 * Opens an SQLite file for reading only, without native code: the SQLite project's own WebAssembly build, with
 * a file system of ours below it that can do nothing but read one open file. So pages are read as they are
 * needed (a map of 2 GiB never is in memory), nothing is ever locked or written beside the file, and it may
 * lie in a folder that cannot be written.
 *
 * The file may come from anywhere, so queries end after a number of steps, and values have a largest size
 * (sqlite.org, "Defense Against The Dark Arts").
 */

import { fstatSync, readSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import type { Database, Sqlite3Static } from '@sqlite.org/sqlite-wasm';

const PACKAGE = '@sqlite.org/sqlite-wasm';
const VFS_NAME = 'holewright-read-only';
/** Largest text or blob that a query may touch. */
export const LARGEST_VALUE_BYTES = 16 * 1024 * 1024;
/** Steps of SQLite's virtual machine after which a query is given up: a fraction of a second. */
export const MOST_STEPS = 1_000_000;
const STEPS_BETWEEN_LOOKS = 1000;

export interface SqliteFile {
  /** Rows of a query. Throws what SQLite throws; `isGivenUp` tells whether it took too long. */
  readonly rows: (sql: string, values?: readonly (number | string)[]) => readonly (readonly unknown[])[];
  readonly close: () => void;
}

interface Sqlite {
  readonly open: (fd: number) => SqliteFile;
}

let loading: Promise<Sqlite> | null = null;

/** Opens the file behind a descriptor, which stays the caller's and must outlive it. Loads SQLite the first time. */
export async function openSqliteFile(fd: number): Promise<SqliteFile> {
  loading ??= load();
  return (await loading).open(fd);
}

/** Whether a query was ended because it took too many steps. */
export function isGivenUp(error: unknown): boolean {
  // SQLITE_INTERRUPT
  return typeof error === 'object' && error !== null && 'resultCode' in error && error.resultCode === 9;
}

async function load(): Promise<Sqlite> {
  // Found at run time, so that the built program need not carry it inside; its WebAssembly file lies beside it.
  const path = createRequire(import.meta.url).resolve(PACKAGE);
  const module = (await import(/* @vite-ignore */ pathToFileURL(path).href)) as {
    readonly default: (options: object) => Promise<Sqlite3Static>;
  };
  const quiet = (): void => undefined;
  const sqlite = await module.default({ print: quiet, printErr: quiet });
  sqlite.config.warn = quiet;
  installReading(sqlite);
  return { open: (fd) => openFile(sqlite, fd) };
}

function openFile(sqlite: Sqlite3Static, fd: number): SqliteFile {
  const { capi, oo1 } = sqlite;
  // `immutable`: no locks, no looking for a journal or log that a copied file does not have.
  const db: Database = new oo1.DB({ filename: `file:${fd}?immutable=1`, flags: 'r', vfs: VFS_NAME });
  let steps = 0;
  try {
    capi.sqlite3_limit(db, capi.SQLITE_LIMIT_LENGTH, LARGEST_VALUE_BYTES);
    capi.sqlite3_progress_handler(
      db,
      STEPS_BETWEEN_LOOKS,
      () => ((steps += STEPS_BETWEEN_LOOKS) > MOST_STEPS ? 1 : 0),
      0,
    );
    db.exec('PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON; PRAGMA query_only = ON;');
  } catch (error) {
    db.close();
    throw error;
  }
  return {
    rows: (sql, values = []) => {
      steps = 0;
      return db.selectArrays(sql, values.length === 0 ? undefined : [...values]);
    },
    close: () => {
      db.close();
    },
  };
}

/** A file system in which a file's name is the number of its open descriptor. */
function installReading(sqlite: Sqlite3Static): void {
  const { capi, wasm } = sqlite;
  const descriptors = new Map<number, number>();
  const io = new capi.sqlite3_io_methods();
  const vfs = new capi.sqlite3_vfs();
  vfs.$iVersion = 1;
  vfs.$szOsFile = sqlite3FileBytes(sqlite);
  vfs.$mxPathname = 64;
  const fine = (): number => capi.SQLITE_OK;
  const readOnly = (): number => capi.SQLITE_READONLY;
  const fdOf = (file: number): number => descriptors.get(file) ?? -1;

  const read = (file: number, into: number, bytes: number, from: number | bigint): number => {
    const heap = wasm.heap8u();
    let done = 0;
    try {
      while (done < bytes) {
        const got = readSync(fdOf(file), heap, into + done, bytes - done, Number(from) + done);
        if (got === 0) break;
        done += got;
      }
    } catch {
      return capi.SQLITE_IOERR_READ;
    }
    if (done === bytes) return capi.SQLITE_OK;
    heap.fill(0, into + done, into + bytes);
    return capi.SQLITE_IOERR_SHORT_READ;
  };

  sqlite.vfs.installVfs({
    io: {
      struct: io,
      methods: {
        xClose: (file) => {
          descriptors.delete(file);
          return capi.SQLITE_OK;
        },
        xRead: read,
        xWrite: readOnly,
        xTruncate: readOnly,
        xSync: fine,
        xFileSize: (file, out) => {
          try {
            wasm.poke64(out, BigInt(fstatSync(fdOf(file)).size));
            return capi.SQLITE_OK;
          } catch {
            return capi.SQLITE_IOERR_FSTAT;
          }
        },
        xLock: fine,
        xUnlock: fine,
        xCheckReservedLock: (_file, out) => {
          wasm.poke32(out, 0);
          return capi.SQLITE_OK;
        },
        xFileControl: () => capi.SQLITE_NOTFOUND,
        xSectorSize: () => 4096,
        xDeviceCharacteristics: () => capi.SQLITE_IOCAP_IMMUTABLE,
      },
    },
    vfs: {
      struct: vfs,
      name: VFS_NAME,
      methods: {
        xOpen: (_vfs, name, file, _flags, outFlags) => {
          // Without a name SQLite means a temporary file, which reading does not need.
          const fd = name === 0 ? Number.NaN : Number(wasm.cstrToJs(name));
          if (!Number.isSafeInteger(fd)) return capi.SQLITE_CANTOPEN;
          descriptors.set(file, fd);
          const opened = new capi.sqlite3_file(file);
          opened.$pMethods = io.pointer;
          opened.dispose();
          if (outFlags !== 0) wasm.poke32(outFlags, capi.SQLITE_OPEN_READONLY);
          return capi.SQLITE_OK;
        },
        xDelete: () => capi.SQLITE_IOERR_DELETE,
        xAccess: (_vfs, _name, _flags, out) => {
          wasm.poke32(out, 0);
          return capi.SQLITE_OK;
        },
        xFullPathname: (_vfs, name, most, out) =>
          wasm.cstrncpy(out, name, most) < most ? capi.SQLITE_OK : capi.SQLITE_CANTOPEN,
        xRandomness: (_vfs, bytes) => bytes,
        xSleep: () => 0,
        xCurrentTime: (_vfs, out) => {
          // Days since noon in Greenwich on 24 November 4714 BC; only functions of date and time ask.
          wasm.poke(out, 2_440_587.5, 'double');
          return capi.SQLITE_OK;
        },
        xGetLastError: fine,
      },
    },
  });
}

function sqlite3FileBytes({ capi }: Sqlite3Static): number {
  return (capi.sqlite3_file as unknown as { readonly structInfo: { readonly sizeof: number } }).structInfo
    .sizeof;
}
