/** The worker's entry: puts a clerk behind the message channel. */

import { expose } from 'comlink';
import { BagClerk } from './bag-clerk.ts';

const { port1, port2 } = new MessageChannel();
const waiting: (() => void)[] = [];
port1.onmessage = (): void => waiting.shift()?.();

expose(
  new BagClerk(
    () =>
      new Promise((resolve) => {
        waiting.push(resolve);
        port2.postMessage(null);
      }),
  ),
);
