import {
  mkdir,
  open,
  readdir,
  readFile,
  rename,
  symlink,
  truncate,
  utimes,
  writeFile,
} from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  attachmentKind,
  attachmentKindByName,
  withoutAttachmentEnding,
} from '../../../electron/files/attachment-kinds.ts';
import {
  type Attachments,
  type AttachmentSource,
  KEPT_FREE_BYTES,
  openAttachments,
} from '../../../electron/files/attachments.ts';
import { type Disk, nodeDisk } from '../../../electron/files/disk.ts';
import { diskFailingAt, diskKilledAt, diskWithoutLinks, recordingDisk } from './failing-disk.ts';
import { courseText, failureOf, storeIn, temporaryFolder, valueOf } from './workspace.ts';

const PNG = Buffer.from('\u0089PNG\r\n\u001a\n', 'latin1');
/** A picture by its first bytes; the rest is as good as any for copying. */
const picture = (bytes: number): Buffer => Buffer.concat([PNG, Buffer.alloc(bytes - PNG.length, 7)]);

function source(content: Buffer, name = 'aerial.png', partBytes = 1000): AttachmentSource {
  async function* parts(): AsyncGenerator<Uint8Array> {
    for (let from = 0; from < content.byteLength; from += partBytes) {
      await Promise.resolve();
      yield content.subarray(from, from + partBytes);
    }
  }
  return { name, bytes: content.byteLength, parts: parts() };
}

async function course(disk: Disk = nodeDisk): Promise<{
  readonly folder: string;
  readonly files: string;
  readonly token: string;
  readonly attachments: Attachments;
}> {
  const folder = await temporaryFolder();
  await writeFile(join(folder, 'elm row.geojson'), courseText(1));
  const store = await storeIn(folder, { disk });
  const { token } = valueOf(await store.list())[0]!;
  return { folder, files: join(folder, 'elm row.files'), token, attachments: openAttachments(store) };
}

describe('the kind of a file', () => {
  const head = (text: string): Buffer => Buffer.from(text.padEnd(32, '.'), 'latin1');

  it('is told by its first bytes as the formats’ own documents have them', () => {
    // PNG 5.2 "PNG signature"; JPEG start of image and next marker; RFC 9649, 2.4; TIFF 6.0 section 2 and
    // BigTIFF (version 43), both byte orders; PMTiles version 3, header; SQLite file format, 1.3.1.
    expect(attachmentKind(head('\u0089PNG\r\n\u001a\n'))?.mediaType).toBe('image/png');
    expect(attachmentKind(head('\u00ff\u00d8\u00ff\u00e0'))?.mediaType).toBe('image/jpeg');
    expect(attachmentKind(head('RIFF1234WEBPVP8 '))?.mediaType).toBe('image/webp');
    for (const magic of ['II*\0', 'MM\0*', 'II+\0', 'MM\0+'])
      expect(attachmentKind(head(magic))?.kind).toBe('geotiff');
    expect(attachmentKind(head('PMTiles\u0003'))?.kind).toBe('pmtiles');
    expect(attachmentKind(head('SQLite format 3\0'))?.kind).toBe('mbtiles');
  });

  it.each(['', 'GIF89a', 'RIFF1234WAVE', 'PMTiles\u0002', '<svg xmlns', '%PDF-1.7', 'PK\u0003\u0004', 'BM'])(
    'is none of ours for %j',
    (text) => {
      expect(attachmentKind(head(text))).toBeNull();
    },
  );

  it('is told by the ending for files that lie there already', () => {
    expect(attachmentKindByName('a.b.TIFF')?.kind).toBe('geotiff');
    expect(attachmentKindByName('a.jpeg')?.mediaType).toBe('image/jpeg');
    for (const name of ['png', '.png.exe', 'a', 'a.svg', 'a.html'])
      expect(attachmentKindByName(name)).toBeNull();
    expect(withoutAttachmentEnding('photo.JPEG')).toBe('photo');
    expect(withoutAttachmentEnding('photo.of.tee')).toBe('photo.of.tee');
  });
});

