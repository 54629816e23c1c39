/**
 * What goes over the wire between page and host, as schemas: one for each request and one for each answer.
 * Both hosts check requests with them and both clients check answers, so neither end trusts the other.
 */

import * as v from 'valibot';
import type { FileEntry, HostAnswer, HostFailure, HostInfo, KeptCopy, OpenedFile, Settings } from './host.ts';

/** Largest file that is read, taken in or written, in bytes of UTF-8. */
export const LARGEST_TEXT_BYTES = 64 * 1024 * 1024;
/** Longest name that the page may suggest, in UTF-16 units. */
export const LONGEST_NAME = 200;
/** A request without file text is never near this, in bytes. */
export const LARGEST_SMALL_REQUEST_BYTES = 16 * 1024;
/** A request with file text: JSON may double the text (escaped quotes and line ends), plus the rest of the request. */
export const LARGEST_TEXT_REQUEST_BYTES = 2 * LARGEST_TEXT_BYTES + LARGEST_SMALL_REQUEST_BYTES;

const token = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{8,64}$/));
const revision = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/));
const name = v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_NAME));
const text = v.pipe(v.string(), v.maxLength(LARGEST_TEXT_BYTES));
export const fileKindSchema = v.picklist(['course', 'player', 'round']);

export const settingsSchema = v.strictObject({
  units: v.picklist(['yards', 'metres']),
  theme: v.picklist(['light', 'dark', 'system']),
  lastCourse: v.nullable(token),
  lastPlayer: v.nullable(token),
});

const nothing = v.strictObject({});

/** Requests by method. `importText` is loopback's (the page has the file), `importFile` is Electron's (the host asks). */
export const requestSchemas = {
  info: nothing,
  list: nothing,
  open: v.strictObject({ token }),
  save: v.strictObject({ token, text, baseRevision: v.nullable(revision) }),
  copies: v.strictObject({ token }),
  openCopy: v.strictObject({ token, keptAt: v.pipe(v.number(), v.safeInteger(), v.minValue(0)) }),
  create: v.strictObject({ kind: fileKindSchema, suggestedName: name, text }),
  importFile: v.strictObject({ kind: fileKindSchema }),
  importText: v.strictObject({ kind: fileKindSchema, name, text }),
  exportPdf: v.strictObject({ suggestedName: name }),
  print: nothing,
  readSettings: nothing,
  writeSettings: v.strictObject({ settings: settingsSchema }),
} as const;

export type Method = keyof typeof requestSchemas;
export type Request<M extends Method> = v.InferOutput<(typeof requestSchemas)[M]>;

/** Most bytes that a request of this method may have. */
export function largestRequestBytes(method: Method): number {
  return method === 'save' || method === 'create' || method === 'importText'
    ? LARGEST_TEXT_REQUEST_BYTES
    : LARGEST_SMALL_REQUEST_BYTES;
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

/** The value of a good answer, by method. */
export const valueSchemas = {
  info: v.object({
    shell: v.picklist(['electron', 'loopback']),
    version: v.string(),
    workspaceName: v.string(),
  }) satisfies v.GenericSchema<unknown, HostInfo>,
  list: v.pipe(v.array(entry), v.readonly()),
  open: opened,
  save: v.object({ revision }),
  copies: v.pipe(
    v.array(v.object({ keptAt: v.number(), bytes: v.number() }) satisfies v.GenericSchema<unknown, KeptCopy>),
    v.readonly(),
  ),
  openCopy: v.object({ text: v.string() }),
  create: opened,
  importFile: opened,
  importText: opened,
  exportPdf: v.object({ where: v.string() }),
  print: v.null(),
  readSettings: settingsSchema satisfies v.GenericSchema<unknown, Settings>,
  writeSettings: v.null(),
} as const;

export type Value<M extends Method> = v.InferOutput<(typeof valueSchemas)[M]>;

const failures = [
  'not-found',
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

const refusal = v.object({ ok: v.literal(false), failure: v.picklist(failures), message: v.string() });

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
  const read = v.safeParse(requestSchemas[method], request);
  if (read.success) return { ok: true, value: read.output };
  const where = v.getDotPath(read.issues[0]);
  return {
    ok: false,
    failure: 'bad-request',
    message: `The request "${method}" is not as it should be${where === null ? '' : ` at "${where}"`}. Nothing was done; reload the window and try again.`,
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
  };
}
