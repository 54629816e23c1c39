/**
 * What goes over the wire between page and host, as schemas: one for each request and one for each answer.
 * Both hosts check requests with them and both clients check answers, so neither end trusts the other.
 */

import * as v from 'valibot';
import type {
  Attachment,
  Claim,
  FileEntry,
  HostAnswer,
  HostFailure,
  HostInfo,
  Journal,
  KeptCopy,
  LeftBehind,
  OpenedFile,
  Settings,
  SettingsChange,
  Tile,
  TileSetInfo,
  ToldMessage,
  Written,
} from './host.ts';
import { exportEnding } from './export-name.ts';
import { MOST_TILE_SOURCES, tileSourceSchema } from './tile-source.ts';

/** Largest file that is read, taken in or written, in bytes of UTF-8. */
export const LARGEST_TEXT_BYTES = 64 * 1024 * 1024;
/** Longest name that the page may suggest, in UTF-16 units. */
export const LONGEST_NAME = 200;
/** A request without file text is never near this, in bytes. */
export const LARGEST_SMALL_REQUEST_BYTES = 16 * 1024;
/** A request with file text: JSON may double the text (escaped quotes and line ends), plus the rest of the request. */
export const LARGEST_TEXT_REQUEST_BYTES = 2 * LARGEST_TEXT_BYTES + LARGEST_SMALL_REQUEST_BYTES;
/** Rounds whose wishes are kept, and the longest of them in UTF-16 units. */
export const MOST_KEPT_ROUNDS = 16;
export const LONGEST_WISHES = 2500;
/** Courses whose day is kept, and the longest of them in UTF-16 units. */
export const MOST_KEPT_DAYS = 24;
export const LONGEST_DAY = 600;
/** A change of settings with as many tile addresses, rounds and days as may be, and what they were before. */
const LARGEST_SETTINGS_BYTES = 2 * 224 * 1024;
/** Longest text that is kept as a hole's plan, in UTF-16 units; it is ASCII but for names. */
export const LARGEST_KEPT_PLAN = 256 * 1024;
/** Most bytes of an attachment that are read at once. */
export const LARGEST_PART_BYTES = 16 * 1024 * 1024;
/** Largest file that is taken out of the program. */
export const LARGEST_EXPORT_BYTES = 64 * 1024 * 1024;
/** Largest picture and largest map file that are copied beside a course. */
export const LARGEST_PICTURE_BYTES = 256 * 1024 * 1024;
export const LARGEST_MAP_BYTES = 2 * 1024 * 1024 * 1024;

const token = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{8,64}$/));
const sha256 = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/));
const revision = sha256;
const name = v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_NAME));
const text = v.pipe(v.string(), v.maxLength(LARGEST_TEXT_BYTES));
export const fileKindSchema = v.picklist(['course', 'player', 'round']);

export const settingsSchema = v.strictObject({
  units: v.picklist(['yards', 'metres']),
  theme: v.picklist(['light', 'dark', 'system']),
  language: v.exactOptional(v.picklist(['en', 'de', 'system'])),
  isNew: v.exactOptional(v.literal(true)),
  tourSeen: v.exactOptional(v.literal(true)),
  lastCourse: v.nullable(token),
  lastPlayer: v.nullable(token),
  tileSources: v.exactOptional(
    v.pipe(v.array(tileSourceSchema), v.maxLength(MOST_TILE_SOURCES), v.readonly()),
  ),
  rounds: v.exactOptional(
    v.pipe(
      v.array(
        v.strictObject({
          course: token,
          player: token,
          wishes: v.pipe(v.string(), v.maxLength(LONGEST_WISHES)),
        }),
      ),
      v.maxLength(MOST_KEPT_ROUNDS),
      v.readonly(),
    ),
  ),
  days: v.exactOptional(
    v.pipe(
      v.array(v.strictObject({ course: token, conditions: v.pipe(v.string(), v.maxLength(LONGEST_DAY)) })),
      v.maxLength(MOST_KEPT_DAYS),
      v.readonly(),
    ),
  ),
});