describe('attaching', () => {
  it('copies a file beside the course, byte for byte, and lists it', async () => {
    const { files, token, attachments } = await course();
    const content = picture(5432);
    const told: [number, number][] = [];
    const made = valueOf(
      await attachments.take(token, source(content), { progress: (done, total) => told.push([done, total]) }),
    );
    expect(made).toMatchObject({ name: 'aerial.png', kind: 'picture', mediaType: 'image/png', bytes: 5432 });
    expect(await readFile(join(files, 'aerial.png'))).toEqual(content);
    expect(await readdir(files)).toEqual(['aerial.png']);
    expect(told.at(-1)).toEqual([5432, 5432]);
    expect(told.length).toBeGreaterThan(3);
    expect(valueOf(await attachments.list(token))).toEqual([made]);
  });

  it('gives the ending that the content calls for, and a free name', async () => {
    const { files, token, attachments } = await course();
    const named = async (name: string) =>
      valueOf(await attachments.take(token, source(picture(100), name))).name;
    expect([await named('a.jpeg'), await named('A.PNG'), await named('a')]).toEqual([
      'a.png',
      'A 2.png',
      'a 3.png',
    ]);
    expect((await readdir(files)).sort()).toEqual(['A 2.png', 'a 3.png', 'a.png']);
  });

  it.each(['../../outside.png', '..\\outside', '/etc/passwd', 'C:\\x.png', '\u0000', '', '.png', 'nul.png'])(
    'makes a plain name of %j',
    async (name) => {
      const { folder, files, token, attachments } = await course();
      const made = valueOf(await attachments.take(token, source(picture(100), name)));
      expect(made.name).toMatch(/^[^./\\:%\u0000][^/\\:%\u0000]*\.png$/u);
      expect((await readdir(folder)).sort()).toEqual(['elm row.files', 'elm row.geojson']);
      expect(await readdir(files)).toEqual([made.name]);
    },
  );

  it.each([
    ['a web page', Buffer.from('<!doctype html>'.repeat(10))],
    ['nothing', Buffer.alloc(0)],
    ['a few bytes', Buffer.from('\u0089P', 'latin1')],
  ])('refuses %s, and leaves nothing', async (_, content) => {
    const { folder, token, attachments } = await course();
    expect(failureOf(await attachments.take(token, source(content, 'a.png')))).toBe('unfit');
    expect(await readdir(folder)).toEqual(['elm row.geojson']);
  });

  it('refuses a picture of more than 256 MiB and a map file of more than 2 GiB before copying them', async () => {
    const { folder, token, attachments } = await course({
      ...nodeDisk,
      freeBytes: () => Promise.resolve(null),
    });
    const vast = (head: string, bytes: number): AttachmentSource => ({
      ...source(Buffer.from(head.padEnd(3000, '.'), 'latin1')),
      bytes,
    });
    const mib = 1024 * 1024;
    const asked = async (head: string, bytes: number) => attachments.take(token, vast(head, bytes));
    expect(failureOf(await asked('\u0089PNG\r\n\u001a\n', 256 * mib + 1))).toBe('too-large');
    expect(failureOf(await asked('II*\0', 2048 * mib + 1))).toBe('too-large');
    // Within the limit it is the missing rest that is noticed.
    expect(failureOf(await asked('II*\0', 2048 * mib))).toBe('unknown');
    expect(await readdir(folder)).toEqual(['elm row.geojson']);
  });

  it.each([
    ['less', 1001],
    ['more', 999],
  ])('keeps nothing where %s comes than was said', async (_, bytes) => {
    const { folder, token, attachments } = await course();
    const answer = await attachments.take(token, { ...source(picture(1000)), bytes });
    expect(answer).toMatchObject({ ok: false, failure: 'unknown' });
    expect(await readdir(folder)).toEqual(['elm row.geojson']);
  });

  it('keeps nothing where the source breaks off, or the person stops it', async () => {
    const { folder, files, token, attachments } = await course();
    const stop = new AbortController();
    const stopped = await attachments.take(token, source(picture(50_000)), {
      signal: stop.signal,
      progress: (done) => {
        if (done > 20_000) stop.abort();
      },
    });
    expect(failureOf(stopped)).toBe('cancelled');
    async function* breaking(): AsyncGenerator<Uint8Array> {
      yield await Promise.resolve(picture(500));
      throw Object.assign(new Error('aborted'), { code: 'ECONNRESET' });
    }
    const broken = await attachments.take(token, { name: 'a', bytes: 1000, parts: breaking() });
    expect(broken).toMatchObject({
      failure: 'unknown',
      message: expect.stringContaining('broke off') as string,
    });
    expect(await readdir(folder)).toEqual(['elm row.geojson']);
    // What was there before stays, too.
    valueOf(await attachments.take(token, source(picture(10_000), 'first')));
    expect(failureOf(await attachments.take(token, { name: 'a', bytes: 1000, parts: breaking() }))).toBe(
      'unknown',
    );
    expect(await readdir(files)).toEqual(['first.png']);
  });

  it('begins nothing where the disk has too little room, keeping some for saving', async () => {
    for (const [free, failure] of [
      [1000 + KEPT_FREE_BYTES, 'none'],
      [999 + KEPT_FREE_BYTES, 'disk-full'],
    ] as const) {
      const { token, attachments } = await course({ ...nodeDisk, freeBytes: () => Promise.resolve(free) });
      expect(failureOf(await attachments.take(token, source(picture(1000))))).toBe(failure);
    }
  });

  it('is for courses of the workspace only', async () => {
    const folder = await temporaryFolder();
    const demoFolder = await temporaryFolder();
    await writeFile(join(folder, 'ann.player.json'), '{}');
    await writeFile(join(demoFolder, 'demo.geojson'), courseText(1));
    await mkdir(join(demoFolder, 'demo.files'));
    await writeFile(join(demoFolder, 'demo.files', 'aerial.png'), picture(100));
    const store = await storeIn(folder, { demoFolder });
    const attachments = openAttachments(store);
    const [player, demo] = valueOf(await store.list());
    expect(failureOf(await attachments.take(player!.token, source(picture(100))))).toBe('unfit');
    expect(failureOf(await attachments.take(demo!.token, source(picture(100))))).toBe('read-only');
    expect(failureOf(await attachments.take('no-such-token', source(picture(100))))).toBe('not-found');
    // What belongs to a demo course can be read.
    const [aerial] = valueOf(await attachments.list(demo!.token));
    expect(valueOf(await attachments.read(aerial!.token, 0, 8))).toEqual(PNG);
  });

  it('works on a file system without second names', async () => {
    const { files, token, attachments } = await course(diskWithoutLinks);
    valueOf(await attachments.take(token, source(picture(100))));
    expect(await readdir(files)).toEqual(['aerial.png']);
  });

  it('sweeps away what crashes left, but not what is being copied', async () => {
    const { files, token, attachments } = await course();
    await mkdir(files);
    for (const name of ['old', 'new']) await writeFile(join(files, `.holewright-unfinished-${name}`), 'part');
    const old = new Date(Date.now() - 7_200_000);
    await utimes(join(files, '.holewright-unfinished-old'), old, old);
    valueOf(await attachments.take(token, source(picture(100))));
    expect((await readdir(files)).sort()).toEqual(['.holewright-unfinished-new', 'aerial.png']);
  });
});

