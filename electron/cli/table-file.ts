/** The bytes of a table as text, whatever program wrote them. */

import { readFile, stat } from 'node:fs/promises';
import { MOST_CSV_CHARACTERS } from '../../core/player/csv/sniff.ts';
import { EXIT, Stop, stopUnread } from './command.ts';

export interface TableText {
  readonly text: string;
  /** How the bytes were taken where they are not UTF-8. */
  readonly encoding: 'utf-8' | 'utf-16' | 'windows-1252';
}

/** UTF-8, UTF-16 by its byte order mark, else the usual single-byte encoding of western spreadsheets. */
export async function readTableFile(file: string): Promise<TableText> {
  let bytes: Uint8Array;
  try {
    const { size } = await stat(file);
    if (size > 2 * MOST_CSV_CHARACTERS)
      throw new Stop(EXIT.badInput, [
        `${file}: error: it holds ${size} bytes, more than can be read. Cut it into several files.`,
      ]);
    bytes = await readFile(file);
  } catch (error) {
    if (error instanceof Stop) throw error;
    throw stopUnread(file, error);
  }
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe)
    return { text: new TextDecoder('utf-16le').decode(bytes), encoding: 'utf-16' };
  if (first === 0xfe && second === 0xff)
    return { text: new TextDecoder('utf-16be').decode(bytes), encoding: 'utf-16' };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'utf-8' };
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'windows-1252' };
  }
}
