/**
 * Every reader of files from outside: how its cases are made, how one is read, and what is then done with what came out
 * of it: shown, exported, drawn. Of a course every hole that can be read is also prepared as for planning, its ground laid out. A reader refuses in
 * words; whatever it throws is a fault of the program.
 */

import { inEnglish } from '../../core/words/told.ts';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preparationSheet } from '../../core/card/preparation.ts';
import { checkCourse } from '../../core/course/check.ts';
import { newDocument, openDocumentText, serialise } from '../../core/course/document.ts';
import { holeSvg } from '../../core/course/export/hole-svg.ts';
import { applyProposal } from '../../core/course/import/apply-proposal.ts';
import { readGeojson } from '../../core/course/import/geojson.ts';
import { readGpx } from '../../core/course/import/gpx.ts';
import { guessImportKind } from '../../core/course/import/guess-kind.ts';
import { readHeights } from '../../core/course/import/heights.ts';
import { readOsm } from '../../core/course/import/osm.ts';
import { contextOf, EMPTY_CONTEXT, type ImportProposal } from '../../core/course/import/proposal.ts';
import { suggestMappings } from '../../core/course/import/suggest-mappings.ts';
import type { Course } from '../../core/course/model.ts';
import { parseCourseDocumentText, parseCourseText } from '../../core/course/parse.ts';
import { shotsToCsv } from '../../core/player/csv/export.ts';
import { readShots } from '../../core/player/csv/read-shots.ts';
import { sniffCsv } from '../../core/player/csv/sniff.ts';
import { suggestMapping } from '../../core/player/csv/suggest.ts';
import { prepareHole } from '../../core/plan/prepare.ts';
import { parsePlayerDocumentText, parsePlayerText } from '../../core/player/parse.ts';
import type { Fault, Result } from '../../core/result.ts';
import { holesCsv, shotsCsv } from '../../core/round/csv.ts';
import { roundText } from '../../core/round/format.ts';
import { parseRoundText } from '../../core/round/record.ts';
import { carriedFiles, withoutCarried } from '../../core/round/share.ts';
import { cardPdf } from '../../electron/cli/card-pdf.ts';
import { sheetFor } from '../../electron/cli/card-paper.ts';
import type { Host, HostAnswer } from '../../electron/contract/host.ts';
import { LARGEST_PART_BYTES } from '../../electron/contract/wire.ts';
import { attachmentKind } from '../../electron/files/attachment-kinds.ts';
import { openAttachments } from '../../electron/files/attachments.ts';
import { openFileStore } from '../../electron/files/store.ts';
import { openTileSets } from '../../electron/files/tile-sets.ts';
import { loadRaster } from '../../renderer/drawing/background/load-raster.ts';
import { pictureSize } from '../../renderer/drawing/background/picture-size.ts';
import { keptText, readKept } from '../../renderer/kept-plans/kept-plan.ts';
import { wishesFrom } from '../../renderer/round/state/kept-wishes.ts';
import { FIRST_WISHES } from '../../renderer/round/state/round-state.ts';
import { oneTask } from '../renderer/kept-plans/worked-out.ts';
import { demandCleanPrototypes, demandFaults, demandNoFormulas, demandPlainSvg } from './guards.ts';
import { diceOf, type Dice, spoilBytes, spoilJson, spoilText } from './mutate.ts';
import * as samples from './samples.ts';
import { english } from '../../core/words/english/english.ts';

export interface Reader {
  readonly name: string;
  readonly make: (dice: Dice) => Promise<string | Uint8Array> | string | Uint8Array;
  /** True where the case was read, false where it was refused in words. Throws what must not be. */
  readonly read: (input: string | Uint8Array, dice: Dice) => Promise<boolean> | boolean;
}

type Made<T> = { readonly input: T };

function textReader(
  name: string,
  make: (dice: Dice) => string,
  read: (text: string, dice: Dice) => boolean | Promise<boolean>,
): Reader {
  return { name, make, read: (input, dice) => read(String(input), dice) };
}

function byteReader(
  name: string,
  make: (dice: Dice) => Uint8Array | Promise<Uint8Array>,
  read: (bytes: Uint8Array, dice: Dice) => boolean | Promise<boolean>,
): Reader {
  return { name, make, read: (input, dice) => read(Uint8Array.from(input as Uint8Array), dice) };
}

