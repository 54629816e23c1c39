/**
 * Which windows are still there, so that what a vanished one had claimed becomes free. A window is there while
 * its event stream is open; one that asks now and then instead, as long after its last asking as browsers may
 * hold a hidden tab back. A computer that slept gives every window its time anew.
 */

/** Wait after a stream has closed: a browser opens it again after two seconds. */
export const AFTER_STREAM_MS = 5000;
/** Wait after a call that came from a window without a stream. */
const AFTER_CALL_MS = 30_000;
/** Wait after asking for changes: hidden tabs may ask once a minute only. */
const AFTER_ASKING_MS = 150_000;

export interface Windows {
  readonly streamOpened: (window: string) => void;
  readonly streamClosed: (window: string, now: number) => void;
  readonly asked: (window: string, now: number) => void;
  readonly called: (window: string, now: number) => void;
  /** Called about every second: windows that have gone since. */
  readonly gone: (now: number) => readonly string[];
}

interface Presence {
  streams: number;
  until: number;
}

/** Times are milliseconds of one clock. */
export function watchWindows(lookEveryMs: number): Windows {
  const all = new Map<string, Presence>();
  let lastLook: number | null = null;

  const presenceOf = (window: string): Presence => {
    const presence = all.get(window) ?? { streams: 0, until: -Infinity };
    all.set(window, presence);
    return presence;
  };
  const stays = (window: string, until: number): void => {
    const presence = presenceOf(window);
    presence.until = Math.max(presence.until, until);
  };

  return {
    streamOpened: (window) => {
      presenceOf(window).streams += 1;
    },
    streamClosed: (window, now) => {
      const presence = presenceOf(window);
      presence.streams -= 1;
      if (presence.streams === 0) presence.until = now + AFTER_STREAM_MS;
    },
    asked: (window, now) => {
      stays(window, now + AFTER_ASKING_MS);
    },
    called: (window, now) => {
      stays(window, now + AFTER_CALL_MS);
    },
    gone: (now) => {
      const slept = lastLook === null ? 0 : now - lastLook;
      lastLook = now;
      const gone: string[] = [];
      for (const [window, presence] of all) {
        if (slept > 5 * lookEveryMs) presence.until += slept;
        if (presence.streams > 0 || now < presence.until) continue;
        all.delete(window);
        gone.push(window);
      }
      return gone;
    },
  };
}
