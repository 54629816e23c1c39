import fc from 'fast-check';
import {
  appendFile,
  mkdir,
  readdir,
  readFile,
  rename,
  rm,
  symlink,
  truncate,
  writeFile,
} from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Journal } from '../../../electron/contract/host.ts';
import { type Disk, nodeDisk } from '../../../electron/files/disk.ts';
import {
  entryLine,
  headLine,
  markLine,
  readLines,
  unsavedEntries,
} from '../../../electron/files/journal-lines.ts';
import { JOURNAL_FOLDER, type Sitting, sittingAt } from '../../../electron/files/journal.ts';
import { diskFailingAt, diskKilledAt, recordingDisk, type Twin } from './failing-disk.ts';
import { sha256, temporaryFolder } from './workspace.ts';

const NAME = 'a.geojson';
const BASE = sha256('base');
const NOW = Date.UTC(2026, 0, 31);

function sitting(folder: string, disk: Disk = nodeDisk): Sitting {
  return sittingAt(disk, folder, NAME, () => NOW);
}
const textsOf = (journals: readonly Journal[]): string[][] =>
  journals.map(({ entries }) => entries.map(({ text }) => text));
const journalFiles = async (folder: string): Promise<string[]> =>
  (await readdir(join(folder, JOURNAL_FOLDER))).sort();

describe('the lines of a journal', () => {
  const entry = fc.record({
    number: fc.integer({ min: 1, max: 1000 }),
    writtenAt: fc.integer({ min: 0, max: 2e12 }),
    baseRevision: fc.constantFrom(BASE, sha256('other')),
    text: fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom('', '\n', '\r\n{}\n', '"', '\\n', '\u2028', '\u0000'),
    ),
  });
  const journal = fc
    .uniqueArray(entry, { selector: ({ number }) => number, minLength: 1, maxLength: 8 })
    .map((entries) => ({
      entries,
      bytes: Buffer.concat([headLine({ session: 'session', startedAt: NOW }), ...entries.map(entryLine)]),
    }));

  it('come back as they were written, whatever the texts', () => {
    fc.assert(
      fc.property(journal, ({ entries, bytes }) => {
        const read = readLines(bytes);
        expect(read.head).toEqual({ session: 'session', startedAt: NOW, ...formatOf(bytes) });
        expect(read.lines).toEqual(entries.map((entry) => ({ kind: 'entry', entry })));
        expect(read.lostBytes).toBe(0);
      }),
    );
  });

  it('cut off anywhere are those before the cut, and the rest is counted', () => {
    fc.assert(
      fc.property(journal, fc.nat(), ({ entries, bytes }, where) => {
        const cut = where % bytes.byteLength;
        const read = readLines(bytes.subarray(0, cut));
        const count = read.lines.length;
        expect(read.lines).toEqual(entries.slice(0, count).map((entry) => ({ kind: 'entry', entry })));
        const whole = [headLine({ session: 'session', startedAt: NOW }), ...entries.map(entryLine)];
        const wholeBytes = whole
          .slice(0, read.head === null ? 0 : count + 1)
          .reduce((sum, line) => sum + line.byteLength, 0);
        expect(wholeBytes + read.lostBytes).toBe(cut);
        // One line more would not have fitted.
        expect(cut - wholeBytes).toBeLessThan(whole[read.head === null ? 0 : count + 1]!.byteLength);
      }),
    );
  });

  it('damaged by one byte lose that line and no other', () => {
    fc.assert(
      fc.property(journal, fc.nat(), fc.integer({ min: 1, max: 255 }), ({ entries, bytes }, where, by) => {
        const damaged = Buffer.from(bytes);
        const at = where % bytes.byteLength;
        damaged[at] = damaged[at]! ^ by;
        // A line end that is damaged joins two lines, one that comes up parts one; neither reaches further.
        const read = readLines(damaged);
        const lost = entries.length + 1 - read.lines.length - (read.head === null ? 0 : 1);
        expect(lost).toBeGreaterThanOrEqual(1);
        expect(lost).toBeLessThanOrEqual(2);
        expect(read.lostBytes).toBeGreaterThan(0);
        for (const line of read.lines) if (line.kind === 'entry') expect(entries).toContainEqual(line.entry);
      }),
    );
  });

  it('that are anything but a journal are lost bytes, whatever they are', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        expect(readLines(bytes)).toEqual({
          head: null,
          lines: [],
          lostBytes: bytes.byteLength,
          isNewer: false,
        });
      }),
    );
  });

  it('of a newer version are not read', () => {
    const json = '{"format":"holewright-journal","version":2}';
    const newer = Buffer.from(`${sha256(json)} ${json.length} ${json}\n`);
    expect(readLines(Buffer.concat([newer, Buffer.from('what it knows')]))).toMatchObject({
      isNewer: true,
      lines: [],
      lostBytes: 0,
    });
  });

  it('tell by a mark which entries the file on disk includes', () => {
    const entry = (number: number, baseRevision = BASE) => ({ number, writtenAt: 0, baseRevision, text: '' });
    const saved = sha256('saved');
    const bytes = (...parts: Uint8Array[]) => readLines(Buffer.concat(parts)).lines;
    const numbers = (lines: ReturnType<typeof bytes>, onDisk: string | null) =>
      unsavedEntries(lines, onDisk).map(({ number }) => number);
    const lines = bytes(
      entryLine(entry(1)),
      entryLine(entry(2)),
      markLine({ saves: saved, upTo: 2 }),
      entryLine(entry(3)),
    );
    // The save came about, and did not.
    expect(numbers(lines, saved)).toEqual([3]);
    expect(numbers(lines, BASE)).toEqual([1, 2, 3]);
    expect(numbers(lines, null)).toEqual([1, 2, 3]);
    // Saved again by another program since: an entry that builds on the save shows that it came about.
    expect(numbers([...lines, ...bytes(entryLine(entry(4, saved)))], sha256('elsewhere'))).toEqual([3, 4]);
  });

  function formatOf(bytes: Uint8Array): object {
    const text = Buffer.from(bytes).toString('utf8');
    const { format, version } = JSON.parse(text.slice(text.indexOf('{'), text.indexOf('\n'))) as {
      format: string;
      version: number;
    };
    return { format, version };
  }
});

