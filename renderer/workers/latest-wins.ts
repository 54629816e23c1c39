/** Asks one question at a time; of those that come meanwhile only the last is asked. For answers during a drag. */

export interface LatestWins<Q> {
  readonly ask: (question: Q) => void;
  /** Forgets a waiting question; an answer under way still arrives. */
  readonly forget: () => void;
}

export function latestWins<Q>(
  answer: (question: Q) => Promise<void>,
  failed: (reason: unknown) => void,
): LatestWins<Q> {
  let busy = false;
  let waiting: { readonly question: Q } | null = null;
  const run = async (question: Q): Promise<void> => {
    busy = true;
    try {
      await answer(question);
    } catch (reason) {
      failed(reason);
    }
    busy = false;
    if (waiting !== null) {
      const next = waiting.question;
      waiting = null;
      void run(next);
    }
  };
  return {
    ask: (question) => {
      if (busy) waiting = { question };
      else void run(question);
    },
    forget: () => {
      waiting = null;
    },
  };
}
