/** Serves attachments and tiles as bytes, and takes attachments and exports in. Requests have passed the gate. */

import { createHash } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { told } from '../../core/words/told.ts';
import { type ByteAddress, NAME_HEADER } from '../contract/byte-address.ts';
import type { HostAnswer, HostFailure } from '../contract/host.ts';
import { LARGEST_EXPORT_BYTES, LONGEST_NAME, readRequest } from '../contract/wire.ts';
import { refused } from '../files/answer.ts';
import type { Attachments, KnownAttachment } from '../files/attachments.ts';
import type { Exports } from '../files/exports.ts';
import type { TileSets } from '../files/tile-sets.ts';
import { pageHeaders } from '../pages/headers.ts';
import { endWhenStalled } from './body.ts';
import { askedRange } from './byte-range.ts';

export interface ByteParts {
  readonly attachments: Attachments;
  readonly tileSets: TileSets;
  readonly exports: Exports;
  readonly sendJson: (response: ServerResponse, status: number, answer: HostAnswer<unknown>) => void;
}

const PART_BYTES = 1024 * 1024;

const statuses: Partial<Record<HostFailure, number>> = {
  'not-found': 404,
  'folder-gone': 404,
  'bad-request': 400,
  'too-large': 413,
  unfit: 415,
};

function statusOf(failure: HostFailure): number {
  return statuses[failure] ?? 409;
}

/** Answers a request for bytes. */
export async function serveBytes(
  parts: ByteParts,
  address: ByteAddress,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const { method } = request;
  const isTaken = address.kind === 'attach' || address.kind === 'export';
  const isRight = isTaken ? method === 'PUT' : method === 'GET' || method === 'HEAD';
  if (!isRight) {
    parts.sendJson(
      response,
      405,
      refused(
        'bad-request',
        told(({ refusals }) => refusals.request.unknown),
      ),
    );
    return;
  }
  switch (address.kind) {
    case 'attach':
      return takeAttachment(parts, address.course, request, response);
    case 'export':
      return takeExport(parts, request, response);
    case 'attachment':
      return sendAttachment(parts, address.attachment, request, response);
    case 'tile':
      return sendTile(parts, address, request, response);
  }
}

async function sendAttachment(
  { attachments, sendJson }: ByteParts,
  token: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const found = await attachments.find(token);
  if (!found.ok) {
    sendJson(response, statusOf(found.failure), found);
    return;
  }
  const { bytes, mediaType } = found.value.attachment;
  const tag = tagOf(found.value);
  const isOther = request.headers['if-range'] !== undefined && request.headers['if-range'] !== tag;
  const asked = askedRange(isOther ? undefined : request.headers.range, bytes);
  const headers = { ...pageHeaders, 'accept-ranges': 'bytes', etag: tag };
  if (asked.kind === 'unsatisfiable') {
    response.writeHead(416, { ...headers, 'content-range': `bytes */${bytes}`, 'content-length': 0 }).end();
    return;
  }
  const [first, last] = asked.kind === 'part' ? [asked.first, asked.last] : [0, bytes - 1];
  response.writeHead(asked.kind === 'part' ? 206 : 200, {
    ...headers,
    'content-type': mediaType,
    'content-length': last + 1 - first,
    ...(asked.kind === 'part' ? { 'content-range': `bytes ${first}-${last}/${bytes}` } : {}),
  });
  if (request.method === 'HEAD') response.end();
  else await pipeline(Readable.from(partsOf(attachments, token, first, last)), response);
}

/** Changes whenever the file does. */
function tagOf({ stamp }: KnownAttachment): string {
  return `"${createHash('sha256').update(stamp).digest('base64url').slice(0, 22)}"`;
}

async function* partsOf(
  attachments: Attachments,
  token: string,
  first: number,
  last: number,
): AsyncGenerator<Uint8Array> {
  for (let from = first; from <= last; ) {
    const part = await attachments.read(token, from, Math.min(PART_BYTES, last + 1 - from));
    // The length has been promised: a file that has gone or shrunk meanwhile ends the connection.
    if (!part.ok) throw new Error(part.message);
    if (part.value.byteLength === 0) throw new Error('the file has become shorter');
    yield part.value;
    from += part.value.byteLength;
  }
}

