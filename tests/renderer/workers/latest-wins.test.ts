import { describe, expect, it } from 'vitest';
import { latestWins } from '../../../renderer/workers/latest-wins.ts';

/** Answers when told to. */
function slow(): {
  answer: (question: number) => Promise<void>;
  asked: number[];
  release: () => Promise<void>;
} {
  const asked: number[] = [];
  let end: (() => void) | null = null;
  return {
    asked,
    answer: (question) => {
      asked.push(question);
      return new Promise((resolve) => {
        end = resolve;
      });
    },
    release: async () => {
      end?.();
      await new Promise((resolve) => setImmediate(resolve));
    },
  };
}

describe('latest wins', () => {
  it('asks the first and the last of many questions, and none between', async () => {
    const { answer, asked, release } = slow();
    const asking = latestWins(answer, () => undefined);
    for (const question of [1, 2, 3, 4]) asking.ask(question);
    expect(asked).toEqual([1]);
    await release();
    expect(asked).toEqual([1, 4]);
    await release();
    expect(asked).toEqual([1, 4]);
  });

  it('goes on after a failure', async () => {
    const failures: unknown[] = [];
    const asked: number[] = [];
    const asking = latestWins<number>(
      (question) => {
        asked.push(question);
        return question === 1 ? Promise.reject(new Error('worker gone')) : Promise.resolve();
      },
      (reason) => failures.push(reason),
    );
    asking.ask(1);
    asking.ask(2);
    await new Promise((resolve) => setImmediate(resolve));
    expect(asked).toEqual([1, 2]);
    expect(failures).toHaveLength(1);
  });

  it('does not ask what was forgotten', async () => {
    const { answer, asked, release } = slow();
    const asking = latestWins(answer, () => undefined);
    asking.ask(1);
    asking.ask(2);
    asking.forget();
    await release();
    expect(asked).toEqual([1]);
  });
});
