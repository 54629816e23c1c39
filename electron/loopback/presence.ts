/**
 * Decides when the server has outlived its windows. A window is there while its event stream is open, or
 * shortly after it has asked for changes; after the last one is gone the server waits, so that a reload or a
 * browser that puts tabs aside does not end it. A machine that slept is given the whole wait anew.
 */

/** Wait after the last window, and how often to look. */
export const WAIT_MS = 3 * 60_000;
export const LOOK_EVERY_MS = 5000;
/** A window that asks instead of listening is thought present this long; browsers let hidden tabs ask once a minute. */
const ASKED_LASTS_MS = 150_000;

export interface Presence {
  readonly streamOpened: (now: number) => void;
  readonly streamClosed: (now: number) => void;
  readonly asked: (now: number) => void;
  /** Called about every `LOOK_EVERY_MS`; true once the server should end. Never before a first window. */
  readonly isOver: (now: number) => boolean;
}

/** Times are milliseconds of one clock. */
export function watchPresence(waitMs: number = WAIT_MS): Presence {
  let streams = 0;
  let lastSeen: number | null = null;
  let presentUntil = -Infinity;
  let lastLook: number | null = null;

  return {
    streamOpened: (now) => {
      streams += 1;
      lastSeen = now;
    },
    streamClosed: (now) => {
      streams -= 1;
      lastSeen = now;
    },
    asked: (now) => {
      lastSeen = now;
      presentUntil = now + ASKED_LASTS_MS;
    },
    isOver: (now) => {
      const slept = lastLook !== null && now - lastLook > 6 * LOOK_EVERY_MS;
      lastLook = now;
      if (lastSeen === null) return false;
      if (streams > 0 || slept || now < presentUntil) {
        lastSeen = now;
        return false;
      }
      return now - lastSeen > waitMs;
    },
  };
}
