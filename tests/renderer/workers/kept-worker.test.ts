import { expose } from 'comlink';
import { describe, expect, it } from 'vitest';
import { keepWorker } from '../../../renderer/workers/kept-worker.ts';
import { type Looking, WorkerBroke, watchedDesk } from '../../../renderer/workers/watched-desk.ts';

interface Api {
  double(number: number): number;
  never(): number;
  refuse(): number;
}

/** A worker whose end of the channel is in this very process; it dies when told, with or without a word. */
class FakeWorker extends EventTarget {
  readonly channel = new MessageChannel();
  isTerminated = false;

  constructor() {
    super();
    expose(
      {
        double: (number: number) => 2 * number,
        never: () => new Promise(() => undefined),
        refuse: () => {
          throw new Error('no such club');
        },
      } satisfies Record<keyof Api, unknown>,
      this.channel.port1,
    );
    this.channel.port2.addEventListener('message', (event) =>
      this.dispatchEvent(new MessageEvent('message', { data: event.data as unknown })),
    );
    this.channel.port2.start();
  }
  postMessage(message: unknown, transfer: Transferable[] = []): void {
    this.channel.port2.postMessage(message, transfer as never);
  }
  terminate(): void {
    this.isTerminated = true;
    this.channel.port1.close();
  }
  fail(message: string): void {
    this.dispatchEvent(Object.assign(new Event('error'), { message }));
  }
  /** As a worker that the browser ends for want of memory: no event, no answer. */
  fallSilent(): void {
    this.channel.port1.close();
  }
}

function workers() {
  const made: FakeWorker[] = [];
  const start = (): Worker => {
    const worker = new FakeWorker();
    made.push(worker);
    return worker as unknown as Worker;
  };
  return { made, start };
}

/** Looks that come when the test says so. */
function lookingByHand() {
  const looks = new Set<() => void>();
  const looking: Looking = (look) => {
    looks.add(look);
    return () => looks.delete(look);
  };
  /** `answered` waits until the worker has had its turn. */
  const look = async (times: number, answered: () => Promise<unknown>): Promise<void> => {
    for (let i = 0; i < times; i++) {
      for (const each of looks) each();
      await answered();
    }
  };
  return { looking, look, looks };
}

describe('a worker that is kept', () => {
  it('answers, and its own refusals are passed on as they are', async () => {
    const { start, made } = workers();
    const kept = keepWorker<Api>({ start });
    expect(await kept.desk().double(21)).toBe(42);
    await expect(kept.desk().refuse()).rejects.toThrow('no such club');
    expect(made).toHaveLength(1);
    made[0]!.terminate();
  });

  it('that breaks refuses what was under way and is started anew', async () => {
    const { start, made } = workers();
    const said: string[] = [];
    const kept = keepWorker<Api>({ start, restarted: (words) => said.push(words) });
    const waiting = kept.desk().never();
    made[0]!.fail('out of its mind');
    await expect(waiting).rejects.toBeInstanceOf(WorkerBroke);
    expect([said, made[0]!.isTerminated]).toEqual([['out of its mind'], true]);
    expect(await kept.desk().double(4)).toBe(8);
    made[1]!.terminate();
  });

  it('that is ended without a word is missed after a while, a busy one is not', async () => {
    const { start, made } = workers();
    const { looking, look, looks } = lookingByHand();
    const kept = keepWorker<Api>({ start, looking });
    const busy = expect(kept.desk().never()).rejects.toBeInstanceOf(WorkerBroke);
    await look(40, () => kept.desk().double(1));
    expect(made).toHaveLength(1);
    made[0]!.fallSilent();
    const nobody = (): Promise<unknown> => Promise.resolve();
    await look(8, nobody);
    expect(made).toHaveLength(1);
    await look(1, nobody);
    await busy;
    expect(made).toHaveLength(2);
    // Nobody looks while nothing is asked.
    expect(looks.size).toBe(0);
    made[1]!.terminate();
  });

  it('that breaks again and again is given up, and says so', async () => {
    const { start, made } = workers();
    const given: string[] = [];
    const kept = keepWorker<Api>({ start, gaveUp: (words) => given.push(words) });
    for (let i = 0; i < 4; i++) made[i]!.fail(`fault ${i}`);
    expect(given).toEqual(['fault 3']);
    expect(made).toHaveLength(4);
    await expect(kept.desk().double(1)).rejects.toThrow('fault 3');
  });

  it('that is ended by us refuses with our reason and is not missed', async () => {
    const { start, made } = workers();
    const broken: unknown[] = [];
    const { desk, end } = watchedDesk<Api>(start(), (reason) => broken.push(reason));
    const waiting = desk.never();
    end(new Error('stopped by hand'));
    await expect(waiting).rejects.toThrow('stopped by hand');
    made[0]!.fail('late');
    expect(broken).toEqual([]);
  });
});
