/** Reads a request's JSON body, never more than it may have. */

import type { IncomingMessage } from 'node:http';
import { told, type Told } from '../../core/words/told.ts';

export type Body =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly status: number; readonly reason: Told };

const tooLarge: Body = {
  ok: false,
  status: 413,
  reason: told(({ refusals }) => refusals.request.textTooLarge),
};

/** A body may take as long as it needs, but not stand still. */
const STALLED_MS = 60_000;

/** Ends the connection when nothing comes for a minute, until the returned function is called. */
export function endWhenStalled(request: IncomingMessage): () => void {
  const { socket } = request;
  const end = (): void => {
    request.destroy();
  };
  socket.setTimeout(STALLED_MS, end);
  return () => {
    socket.off('timeout', end);
    socket.setTimeout(0);
  };
}

export async function readJsonBody(request: IncomingMessage, mostBytes: number): Promise<Body> {
  // This type makes a foreign page's browser ask first (CORS preflight), and the answer to that is no.
  if (!/^application\/json(?:;\s*charset=utf-8)?$/iu.test(request.headers['content-type'] ?? '')) {
    return { ok: false, status: 415, reason: told(({ refusals }) => refusals.request.notJson) };
  }
  if (Number(request.headers['content-length'] ?? 0) > mostBytes) return tooLarge;
  const parts: Buffer[] = [];
  let bytes = 0;
  const relax = endWhenStalled(request);
  try {
    for await (const part of request as AsyncIterable<Buffer>) {
      bytes += part.byteLength;
      if (bytes > mostBytes) return tooLarge;
      parts.push(part);
    }
  } finally {
    relax();
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(parts));
    return { ok: true, value: JSON.parse(text) as unknown };
  } catch {
    return { ok: false, status: 400, reason: told(({ refusals }) => refusals.request.incomplete) };
  }
}
