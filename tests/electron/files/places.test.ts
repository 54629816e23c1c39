import { describe, expect, it } from 'vitest';
import {
  documentsFolder,
  type Machine,
  settingsFolder,
  standardWorkspace,
} from '../../../electron/files/places.ts';

function machine(changes: Partial<Machine>): Machine {
  return {
    platform: 'linux',
    home: '/home/me',
    environment: {},
    readText: () => Promise.resolve(null),
    ...changes,
  };
}

describe('the standard places', () => {
  it('are in Documents where nothing else is said', async () => {
    expect(await standardWorkspace(machine({}))).toBe('/home/me/Documents/Holewright');
  });

  it('follow the folder that xdg-user-dirs names', async () => {
    const dirs = (text: string) =>
      machine({
        readText: (path) => Promise.resolve(path === '/home/me/.config/user-dirs.dirs' ? text : null),
      });
    expect(await documentsFolder(dirs('# made by xdg\nXDG_DOCUMENTS_DIR="$HOME/Dokumente"\n'))).toBe(
      '/home/me/Dokumente',
    );
    expect(await documentsFolder(dirs('XDG_DOCUMENTS_DIR="/data/My \\"papers\\""\n'))).toBe(
      '/data/My "papers"',
    );
    expect(await documentsFolder(dirs('XDG_DOCUMENTS_DIR="relative"\n'))).toBe('/home/me/Documents');
  });

  it('for settings follow the system', () => {
    expect(settingsFolder(machine({}))).toBe('/home/me/.config/holewright');
    expect(settingsFolder(machine({ environment: { XDG_CONFIG_HOME: '/cfg' } }))).toBe('/cfg/holewright');
    expect(settingsFolder(machine({ environment: { XDG_CONFIG_HOME: '' } }))).toBe(
      '/home/me/.config/holewright',
    );
    expect(settingsFolder(machine({ platform: 'darwin' }))).toBe(
      '/home/me/Library/Application Support/holewright',
    );
  });
});
