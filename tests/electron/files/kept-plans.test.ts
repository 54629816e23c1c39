/** The cache of plans: what comes back, what is dropped, and that nothing wrong ever comes back. */

import { mkdir, mkdtemp, readdir, readFile, rm, symlink, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { nodeDisk } from '../../../electron/files/disk.ts';
import { keptPlans, noKeptPlans, type PlansDisk } from '../../../electron/files/kept-plans.ts';
import { sha256, valueOf } from './workspace.ts';

let folder: string;
beforeEach(async () => {
  const home = await mkdtemp(join(tmpdir(), 'holewright-plans-'));
  folder = join(home, 'kept-plans');
  return () => rm(home, { recursive: true, force: true });
});

const key = (number: number): string => sha256(`plan ${number}`);
const disk: PlansDisk = {
  ...nodeDisk,
  write: (path, text) => writeFile(path, text, { flag: 'wx' }),
};
const refusing = (step: keyof PlansDisk, code: string): PlansDisk => ({
  ...disk,
  [step]: () => Promise.reject(Object.assign(new Error(code), { code })),
});
const names = async (): Promise<readonly string[]> => (await readdir(folder)).sort();
/** As if it had been used so many minutes ago. */
const age = async (name: string, minutes: number): Promise<void> => {
  const then = new Date(Date.now() - minutes * 60_000);
  await utimes(join(folder, name), then, then);
};

describe('kept plans', () => {
  it('come back whole after another start, the last one given', async () => {
    const plans = keptPlans(folder);
    expect(valueOf(await plans.kept(key(1)))).toEqual({ text: null });
    const text = JSON.stringify({ hole: 'Düne – “Elm”', strokes: 4.25, newline: '\r\n' });
    expect(valueOf(await plans.keep(key(1), 'an earlier one'))).toEqual({ isKept: true });
    expect(valueOf(await plans.keep(key(1), text))).toEqual({ isKept: true });
    expect(valueOf(await keptPlans(folder).kept(key(1)))).toEqual({ text });
    expect(valueOf(await plans.kept(key(2)))).toEqual({ text: null });
    expect(await names()).toEqual([key(1)]);
    expect(plans.refusals()).toBe(0);
  });

  it('are dropped where a single byte is another, and removed', async () => {
    const plans = keptPlans(folder);
    const whole = async (): Promise<Buffer> => {
      await plans.keep(key(1), '{"strokes":4.25}');
      return readFile(join(folder, key(1)));
    };
    const { length } = await whole();
    for (let at = 0; at < length; at++) {
      const bytes = await whole();
      bytes[at]! ^= 4;
      await writeFile(join(folder, key(1)), bytes);
      expect(valueOf(await plans.kept(key(1)))).toEqual({ text: null });
      expect(await names()).toEqual([]);
    }
    for (const cut of [0, 10, 64, 65, length - 1]) {
      await writeFile(join(folder, key(1)), (await whole()).subarray(0, cut));
      expect(valueOf(await plans.kept(key(1)))).toEqual({ text: null });
    }
    // another hole's plan under this name
    await whole();
    await writeFile(join(folder, key(2)), await readFile(join(folder, key(1))));
    expect(valueOf(await plans.kept(key(2)))).toEqual({ text: null });
    await writeFile(join(folder, key(3)), 'x'.repeat(2_000_000));
    expect(valueOf(await plans.kept(key(3)))).toEqual({ text: null });
    expect(await names()).toEqual([key(1)]);
  });

  it('never follow a link, and leave what it points to alone', async () => {
    const plans = keptPlans(folder);
    await plans.keep(key(1), 'plan');
    const outside = join(folder, '..', 'course.geojson');
    await writeFile(outside, 'a course');
    await symlink(outside, join(folder, key(2)));
    expect(valueOf(await plans.kept(key(2)))).toEqual({ text: null });
    await symlink(outside, join(folder, key(3)));
    await plans.keep(key(3), 'plan');
    expect(await readFile(outside, 'utf8')).toBe('a course');
    await rm(folder, { recursive: true });
    await mkdir(join(folder, '..', 'elsewhere'));
    await symlink(join(folder, '..', 'elsewhere'), folder);
    expect(valueOf(await plans.keep(key(4), 'plan'))).toEqual({ isKept: false });
    expect(await readdir(join(folder, '..', 'elsewhere'))).toEqual([]);
  });

  it('are so many at most: the one used longest ago goes first', async () => {
    const plans = keptPlans(folder, disk, { mostFiles: 3, mostBytes: 10_000 });
    for (const number of [1, 2, 3]) await plans.keep(key(number), `plan ${number}`);
    await Promise.all([1, 2, 3].map((number) => age(key(number), 10 * (4 - number))));
    // used just now
    expect(valueOf(await plans.kept(key(1))).text).toBe('plan 1');
    await plans.keep(key(4), 'plan 4');
    expect(await names()).toEqual([key(1), key(3), key(4)].sort());
  });

  it('take so much room at most', async () => {
    const plans = keptPlans(folder, disk, { mostFiles: 99, mostBytes: 1000 });
    for (const number of [1, 2, 3]) {
      await plans.keep(key(number), 'x'.repeat(400));
      await age(key(number), 10 - number);
    }
    expect(await names()).toEqual([key(2), key(3)].sort());
  });

  it('leave other files in the folder alone, but for the rests of crashes', async () => {
    const plans = keptPlans(folder, disk, { mostFiles: 1, mostBytes: 1000 });
    await plans.keep(key(1), 'plan');
    const [rest, young] = [`unfinished-${'a'.repeat(16)}`, `unfinished-${'b'.repeat(16)}`];
    for (const name of [rest, young, 'notes.txt']) await writeFile(join(folder, name), 'x');
    await age(rest, 61);
    await age('notes.txt', 10_000);
    await plans.keep(key(2), 'plan');
    expect(await names()).toEqual(['notes.txt', young, key(2)].sort());
  });

  it.each([
    ['write', 'ENOSPC'],
    ['write', 'EROFS'],
    ['makeFolder', 'EACCES'],
    ['rename', 'EPERM'],
    ['plainFiles', 'EIO'],
  ] as const)('are done without, quietly, where %s fails with %s', async (step, code) => {
    await keptPlans(folder).keep(key(1), 'before');
    const plans = keptPlans(folder, refusing(step, code));
    expect(valueOf(await plans.keep(key(2), 'plan'))).toEqual({ isKept: false });
    expect(plans.refusals()).toBe(1);
    expect((await names()).filter((name) => name.startsWith('unfinished-'))).toEqual([]);
    expect(valueOf(await plans.kept(key(1)))).toEqual({ text: 'before' });
  });

  it('leave the last room on a disk to the person', async () => {
    const withFree = (freeBytes: PlansDisk['freeBytes']): ReturnType<typeof keptPlans> =>
      keptPlans(folder, { ...disk, freeBytes });
    const tight = withFree(() => Promise.resolve(64 * 1024 * 1024 - 1));
    expect(valueOf(await tight.keep(key(1), 'plan'))).toEqual({ isKept: false });
    expect(await names()).toEqual([]);
    expect(tight.refusals()).toBe(0);
    for (const freeBytes of [
      () => Promise.resolve(64 * 1024 * 1024),
      () => Promise.resolve(null),
      () => Promise.reject(new Error('not told')),
    ])
      expect(valueOf(await withFree(freeBytes).keep(key(1), 'plan'))).toEqual({ isKept: true });
    expect(valueOf(await tight.kept(key(1)))).toEqual({ text: 'plan' });
  });

  it('that cannot be read are as good as none', async () => {
    await keptPlans(folder).keep(key(1), 'plan');
    const plans = keptPlans(folder, refusing('read', 'EACCES'));
    expect(valueOf(await plans.kept(key(1)))).toEqual({ text: null });
    expect(plans.refusals()).toBe(1);
    expect(await names()).toEqual([]);
  });

  it('are named by a hash alone', async () => {
    await expect(keptPlans(folder).kept('../settings.json')).rejects.toThrow('64');
    expect(valueOf(await keptPlans(folder).keep('../settings.json', 'x'))).toEqual({ isKept: false });
    expect(valueOf(await noKeptPlans.kept(key(1)))).toEqual({ text: null });
  });
});
