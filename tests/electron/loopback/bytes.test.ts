import { createHash, randomBytes } from 'node:crypto';
import { connect } from 'node:net';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PMTiles, type RangeResponse, type Source, TileType } from 'pmtiles';
import { describe, expect, it } from 'vitest';
import { byteAddress, NAME_HEADER, readByteAddress } from '../../../electron/contract/byte-address.ts';
import type { Host } from '../../../electron/contract/host.ts';
import { insertTile, sqliteFile, TILE_TABLES, tileBytes } from '../files/mbtiles.ts';
import { failureOf, valueOf } from '../files/workspace.ts';
import { type Asking, startAsking } from './asking.ts';
import { clientOf } from './client.ts';

const sha = (bytes: Uint8Array | ArrayBuffer): string =>
  createHash('sha256').update(new Uint8Array(bytes)).digest('hex');
const picture = (bytes: number): Buffer => {
  const content = randomBytes(bytes);
  content.write('\u0089PNG\r\n\u001a\n', 'latin1');
  return content;
};

/** A client whose person picks this file. */
function picking(asking: Asking, content: Uint8Array, name: string): Host {
  return clientOf(asking, {
    pickFile: () => Promise.resolve(new File([Uint8Array.from(content)], name)),
  }).host;
}

async function courseToken(host: Host): Promise<string> {
  return valueOf(await host.list())[0]!.token;
}

describe('byte addresses', () => {
  it('are read as they were made, and nothing else is', () => {
    for (const address of [
      { kind: 'export' },
      { kind: 'attach', course: 'course-token' },
      { kind: 'attachment', attachment: 'attachment-token' },
      { kind: 'tile', attachment: 'attachment-token', zoom: 18, x: 131_000, y: 87_000 },
    ] as const)
      expect(readByteAddress(byteAddress(address))).toEqual(address);
    for (const path of [
      'api/export/a.svg',
      'api/attach/',
      'api/attach/short',
      'api/attach/../../etc',
      'api/attachment/attachment-token/1/2/3',
      'api/tile/attachment-token',
      'api/tile/attachment-token/1/2',
      'api/tile/attachment-token/1/2/-3',
      'api/tile/attachment-token/1/2/3/4',
      'api/tile/attachment-token/1/2/3.png',
      'x/api/attach/course-token',
    ])
      expect(readByteAddress(path), path).toBeNull();
  });
});

describe('an export over loopback', () => {
  it('lies in the workspace byte for byte, and the page is told where', async () => {
    const asking = await startAsking();
    const { host } = clientOf(asking);
    const content = picture(100_000);
    const { where } = valueOf(await host.saveExport('Böschung 1.png', Uint8Array.from(content).buffer));
    expect(where).toMatch(/^exports\/Böschung 1\.png in the folder /u);
    expect(await readFile(join(asking.workspace, 'exports', 'Böschung 1.png'))).toEqual(content);
  });

  it('of another kind, too large or without a key is refused, and nothing is written', async () => {
    const asking = await startAsking();
    const { host } = clientOf(asking);
    const few = new ArrayBuffer(8);
    expect(failureOf(await host.saveExport('page.html', few))).toBe('bad-request');
    expect(failureOf(await host.saveExport('a.png', new ArrayBuffer(65 * 1024 * 1024)))).toBe('bad-request');
    // past the page's own look
    const put = (headers: Readonly<Record<string, string>>) =>
      asking.raw('PUT', `${asking.folder}api/export`, { host: asking.authority, ...headers }, 'x');
    const own = { cookie: asking.cookie, origin: asking.server.origin };
    const file = { 'content-type': 'application/octet-stream', [NAME_HEADER]: 'a.png' };
    expect((await put({ ...own, ...file, [NAME_HEADER]: 'page.html' })).status).toBe(400);
    expect((await put({ ...own, ...file, 'content-length': String(65 * 1024 * 1024) })).status).toBe(413);
    expect((await put({ ...own, ...file, 'content-type': 'text/plain' })).status).toBe(415);
    expect((await put({ ...own, 'content-type': 'application/octet-stream' })).status).toBe(400);
    expect((await put({ ...file, origin: asking.server.origin })).status).toBe(403);
    expect((await put({ ...file, cookie: asking.cookie, origin: 'https://evil.example' })).status).toBe(403);
    expect((await asking.get('api/export')).status).toBe(405);
    expect(await readdir(asking.workspace)).toEqual(['a.geojson']);
  });
});

