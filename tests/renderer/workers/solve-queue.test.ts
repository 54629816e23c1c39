import { describe, expect, it } from 'vitest';
import { SolveQueue } from '../../../renderer/workers/solve-queue.ts';

/** A clock that moves on by 5 ms whenever it is read, so that a slice is a step or two. */
function means(): { clock: () => number; turn: () => Promise<void> } {
  let now = 0;
  return { clock: () => (now += 5), turn: () => new Promise((resolve) => setImmediate(resolve)) };
}

function* count(to: number, name: string, seen: string[]): Generator<number, string, void> {
  for (let i = 0; i < to; i++) {
    seen.push(name);
    yield i;
  }
  return name;
}

const quiet = (): void => undefined;

describe('solve queue', () => {
  it('finishes every piece, each whole before the next', async () => {
    const queue = new SolveQueue<number, string>(means());
    const seen: string[] = [];
    const ended = await Promise.all(
      ['a', 'b'].map((key, group) =>
        queue.add({ key, group, quick: false, steps: count(20, key, seen), report: quiet }),
      ),
    );
    expect(ended).toEqual([
      { finished: true, value: 'a' },
      { finished: true, value: 'b' },
    ]);
    expect(seen.lastIndexOf('a')).toBeLessThan(seen.indexOf('b'));
  });

  it('turns to the hurried group at once, and comes back to the other where it was', async () => {
    const queue = new SolveQueue<number, string>(means());
    const seen: string[] = [];
    const first = queue.add({ key: 'a', group: 1, quick: false, steps: count(50, 'a', seen), report: quiet });
    await new Promise((resolve) => setImmediate(resolve));
    const second = queue.add({
      key: 'b',
      group: 2,
      quick: false,
      steps: count(10, 'b', seen),
      report: quiet,
    });
    queue.hurry(2);
    await Promise.all([first, second]);
    expect(seen.lastIndexOf('b')).toBeLessThan(seen.lastIndexOf('a'));
    expect(seen.filter((name) => name === 'a')).toHaveLength(50);
  });

  it('takes a quick piece before a long one of the same group', async () => {
    const queue = new SolveQueue<number, string>(means());
    const seen: string[] = [];
    queue.hurry(1);
    const long = queue.add({
      key: 'long',
      group: 1,
      quick: false,
      steps: count(9, 'long', seen),
      report: quiet,
    });
    const quick = queue.add({
      key: 'quick',
      group: 1,
      quick: true,
      steps: count(9, 'quick', seen),
      report: quiet,
    });
    await Promise.all([long, quick]);
    expect(seen.lastIndexOf('quick')).toBeLessThan(seen.lastIndexOf('long'));
  });

  it('lets events through between slices, so that a cancellation is heard', async () => {
    const queue = new SolveQueue<number, string>(means());
    const seen: string[] = [];
    const endless = queue.add({
      key: 'a',
      group: 1,
      quick: false,
      steps: count(1e9, 'a', seen),
      report: quiet,
    });
    await new Promise((resolve) => setImmediate(resolve));
    queue.cancel('a');
    expect(await endless).toEqual({ finished: false });
    const stoppedAt = seen.length;
    await new Promise((resolve) => setImmediate(resolve));
    expect(seen.length).toBe(stoppedAt);
  });

  it('reports now and then, not at each step', async () => {
    const queue = new SolveQueue<number, string>(means());
    const reports: number[] = [];
    await queue.add({
      key: 'a',
      group: 1,
      quick: false,
      steps: count(1000, 'a', []),
      report: (progress) => reports.push(progress),
    });
    expect(reports.length).toBeGreaterThan(5);
    expect(reports.length).toBeLessThan(200);
  });

  it('fails the piece that throws, and only that one', async () => {
    const queue = new SolveQueue<number, string>(means());
    const broken = (function* (): Generator<number, string, void> {
      throw new Error('no ground');
    })();
    const bad = queue.add({ key: 'a', group: 1, quick: false, steps: broken, report: quiet });
    const good = queue.add({ key: 'b', group: 2, quick: false, steps: count(3, 'b', []), report: quiet });
    await expect(bad).rejects.toThrow('no ground');
    expect(await good).toEqual({ finished: true, value: 'b' });
  });
});
