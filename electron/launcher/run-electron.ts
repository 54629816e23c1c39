/** Runs the program in Electron's window until it is closed. */

import { spawn } from 'node:child_process';
import type { Wanted } from './arguments.ts';

/** A window that ends this soon, with a fault, has never been seen. */
const NEVER_SEEN_MS = 15_000;

export type Ran =
  | { readonly kind: 'ended'; readonly code: number }
  | { readonly kind: 'never-opened'; readonly reason: string };

export function runElectron(program: string, root: string, wanted: Wanted): Promise<Ran> {
  const args = [root];
  if (wanted.isDemo) args.push('--demo');
  if (wanted.workspace !== null) args.push('--workspace', wanted.workspace);
  return new Promise((resolve) => {
    const begun = Date.now();
    const child = spawn(program, args, { stdio: 'inherit' });
    // Ctrl+C reaches the window too; waiting for its end lets it ask about unsaved work.
    const wait = (): void => undefined;
    const pass = (): void => {
      child.kill('SIGTERM');
    };
    process.on('SIGINT', wait);
    process.on('SIGTERM', pass);
    const end = (ran: Ran): void => {
      process.off('SIGINT', wait);
      process.off('SIGTERM', pass);
      resolve(ran);
    };
    child.on('error', (error) => end({ kind: 'never-opened', reason: error.message }));
    child.on('close', (code, signal) => {
      const isInterrupted = signal === 'SIGINT' || signal === 'SIGTERM';
      const isFault = !isInterrupted && code !== 0;
      if (isFault && Date.now() - begun < NEVER_SEEN_MS) {
        end({ kind: 'never-opened', reason: `its window ended at once (${signal ?? `code ${code ?? 1}`})` });
      } else end({ kind: 'ended', code: isInterrupted ? 0 : (code ?? 1) });
    });
  });
}