describe('an attachment over loopback', () => {
  it('is sent by the page, lies beside the course, and is read in parts', async () => {
    const asking = await startAsking();
    const content = picture(3_000_000);
    const host = picking(asking, content, 'Lüfte & Wälder.png');
    const token = await courseToken(host);
    const made = valueOf(await host.attach(token));
    expect(made).toMatchObject({ name: 'Lüfte & Wälder.png', kind: 'picture', bytes: 3_000_000 });
    expect(sha(await readFile(join(asking.workspace, 'a.files', made.name)))).toBe(sha(content));
    expect(valueOf(await host.listAttachments(token))).toEqual([made]);
    for (const [offset, length] of [
      [0, 8],
      [1_234_567, 654_321],
      [2_999_990, 500],
      [0, 3_000_000],
      [0, 0],
    ] as const) {
      const part = valueOf(await host.readAttachment(made.token, offset, length));
      expect(sha(part)).toBe(sha(content.subarray(offset, offset + length)));
    }
    expect(valueOf(await host.readAttachment(made.token, 3_000_000, 10)).byteLength).toBe(0);
    expect(failureOf(await host.readAttachment('no-such-token', 0, 10))).toBe('not-found');
    expect(failureOf(await host.readAttachment(made.token, 0, 17 * 1024 * 1024))).toBe('bad-request');
    expect(failureOf(await host.readAttachment(made.token, -1, 1))).toBe('bad-request');
  });

  it('is not made of what is no picture or map, what nobody chose, or what belongs to no course', async () => {
    const asking = await startAsking();
    const token = await courseToken(clientOf(asking).host);
    expect(failureOf(await clientOf(asking).host.attach(token))).toBe('cancelled');
    const page = Buffer.from('<!doctype html>'.repeat(200_000));
    expect(failureOf(await picking(asking, page, 'a.png').attach(token))).toBe('unfit');
    expect(failureOf(await picking(asking, picture(100), 'a.png').attach('no-such-token'))).toBe('not-found');
    expect(await readdir(asking.workspace)).toEqual(['a.geojson']);
  });

  it('is not kept where the person stops it or the window is closed in the middle', async () => {
    const asking = await startAsking();
    const stop = new AbortController();
    let sent: AbortSignal | undefined;
    const { host } = clientOf(asking, {
      pickFile: () => Promise.resolve(new File([Uint8Array.from(picture(1000))], 'a.png')),
      // Half of it is sent, then nothing more.
      upload: (url, _file, headers, { signal }) =>
        new Promise((_resolve, reject) => {
          sent = signal;
          const socket = connect({ host: '127.0.0.1', port: Number(url.port) });
          const lines = { host: url.host, cookie: asking.cookie, origin: asking.server.origin, ...headers };
          const head = Object.entries(lines).map(([name, value]) => `${name}: ${value}\r\n`);
          socket.write(`PUT ${url.pathname} HTTP/1.1\r\n${head.join('')}content-length: 1000\r\n\r\n`);
          socket.write(picture(500));
          signal?.addEventListener('abort', () => {
            socket.destroy();
            reject(new Error('abort'));
          });
          setTimeout(() => stop.abort(), 100);
        }),
    });
    expect(failureOf(await host.attach(await courseToken(host), { signal: stop.signal }))).toBe('cancelled');
    expect(sent?.aborted).toBe(true);
    for (let tries = 0; tries < 100 && (await readdir(asking.workspace)).length > 1; tries++)
      await new Promise((resolve) => setTimeout(resolve, 20));
    expect(await readdir(asking.workspace)).toEqual(['a.geojson']);
  });

  it('is served by range as RFC 9110 says, with a tag that changes with the file', async () => {
    const asking = await startAsking();
    await mkdir(join(asking.workspace, 'a.files'));
    const path = join(asking.workspace, 'a.files', 'b.png');
    await writeFile(path, 'x'.repeat(10_000));
    const { host } = clientOf(asking);
    const [made] = valueOf(await host.listAttachments(await courseToken(host)));
    const ask = (headers: Record<string, string>, method = 'GET') =>
      asking.raw(method, `${asking.folder}api/attachment/${made!.token}`, {
        host: asking.authority,
        cookie: asking.cookie,
        ...headers,
      });
    const whole = await ask({});
    expect([whole.status, whole.body.length, whole.headers['content-length']]).toEqual([
      200,
      10_000,
      '10000',
    ]);
    expect(whole.headers).toMatchObject({ 'accept-ranges': 'bytes', 'content-type': 'image/png' });
    const part = await ask({ range: 'bytes=9500-' });
    expect([part.status, part.body.length]).toEqual([206, 500]);
    expect(part.headers['content-range']).toBe('bytes 9500-9999/10000');
    const beyond = await ask({ range: 'bytes=10000-' });
    expect([beyond.status, beyond.body, beyond.headers['content-range']]).toEqual([416, '', 'bytes */10000']);
    const head = await ask({ range: 'bytes=0-9' }, 'HEAD');
    expect([head.status, head.body, head.headers['content-length']]).toEqual([206, '', '10']);
    for (const reply of [whole, part, beyond])
      expect(reply.headers['content-security-policy']).toContain("default-src 'none'");

    const tag = String(whole.headers['etag']);
    expect((await ask({ range: 'bytes=0-9', 'if-range': tag })).status).toBe(206);
    await writeFile(path, 'y'.repeat(9000));
    expect((await ask({ range: 'bytes=0-9', 'if-range': tag })).status).toBe(200);
    expect((await ask({})).headers['etag']).not.toBe(tag);
  });

  it('can be read with the general PMTiles reader', async () => {
    const asking = await startAsking();
    const file = pmtilesOfOneTile(tileBytes(42));
    const host = picking(asking, file, 'country.pmtiles');
    const made = valueOf(await host.attach(await courseToken(host)));
    expect(made.kind).toBe('pmtiles');
    const source: Source = {
      getKey: () => made.token,
      getBytes: async (offset, length): Promise<RangeResponse> => ({
        data: valueOf(await host.readAttachment(made.token, offset, length)),
      }),
    };
    const tiles = new PMTiles(source);
    expect(await tiles.getHeader()).toMatchObject({ tileType: TileType.Png, maxZoom: 0 });
    const tile = await tiles.getZxy(0, 0, 0);
    expect(Buffer.from(tile!.data)).toEqual(tileBytes(42));
  });

  it('is a row of tiles where it is an MBTiles file', async () => {
    const asking = await startAsking();
    const database = await sqliteFile(
      `${TILE_TABLES}${insertTile(1, 0, 1, 5)} INSERT INTO metadata VALUES ('name', 'Elm'), ('format', 'png');`,
    );
    const host = picking(asking, database, 'elm.mbtiles');
    const made = valueOf(await host.attach(await courseToken(host)));
    expect(valueOf(await host.tileSetInfo(made.token))).toMatchObject({
      name: 'Elm',
      mediaType: 'image/png',
    });
    const tile = valueOf(await host.readTile(made.token, 1, 0, 0));
    expect([tile?.mediaType, Buffer.from(tile!.bytes)]).toEqual(['image/png', tileBytes(5)]);
    expect(valueOf(await host.readTile(made.token, 1, 1, 1))).toBeNull();
    expect(failureOf(await host.readTile(made.token, 31, 0, 0))).toBe('bad-request');
    expect(failureOf(await host.readTile('no-such-token', 0, 0, 0))).toBe('not-found');
  });
});

