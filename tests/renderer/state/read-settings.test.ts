import { describe, expect, it } from 'vitest';
import type { Host, Settings, SettingsChange } from '../../../electron/contract/host.ts';
import { firstSettings } from '../../../electron/files/settings.ts';
import { readSettings } from '../../../renderer/state/effects/open-files.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import { makeStore } from '../../../renderer/state/store.ts';

/** A host whose settings come when they are let go. */
function slowHost(kept: Settings) {
  const written: SettingsChange[] = [];
  let letGo = (): void => undefined;
  const host = {
    info: () =>
      Promise.resolve({ ok: true, value: { shell: 'electron', version: '1', workspaceName: 'golf' } }),
    readSettings: () =>
      new Promise((resolve) => {
        letGo = () => resolve({ ok: true, value: kept });
      }),
    writeSettings: (settings: SettingsChange) => {
      written.push(settings);
      return Promise.resolve({ ok: true, value: null });
    },
  };
  return { host: host as unknown as Host, written, letGo: () => letGo() };
}

describe('what is chosen before the settings are read', () => {
  it('stays, and is kept beside the rest of them', async () => {
    const store = makeStore(initialState(['en-GB']), reduce);
    const { host, written, letGo } = slowHost({ ...firstSettings, theme: 'dark', lastCourse: 'abcdefgh' });
    const read = readSettings(store, host);
    store.dispatch({ type: 'language-set', language: 'de' });
    await Promise.resolve();
    await Promise.resolve();
    letGo();
    await read;
    expect(store.state().settings).toMatchObject({ language: 'de', theme: 'dark', lastCourse: 'abcdefgh' });
    expect(written).toEqual([{ language: 'de' }]);
  });

  it('is not made up: nothing is written where nothing was chosen', async () => {
    const store = makeStore(initialState(['en-GB']), reduce);
    const { host, written, letGo } = slowHost({ ...firstSettings, language: 'de', units: 'metres' });
    const read = readSettings(store, host);
    await Promise.resolve();
    await Promise.resolve();
    letGo();
    await read;
    expect(store.state().settings).toMatchObject({ language: 'de', units: 'metres' });
    expect(written).toEqual([]);
  });
});