describe('a disk that dies or fails while a file is attached', () => {
  const content = picture(3000);
  const begin = async () => {
    const { folder, token } = await course();
    return { folder, token };
  };
  const takeOn = async (folder: string, token: string, disk: Disk) => {
    const store = await storeIn(folder, { disk });
    return openAttachments(store).take(token, source(content));
  };

  it('leaves no attachment or a whole one, whatever step it was', async () => {
    const whole = recordingDisk();
    const first = await begin();
    valueOf(await takeOn(first.folder, first.token, whole.disk));
    expect(whole.steps.length).toBeGreaterThan(10);
    for (let step = 0; step < whole.steps.length; step++) {
      for (const twin of [diskKilledAt(step), diskFailingAt(step, 'EIO'), diskFailingAt(step, 'ENOSPC')]) {
        const { folder, token } = await begin();
        const answer = await takeOn(folder, token, twin.disk).catch(() => null);
        const next = openAttachments(await storeIn(folder));
        const found = valueOf(await next.list(token));
        const where = `step ${step}: ${whole.steps[step]}`;
        if (answer?.ok === true) expect(found, where).toHaveLength(1);
        for (const { token, bytes } of found) {
          expect(bytes, where).toBe(3000);
          expect(Buffer.from(valueOf(await next.read(token, 0, 3000))), where).toEqual(content);
        }
      }
    }
  });
});

