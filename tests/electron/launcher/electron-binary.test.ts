import { chmod, mkdir, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  downloadHost,
  findElectron,
  installedElectron,
  reach,
  type Surroundings,
  windowObstacle,
} from '../../../electron/launcher/electron-binary.ts';
import { temporaryFolder } from '../files/workspace.ts';

const desk: Surroundings = { platform: 'linux', environment: { DISPLAY: ':0' }, userId: 1000 };
const server = createServer((socket) => socket.destroy());
let port = 0;

beforeEach(async () => {
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  port = (server.address() as AddressInfo).port;
});
afterEach(() => {
  server.close();
});

/** A root whose electron package has this installer and no program file. */
async function rootWith(installer: string | null): Promise<string> {
  const root = await temporaryFolder();
  const folder = join(root, 'node_modules', 'electron');
  await mkdir(folder, { recursive: true });
  if (installer !== null) await writeFile(join(folder, 'install.js'), installer);
  return root;
}

const installs = `
const { mkdirSync, writeFileSync } = require('fs');
const { join } = require('path');
mkdirSync(join(__dirname, 'dist'));
writeFileSync(join(__dirname, 'dist', 'electron'), '');
writeFileSync(join(__dirname, 'path.txt'), 'electron');
`;
const reachable = (): Surroundings => ({
  ...desk,
  environment: { ...desk.environment, ELECTRON_MIRROR: `http://127.0.0.1:${port}/` },
});
const silent = (): void => undefined;

describe('Electron’s program file', () => {
  it('is used where it is', async () => {
    const root = await rootWith(null);
    const folder = join(root, 'node_modules', 'electron');
    await mkdir(join(folder, 'dist'));
    await writeFile(join(folder, 'path.txt'), 'electron');
    expect(installedElectron(root)).toBeNull();
    await writeFile(join(folder, 'dist', 'electron'), '');
    await chmod(join(folder, 'dist', 'electron'), 0o755);
    expect(await findElectron(root, desk, silent)).toEqual({
      ok: true,
      value: join(folder, 'dist', 'electron'),
    });
  });

  it('is fetched by the package’s own installer, and that is said', async () => {
    const root = await rootWith(installs);
    const said: string[] = [];
    const found = await findElectron(root, reachable(), (line) => said.push(line));
    expect(found).toEqual({ ok: true, value: join(root, 'node_modules', 'electron', 'dist', 'electron') });
    expect(said[0]).toContain('Fetching Electron');
  });

  it('that the installer cannot get is given up with its reason in one line', async () => {
    const root = await rootWith(
      `console.error('trace\\nTypeError: fetch failed\\n    at x'); process.exit(1);`,
    );
    const found = await findElectron(root, reachable(), silent);
    expect(found).toEqual({ ok: false, error: 'its installer failed: TypeError: fetch failed' });
  });

  it('that the installer leaves out is not taken as there', async () => {
    const found = await findElectron(await rootWith(''), reachable(), silent);
    expect(found.ok).toBe(false);
  });

  it('is not even tried for where its host cannot be reached', async () => {
    const root = await rootWith(installs);
    // Reserved for names that never resolve: RFC 2606, section 2.
    const away = { ...desk, environment: { DISPLAY: ':0', ELECTRON_MIRROR: 'https://downloads.invalid/' } };
    const found = await findElectron(root, away, silent);
    expect(found).toMatchObject({ ok: false, error: expect.stringContaining('downloads.invalid') as string });
    expect(installedElectron(root)).toBeNull();
  });

  it('is given up where the package is missing', async () => {
    expect((await findElectron(await temporaryFolder(), desk, silent)).ok).toBe(false);
  });
});

describe('a host', () => {
  it('that takes no connection is given up at once, one that stays silent after the limit', async () => {
    const closed = port;
    await new Promise((resolve) => server.close(resolve));
    expect((await reach(new URL(`http://127.0.0.1:${closed}/`))).ok).toBe(false);
    // Reserved for documentation, so nobody answers: RFC 5737, section 3.
    expect((await reach(new URL('http://192.0.2.1:9/'), 200)).ok).toBe(false);
  });

  it('is the mirror that the environment names', () => {
    expect(downloadHost({}).hostname).not.toBe('');
    expect(downloadHost({ ELECTRON_MIRROR: 'https://mirror.example/electron/' }).hostname).toBe(
      'mirror.example',
    );
    expect(downloadHost({ ELECTRON_MIRROR: 'nonsense' }).hostname).toBe(downloadHost({}).hostname);
  });
});

describe('a window', () => {
  it('is not opened for root or without a screen on Linux', () => {
    expect(windowObstacle(desk)).toBeNull();
    expect(windowObstacle({ ...desk, userId: 0 })).toMatch(/root/u);
    expect(windowObstacle({ ...desk, environment: {} })).toMatch(/screen/u);
    expect(windowObstacle({ ...desk, environment: { WAYLAND_DISPLAY: 'wayland-0' } })).toBeNull();
    expect(windowObstacle({ platform: 'darwin', environment: {}, userId: 501 })).toBeNull();
  });
});