/** The value of a good answer; null for a refusal, which must be in words. */
function taken<T>(result: Result<T, unknown>): Made<T> | null {
  if (result.ok) return { input: result.value };
  demandFaults(result.error);
  return null;
}

function readCourse(text: string): boolean {
  const parsed = taken(parseCourseDocumentText(text));
  const open = taken(parseCourseDocumentText(text, { unreadable: 'leave-out' }));
  for (const { number } of open?.input.course.holes ?? []) prepare(open!.input.course, number);
  const opened = taken(openDocumentText(text));
  if (opened !== null) serialise(opened.input.document);
  if (parsed === null) return false;
  const { course } = parsed.input;
  const faults = checkCourse(course);
  if (faults.length > 0) demandFaults(faults);
  for (const { number } of course.holes.slice(0, 3)) drawHole(course, number);
  return true;
}

const PLAYER = parsePlayerText(samples.PLAYERS[0]!);

/** Ground, putts and flights: all of a plan but the search, and all of it whose size a file decides. */
function prepare(course: Course, holeNumber: number): void {
  if (!PLAYER.ok) throw new Error(PLAYER.error[0]?.message);
  const prepared = prepareHole({ course, holeNumber, player: PLAYER.value, seed: 'fuzz' });
  if (!prepared.ok) demandFaults([prepared.error]);
}

function drawHole(course: Course, number: number): void {
  const drawn = taken(holeSvg(course, number));
  if (drawn !== null) demandPlainSvg(drawn.input);
}

function readPlayer(text: string): boolean {
  const parsed = taken(parsePlayerDocumentText(text));
  if (parsed === null) return false;
  for (const units of ['yards', 'metres'] as const)
    demandNoFormulas(shotsToCsv(parsed.input.document.shots ?? [], units));
  return true;
}

function readRound(text: string): boolean {
  const parsed = taken(parseRoundText(text));
  if (parsed === null) return false;
  const { round } = parsed.input;
  demandNoFormulas(holesCsv(round));
  demandNoFormulas(shotsCsv(round));
  if (!parseRoundText(roundText(round)).ok) throw new Error('what was read and saved cannot be read again');
  return true;
}

function readShared(text: string): boolean {
  const parsed = taken(parseRoundText(text));
  if (parsed === null) return false;
  const carried = carriedFiles(parsed.input.round);
  for (const file of [carried?.course, carried?.player]) if (file?.ok === false) demandFaults(file.error);
  if (carried?.course?.ok === true) readCourse(carried.course.value.text);
  if (carried?.player?.ok === true) readPlayer(carried.player.value.text);
  roundText(withoutCarried(parsed.input.round));
  return true;
}

function readTable(text: string): boolean {
  const shape = taken(sniffCsv(text));
  if (shape === null) return false;
  const { mapping } = suggestMapping(shape.input, []);
  const table = taken(readShots(text, mapping));
  if (table === null) return false;
  for (const { message } of table.input.rejected) demandFaults(inEnglish(message));
  demandNoFormulas(
    shotsToCsv(
      table.input.accepted.map(({ shot }) => shot),
      'yards',
    ),
  );
  return true;
}

function takeProposal(result: Result<ImportProposal, readonly Fault[]>): boolean {
  const proposal = taken(result);
  if (proposal === null) return false;
  const document = newDocument('Links');
  const edit = taken(applyProposal(document, proposal.input));
  if (edit === null) return true;
  const again = parseCourseText(serialise(edit.input.document), { unreadable: 'leave-out' });
  if (!again.ok) throw new Error(`what was imported cannot be opened: ${again.error[0]?.message ?? ''}`);
  for (const { number } of again.value.holes.slice(0, 1)) drawHole(again.value, number);
  return true;
}

const SMALL_COURSE = openDocumentText(samples.COURSES[0]!);
const AROUND = SMALL_COURSE.ok ? contextOf(SMALL_COURSE.value.document) : EMPTY_CONTEXT;

async function readHeightModel(bytes: Uint8Array): Promise<boolean> {
  guessImportKind(bytes);
  return taken(await readHeights(bytes.slice().buffer, AROUND, 40)) !== null;
}

