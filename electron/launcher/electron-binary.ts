/**
 * Finds Electron's program file. The npm package holds none; its own installer fetches it, checked against the
 * package's list of SHA-256 sums, and is tried here once per start with an end in sight.
 */

import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';
import { type Result, refuse, succeed } from '../../core/result.ts';

/** How long the download may take, and how long its host may take to be reached. */
const FETCH_LIMIT_MS = 8 * 60_000;
const REACH_LIMIT_MS = 3000;
const STANDARD_HOST = 'https://github.com/';

export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** Numeric user, -1 where the system has none. */
  readonly userId: number;
}

export const surroundings: Surroundings = {
  platform: process.platform,
  environment: process.env,
  userId: process.getuid?.() ?? -1,
};

/** Why a window of Electron's cannot be opened here whatever is installed; null where it can. */
export function windowObstacle({ environment, platform, userId }: Surroundings): string | null {
  if (platform !== 'linux') return null;
  if (userId === 0) return 'its sandbox does not work for the root user';
  if (!environment['DISPLAY'] && !environment['WAYLAND_DISPLAY'])
    return 'there is no screen (neither DISPLAY nor WAYLAND_DISPLAY is set)';
  return null;
}

/** Path of the program file, null where it is not there; as the package's own index.js finds it. */
export function installedElectron(root: string): string | null {
  const folder = join(root, 'node_modules', 'electron');
  try {
    const path = join(folder, 'dist', readFileSync(join(folder, 'path.txt'), 'utf8'));
    return existsSync(path) ? path : null;
  } catch {
    return null;
  }
}

/** The address that the installer downloads from, mirrors as its documentation names them. */
export function downloadHost(environment: Surroundings['environment']): URL {
  const mirror = environment['npm_config_electron_mirror'] ?? environment['ELECTRON_MIRROR'] ?? STANDARD_HOST;
  return URL.canParse(mirror) ? new URL(mirror) : new URL(STANDARD_HOST);
}

/** Whether the host takes a connection in a short time; why not, otherwise. */
export function reach(host: URL, limitMs: number = REACH_LIMIT_MS): Promise<Result<null, string>> {
  return new Promise((resolve) => {
    const port = host.port === '' ? (host.protocol === 'http:' ? 80 : 443) : Number(host.port);
    const socket = connect({ host: host.hostname, port });
    const end = (result: Result<null, string>): void => {
      clearTimeout(limit);
      socket.destroy();
      resolve(result);
    };
    // The name's look-up can hang too, so the limit is on the whole.
    const limit = setTimeout(() => end(refuse(`${host.hostname} does not answer`)), limitMs);
    socket.once('connect', () => end(succeed(null)));
    socket.once('error', () => end(refuse(`${host.hostname} cannot be reached`)));
  });
}

/** The program file, fetched where need be. Refuses with the reason in a few words. */
export async function findElectron(
  root: string,
  around: Surroundings,
  say: (line: string) => void,
): Promise<Result<string, string>> {
  const obstacle = windowObstacle(around);
  if (obstacle !== null) return refuse(obstacle);
  const installed = installedElectron(root);
  if (installed !== null) return succeed(installed);
  const installer = join(root, 'node_modules', 'electron', 'install.js');
  if (!existsSync(installer)) return refuse('the electron package is not installed');
  // Through a proxy the host itself need not be reachable.
  if (!around.environment['ELECTRON_GET_USE_PROXY']) {
    const reached = await reach(downloadHost(around.environment));
    if (!reached.ok) return reached;
  }
  const fault = await runInstaller(installer, say);
  if (fault !== null) return refuse(fault);
  const fetched = installedElectron(root);
  return fetched === null ? refuse('its download came without the program file') : succeed(fetched);
}

function runInstaller(installer: string, say: (line: string) => void): Promise<string | null> {
  say('Fetching Electron, once (about 120 MB) …');
  return new Promise((resolve) => {
    const begun = Date.now();
    const child = spawn(process.execPath, [installer], { stdio: ['ignore', 'ignore', 'pipe'] });
    let said = '';
    let isLate = false;
    child.stderr.on('data', (part: Buffer) => {
      said = (said + part.toString()).slice(-4000);
    });
    const progress = setInterval(() => {
      say(`  … still fetching, ${Math.round((Date.now() - begun) / 1000)} s (Ctrl+C ends it)`);
    }, 10_000);
    const limit = setTimeout(() => {
      isLate = true;
      child.kill();
    }, FETCH_LIMIT_MS);
    const end = (fault: string | null): void => {
      clearInterval(progress);
      clearTimeout(limit);
      resolve(fault);
    };
    child.on('error', (error) => end(error.message));
    child.on('close', (code) => {
      if (code === 0) end(null);
      else if (isLate) end('its download took longer than 8 minutes');
      else end(`its installer failed: ${firstErrorLine(said)}`);
    });
  });
}

function firstErrorLine(said: string): string {
  const lines = said.split('\n').map((line) => line.trim());
  return (
    lines.find((line) => /error|unsupported|require/iu.test(line)) ??
    lines.find((line) => line !== '') ??
    'no reason given'
  );
}
