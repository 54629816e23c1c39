import { describe, expect, it } from 'vitest';
import { AFTER_STREAM_MS, watchWindows } from '../../../electron/loopback/windows.ts';

const EVERY = 1000;

describe('a window', () => {
  it('with an open stream is there for good, and gone seconds after it closed', () => {
    const windows = watchWindows(EVERY);
    windows.streamOpened('w');
    for (let now = 0; now < 3_600_000; now += EVERY) expect(windows.gone(now)).toEqual([]);
    windows.streamClosed('w', 3_600_000);
    for (let after = EVERY; after < AFTER_STREAM_MS; after += EVERY)
      expect(windows.gone(3_600_000 + after)).toEqual([]);
    expect(windows.gone(3_600_000 + AFTER_STREAM_MS)).toEqual(['w']);
    expect(windows.gone(3_600_000 + AFTER_STREAM_MS + EVERY)).toEqual([]);
  });

  it('whose stream breaks and comes back at once is not gone', () => {
    const windows = watchWindows(EVERY);
    windows.streamOpened('w');
    windows.streamClosed('w', 1000);
    windows.streamOpened('w');
    for (let now = 1000; now < 60_000; now += EVERY) expect(windows.gone(now)).toEqual([]);
  });

  it('that asks instead of listening may be hidden for a minute between', () => {
    const windows = watchWindows(EVERY);
    windows.called('w', 0);
    let now = 0;
    for (let asked = 1000; asked < 1_000_000; asked += 61_000) {
      windows.asked('w', asked);
      for (; now < asked; now += EVERY) expect(windows.gone(now)).toEqual([]);
    }
    const gone: string[] = [];
    for (const end = now + 300_000; now < end; now += EVERY) gone.push(...windows.gone(now));
    expect(gone).toEqual(['w']);
  });

  it('is given its time anew when the computer has slept', () => {
    const windows = watchWindows(EVERY);
    windows.called('w', 0);
    expect(windows.gone(1000)).toEqual([]);
    expect(windows.gone(8 * 3_600_000)).toEqual([]);
    const gone: string[] = [];
    for (let now = 8 * 3_600_000; now < 9 * 3_600_000; now += EVERY) gone.push(...windows.gone(now));
    expect(gone).toEqual(['w']);
  });
});
