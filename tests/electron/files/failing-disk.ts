/** Twins of the disk that fail on purpose: one dies at a step and stays dead, one fails a single step and goes on. */

import { open } from 'node:fs/promises';
import { type Disk, nodeDisk } from '../../../electron/files/disk.ts';

export type Step = keyof Disk;

export interface Twin {
  readonly disk: Disk;
  /** Steps taken so far, in order. */
  readonly steps: readonly Step[];
}

type Before = (step: Step, index: number, args: readonly unknown[]) => Promise<void>;

function twin(before: Before, inner: Disk = nodeDisk): Twin {
  const steps: Step[] = [];
  const wrap = (step: Step) => {
    const work = inner[step] as (...args: unknown[]) => Promise<unknown>;
    return async (...args: unknown[]): Promise<unknown> => {
      const index = steps.length;
      steps.push(step);
      await before(step, index, args);
      return work(...args);
    };
  };
  const all = Object.keys(inner) as Step[];
  return { steps, disk: Object.fromEntries(all.map((step) => [step, wrap(step)])) as unknown as Disk };
}

export function recordingDisk(inner: Disk = nodeDisk): Twin {
  return twin(() => Promise.resolve(), inner);
}

async function writeHalf(path: string, flags: string, bytes: Uint8Array): Promise<void> {
  const file = await open(path, flags);
  await file.writeFile(bytes.subarray(0, bytes.byteLength >> 1));
  await file.close();
}

/** Dies before step `deadline` (0 is the first), having written half of the file where that step writes one. */
export function diskKilledAt(deadline: number, inner: Disk = nodeDisk): Twin {
  return twin(async (step, index, args) => {
    if (index < deadline) return;
    if (index === deadline && step === 'writeNew') {
      const [path, bytes] = args as [string, Uint8Array];
      await writeHalf(path, 'wx', bytes);
    }
    if (index === deadline && step === 'append') {
      const [path, , bytes] = args as [string, unknown, Uint8Array];
      await writeHalf(path, 'a', bytes);
    }
    throw Object.assign(new Error('killed'), { code: 'KILLED' });
  }, inner);
}

/** Fails step `index` with `code` and works before and after. */
export function diskFailingAt(failing: number, code: string): Twin {
  return twin((_step, index) =>
    index === failing ? Promise.reject(Object.assign(new Error(code), { code })) : Promise.resolve(),
  );
}

/** Without second names for files, like FAT. */
export const diskWithoutLinks: Disk = {
  ...nodeDisk,
  link: () => Promise.reject(Object.assign(new Error('EPERM'), { code: 'EPERM' })),
};