describe('a sitting', () => {
  it('numbers its entries, which the next one reads', async () => {
    const folder = await temporaryFolder();
    const one = sitting(folder);
    expect(await one.append(BASE, 'first')).toBe(1);
    expect(await one.append(BASE, 'second')).toBe(2);
    const [left] = await sitting(folder).read(BASE);
    expect(left).toMatchObject({ journal: one.session, isOwn: false, startedAt: NOW, lostBytes: 0 });
    expect(left!.entries).toEqual([
      { number: 1, writtenAt: NOW, baseRevision: BASE, text: 'first' },
      { number: 2, writtenAt: NOW, baseRevision: BASE, text: 'second' },
    ]);
    expect((await one.read(BASE))[0]?.isOwn).toBe(true);
  });

  it('never writes over what an earlier one left, but beside it', async () => {
    const folder = await temporaryFolder();
    await sitting(folder).append(BASE, 'left by the first');
    const before = await readFile(join(folder, JOURNAL_FOLDER, `${NAME}.log`));
    await sitting(folder).append(BASE, 'left by the second');
    const third = sitting(folder);
    await third.append(BASE, 'mine');
    expect(await journalFiles(folder)).toEqual([`${NAME}.2.log`, `${NAME}.3.log`, `${NAME}.log`]);
    expect(await readFile(join(folder, JOURNAL_FOLDER, `${NAME}.log`))).toEqual(before);
    expect(textsOf(await third.read(BASE)).sort()).toEqual([
      ['left by the first'],
      ['left by the second'],
      ['mine'],
    ]);
  });

  it('keeps its files apart from those of names that begin alike', async () => {
    const folder = await temporaryFolder();
    await sittingAt(nodeDisk, folder, 'a.geojson.2.geojson', () => NOW).append(BASE, 'other');
    await sittingAt(nodeDisk, folder, 'a', () => NOW).append(BASE, 'other');
    expect(await sitting(folder).read(BASE)).toEqual([]);
  });

  it('drops what it is told to, and the file with the last entry', async () => {
    const folder = await temporaryFolder();
    const one = sitting(folder);
    for (const text of ['1', '2', '3']) await one.append(BASE, text);
    await one.clear(one.session, 2);
    expect(textsOf(await one.read(BASE))).toEqual([['3']]);
    // Goes on where it was.
    expect(await one.append(BASE, '4')).toBe(4);
    expect(textsOf(await sitting(folder).read(BASE))).toEqual([['3', '4']]);
    await one.clear(one.session, 4);
    expect(await journalFiles(folder)).toEqual([]);
    expect(await one.append(BASE, '5')).toBe(5);
    expect(textsOf(await sitting(folder).read(BASE))).toEqual([['5']]);
    await one.clear('no such journal', 99);
    expect(textsOf(await one.read(BASE))).toEqual([['5']]);
  });

  it('drops another’s journal where the person decides so, and no third one', async () => {
    const folder = await temporaryFolder();
    const [one, two, three] = [sitting(folder), sitting(folder), sitting(folder)];
    await one.append(BASE, 'one');
    await two.append(BASE, 'two');
    await three.clear(one.session, 1);
    expect(textsOf(await three.read(BASE))).toEqual([['two']]);
  });

  it('takes no journal for left behind that was saved whole before the crash, and tidies it away', async () => {
    const folder = await temporaryFolder();
    const one = sitting(folder);
    await one.append(BASE, '1');
    await one.mark(sha256('saved'), 1);
    expect(textsOf(await sitting(folder).read(BASE))).toEqual([['1']]);
    expect(await sitting(folder).read(sha256('saved'))).toEqual([]);
    expect(await journalFiles(folder)).toEqual([]);
  });

  it('ends by tidying up where all is saved, and leaves what is not', async () => {
    const folder = await temporaryFolder();
    const one = sitting(folder);
    await one.append(BASE, '1');
    await one.end(BASE);
    expect(await journalFiles(folder)).toHaveLength(1);
    await one.mark(sha256('saved'), 1);
    await one.end(sha256('saved'));
    expect(await journalFiles(folder)).toEqual([]);
  });

  it('cuts off what an append that failed has left, before the next one', async () => {
    const folder = await temporaryFolder();
    let fails = false;
    const disk: Disk = {
      ...nodeDisk,
      append: async (path, end, bytes) => {
        if (!fails) return nodeDisk.append(path, end, bytes);
        await appendFile(path, bytes.subarray(0, 30));
        throw Object.assign(new Error('full'), { code: 'ENOSPC' });
      },
    };
    const one = sitting(folder, disk);
    await one.append(BASE, '1');
    fails = true;
    await expect(one.append(BASE, '2')).rejects.toMatchObject({ code: 'ENOSPC' });
    expect((await sitting(folder).read(BASE))[0]).toMatchObject({ lostBytes: 30 });
    fails = false;
    expect(await one.append(BASE, '2 again')).toBe(2);
    const [read] = await sitting(folder).read(BASE);
    expect(textsOf([read!])).toEqual([['1', '2 again']]);
    expect(read?.lostBytes).toBe(0);
  });

  it('goes on in a new file where its own was deleted, exchanged or cut', async () => {
    for (const spoil of [
      (path: string) => rm(path),
      (path: string) => truncate(path, 10),
      async (path: string) => {
        await rename(path, `${path}.moved`);
        await writeFile(path, 'x'.repeat(10_000));
      },
    ]) {
      const folder = await temporaryFolder();
      const one = sitting(folder);
      await one.append(BASE, '1');
      await spoil(join(folder, JOURNAL_FOLDER, `${NAME}.log`));
      expect(await one.append(BASE, '2')).toBe(2);
      const journals = await sitting(folder).read(BASE);
      expect(
        journals.find(({ journal }) => journal === one.session)?.entries.map(({ text }) => text),
      ).toEqual(['2']);
    }
  });

  it('says how much was cut off or damaged, and reads the rest', async () => {
    const folder = await temporaryFolder();
    await sitting(folder).append(BASE, '1');
    await appendFile(join(folder, JOURNAL_FOLDER, `${NAME}.log`), 'half a line');
    const [read] = await sitting(folder).read(BASE);
    expect([textsOf([read!]), read?.lostBytes]).toEqual([[['1']], 11]);
  });

  it('leaves a newer version’s journal alone, and says that it is there', async () => {
    const folder = await temporaryFolder();
    const json = '{"format":"holewright-journal","version":7,"session":"s"}';
    const text = `${sha256(json)} ${json.length} ${json}\nmore`;
    await mkdir(join(folder, JOURNAL_FOLDER));
    await writeFile(join(folder, JOURNAL_FOLDER, `${NAME}.log`), text);
    const one = sitting(folder);
    const [read] = await one.read(BASE);
    expect(read).toMatchObject({ isNewer: true, entries: [] });
    await one.clear(read!.journal, Infinity);
    await one.append(BASE, '1');
    expect(await readFile(join(folder, JOURNAL_FOLDER, `${NAME}.log`), 'utf8')).toBe(text);
  });

  it('does not write through a linked folder, nor read', async () => {
    const parent = await temporaryFolder();
    const folder = join(parent, 'space');
    await mkdir(folder);
    await mkdir(join(parent, 'outside'));
    await symlink(join(parent, 'outside'), join(folder, JOURNAL_FOLDER));
    await expect(sitting(folder).append(BASE, '1')).rejects.toMatchObject({ code: 'ENOTDIR' });
    await expect(sitting(folder).read(BASE)).rejects.toMatchObject({ code: 'ELOOP' });
    expect(await readdir(join(parent, 'outside'))).toEqual([]);
  });

  it('makes no folders where the workspace is away', async () => {
    const parent = await temporaryFolder();
    const one = sitting(join(parent, 'away'));
    await expect(one.append(BASE, '1')).rejects.toMatchObject({ code: 'ENOENT' });
    await expect(one.read(BASE)).rejects.toMatchObject({ code: 'ENOENT' });
    expect(await readdir(parent)).toEqual([]);
  });
});

