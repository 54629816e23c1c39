/** Where things live on this machine when the person has not said otherwise. */

import { readFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

export const WORKSPACE_NAME = 'Holewright';

/** What of the machine decides the places; replaced in tests. */
export interface Machine {
  readonly platform: NodeJS.Platform;
  readonly home: string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** Text of a file, null where it cannot be read. */
  readonly readText: (path: string) => Promise<string | null>;
}

export const thisMachine: Machine = {
  platform: process.platform,
  home: homedir(),
  environment: process.env,
  readText: (path) => readFile(path, 'utf8').catch(() => null),
};

/** The person's documents folder; on Linux as `xdg-user-dirs` has it (freedesktop.org). */
export async function documentsFolder(machine: Machine = thisMachine): Promise<string> {
  const standard = join(machine.home, 'Documents');
  if (machine.platform === 'win32' || machine.platform === 'darwin') return standard;
  const config = machine.environment['XDG_CONFIG_HOME'] || join(machine.home, '.config');
  const dirs = await machine.readText(join(config, 'user-dirs.dirs'));
  const line = dirs === null ? null : /^XDG_DOCUMENTS_DIR="((?:[^"\\]|\\.)*)"$/mu.exec(dirs);
  if (line?.[1] === undefined) return standard;
  const path = line[1].replace(/\\(.)/gu, '$1').replace(/^\$HOME(?=\/|$)/u, machine.home);
  return path.startsWith('/') ? resolve(path) : standard;
}

/** The folder for courses, players and rounds. */
export async function standardWorkspace(machine: Machine = thisMachine): Promise<string> {
  return join(await documentsFolder(machine), WORKSPACE_NAME);
}

/** The folder for settings, of both hosts: Electron is given it too. */
export function settingsFolder(machine: Machine = thisMachine): string {
  const { environment, home, platform } = machine;
  if (platform === 'win32')
    return join(environment['APPDATA'] ?? join(home, 'AppData', 'Roaming'), 'holewright');
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'holewright');
  return join(environment['XDG_CONFIG_HOME'] || join(home, '.config'), 'holewright');
}
