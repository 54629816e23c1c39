import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { describe, expect, it } from 'vitest';
import { courseText } from '../files/workspace.ts';
import { type Asking, PAGE, startAsking } from './asking.ts';

/** What a browser sends with a call from the page. */
function callHeaders({ authority, cookie, server }: Asking): Record<string, string> {
  return {
    host: authority,
    cookie,
    origin: server.origin,
    'sec-fetch-site': 'same-origin',
    'content-type': 'application/json',
  };
}

describe('the start address', () => {
  it('gives the key in a cookie that no script reads and no foreign page sends, then moves on to the page', async () => {
    const { authority, raw, server, folder } = await startAsking();
    const start = new URL(server.startAddress());
    const opened = await raw('GET', start.pathname, { host: authority });
    expect(opened.status).toBe(200);
    const [cookie] = opened.headers['set-cookie'] as string[];
    expect(cookie).toMatch(
      new RegExp(`^holewright-key=[\\w-]{43}; Path=${folder}; HttpOnly; SameSite=Strict$`, 'u'),
    );
    expect(opened.body).toContain('url=../');
    expect(new URL('../', start).pathname).toBe(folder);
  });

  it('works once, except for the browser that has the key already', async () => {
    const { authority, raw, server, cookie } = await startAsking();
    const { pathname } = new URL(server.startAddress());
    expect((await raw('GET', pathname, { host: authority })).status).toBe(200);
    const again = await raw('GET', pathname, { host: authority });
    expect(again.status).toBe(403);
    expect(again.headers['set-cookie']).toBeUndefined();
    expect((await raw('GET', pathname, { host: authority, cookie })).status).toBe(200);
  });

  it('is not used up by a look at its headers, and guesses do not open it', async () => {
    const { authority, raw, server, folder } = await startAsking();
    const { pathname } = new URL(server.startAddress());
    expect((await raw('HEAD', pathname, { host: authority })).status).toBe(405);
    for (const guess of ['', 'a', 'a'.repeat(43), `${pathname.slice(folder.length + 6, -1)}%41`]) {
      const refused = await raw('GET', `${folder}start/${guess}`, { host: authority });
      expect([refused.status, refused.headers['set-cookie']]).toEqual([403, undefined]);
    }
    expect((await raw('GET', pathname, { host: authority })).status).toBe(200);
  });

  it('has a fresh random folder, key and code in each run', async () => {
    const [one, two] = [await startAsking(), await startAsking()];
    expect(one.folder).not.toBe(two.folder);
    expect(one.cookie).not.toBe(two.cookie);
    expect(one.server.startAddress()).not.toBe(one.server.startAddress());
  });
});