/** What is absent stays as it is on disk. */
const settingsChangeSchema = v.strictObject({
  ...settingsSchema.entries,
  units: v.exactOptional(settingsSchema.entries.units),
  theme: v.exactOptional(settingsSchema.entries.theme),
  lastCourse: v.exactOptional(settingsSchema.entries.lastCourse),
  lastPlayer: v.exactOptional(settingsSchema.entries.lastPlayer),
}) satisfies v.GenericSchema<unknown, SettingsChange>;

const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
/** Every window has a number of its own, made anew with each loading of the page. */
const window = token;
const tileCount = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(2 ** 30 - 1));

const nothing = v.strictObject({});

/** Bytes as they come out of a message or response; by name, since each window has its own `ArrayBuffer`. */
const bytes = v.custom<ArrayBuffer>(
  (value) => Object.prototype.toString.call(value) === '[object ArrayBuffer]',
  'no bytes',
);

/**
 * Requests by method. `importText` is loopback's (the page has the file), `importFile` is Electron's (the host
 * asks). So is `attach`; over loopback the page sends the file itself, and bytes of attachments, tiles and
 * exports travel as they are: see byte-address.ts.
 */
export const requestSchemas = {
  info: nothing,
  list: nothing,
  open: v.strictObject({ token }),
  claim: v.strictObject({ window, token }),
  release: v.strictObject({ window, token }),
  save: v.strictObject({
    window,
    token,
    text,
    baseRevision: v.nullable(revision),
    journalUpTo: v.exactOptional(count),
  }),
  journal: v.strictObject({ window, token, baseRevision: revision, text }),
  readJournal: v.strictObject({ window, token }),
  clearJournal: v.strictObject({ window, token, journal: token, upTo: count }),
  leftBehind: nothing,
  copies: v.strictObject({ token }),
  openCopy: v.strictObject({ token, keptAt: count }),
  create: v.strictObject({ kind: fileKindSchema, suggestedName: name, text }),
  importFile: v.strictObject({ kind: fileKindSchema }),
  importText: v.strictObject({ kind: fileKindSchema, name, text }),
  attach: v.strictObject({ token, job: token }),
  stopAttach: v.strictObject({ job: token }),
  listAttachments: v.strictObject({ token }),
  readAttachment: v.strictObject({
    attachment: token,
    offset: count,
    length: v.pipe(count, v.maxValue(LARGEST_PART_BYTES)),
  }),
  tileSetInfo: v.strictObject({ attachment: token }),
  readTile: v.strictObject({
    attachment: token,
    zoom: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(30)),
    x: tileCount,
    y: tileCount,
  }),
  exportPdf: v.strictObject({ suggestedName: name }),
  print: nothing,
  saveExport: v.strictObject({
    suggestedName: v.pipe(
      name,
      v.check((suggested) => exportEnding(suggested) !== null, 'no ending of an export'),
    ),
    bytes: v.pipe(
      bytes,
      v.check(({ byteLength }) => byteLength <= LARGEST_EXPORT_BYTES, 'too many bytes'),
    ),
  }),
  readSettings: nothing,
  writeSettings: v.strictObject({
    settings: settingsChangeSchema,
    was: v.exactOptional(settingsChangeSchema),
  }),
  keepPlan: v.strictObject({
    key: sha256,
    text: v.pipe(v.string(), v.minLength(1), v.maxLength(LARGEST_KEPT_PLAN)),
  }),
  keptPlan: v.strictObject({ key: sha256 }),
} as const;

export type Method = keyof typeof requestSchemas;
export type Request<M extends Method> = v.InferOutput<(typeof requestSchemas)[M]>;

/** Most bytes that a request of this method may have. */
export function largestRequestBytes(method: Method): number {
  switch (method) {
    case 'save':
    case 'journal':
    case 'create':
    case 'importText':
      return LARGEST_TEXT_REQUEST_BYTES;
    case 'saveExport':
      return LARGEST_EXPORT_BYTES + LARGEST_SMALL_REQUEST_BYTES;
    case 'writeSettings':
      return LARGEST_SETTINGS_BYTES;
    case 'keepPlan':
      // JSON of JSON: every quotation mark is written with a stroke before it
      return 2 * LARGEST_KEPT_PLAN + LARGEST_SMALL_REQUEST_BYTES;
    default:
      return LARGEST_SMALL_REQUEST_BYTES;
  }
}