describe('the gate', () => {
  const bytesPath = 'api/attach/abcdefgh';
  const put = (asking: Asking, headers: Record<string, string>, path = bytesPath) =>
    asking.raw('PUT', asking.folder + path, headers, 'x'.repeat(100));
  const right = (asking: Asking): Record<string, string> => ({
    host: asking.authority,
    cookie: asking.cookie,
    origin: asking.server.origin,
    'content-type': 'application/octet-stream',
    'content-length': '100',
    [NAME_HEADER]: 'a.png',
  });

  it('lets a file in only from the page itself', async () => {
    const asking = await startAsking();
    const { cookie, origin, ...rest } = right(asking);
    expect((await put(asking, { ...rest, origin: origin! })).status).toBe(403);
    expect((await put(asking, { ...rest, cookie: cookie! })).status).toBe(403);
    expect((await put(asking, { ...right(asking), origin: 'http://evil.example' })).status).toBe(403);
    expect((await put(asking, { ...right(asking), host: 'evil.example' })).status).toBe(421);
    expect((await put(asking, { ...right(asking), 'sec-fetch-site': 'cross-site' })).status).toBe(403);
    for (const path of ['api/save', 'api/attachment/abcdefgh', '', 'index.html'])
      expect((await put(asking, right(asking), path)).status).toBe(405);
  });

  it('wants to know type, size and name of a file', async () => {
    const asking = await startAsking();
    const without = (name: string) =>
      Object.fromEntries(Object.entries(right(asking)).filter(([key]) => key !== name));
    expect((await put(asking, without('content-type'))).status).toBe(415);
    expect((await put(asking, { ...right(asking), 'content-type': 'text/plain' })).status).toBe(415);
    expect((await put(asking, { ...without('content-length'), 'transfer-encoding': 'chunked' })).status).toBe(
      411,
    );
    expect((await put(asking, without(NAME_HEADER))).status).toBe(400);
    expect((await put(asking, { ...right(asking), [NAME_HEADER]: '%' })).status).toBe(400);
    expect((await put(asking, { ...right(asking), [NAME_HEADER]: 'a'.repeat(201) })).status).toBe(400);
    expect((await put(asking, right(asking))).status).toBe(404);
  });

  it('gives bytes only to those who have the key', async () => {
    const asking = await startAsking();
    for (const path of ['api/attachment/abcdefgh', 'api/tile/abcdefgh/0/0/0']) {
      expect((await asking.raw('GET', asking.folder + path, { host: asking.authority })).status).toBe(403);
      expect((await asking.get(path)).status).toBe(404);
      expect((await asking.post(path, {})).status).toBe(405);
    }
  });
});

/** A PMTiles file (version 3) with one tile of zoom 0: header, root directory of one entry, tile. */
function pmtilesOfOneTile(tile: Uint8Array): Buffer {
  const header = Buffer.alloc(127);
  // One entry: its number, run length, length, and offset plus one.
  const directory = Buffer.from([1, 0, 1, tile.byteLength, 1]);
  const metadata = Buffer.from('{}');
  const [directoryAt, metadataAt] = [127, 127 + directory.byteLength];
  const tileAt = metadataAt + metadata.byteLength;
  header.write('PMTiles', 'latin1');
  header[7] = 3;
  const numbers = [
    directoryAt,
    directory.byteLength,
    metadataAt,
    metadata.byteLength,
    tileAt,
    0,
    tileAt,
    tile.byteLength,
    1,
    1,
    1,
  ];
  for (const [index, value] of numbers.entries()) header.writeBigUInt64LE(BigInt(value), 8 + 8 * index);
  // Clustered; nothing compressed; PNG.
  header.set([1, 1, 1, 2, 0, 0], 96);
  return Buffer.concat([header, directory, metadata, tile]);
}