describe('a request is refused', () => {
  it.each(['localhost', 'evil.example', '127.0.0.1', '127.0.0.1:1', '[::1]', '127.0.0.1.evil.example'])(
    'with the Host %s (DNS rebinding)',
    async (host) => {
      const asking = await startAsking();
      const { port } = new URL(asking.server.origin);
      for (const named of [host, host.includes(':') ? host : `${host}:${port}`]) {
        if (named === asking.authority) continue;
        const reply = await asking.raw(
          'POST',
          `${asking.folder}api/list`,
          { ...callHeaders(asking), host: named },
          '{}',
        );
        expect([named, reply.status]).toEqual([named, 421]);
      }
    },
  );

  it('with an absolute target that names another host', async () => {
    const asking = await startAsking();
    const reply = await asking.raw('GET', `http://evil.example${asking.folder}`, callHeaders(asking));
    expect(reply.status).toBe(400);
  });

  it.each([
    'http://evil.example',
    'null',
    'http://127.0.0.1',
    'https://AUTHORITY',
    'http://AUTHORITY.evil.example',
    'http://localhost:PORT',
  ])('with the Origin %s', async (pattern) => {
    const asking = await startAsking();
    const { port } = new URL(asking.server.origin);
    const origin = pattern.replace('AUTHORITY', asking.authority).replace('PORT', port);
    const call = await asking.raw(
      'POST',
      `${asking.folder}api/list`,
      { ...callHeaders(asking), origin },
      '{}',
    );
    expect(call.status).toBe(403);
    expect(JSON.parse(call.body)).toMatchObject({ ok: false, failure: 'not-allowed' });
    expect((await asking.raw('GET', asking.folder, { ...callHeaders(asking), origin })).status).toBe(403);
  });

  it('without an Origin where it does something', async () => {
    const asking = await startAsking();
    const headers = Object.fromEntries(
      Object.entries(callHeaders(asking)).filter(([name]) => name !== 'origin'),
    );
    expect((await asking.raw('POST', `${asking.folder}api/list`, headers, '{}')).status).toBe(403);
  });

  it.each(['cross-site', 'same-site'])('when the browser says that it comes from a %s page', async (site) => {
    const asking = await startAsking();
    const headers = { host: asking.authority, cookie: asking.cookie, 'sec-fetch-site': site };
    for (const path of ['', 'assets/main-abc.js', 'api/changes', 'api/events']) {
      expect((await asking.raw('GET', asking.folder + path, headers)).status).toBe(403);
    }
  });

  it.each([
    undefined,
    '',
    'holewright-key=',
    'holewright-key=wrong',
    `holewright-key=${'A'.repeat(43)}`,
    'other=KEY',
  ])('with the cookie %j in the place of the key', async (cookie) => {
    const asking = await startAsking();
    const { cookie: right, ...rest } = callHeaders(asking);
    const wrong = cookie?.replace('KEY', right!.split('=')[1]!);
    const headers = wrong === undefined ? rest : { ...rest, cookie: wrong };
    for (const path of ['', 'index.html', 'api/changes', 'api/events']) {
      expect((await asking.raw('GET', asking.folder + path, headers)).status).toBe(403);
    }
    for (const path of [
      'api/info',
      'api/list',
      'api/open',
      'api/save',
      'api/create',
      'api/import',
      'api/readSettings',
    ]) {
      const reply = await asking.raw('POST', asking.folder + path, headers, '{}');
      expect(reply.status).toBe(403);
      expect(JSON.parse(reply.body)).toMatchObject({ ok: false, failure: 'not-allowed' });
    }
  });

  it.each(['PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE'])('with the method %s', async (method) => {
    const asking = await startAsking();
    expect((await asking.raw(method, `${asking.folder}api/list`, callHeaders(asking))).status).toBe(405);
  });

  it('from any other address of this machine', async () => {
    const { server } = await startAsking();
    const port = Number(new URL(server.origin).port);
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .filter(({ address, family }) => family === 'IPv4' && address !== '127.0.0.1')
      .map(({ address }) => address);
    for (const host of ['127.0.0.2', '::1', ...others]) {
      const isOpen = await new Promise<boolean>((resolve) => {
        const socket = connect({ host, port });
        socket.once('connect', () => {
          socket.destroy();
          resolve(true);
        });
        socket.once('error', () => resolve(false));
      });
      expect([host, isOpen]).toEqual([host, false]);
    }
  });
});

describe('addresses that climb', () => {
  it.each([
    '../../etc/passwd',
    '..%2f..%2fetc%2fpasswd',
    '%2e%2e/%2e%2e/etc/passwd',
    '%252e%252e/etc/passwd',
    '..\\..\\etc\\passwd',
    '..%5c..%5cetc%5cpasswd',
    '....//....//etc/passwd',
    './/etc/passwd',
    '/etc/passwd',
    'assets/../../package.json',
    'assets/..%2f..%2fpackage.json',
    'assets/%c0%ae%c0%ae/package.json',
    'assets/main-abc.js%00.html',
    'assets/main-abc.js/.',
    'a.geojson',
    'C:/Windows/win.ini',
    'con',
    '.holewright-backups',
    'api/../index.html',
    'api/__proto__',
    'constructor',
  ])('%s finds nothing', async (path) => {
    const asking = await startAsking();
    const reply = await asking.get(path);
    expect([404, 405]).toContain(reply.status);
    expect(reply.body).not.toContain('root:');
    expect(reply.body).not.toContain('FeatureCollection');
  });

  it('out of the served folder find nothing either', async () => {
    const { authority, cookie, raw } = await startAsking();
    for (const path of ['/', '/index.html', '/api/list', '//', '/favicon.ico']) {
      expect((await raw('GET', path, { host: authority, cookie })).status).toBe(404);
    }
  });
});

