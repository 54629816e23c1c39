import { mkdir, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Disk } from '../../../electron/files/disk.ts';
import { type FileLock, fileLock, LOCK_FOLDER, usualLockTimes } from '../../../electron/files/lock.ts';
import { diskOnClock, handClock, type HandClock } from './clock.ts';
import { diskFailingAt, diskWithoutLinks, recordingDisk } from './failing-disk.ts';
import { temporaryFolder } from './workspace.ts';

const NAME = 'a.geojson';
const { lapsesAfterMs, watchMs, beatMs } = usualLockTimes;

interface Contender {
  readonly lock: FileLock;
  readonly owner: string;
}

function contender(
  folder: string,
  clock: HandClock,
  owner: string,
  computer = 'here',
  disk: Disk = diskOnClock(clock),
): Contender {
  const note = { owner, shell: 'loopback', computer, process: 1, since: clock.now() } as const;
  return { owner, lock: fileLock(disk, folder, NAME, note, clock) };
}

const lockPath = (folder: string): string => join(folder, LOCK_FOLDER, `${NAME}.lock`);
const ownerOnDisk = async (folder: string): Promise<string> =>
  (JSON.parse(await readFile(lockPath(folder), 'utf8')) as { owner: string }).owner;

describe('a lock', () => {
  it('is had by one at a time, who is named to the others, and is free when dropped', async () => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    const [one, two] = [contender(folder, clock, 'one'), contender(folder, clock, 'two')];
    expect(await one.lock.take()).toBeNull();
    expect((await two.lock.take())?.note).toMatchObject({ owner: 'one', computer: 'here' });
    expect(await two.lock.isOurs()).toBe(false);
    await one.lock.drop();
    expect(await readdir(join(folder, LOCK_FOLDER))).toEqual([]);
    expect(await two.lock.take()).toBeNull();
    // What is dropped stays dropped, whatever was under way.
    expect(await one.lock.isOurs()).toBe(false);
    expect(await one.lock.beat()).toBe(false);
    expect(await ownerOnDisk(folder)).toBe('two');
  });

  it('that is renewed stays, however long it is had', async () => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    const [one, two] = [contender(folder, clock, 'one'), contender(folder, clock, 'two')];
    await one.lock.take();
    for (let seconds = 0; seconds < 60; seconds++) {
      clock.turn(beatMs);
      expect(await one.lock.beat()).toBe(true);
    }
    expect((await two.lock.take())?.note?.owner).toBe('one');
    expect(clock.waits).toEqual([]);
  });

  it('of a program that has crashed is free a few seconds later', async () => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    await contender(folder, clock, 'crashed').lock.take();
    const two = contender(folder, clock, 'two');
    clock.turn(lapsesAfterMs - 1);
    expect((await two.lock.take())?.note?.owner).toBe('crashed');
    clock.turn(2);
    expect(await two.lock.take()).toBeNull();
    expect(clock.waits).toEqual([watchMs]);
    expect(lapsesAfterMs + watchMs).toBeLessThan(10_000);
    expect(await readdir(join(folder, LOCK_FOLDER))).toEqual([`${NAME}.lock`]);
  });

  it('of a computer that has slept is not taken when it is renewed on waking', async () => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    const [one, two] = [contender(folder, clock, 'one'), contender(folder, clock, 'two')];
    await one.lock.take();
    clock.turn(3_600_000);
    clock.whileWaiting.push(async () => {
      await one.lock.beat();
    });
    expect((await two.lock.take())?.note?.owner).toBe('one');
    expect(await one.lock.isOurs()).toBe(true);
  });

  it.each([
    ['ahead', 3_600_000],
    ['behind', -3_600_000],
  ])('of another computer whose clock is an hour %s is told by its renewals alone', async (_, aheadMs) => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    const theirs = contender(folder, clock, 'theirs', 'there', diskOnClock(clock, aheadMs));
    const mine = contender(folder, clock, 'mine');
    await theirs.lock.take();
    clock.whileWaiting.push(async () => {
      await theirs.lock.beat();
    });
    expect((await mine.lock.take())?.note).toMatchObject({ owner: 'theirs', computer: 'there' });
    // No renewal any more.
    expect(await mine.lock.take()).toBeNull();
    expect(clock.waits).toEqual([lapsesAfterMs, lapsesAfterMs]);
    expect(await theirs.lock.beat()).toBe(false);
  });

  it('that was taken over is not taken back by its earlier holder', async () => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    const [one, two] = [contender(folder, clock, 'one'), contender(folder, clock, 'two')];
    await one.lock.take();
    clock.turn(3_600_000);
    await two.lock.take();
    expect(await one.lock.beat()).toBe(false);
    await one.lock.drop();
    expect(await ownerOnDisk(folder)).toBe('two');
  });

  it.each([
    ['with second names', (disk: Disk): Disk => disk],
    ['without second names', (disk: Disk): Disk => ({ ...disk, link: diskWithoutLinks.link })],
  ])('left behind goes to one of many who want it at once, %s', async (_, change) => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    await contender(folder, clock, 'crashed').lock.take();
    clock.turn(60_000);
    const disk = change(diskOnClock(clock));
    const all = Array.from({ length: 12 }, (_, index) =>
      contender(folder, clock, `many-${index}`, 'here', disk),
    );
    const answers = await Promise.all(all.map(({ lock }) => lock.take()));
    expect(answers.filter((answer) => answer === null).length).toBeGreaterThanOrEqual(1);
    // Whoever saves looks again: only one can find the lock its own.
    const holders: string[] = [];
    for (const { lock, owner } of all.filter((_, index) => answers[index] === null))
      if (await lock.isOurs()) holders.push(owner);
    expect(holders).toEqual([await ownerOnDisk(folder)]);
    expect(await readdir(join(folder, LOCK_FOLDER))).toEqual([`${NAME}.lock`]);
  });

  it('that was renewed at the very moment of being taken away is put back', async () => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    const one = contender(folder, clock, 'one');
    const disk = diskOnClock(clock);
    const two = contender(folder, clock, 'two', 'here', {
      ...disk,
      rename: async (from, to) => {
        await one.lock.beat();
        await disk.rename(from, to);
      },
    });
    await one.lock.take();
    clock.turn(60_000);
    expect((await two.lock.take())?.note?.owner).toBe('one');
    expect(await one.lock.isOurs()).toBe(true);
    expect(await ownerOnDisk(folder)).toBe('one');
  });

  it('that somebody deletes is written again', async () => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    const one = contender(folder, clock, 'one');
    await one.lock.take();
    await rm(join(folder, LOCK_FOLDER), { recursive: true });
    expect(await one.lock.beat()).toBe(true);
    expect(await ownerOnDisk(folder)).toBe('one');
  });

  it('that cannot be read counts as somebody’s until it lapses', async () => {
    const [folder, clock] = [await temporaryFolder(), handClock(Date.now())];
    await mkdir(join(folder, LOCK_FOLDER));
    await writeFile(lockPath(folder), '{"own');
    const one = contender(folder, clock, 'one');
    expect(await one.lock.take()).toMatchObject({ note: null });
    clock.turn(60_000);
    expect(await one.lock.take()).toBeNull();
  });

  it('that could be written in part only leaves nothing behind', async () => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    const { disk } = recordingDisk();
    const full: Disk = {
      ...disk,
      writeNew: async (path) => {
        await writeFile(path, '');
        throw Object.assign(new Error('full'), { code: 'ENOSPC' });
      },
    };
    await expect(contender(folder, clock, 'one', 'here', full).lock.take()).rejects.toMatchObject({
      code: 'ENOSPC',
    });
    expect(await readdir(join(folder, LOCK_FOLDER))).toEqual([]);
  });

  it('is not lost by a disk that fails for a moment', async () => {
    const [folder, clock] = [await temporaryFolder(), handClock()];
    const one = contender(folder, clock, 'one');
    await one.lock.take();
    const failing = contender(folder, clock, 'one', 'here', diskFailingAt(0, 'EIO').disk);
    expect(await failing.lock.beat()).toBe(true);
    expect(await failing.lock.beat()).toBe(true);
    expect(await ownerOnDisk(folder)).toBe('one');
  });

  it('is never made in the place of a workspace that is away', async () => {
    const folder = join(await temporaryFolder(), 'away');
    const one = contender(folder, handClock(), 'one');
    await expect(one.lock.take()).rejects.toMatchObject({ code: 'ENOENT' });
    expect(await readdir(join(folder, '..'))).toEqual([]);
  });

  it('is not written through a linked folder', async () => {
    const parent = await temporaryFolder();
    const folder = join(parent, 'space');
    await mkdir(folder);
    await mkdir(join(parent, 'outside'));
    await symlink(join(parent, 'outside'), join(folder, LOCK_FOLDER));
    await expect(contender(folder, handClock(), 'one').lock.take()).rejects.toMatchObject({
      code: 'ENOTDIR',
    });
    expect(await readdir(join(parent, 'outside'))).toEqual([]);
  });
});