describe('reading', () => {
  it('gives any part, shorter at the end and nothing beyond it', async () => {
    const { files, token, attachments } = await course();
    const content = picture(5000);
    const made = valueOf(await attachments.take(token, source(content)));
    await fc.assert(
      fc.asyncProperty(fc.nat(6000), fc.nat(6000), async (offset, length) => {
        const part = valueOf(await attachments.read(made.token, offset, length));
        expect(Buffer.from(part)).toEqual(content.subarray(offset, offset + length));
      }),
      { numRuns: 50 },
    );
    await truncate(join(files, made.name), 100);
    expect(valueOf(await attachments.read(made.token, 50, 5000))).toHaveLength(50);
  });

  it('finds an attachment by its token after a restart, without a listing', async () => {
    const { folder, token, attachments } = await course();
    const made = valueOf(await attachments.take(token, source(picture(100))));
    const next = openAttachments(await storeIn(folder));
    expect(valueOf(await next.read(made.token, 0, 8))).toEqual(PNG);
  });

  it('reaches far into a large file without reading the rest', async () => {
    const { files, token, attachments } = await course();
    await mkdir(files);
    const far = 1_900_000_000;
    const file = await open(join(files, 'country.pmtiles'), 'w');
    await file.write('there', far);
    await file.close();
    const [made] = valueOf(await attachments.list(token));
    expect(made).toMatchObject({ kind: 'pmtiles', bytes: far + 5 });
    expect(Buffer.from(valueOf(await attachments.read(made!.token, far, 100))).toString()).toBe('there');
  });

  it('does not follow links, and knows no token for what is not beside a course', async () => {
    const { folder, files, token, attachments } = await course();
    await mkdir(files);
    const secret = join(await temporaryFolder(), 'secret.png');
    await writeFile(secret, 'secret');
    await symlink(secret, join(files, 'a.png'));
    await writeFile(join(files, '.hidden.png'), 'x');
    await writeFile(join(files, 'b.exe'), 'x');
    expect(valueOf(await attachments.list(token))).toEqual([]);
    // Exchanged for a link between the look and the reading.
    await writeFile(join(files, 'c.png'), picture(100));
    const [c] = valueOf(await attachments.list(token));
    const store = await storeIn(folder, {
      disk: {
        ...nodeDisk,
        readPart: async (path, offset, length) => {
          await rename(path, `${path}.moved`);
          await symlink(secret, path);
          return nodeDisk.readPart(path, offset, length);
        },
      },
    });
    expect(failureOf(await openAttachments(store).read(c!.token, 0, 100))).toBe('not-allowed');
    for (const odd of ['', '../a.png', 'a.png', '/etc/passwd'])
      expect(failureOf(await attachments.read(odd, 0, 1))).toBe('not-found');
  });

  it('does not go into a folder that is a link', async () => {
    const { files, token, attachments } = await course();
    const outside = await temporaryFolder();
    await writeFile(join(outside, 'a.png'), picture(100));
    await symlink(outside, files);
    expect(failureOf(await attachments.list(token))).toBe('not-allowed');
    expect((await attachments.take(token, source(picture(100)))).ok).toBe(false);
    expect(await readdir(outside)).toEqual(['a.png']);
  });
});