/** A host that has one attachment and does nothing else. */
function hostWith(bytes: Uint8Array, kind: 'pmtiles' | 'picture'): Host {
  const attachment = {
    token: 'attachment',
    name: 'a',
    kind,
    mediaType: 'image/png',
    bytes: bytes.length,
    modifiedAt: 0,
  };
  const host: Partial<Host> = {
    listAttachments: () => Promise.resolve({ ok: true, value: [attachment] }),
    readAttachment: (_, offset, length) =>
      Promise.resolve(
        Number.isSafeInteger(offset) && offset >= 0 && length >= 0 && length <= LARGEST_PART_BYTES
          ? { ok: true, value: bytes.slice(offset, offset + length).buffer }
          : { ok: false, failure: 'bad-request', message: 'It cannot be.' },
      ),
  };
  return host as Host;
}

const PLACES = [
  { zoom: 0, x: 0, y: 0 },
  { zoom: 1, x: 0, y: 0 },
  { zoom: 9, x: 511, y: 3 },
] as const;

async function readTiles(bytes: Uint8Array): Promise<boolean> {
  // The browser's own decoder is not ours to try.
  Object.assign(globalThis, { createImageBitmap: () => Promise.resolve({}) });
  const means = { host: hostWith(bytes, 'pmtiles'), token: 'course', sources: [], words: english };
  const raster = taken(await loadRaster(means, { kind: 'pmtiles', attachment: 'a' }));
  if (raster === null || raster.input.how !== 'tiles') return false;
  // A tile that cannot be read is left empty on the map.
  for (const place of PLACES) await raster.input.tile(place).catch(() => null);
  return true;
}

let mbtiles: Promise<readonly Uint8Array[]> | null = null;

