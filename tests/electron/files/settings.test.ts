import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Settings, TileSource } from '../../../electron/contract/host.ts';
import { LONGEST_WISHES, MOST_KEPT_ROUNDS, readRequest } from '../../../electron/contract/wire.ts';
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

describe('settings that two windows change', () => {
  const round = (wishes: unknown, course = 'course-one') => ({
    course,
    player: 'player-one',
    wishes: JSON.stringify(wishes),
  });
  const source: TileSource = {
    name: 'Meadow maps',
    address: 'https://tiles.meadow.example/{z}/{x}/{y}.png',
    attribution: 'invented',
    termsAcceptedOn: '2026-01-31',
  };

  it('keep what the other one wrote: single settings, rounds, days and tile addresses', async () => {
    const folder = await temporaryFolder();
    for (const store of [settingsStore(folder), passingSettings(firstSettings)]) {
      const first = round({ day: { allergies: 'peanut' } });
      const day = { course: 'course-one', conditions: '{"temperatureC":8}' };
      valueOf(await store.write({ ...chosen, rounds: [first], days: [day] }));
      const more = round({ day: { allergies: 'peanut, milk' } });
      const colder = { course: 'course-one', conditions: '{"temperatureC":2}' };
      valueOf(await store.write({ rounds: [more], days: [colder] }, { rounds: [first], days: [day] }));
      valueOf(await store.write({ tileSources: [source] }, { tileSources: [] }));
      valueOf(await store.write({ theme: 'light' }, { theme: 'dark' }));
      const elsewhere = round({ score: 80 }, 'course-two');
      valueOf(await store.write({ rounds: [elsewhere] }, { rounds: [] }));
      expect(valueOf(await store.read())).toEqual({
        ...{ ...chosen, theme: 'light', tileSources: [source] },
        ...{ rounds: [elsewhere, more], days: [colder] },
      });
    }
  });

  it('keep both changes within one round: each window’s own members', async () => {
    const store = settingsStore(await temporaryFolder());
    const day = { allergies: 'peanut', teeOff: '09:00' };
    const known = round({ score: null, day });
    valueOf(await store.write({ ...chosen, rounds: [known] }));
    const allergies = round({ score: null, day: { ...day, allergies: 'peanut, milk' } });
    valueOf(await store.write({ rounds: [allergies] }, { rounds: [known] }));
    const score = round({ score: 85, day: { ...day, teeOff: '10:30' } });
    valueOf(await store.write({ rounds: [score] }, { rounds: [known] }));
    expect(JSON.parse(valueOf(await store.read()).rounds![0]!.wishes)).toEqual({
      ...{ score: 85, day: { allergies: 'peanut, milk', teeOff: '10:30' } },
    });
    // undone in the window that does not know of the milk
    valueOf(await store.write({ rounds: [known] }, { rounds: [score] }));
    expect(JSON.parse(valueOf(await store.read()).rounds![0]!.wishes)).toEqual({
      ...{ score: null, day: { allergies: 'peanut, milk', teeOff: '09:00' } },
    });
  });

  it('take out only what is still as the window knew it', async () => {
    const store = settingsStore(await temporaryFolder());
    const day = (course: string, temperatureC: number) => ({
      ...{ course, conditions: JSON.stringify({ temperatureC }) },
    });
    const old = [day('course-one', 8), day('course-two', 9)];
    valueOf(await store.write({ ...chosen, days: old, tileSources: [source] }));
    valueOf(await store.write({ days: [day('course-one', 3)] }, { days: [day('course-one', 8)] }));
    valueOf(await store.write({ days: [], tileSources: [] }, { days: old, tileSources: [source] }));
    expect(valueOf(await store.read())).toMatchObject({ days: [day('course-one', 3)], tileSources: [] });
  });

  it('never have more entries than may be: the oldest go', async () => {
    const store = settingsStore(await temporaryFolder());
    const full = Array.from({ length: MOST_KEPT_ROUNDS }, (_, i) => round({}, `course-number-${i}`));
    valueOf(await store.write({ ...chosen, rounds: full }));
    const newest = round({ score: 80 });
    valueOf(await store.write({ rounds: [newest] }, { rounds: [round({})] }));
    expect(valueOf(await store.read()).rounds).toEqual([newest, ...full.slice(0, -1)]);
  });

  it('leave somebody new as new until units are chosen', async () => {
    const store = settingsStore(await temporaryFolder());
    valueOf(await store.write({ theme: 'dark' }, { theme: 'system' }));
    expect(valueOf(await store.read())).toEqual({ ...firstSettings, theme: 'dark', isNew: true });
    valueOf(await store.write({ units: 'metres' }, { units: 'yards' }));
    expect(valueOf(await store.read())).toEqual({ ...firstSettings, theme: 'dark', units: 'metres' });
  });

  it('are read strictly at the border, the change as well as what it was', () => {
    const good = { settings: { theme: 'dark' }, was: { theme: 'light' } };
    expect(readRequest('writeSettings', good)).toEqual({ ok: true, value: good });
    for (const spoilt of [
      { ...good, was: { theme: 'pink' } },
      { ...good, was: { theme: 'light', extra: 1 } },
      { settings: { theme: 'dark', extra: 1 } },
      { settings: { rounds: [{ ...round({}), extra: 1 }] } },
      { settings: { rounds: [round('x'.repeat(LONGEST_WISHES))] } },
      { was: {} },
    ])
      expect(readRequest('writeSettings', spoilt)).toMatchObject({ ok: false, failure: 'bad-request' });
  });
});