async function sendTile(
  { tileSets, sendJson }: ByteParts,
  { attachment, zoom, x, y }: Extract<ByteAddress, { kind: 'tile' }>,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const checked = readRequest('readTile', { attachment, zoom, x, y });
  const tile = checked.ok ? await tileSets.tile(attachment, zoom, x, y) : checked;
  if (!tile.ok) {
    sendJson(response, statusOf(tile.failure), tile);
    return;
  }
  if (tile.value === null) {
    response.writeHead(204, pageHeaders).end();
    return;
  }
  const { bytes, mediaType } = tile.value;
  response.writeHead(200, {
    ...pageHeaders,
    'content-type': mediaType,
    'content-length': bytes.byteLength,
  });
  response.end(request.method === 'HEAD' ? '' : Buffer.from(bytes));
}

/** Name and length of a file that is being sent; null once it has been refused. */
function announced(
  sendJson: ByteParts['sendJson'],
  request: IncomingMessage,
  response: ServerResponse,
): { readonly name: string; readonly bytes: number } | null {
  // Not the form types that a foreign page could send unasked.
  if (request.headers['content-type'] !== 'application/octet-stream') {
    sendJson(
      response,
      415,
      refused(
        'bad-request',
        told(({ refusals }) => refusals.request.noFile),
      ),
    );
    return null;
  }
  const length = request.headers['content-length'];
  if (length === undefined || !/^\d{1,15}$/u.test(length)) {
    sendJson(
      response,
      411,
      refused(
        'bad-request',
        told(({ refusals }) => refusals.request.noSize),
      ),
    );
    return null;
  }
  const name = nameIn(request.headers[NAME_HEADER]);
  if (name === null) {
    sendJson(
      response,
      400,
      refused(
        'bad-request',
        told(({ refusals }) => refusals.request.noName),
      ),
    );
    return null;
  }
  return { name, bytes: Number(length) };
}

async function takeExport(
  { exports, sendJson }: ByteParts,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const file = announced(sendJson, request, response);
  if (file === null) return;
  if (file.bytes > LARGEST_EXPORT_BYTES) {
    // The rest of an oversized body is not wanted: the connection goes with the answer.
    response.setHeader('connection', 'close');
    sendJson(
      response,
      413,
      refused(
        'too-large',
        told(({ refusals }) => refusals.request.fileTooLarge, { name: file.name }),
      ),
    );
    return;
  }
  const relax = endWhenStalled(request);
  const parts: Buffer[] = [];
  // Node ends a body at the length that was announced.
  for await (const part of request as AsyncIterable<Buffer>) parts.push(part);
  relax();
  const whole = Buffer.concat(parts);
  const checked = readRequest('saveExport', {
    suggestedName: file.name,
    bytes: Uint8Array.from(whole).buffer,
  });
  const answer = checked.ok ? await exports.save(checked.value.suggestedName, whole) : checked;
  sendJson(response, answer.ok ? 200 : statusOf(answer.failure), answer);
}

async function takeAttachment(
  { attachments, sendJson }: ByteParts,
  course: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const file = announced(sendJson, request, response);
  if (file === null) return;
  const { name, bytes } = file;
  const relax = endWhenStalled(request);
  // A refusal in the middle must not end the connection on which it is to be answered.
  const parts = request.iterator({ destroyOnReturn: false }) as AsyncIterable<Buffer>;
  const answer = await attachments.take(course, { name, bytes, parts });
  relax();
  // What is left of a refused file is read away, so that the browser gets to the answer.
  if (!request.complete) request.resume();
  sendJson(response, answer.ok ? 200 : statusOf(answer.failure), answer);
}

function nameIn(header: string | string[] | undefined): string | null {
  if (typeof header !== 'string' || header === '') return null;
  try {
    const name = decodeURIComponent(header);
    return name.length <= LONGEST_NAME ? name : null;
  } catch {
    return null;
  }
}