async function readTileSet(bytes: Uint8Array): Promise<boolean> {
  const folder = await mkdtemp(join(tmpdir(), 'holewright-fuzz-'));
  try {
    await writeFile(join(folder, 'a.geojson'), samples.COURSES[0]!);
    await mkdir(join(folder, 'a.files'));
    await writeFile(join(folder, 'a.files', 'map.mbtiles'), bytes);
    const store = await openFileStore({ workspace: folder, demoFolder: null });
    if (!store.ok) throw new Error(store.message);
    const attachments = openAttachments(store.value);
    const sets = openTileSets(attachments);
    const files = await store.value.list();
    const list = files.ok ? await attachments.list(files.value[0]!.token) : files;
    if (!list.ok) throw new Error(list.message);
    const { token } = list.value[0]!;
    const info = await sets.info(token);
    const tiles: HostAnswer<unknown>[] = [];
    for (const { zoom, x, y } of PLACES) tiles.push(await sets.tile(token, zoom, x, y));
    await sets.close();
    for (const answer of [info, ...tiles]) if (!answer.ok) demandFaults(answer.message);
    return info.ok;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function readPictureHead(bytes: Uint8Array): boolean {
  const kind = attachmentKind(bytes);
  const size = pictureSize(bytes);
  if (size !== null && !(size.width >= 0 && size.height >= 0 && Number.isInteger(size.width * size.height)))
    throw new Error(`a size of ${size.width} by ${size.height}`);
  return kind !== null && size !== null;
}

function readWishes(text: string): boolean {
  const wishes = wishesFrom(text);
  if (JSON.stringify(Object.keys(wishes).sort()) !== JSON.stringify(Object.keys(FIRST_WISHES).sort()))
    throw new Error('wishes of another shape');
  return wishes !== FIRST_WISHES;
}

/** A plan that cannot be read is none, without a word: the hole is worked out in any case. */
function readKeptPlan(text: string): boolean {
  const result = readKept(text, oneTask);
  if (result === null) return false;
  const again = readKept(keptText(result) ?? '', oneTask);
  if (JSON.stringify(again) !== JSON.stringify(result)) throw new Error('a plan that was read is not kept');
  return true;
}

/** Names of every kind on paper: nothing of them becomes a part of the PDF but letters. */
async function printNames(text: string): Promise<boolean> {
  const names = text.split('\u0001');
  const [course = '', player = '', tee = '', ...more] = names;
  const preparation = preparationSheet(
    {
      ...{ teeOffMin: 520, durationMin: 255, holes: 18, units: 'yards', clubs: more.slice(0, 14) },
      food: { items: more, allergies: more.slice(0, 3) },
      lastLook: more.map((words, i) => ({ hole: i + 1, words })),
    },
    english,
  );
  const booklet = {
    ...{ cards: [], preparation, madeAt: new Date(0) },
    overview: { course, player, tee, lines: more },
    extrasOf: () => ({ hasGreens: false, reminder: null, wind: null }),
  };
  const bytes = await cardPdf(booklet, sheetFor('a6', 'plain', english), false);
  const pdf = Buffer.from(bytes).toString('latin1');
  if (/\/(?:JavaScript|JS|URI|Launch|OpenAction|AA|EmbeddedFile)\b/u.test(pdf))
    throw new Error('something to run or to follow in the PDF');
  return true;
}

function namesFor(dice: Dice): string {
  return Array.from({ length: 6 }, () =>
    spoilText(['Evening links', 'Oak', 'banana, roll', 'Pitching wedge'], dice).slice(0, 400),
  ).join('\u0001');
}

export const READERS: readonly Reader[] = [
  textReader('course', (dice) => spoilJson(samples.COURSES, dice), readCourse),
  textReader('player', (dice) => spoilJson(samples.PLAYERS, dice), readPlayer),
  textReader('round', (dice) => spoilJson(samples.ROUNDS, dice), readRound),
  textReader('shared-plan', (dice) => spoilJson(samples.SHARED, dice), readShared),
  textReader('csv', (dice) => spoilText(samples.SHOT_TABLES, dice), readTable),
  textReader(
    'osm-xml',
    (dice) => spoilText(samples.OSM_XML_SAMPLES, dice),
    (text) => takeProposal(readOsm(text, EMPTY_CONTEXT)),
  ),
  textReader(
    'osm-json',
    (dice) => spoilJson(samples.OSM_JSON_SAMPLES, dice),
    (text) => takeProposal(readOsm(text, EMPTY_CONTEXT)),
  ),
  textReader(
    'gpx',
    (dice) => spoilText(samples.GPX_SAMPLES, dice),
    (text) => takeProposal(readGpx(text, EMPTY_CONTEXT)),
  ),
  textReader(
    'geojson',
    (dice) => spoilJson(samples.GEOJSON_SAMPLES, dice),
    (text) => {
      const words = taken(suggestMappings(text));
      const mappings = (words?.input.properties ?? []).flatMap(({ property, values }) =>
        values.flatMap(({ value, kind }) => (kind === undefined ? [] : [{ property, value, kind }])),
      );
      return takeProposal(readGeojson(text, EMPTY_CONTEXT, { mappings }));
    },
  ),
  byteReader('geotiff', (dice) => spoilBytes(samples.GEOTIFFS, dice), readHeightModel),
  byteReader('pmtiles', (dice) => spoilBytes(samples.PMTILES, dice), readTiles),
  byteReader(
    'mbtiles',
    async (dice) => spoilBytes(await (mbtiles ??= samples.mbtilesSamples()), dice),
    readTileSet,
  ),
  byteReader('picture', (dice) => spoilBytes(samples.PICTURES, dice), readPictureHead),
  textReader('wishes', (dice) => spoilJson([JSON.stringify(FIRST_WISHES)], dice), readWishes),
  textReader('kept-plan', (dice) => spoilJson(samples.KEPT_PLANS, dice), readKeptPlan),
  textReader('names-on-paper', namesFor, printNames),
];

export function readerOf(name: string): Reader {
  const found = READERS.find((reader) => reader.name === name);
  if (found === undefined)
    throw new Error(`no reader called ${name}; there are ${READERS.map((one) => one.name).join(', ')}`);
  return found;
}

export function seedOf(seed: string, reader: string, number: number): string {
  return `${seed}/${reader}/${number}`;
}

/** Makes the case and reads it. Whether it was read; throws where something is amiss. `begins` is called before reading. */
export async function runCase(
  reader: Reader,
  seed: string,
  begins: () => void = () => undefined,
): Promise<boolean> {
  const dice = diceOf(seed);
  const input = await reader.make(dice);
  begins();
  const wasRead = await reader.read(input, dice);
  demandCleanPrototypes();
  return wasRead;
}
