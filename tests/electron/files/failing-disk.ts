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
  const wrap = <A extends readonly unknown[], R>(step: Step, work: (...args: A) => Promise<R>) => {
    return async (...args: A): Promise<R> => {
      const index = steps.length;
      steps.push(step);
      await before(step, index, args);
      return work(...args);
    };
  };
  return {
    steps,
    disk: {
      plainFiles: wrap('plainFiles', inner.plainFiles),
      read: wrap('read', inner.read),
      writeNew: wrap('writeNew', inner.writeNew),
      rename: wrap('rename', inner.rename),
      link: wrap('link', inner.link),
      remove: wrap('remove', inner.remove),
      makeFolder: wrap('makeFolder', inner.makeFolder),
      syncFolder: wrap('syncFolder', inner.syncFolder),
      realPath: wrap('realPath', inner.realPath),
    },
  };
}

export function recordingDisk(inner: Disk = nodeDisk): Twin {
  return twin(() => Promise.resolve(), inner);
}

/** Dies before step `deadline` (0 is the first), having written half of the file where that step writes one. */
export function diskKilledAt(deadline: number): Twin {
  return twin(async (step, index, args) => {
    if (index < deadline) return;
    if (index === deadline && step === 'writeNew') {
      const [path, bytes] = args as [string, Uint8Array];
      const file = await open(path, 'wx');
      await file.writeFile(bytes.subarray(0, bytes.byteLength >> 1));
      await file.close();
    }
    throw Object.assign(new Error('killed'), { code: 'KILLED' });
  });
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