const entry = v.object({
  token,
  name: v.string(),
  kind: fileKindSchema,
  readOnly: v.boolean(),
  modifiedAt: v.number(),
  bytes: v.number(),
}) satisfies v.GenericSchema<unknown, FileEntry>;

const opened = v.object({ entry, text: v.string(), revision }) satisfies v.GenericSchema<unknown, OpenedFile>;

const claim = v.variant('isHeld', [
  v.object({ isHeld: v.literal(true) }),
  v.object({
    isHeld: v.literal(false),
    holder: v.object({
      place: v.picklist(['other-window', 'other-program', 'other-computer']),
      shell: v.nullable(v.picklist(['electron', 'loopback'])),
      computer: v.string(),
      since: v.number(),
    }),
  }),
]) satisfies v.GenericSchema<unknown, Claim>;

const journal = v.object({
  journal: token,
  isOwn: v.boolean(),
  startedAt: v.number(),
  entries: v.pipe(
    v.array(
      v.object({ number: v.number(), writtenAt: v.number(), baseRevision: revision, text: v.string() }),
    ),
    v.readonly(),
  ),
  lostBytes: v.number(),
  isNewer: v.boolean(),
}) satisfies v.GenericSchema<unknown, Journal>;

const attachment = v.object({
  token,
  name: v.string(),
  kind: v.picklist(['picture', 'geotiff', 'pmtiles', 'mbtiles']),
  mediaType: v.string(),
  bytes: v.number(),
  modifiedAt: v.number(),
}) satisfies v.GenericSchema<unknown, Attachment>;

const tile = v.nullable(v.object({ mediaType: v.string(), bytes })) satisfies v.GenericSchema<
  unknown,
  Tile | null
>;

const tileSetInfo = v.object({
  name: v.nullable(v.string()),
  mediaType: v.string(),
  attribution: v.nullable(v.string()),
  leastZoom: v.nullable(v.number()),
  mostZoom: v.nullable(v.number()),
  bounds: v.nullable(v.pipe(v.tuple([v.number(), v.number(), v.number(), v.number()]), v.readonly())),
}) satisfies v.GenericSchema<unknown, TileSetInfo>;

type ToldValue = ToldMessage['values'][string];

const plainValue = v.union([v.string(), v.number()]);
const toldWith = (value: v.GenericSchema<unknown, ToldValue>): v.GenericSchema<unknown, ToldMessage> =>
  v.object({
    entry: v.pipe(v.array(v.pipe(v.string(), v.maxLength(40))), v.minLength(1), v.maxLength(8)),
    values: v.record(v.string(), value),
  });

/** A message of the catalogue: its values may be messages themselves, so deep and no deeper. */
const DEEPEST_MESSAGE = 6;
const toldSchema = toldWith(
  Array.from({ length: DEEPEST_MESSAGE - 1 }).reduce<v.GenericSchema<unknown, ToldValue>>(
    (value) => v.union([plainValue, toldWith(value)]),
    plainValue,
  ),
);

const written = v.object({
  where: v.string(),
  told: v.exactOptional(toldSchema),
}) satisfies v.GenericSchema<unknown, Written>;

