import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Settings, TileSource } from '../../../electron/contract/host.ts';
import { demoSettings } from '../../../electron/files/demo.ts';
import { firstSettings, passingSettings, settingsStore } from '../../../electron/files/settings.ts';
import { diskFailingAt } from './failing-disk.ts';
import { failureOf, temporaryFolder, valueOf } from './workspace.ts';

const chosen: Settings = {
  units: 'metres',
  theme: 'dark',
  lastCourse: 'abcdefghij',
  lastPlayer: null,
  tileSources: [],
};

describe('settings', () => {
  it('are the first ones until some are saved, and come back after a restart', async () => {
    const folder = join(await temporaryFolder(), 'config', 'holewright');
    expect(valueOf(await settingsStore(folder).read())).toEqual({ ...firstSettings, isNew: true });
    valueOf(await settingsStore(folder).write(chosen));
    expect(valueOf(await settingsStore(folder).read())).toEqual(chosen);
  });

  it('that are damaged give way to the first ones and are put aside by the next save', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'settings.json'), '{"units":"met');
    const store = settingsStore(folder);
    expect(valueOf(await store.read())).toEqual(firstSettings);
    valueOf(await store.write(chosen));
    expect((await readdir(folder)).sort()).toEqual(['settings.damaged.json', 'settings.json']);
    expect(await readFile(join(folder, 'settings.damaged.json'), 'utf8')).toBe('{"units":"met');
  });

  it('that cannot be written are refused with words, and the old ones stay', async () => {
    const folder = await temporaryFolder();
    valueOf(await settingsStore(folder).write(chosen));
    // Step 2 writes: folder, reading what is there, writing.
    const failing = settingsStore(folder, diskFailingAt(2, 'ENOSPC').disk);
    expect(failureOf(await failing.write({ ...chosen, theme: 'light' }))).toBe('disk-full');
    expect(valueOf(await settingsStore(folder).read())).toEqual(chosen);
  });

  it('written without tile sources keep those that are there', async () => {
    const folder = await temporaryFolder();
    const source: TileSource = {
      name: 'Meadow maps',
      address: 'https://tiles.meadow.example/{z}/{x}/{y}.png',
      attribution: 'invented',
      termsAcceptedOn: '2026-01-31',
    };
    const { tileSources, ...rest } = chosen;
    expect(tileSources).toEqual([]);
    for (const store of [settingsStore(folder), passingSettings(firstSettings)]) {
      valueOf(await store.write({ ...rest, tileSources: [source] }));
      valueOf(await store.write({ ...rest, theme: 'light' }));
      expect(valueOf(await store.read())).toEqual({ ...rest, theme: 'light', tileSources: [source] });
      valueOf(await store.write(chosen));
      expect(valueOf(await store.read()).tileSources).toEqual([]);
    }
  });

  it('written without rounds or days keep those that there are', async () => {
    const folder = await temporaryFolder();
    const rounds = [{ course: 'a-course-token', player: 'a-player-token', wishes: '{"score":90}' }];
    const days = [{ course: 'a-course-token', conditions: '{"temperatureC":8}' }];
    for (const store of [settingsStore(folder), passingSettings(firstSettings)]) {
      valueOf(await store.write({ ...chosen, rounds, days }));
      valueOf(await store.write({ ...chosen, theme: 'light' }));
      expect(valueOf(await store.read())).toMatchObject({ rounds, days });
      valueOf(await store.write({ ...chosen, rounds: [], days: [] }));
      expect(valueOf(await store.read())).toMatchObject({ rounds: [], days: [] });
    }
  });

  it('of before there were tile sources are read', async () => {
    const folder = await temporaryFolder();
    const { tileSources, ...old } = chosen;
    await writeFile(join(folder, 'settings.json'), JSON.stringify(old));
    expect(valueOf(await settingsStore(folder).read())).toEqual({ ...old, tileSources });
  });

  it('whose tile address somebody has spoilt give way as a whole', async () => {
    const folder = await temporaryFolder();
    const spoilt = { ...chosen, tileSources: [{ name: 'a', address: 'http://a.example/{z}/{x}/{y}' }] };
    await writeFile(join(folder, 'settings.json'), JSON.stringify(spoilt));
    expect(valueOf(await settingsStore(folder).read())).toEqual(firstSettings);
  });

  it('keep that the first walk is over: alone for somebody new, and for good', async () => {
    const folder = await temporaryFolder();
    const store = settingsStore(folder);
    valueOf(await store.rememberTour());
    expect(valueOf(await store.read())).toEqual({ ...firstSettings, isNew: true, tourSeen: true });
    valueOf(await store.write(chosen));
    expect(valueOf(await store.read())).toEqual({ ...chosen, tourSeen: true });
    const own = settingsStore(join(folder, 'another'));
    const shown = passingSettings(firstSettings, own);
    valueOf(await shown.write({ ...chosen, tourSeen: true }));
    expect(valueOf(await own.read())).toEqual({ ...firstSettings, isNew: true, tourSeen: true });
  });

  it('for the demo open its course and player, and leave the person’s own alone', async () => {
    const entry = { name: '', modifiedAt: 0, bytes: 1 };
    const wanted = demoSettings(chosen, [
      { ...entry, token: 'own-course', kind: 'course', readOnly: false },
      { ...entry, token: 'demo-course', kind: 'course', readOnly: true },
      { ...entry, token: 'demo-player', kind: 'player', readOnly: true },
    ]);
    expect(wanted).toEqual({ ...chosen, lastCourse: 'demo-course', lastPlayer: 'demo-player' });
    const store = passingSettings(wanted);
    valueOf(await store.write({ ...wanted, theme: 'light' }));
    expect(valueOf(await store.read()).theme).toBe('light');
  });
});
