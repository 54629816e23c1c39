/** The worker's entry: puts a desk behind the message channel. */

import { expose } from 'comlink';
import { SpansDesk } from '../conditions/spans/spans-desk.ts';

const { port1, port2 } = new MessageChannel();
const waiting: (() => void)[] = [];
port1.onmessage = (): void => waiting.shift()?.();

expose(
  new SpansDesk({
    clock: () => performance.now(),
    // A message to oneself queues behind messages from the window; timers would wait 4 ms.
    turn: () =>
      new Promise((resolve) => {
        waiting.push(resolve);
        port2.postMessage(null);
      }),
  }),
);
