/** Server-sent events (WHATWG HTML, section 9.2) for the windows that listen. */

import type { ServerResponse } from 'node:http';
import type { ChangeLog, NumberedChange } from './change-log.ts';

/**
 * Browsers open six connections to one origin and no more; a stream holds one for good. Further windows are
 * answered 204, which ends their stream, and ask now and then instead.
 */
export const MOST_STREAMS = 4;
/** A line now and then shows both ends that the connection still stands. */
const STILL_HERE_MS = 15_000;

export interface EventStreams {
  /** Answers the request with a stream; false where there is none left to give. */
  readonly open: (
    response: ServerResponse,
    headers: Readonly<Record<string, string>>,
    lastSeen: number | null,
    onClose: () => void,
  ) => boolean;
  readonly send: (change: NumberedChange) => void;
  readonly close: () => void;
}

function eventText({ number, change }: NumberedChange): string {
  return `id: ${number}\ndata: ${JSON.stringify(change)}\n\n`;
}

export function eventStreams(log: ChangeLog): EventStreams {
  const open = new Set<ServerResponse>();
  const beat = setInterval(() => {
    for (const response of open) response.write(': still here\n\n');
  }, STILL_HERE_MS);
  beat.unref();

  return {
    open: (response, headers, lastSeen, onClose) => {
      if (open.size >= MOST_STREAMS) return false;
      response.writeHead(200, { ...headers, 'content-type': 'text/event-stream; charset=utf-8' });
      response.write('retry: 2000\n');
      response.write(`id: ${log.latest()}\n\n`);
      if (lastSeen !== null) for (const missed of log.after(lastSeen)) response.write(eventText(missed));
      open.add(response);
      response.on('close', () => {
        open.delete(response);
        onClose();
      });
      return true;
    },
    send: (change) => {
      for (const response of open) response.write(eventText(change));
    },
    close: () => {
      clearInterval(beat);
      for (const response of open) response.end();
    },
  };
}
