/**
 * Hears of changes on disk from the loopback server: by server-sent events, or by asking every two seconds
 * where the server has no event stream left to give (browsers allow only six connections to one origin).
 * Either way tells the server that this window is still there.
 */

import * as v from 'valibot';
import { changeSchema, changesSchema, type WireChange } from '../../electron/contract/wire.ts';

const ASK_EVERY_MS = 2000;

export interface Following {
  readonly stop: () => void;
}

/** `number` is this window's own: while the connection stands, the server keeps what the window holds for it. */
export function followChanges(
  base: URL,
  number: string,
  hear: (change: WireChange) => void,
  ask: (url: URL, init: RequestInit) => Promise<Response>,
): Following {
  let seen: number | null = null;
  let stream: EventSource | null = null;
  let timer: number | null = null;

  const askOnce = async (): Promise<void> => {
    const url = new URL('api/changes', base);
    url.searchParams.set('window', number);
    if (seen !== null) url.searchParams.set('since', String(seen));
    try {
      const response = await ask(url, { credentials: 'same-origin', cache: 'no-store', redirect: 'error' });
      const answer = v.safeParse(changesSchema, await response.json());
      if (!answer.success) return;
      seen = answer.output.value.next;
      answer.output.value.changes.forEach(hear);
    } catch {
      // The server may be gone for good or only asleep with the machine: the next round finds out.
    }
  };

  const askAgainAndAgain = (): void => {
    timer ??= window.setInterval(() => void askOnce(), ASK_EVERY_MS);
  };

  const listen = (): void => {
    const url = new URL('api/events', base);
    url.searchParams.set('window', number);
    const events = new EventSource(url);
    stream = events;
    events.addEventListener('message', (event: MessageEvent<string>) => {
      seen = Number(event.lastEventId);
      const change = v.safeParse(v.pipe(v.string(), v.parseJson(), changeSchema), event.data);
      if (change.success) hear(change.output);
    });
    events.addEventListener('error', () => {
      if (events.readyState === EventSource.CLOSED && stream === events) askAgainAndAgain();
    });
  };

  const stop = (): void => {
    stream?.close();
    stream = null;
    if (timer !== null) window.clearInterval(timer);
    timer = null;
  };

  // A page kept for "back" must not hold a connection, and listens again when it is shown.
  window.addEventListener('pagehide', stop);
  window.addEventListener('pageshow', (event) => {
    if (event.persisted) listen();
  });
  listen();
  return { stop };
}