describe('a program killed at any step', () => {
  /** Appends, saves and clears; what was acknowledged so far. */
  async function work(
    folder: string,
    { disk }: Twin,
    acked: string[],
    cleared: { upTo: number },
  ): Promise<void> {
    const one = sittingAt(disk, folder, NAME, () => NOW);
    for (let number = 1; number <= 6; number++) {
      await one.append(BASE, `entry ${number}`);
      acked.push(`entry ${number}`);
      if (number === 3) {
        cleared.upTo = 2;
        await one.clear(one.session, 2);
      }
    }
  }

  it('has lost no acknowledged entry', async () => {
    const whole = recordingDisk();
    await work(await temporaryFolder(), whole, [], { upTo: 0 });
    expect(whole.steps.length).toBeGreaterThan(15);
    for (let deadline = 0; deadline < whole.steps.length; deadline++) {
      const folder = await temporaryFolder();
      const acked: string[] = [];
      const cleared = { upTo: 0 };
      await work(folder, diskKilledAt(deadline), acked, cleared).catch(() => undefined);
      const found = (await sitting(folder).read(BASE)).flatMap(({ entries }) => entries);
      const where = `killed at step ${deadline}: ${whole.steps[deadline]}`;
      const texts = found.map(({ text }) => text);
      expect(texts, where).toEqual(expect.arrayContaining(acked.slice(cleared.upTo)));
      // Besides, at most the one that was being written, and what was being cleared.
      expect(new Set(texts).size, where).toBe(texts.length);
      expect(texts.length, where).toBeLessThanOrEqual(acked.length + 1);
    }
  });

  it.each(['EIO', 'ENOSPC'])('or whose disk fails once with %s, neither', async (code) => {
    const whole = recordingDisk();
    await work(await temporaryFolder(), whole, [], { upTo: 0 });
    for (let failing = 0; failing < whole.steps.length; failing++) {
      const folder = await temporaryFolder();
      const one = sittingAt(diskFailingAt(failing, code).disk, folder, NAME, () => NOW);
      const acked: string[] = [];
      for (let number = 1; number <= 6; number++) {
        const text = `entry ${number}`;
        // The page writes again what was refused.
        await one.append(BASE, text).catch(() => one.append(BASE, text));
        acked.push(text);
      }
      const found = (await sitting(folder).read(BASE)).flatMap(({ entries }) => entries);
      expect(found.map(({ text }) => text)).toEqual(acked);
    }
  });
});