describe('every response', () => {
  it('carries the content policy and its companions', async () => {
    const asking = await startAsking();
    const replies = [
      await asking.get(''),
      await asking.get('assets/main-abc.js'),
      await asking.get('nothing'),
      await asking.post('api/list', {}),
      await asking.raw('GET', '/', { host: 'evil.example' }),
      await asking.raw('GET', new URL(asking.server.startAddress()).pathname, { host: asking.authority }),
    ];
    for (const { headers } of replies) {
      const policy = String(headers['content-security-policy']).split('; ');
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("script-src 'self'");
      expect(policy).toContain("worker-src 'self'");
      expect(policy).toContain("style-src 'self'");
      expect(policy).toContain("img-src 'self' data: blob:");
      expect(policy).toContain("connect-src 'self'");
      expect(policy.join()).not.toMatch(/unsafe|\*|https?:/u);
      expect(headers).toMatchObject({
        'cross-origin-opener-policy': 'same-origin',
        'cross-origin-embedder-policy': 'require-corp',
        'cross-origin-resource-policy': 'same-origin',
        'x-content-type-options': 'nosniff',
        'x-frame-options': 'DENY',
        'referrer-policy': 'no-referrer',
        'cache-control': 'no-store',
      });
      expect(headers['access-control-allow-origin']).toBeUndefined();
    }
    expect(replies[0]?.body).toBe(PAGE);
  });
});

describe('a call’s body', () => {
  it('must be JSON by type, and complete', async () => {
    const { post } = await startAsking();
    for (const type of [
      'text/plain',
      'application/x-www-form-urlencoded',
      'multipart/form-data',
      'application/json5',
    ]) {
      expect((await post('api/list', '{}', { 'content-type': type })).status).toBe(415);
    }
    expect((await post('api/list', '{"a":')).status).toBe(400);
    expect((await post('api/list', '')).status).toBe(400);
  });

  it('must have the shape of the request: nothing missing, nothing more', async () => {
    const { post } = await startAsking();
    for (const [path, body] of [
      ['api/open', {}],
      ['api/open', { token: 5 }],
      ['api/open', { token: '../../etc/passwd' }],
      ['api/open', { token: 'abcdefgh', extra: true }],
      ['api/open', []],
      ['api/open', null],
      ['api/save', { token: 'abcdefgh', text: courseText(1), baseRevision: 'not a hash' }],
      ['api/create', { kind: 'program', suggestedName: 'a', text: '{}' }],
      ['api/create', { kind: 'course', suggestedName: '', text: '{}' }],
      ['api/create', { kind: 'course', suggestedName: 'a'.repeat(201), text: '{}' }],
      [
        'api/writeSettings',
        { settings: { units: 'furlongs', theme: 'dark', lastCourse: null, lastPlayer: null } },
      ],
      ['api/openCopy', { token: 'abcdefgh', keptAt: 1.5 }],
      ['api/keptPlan', { key: '../settings.json' }],
      ['api/keepPlan', { key: 'A'.repeat(64), text: 'x' }],
      ['api/keepPlan', { key: 'a'.repeat(64), text: 'x'.repeat(262_145) }],
    ] as const) {
      const reply = await post(path, body);
      expect([JSON.stringify(body), JSON.parse(reply.body)]).toMatchObject([
        JSON.stringify(body),
        { ok: false, failure: 'bad-request' },
      ]);
    }
    const polluted = await post('api/open', '{"token":"abcdefgh","__proto__":{"polluted":true}}');
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    expect(JSON.parse(polluted.body)).toMatchObject({ ok: false });
  });

  it('may not be larger than its method needs, said or unsaid', async () => {
    const { post, raw, authority, cookie, server, folder } = await startAsking();
    const long = JSON.stringify({ token: 'a'.repeat(20_000) });
    const said = await post('api/open', long);
    expect(said.status).toBe(413);
    expect(JSON.parse(said.body)).toMatchObject({ ok: false, failure: 'too-large' });

    const headers = { host: authority, cookie, origin: server.origin, 'content-type': 'application/json' };
    const unsaid = await raw(
      'POST',
      `${folder}api/open`,
      { ...headers, 'transfer-encoding': 'chunked' },
      long,
    );
    expect(unsaid.status).toBe(413);

    const vast = await new Promise<string>((resolve, reject) => {
      const socket = connect({ host: '127.0.0.1', port: Number(new URL(server.origin).port) });
      socket.once('error', reject);
      socket.once('data', (data) => {
        socket.destroy();
        resolve(data.toString());
      });
      const lines = Object.entries({ ...headers, 'content-length': String(200 * 1024 * 1024) }).map((pair) =>
        pair.join(': '),
      );
      socket.write(`POST ${folder}api/save HTTP/1.1\r\n${lines.join('\r\n')}\r\n\r\n`);
    });
    expect(vast).toMatch(/^HTTP\/1\.1 413 /u);
  });
});
