import { readdir, readFile, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openFileStore } from '../../../electron/files/store.ts';
import { diskFailingAt, diskKilledAt, recordingDisk, type Twin } from './failing-disk.ts';
import { courseText, sha256, sha256OfFile, storeIn, temporaryFolder, valueOf } from './workspace.ts';

const OLD = courseText(40);
const NEW = courseText(700);

async function workspaceWithOldFile(): Promise<{ folder: string; path: string; token: string }> {
  const folder = await temporaryFolder();
  const path = join(folder, 'a.geojson');
  await writeFile(path, OLD);
  const { token } = valueOf(await (await storeIn(folder)).list())[0]!;
  return { folder, path, token };
}

/** Opens the store on the twin and saves; what is refused or thrown on the way is the fault meant. */
async function trySaving(folder: string, token: string, { disk }: Twin): Promise<boolean> {
  const store = await openFileStore({ workspace: folder, demoFolder: null, disk });
  if (!store.ok) return false;
  return (await store.value.save({ token, text: NEW, baseRevision: sha256(OLD) })).ok;
}

async function stepsOfWholeSave(): Promise<readonly string[]> {
  const { folder, token } = await workspaceWithOldFile();
  const twin = recordingDisk();
  expect(await trySaving(folder, token, twin)).toBe(true);
  return twin.steps;
}

describe('a program killed while saving', () => {
  it('leaves the old file or the new one, whole, whichever step it was', async () => {
    const steps = await stepsOfWholeSave();
    // Opening, finding, reading, writing, reading back, copying, switching, syncing.
    expect(steps.length).toBeGreaterThan(10);
    const seen = new Set<string>();
    for (let deadline = 0; deadline < steps.length; deadline++) {
      const { folder, path, token } = await workspaceWithOldFile();
      await trySaving(folder, token, diskKilledAt(deadline));
      const found = await sha256OfFile(path);
      expect([sha256(OLD), sha256(NEW)], `killed at step ${deadline}: ${steps[deadline]}`).toContain(found);
      seen.add(found);

      // The next start works: one file listed, good copies whole, saving possible.
      const next = await storeIn(folder);
      expect(valueOf(await next.list()).map(({ name }) => name)).toEqual(['a.geojson']);
      for (const { keptAt } of valueOf(await next.copies(token))) {
        expect(valueOf(await next.openCopy(token, keptAt)).text).toBe(OLD);
      }
      valueOf(await next.save({ token, text: courseText(3), baseRevision: found }));
    }
    expect(seen.size).toBe(2);
  });

  it('leaves no file or a whole one when it was making a new file', async () => {
    const make = async (folder: string, { disk }: Twin): Promise<void> => {
      const store = await openFileStore({ workspace: folder, demoFolder: null, disk });
      if (store.ok) await store.value.create('course', 'new', NEW);
    };
    const whole = recordingDisk();
    await make(await temporaryFolder(), whole);
    for (let deadline = 0; deadline < whole.steps.length; deadline++) {
      const folder = await temporaryFolder();
      await make(folder, diskKilledAt(deadline));
      const names = (await readdir(folder)).filter((name) => !name.startsWith('.'));
      for (const name of names) expect(await readFile(join(folder, name), 'utf8')).toBe(NEW);
    }
  });

  it('has its leavings swept away by a later start, but not those of a running program', async () => {
    const folder = await temporaryFolder();
    const names = ['.holewright-unfinished-aa', '.holewright-unfinished-bb'];
    for (const name of names) await writeFile(join(folder, name), 'part');
    const now = Date.UTC(2026, 5, 1);
    const at = (ms: number) => new Date(now - ms);
    await utimes(join(folder, names[0]!), at(7_200_000), at(7_200_000));
    await utimes(join(folder, names[1]!), at(1000), at(1000));
    await storeIn(folder, { now: () => now });
    expect(await readdir(folder)).toEqual([names[1]]);
  });
});

describe('a disk that fails once', () => {
  it.each(['EIO', 'ENOSPC', 'EACCES'])(
    'with %s is reported or got over, and the file stays whole',
    async (code) => {
      const steps = await stepsOfWholeSave();
      for (let failing = 0; failing < steps.length; failing++) {
        const { folder, path, token } = await workspaceWithOldFile();
        const saved = await trySaving(folder, token, diskFailingAt(failing, code));
        const found = await sha256OfFile(path);
        const where = `failing step ${failing}: ${steps[failing]}`;
        expect([sha256(OLD), sha256(NEW)], where).toContain(found);
        if (saved) expect(found, where).toBe(sha256(NEW));
        expect(
          (await readdir(folder)).filter((name) => name.includes('unfinished')),
          where,
        ).toEqual([]);
      }
    },
  );
});
