/** `npm run --silent spread`: what a player's shots say of each club, with intervals; shots from a table on request. */

import { inEnglish, plainFault } from '../../core/words/told.ts';
import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import * as v from 'valibot';
import { buildPlayer, readEvidence } from '../../core/player/build.ts';
import { ShotMappingSchema, type ShotMapping } from '../../core/player/csv/mapping.ts';
import { readShots, type ShotTable } from '../../core/player/csv/read-shots.ts';
import { findSource, rememberSource } from '../../core/player/csv/sources.ts';
import { type CsvShape, sniffCsv } from '../../core/player/csv/sniff.ts';
import { suggestMapping } from '../../core/player/csv/suggest.ts';
import { type PlayerDocument, playerText } from '../../core/player/format.ts';
import { parsePlayerDocumentText } from '../../core/player/parse.ts';
import { readPutting } from '../../core/player/read-putting.ts';
import { faultLine } from '../../core/result.ts';
import { nodeDisk } from '../files/disk.ts';
import { replaceFile } from '../files/replace.ts';
import {
  EXIT,
  optionalText,
  readArguments,
  requiredText,
  Stop,
  stopForFaults,
  stopForUsage,
} from './command.ts';
import { type InputVersion, readPlayer } from './inputs.ts';
import { puttingLine, spreadLines, spreadReport, upAndDownLines } from './spread-report.ts';
import { readTableFile } from './table-file.ts';
import { PROGRAM_VERSION } from './version.ts';

const USAGE = `usage: npm run --silent spread -- --player FILE [--shots FILE.csv [--columns MAPPING.json]] [--write FILE] [--json]`;

export async function spread(args: readonly string[]): Promise<void> {
  const text = { type: 'string' } as const;
  const values = readArguments(
    args,
    { player: text, shots: text, columns: text, write: text, json: { type: 'boolean' } },
    USAGE,
  );
  const playerFile = requiredText(values, 'player', USAGE);
  const shotsFile = optionalText(values, 'shots');
  const columnsFile = optionalText(values, 'columns');
  const writeTo = optionalText(values, 'write');
  if (columnsFile !== undefined && shotsFile === undefined)
    throw stopForUsage('--columns tells how --shots is read; name that file too.', USAGE);

  const { document, version } = await readDocument(playerFile);
  const taken = shotsFile === undefined ? null : await takeShots(document, shotsFile, columnsFile);
  const after = taken?.document ?? document;
  const player = buildPlayer(after);
  if (!player.ok) throw stopForFaults(playerFile, player.error);
  const evidence = readEvidence(after);
  if (!evidence.ok) throw stopForFaults(playerFile, evidence.error);
  for (const warning of player.value.warnings) process.stderr.write(`${playerFile}: ${faultLine(warning)}\n`);
  const report = {
    lines: spreadLines(player.value),
    putting: puttingLine(readPutting(after, evidence.value.level)),
    upAndDowns: upAndDownLines(after.upAndDowns ?? []),
    table: taken?.table ?? null,
    converted: [...evidence.value.counted.values()].filter((shot) => 'shot' in shot && shot.isConverted)
      .length,
  };
  if (writeTo !== undefined) await writePlayer(writeTo, after);
  if (values.json !== true) {
    process.stdout.write(`${spreadReport(player.value.name, report, player.value.units)}\n`);
    return;
  }
  const json = {
    player: player.value.name,
    intervalShare: 0.9,
    spreads: report.lines,
    putting: report.putting,
    upAndDowns: report.upAndDowns,
    converted: report.converted,
    table:
      taken === null || shotsFile === undefined
        ? null
        : {
            file: shotsFile,
            mapping: taken.mapping,
            rows: taken.table.rows,
            accepted: taken.table.accepted.length,
            rejected: taken.table.rejected.map((row) => ({ ...row, message: inEnglish(row.message) })),
            furtherRejected: taken.table.furtherRejected,
            duplicates: taken.table.duplicates,
            endedEarly: taken.table.endedEarly === undefined ? null : inEnglish(taken.table.endedEarly),
          },
    warnings: player.value.warnings.map(plainFault),
    written: writeTo ?? null,
    inputs: { program: PROGRAM_VERSION, player: version },
  };
  process.stdout.write(`${JSON.stringify(json, null, 1)}\n`);
}

/** The player file as a document, with the faults of one that cannot be read. */
async function readDocument(
  file: string,
): Promise<{ readonly document: PlayerDocument; readonly version: InputVersion }> {
  const input = await readPlayer(file);
  const parsed = parsePlayerDocumentText(input.text);
  if (!parsed.ok) throw stopForFaults(file, parsed.error);
  return { document: parsed.value.document, version: input.version };
}

interface TakenShots {
  readonly document: PlayerDocument;
  readonly table: ShotTable;
  readonly mapping: ShotMapping;
}

/** The player with the table's shots added and its mapping remembered. */
async function takeShots(
  document: PlayerDocument,
  file: string,
  columnsFile: string | undefined,
): Promise<TakenShots> {
  const { text, encoding } = await readTableFile(file);
  if (encoding !== 'utf-8')
    process.stderr.write(`${file}: warning: file: it is not UTF-8; it was read as ${encoding}.\n`);
  const shape = sniffCsv(text);
  if (!shape.ok) throw stopForFaults(file, [shape.error]);
  const mapping =
    columnsFile === undefined ? knownMapping(document, shape.value, file) : await readMapping(columnsFile);
  const table = readShots(text, mapping, { bag: document.bag, existing: document.shots ?? [] });
  if (!table.ok) throw stopForFaults(columnsFile ?? file, [table.error]);
  const shots = [...(document.shots ?? []), ...table.value.accepted.map(({ shot }) => shot)];
  const name = /[^/\\]*$/u.exec(file)?.[0] ?? file;
  return {
    document: rememberSource({ ...document, shots }, name === '' ? 'table' : name, shape.value, mapping),
    table: table.value,
    mapping,
  };
}

/** As the player file remembers the source, else as it looks; what is in doubt is said. */
function knownMapping(document: PlayerDocument, shape: CsvShape, file: string): ShotMapping {
  const source = findSource(document, shape);
  if (source !== undefined) return source.mapping;
  const { mapping, doubts } = suggestMapping(shape, document.bag);
  for (const doubt of doubts) process.stderr.write(`${file}: warning: columns: ${inEnglish(doubt)}\n`);
  return mapping;
}

async function readMapping(file: string): Promise<ShotMapping> {
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch {
    throw new Stop(EXIT.badInput, [`${file}: error: it cannot be read. Check the path.`]);
  }
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    throw new Stop(EXIT.badInput, [`${file}: error: it is not JSON. Mend it, or leave --columns out.`]);
  }
  const parsed = v.safeParse(ShotMappingSchema, json);
  if (parsed.success) return parsed.output;
  throw new Stop(
    EXIT.badInput,
    parsed.issues
      .slice(0, 10)
      .map((issue) => `${file}: error: ${v.getDotPath(issue) ?? 'file'}: ${issue.message}. Correct it.`),
  );
}

async function writePlayer(file: string, document: PlayerDocument): Promise<void> {
  try {
    await replaceFile(nodeDisk, resolve(file), new TextEncoder().encode(playerText(document)));
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    throw new Stop(EXIT.badInput, [
      `${file}: error: it could not be written (${code}); nothing was changed. Choose another place.`,
    ]);
  }
}
