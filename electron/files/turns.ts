/** One writer at a time: work handed in waits until the work before it has ended, well or badly. */

export type InTurn = <T>(work: () => Promise<T>) => Promise<T>;

export function oneAtATime(): InTurn {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = last.then(work, work);
    last = mine.catch(() => undefined);
    return mine;
  };
}
