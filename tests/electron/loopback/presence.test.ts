import { describe, expect, it } from 'vitest';
import { LOOK_EVERY_MS, watchPresence } from '../../../electron/loopback/presence.ts';

const WAIT = 60_000;

/** Looks at the usual beat from `from` to `to`; the time at which it is over, null where it is not. */
function lookFrom(presence: ReturnType<typeof watchPresence>, from: number, to: number): number | null {
  for (let now = from; now <= to; now += LOOK_EVERY_MS) if (presence.isOver(now)) return now;
  return null;
}

describe('the server', () => {
  it('waits for its first window without end', () => {
    expect(lookFrom(watchPresence(WAIT), 0, 100 * WAIT)).toBeNull();
  });

  it('goes on as long as a window is open and ends a while after the last one has closed', () => {
    const presence = watchPresence(WAIT);
    presence.streamOpened(0);
    presence.streamOpened(0);
    expect(lookFrom(presence, 0, 10 * WAIT)).toBeNull();
    presence.streamClosed(10 * WAIT);
    expect(lookFrom(presence, 10 * WAIT, 20 * WAIT)).toBeNull();
    presence.streamClosed(20 * WAIT);
    const over = lookFrom(presence, 20 * WAIT, 30 * WAIT);
    expect(over).toBeGreaterThan(21 * WAIT);
    expect(over).toBeLessThanOrEqual(21 * WAIT + 2 * LOOK_EVERY_MS);
  });

  it('outlives a reload', () => {
    const presence = watchPresence(WAIT);
    presence.streamOpened(0);
    presence.streamClosed(1000);
    expect(lookFrom(presence, 1000, 40_000)).toBeNull();
    presence.streamOpened(41_000);
    expect(lookFrom(presence, 41_000, 10 * WAIT)).toBeNull();
  });

  it('gives a machine that slept the whole wait anew', () => {
    const presence = watchPresence(WAIT);
    presence.streamOpened(0);
    lookFrom(presence, 0, 10_000);
    presence.streamClosed(10_000);
    const woken = 8 * 3_600_000;
    expect(presence.isOver(woken)).toBe(false);
    expect(lookFrom(presence, woken + LOOK_EVERY_MS, woken + WAIT)).toBeNull();
    presence.streamOpened(woken + WAIT);
    expect(lookFrom(presence, woken + WAIT + LOOK_EVERY_MS, woken + 10 * WAIT)).toBeNull();
  });

  it('counts a window that only asks, once a minute at the least', () => {
    const presence = watchPresence(WAIT);
    for (let minute = 0; minute < 30; minute++) {
      presence.asked(minute * 60_000);
      expect(lookFrom(presence, minute * 60_000, minute * 60_000 + 59_000)).toBeNull();
    }
    expect(lookFrom(presence, 30 * 60_000, 60 * 60_000)).not.toBeNull();
  });
});