/** The value of a good answer, by method. */
export const valueSchemas = {
  info: v.object({
    shell: v.picklist(['electron', 'loopback']),
    version: v.string(),
    workspaceName: v.string(),
  }) satisfies v.GenericSchema<unknown, HostInfo>,
  list: v.pipe(v.array(entry), v.readonly()),
  open: opened,
  claim,
  release: v.null(),
  save: v.object({ revision }),
  journal: v.object({ journal: token, number: v.number() }),
  readJournal: v.pipe(v.array(journal), v.readonly()),
  clearJournal: v.null(),
  leftBehind: v.pipe(
    v.array(v.object({ token, name: v.string() }) satisfies v.GenericSchema<unknown, LeftBehind>),
    v.readonly(),
  ),
  copies: v.pipe(
    v.array(v.object({ keptAt: v.number(), bytes: v.number() }) satisfies v.GenericSchema<unknown, KeptCopy>),
    v.readonly(),
  ),
  openCopy: v.object({ text: v.string() }),
  create: opened,
  importFile: opened,
  importText: opened,
  attach: attachment,
  stopAttach: v.null(),
  listAttachments: v.pipe(v.array(attachment), v.readonly()),
  readAttachment: bytes,
  tileSetInfo,
  readTile: tile,
  exportPdf: written,
  print: v.null(),
  saveExport: written,
  readSettings: settingsSchema satisfies v.GenericSchema<unknown, Settings>,
  writeSettings: v.null(),
  keepPlan: v.object({ isKept: v.boolean() }),
  keptPlan: v.object({ text: v.nullable(v.pipe(v.string(), v.maxLength(LARGEST_KEPT_PLAN))) }),
} as const;

export type Value<M extends Method> = v.InferOutput<(typeof valueSchemas)[M]>;

const failures = [
  'not-found',
  'folder-gone',
  'not-claimed',
  'unfit',
  'not-allowed',
  'too-large',
  'not-text',
  'changed-on-disk',
  'disk-full',
  'read-only',
  'bad-request',
  'host-gone',
  'cancelled',
  'unknown',
] as const satisfies readonly HostFailure[];

const refusal = v.object({
  ok: v.literal(false),
  failure: v.picklist(failures),
  message: v.string(),
  told: v.exactOptional(toldSchema),
  revisionOnDisk: v.exactOptional(revision),
});

/** How far a copy under way has come. */
export const progressSchema = v.object({ job: token, doneBytes: v.number(), totalBytes: v.number() });

/**
 * A change as it travels. `revision` is the new content's SHA-256, absent where the file is gone: with it a
 * page tells its own save from somebody else's.
 */
export const changeSchema = v.object({
  token,
  change: v.picklist(['changed', 'removed', 'added']),
  revision: v.optional(revision),
});
export type WireChange = v.InferOutput<typeof changeSchema>;

/** Answer to the loopback page's asking for changes: what happened after `since`, and where to ask from next time. */
export const changesSchema = v.object({
  ok: v.literal(true),
  value: v.object({ next: v.number(), changes: v.array(changeSchema) }),
});

/** Reads what a page asked of `method`; anything else becomes a refusal that names the place. */
export function readRequest<M extends Method>(method: M, request: unknown): HostAnswer<Request<M>> {
  // A list would pass for an object without members.
  const read = v.safeParse(requestSchemas[method], Array.isArray(request) ? null : request);
  if (read.success) return { ok: true, value: read.output };
  const where = v.getDotPath(read.issues[0]);
  const at = where === null ? '' : ` at "${where}"`;
  return {
    ok: false,
    failure: 'bad-request',
    message: `The request "${method}" is not as it should be${at}. Nothing was done; reload the window and try again.`,
    told:
      where === null
        ? { entry: ['refusals', 'request', 'malformed'], values: { method } }
        : { entry: ['refusals', 'request', 'malformedAt'], values: { method, where } },
  };
}

/** Reads what a host sent back for `method`; anything else becomes a refusal that says so. */
export function readAnswer<M extends Method>(method: M, answer: unknown): HostAnswer<Value<M>> {
  const refused = v.safeParse(refusal, answer);
  if (refused.success) return refused.output;
  const good = v.safeParse(v.object({ ok: v.literal(true), value: v.unknown() }), answer);
  if (good.success) {
    const value = v.safeParse(valueSchemas[method], good.output.value);
    if (value.success) return { ok: true, value: value.output as Value<M> };
  }
  return {
    ok: false,
    failure: 'unknown',
    message: `The program gave an answer to "${method}" that this page does not understand. Close every Holewright window and start it again.`,
    told: { entry: ['refusals', 'request', 'answer'], values: { method } },
  };
}
