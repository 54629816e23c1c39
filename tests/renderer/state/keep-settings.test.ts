/** Two windows over the same settings: each writes what it changed, and neither takes back what the other wrote. */

import { describe, expect, it } from 'vitest';
import type { Conditions } from '../../../core/conditions/conditions.ts';
import { parseCourseText } from '../../../core/course/parse.ts';
import type { Host, HostAnswer, Settings, SettingsChange } from '../../../electron/contract/host.ts';
import { readRequest } from '../../../electron/contract/wire.ts';
import { firstSettings, passingSettings } from '../../../electron/files/settings.ts';
import { keepFor } from '../../../renderer/round/effects/keep-wishes.ts';
import { wishesFor, wishesFrom } from '../../../renderer/round/state/kept-wishes.ts';
import { FIRST_WISHES, type Wishes } from '../../../renderer/round/state/round-state.ts';
import { keepSettings, writeSettings } from '../../../renderer/state/effects/keep-settings.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import { makeStore } from '../../../renderer/state/store.ts';
import { smallCourseText } from '../small-course.ts';

const HERE = { course: 'course-one', player: 'player-one' };
const allergicTo = (allergies: string, wishes: Wishes = FIRST_WISHES): Wishes => ({
  ...wishes,
  day: { ...wishes.day, allergies },
});

/** One host, whose border checks what it is sent, and as many windows over it as wished. */
function oneHost(begin: Settings = firstSettings) {
  const kept = passingSettings(begin);
  const disk = { full: false, written: [] as SettingsChange[] };
  const host: Pick<Host, 'writeSettings'> = {
    writeSettings: async (settings, was): Promise<HostAnswer<null>> => {
      if (disk.full) return { ok: false, failure: 'disk-full', message: 'The disk is full.' };
      const read = readRequest('writeSettings', { settings, ...(was && { was }) });
      if (!read.ok) return read;
      disk.written.push(settings);
      return kept.write(read.value.settings, read.value.was);
    },
  };
  const onDisk = async (): Promise<Settings> => {
    const answer = await kept.read();
    if (!answer.ok) throw new Error(answer.message);
    return answer.value;
  };
  const open = async () => {
    const store = makeStore(initialState(['en-GB']), reduce);
    store.dispatch({ type: 'settings-read', settings: await onDisk() });
    keepSettings(store, host);
    const parsed = parseCourseText(smallCourseText());
    if (!parsed.ok) throw new Error('the small course is damaged');
    const entry = { modifiedAt: 0, bytes: 1, readOnly: false, name: 'a', kind: 'course' } as const;
    store.dispatch({
      type: 'course-opened',
      document: { text: '', revision: 'x', entry: { ...entry, token: HERE.course }, value: parsed.value },
    });
    const settle = () => writeSettings(store, host);
    await settle();
    return { store, settle, wish: (wishes: Wishes) => keepFor(store, HERE, wishes) };
  };
  return { open, onDisk, disk };
}

const wishesIn = ({ rounds = [] }: Settings): Wishes => wishesFrom(rounds[0]!.wishes);

describe('two windows', () => {
  it('keep each other’s settings: allergies written in one outlive a change of theme in the other', async () => {
    const rounds = [{ ...HERE, wishes: JSON.stringify(allergicTo('peanut')) }];
    const host = oneHost({ ...firstSettings, rounds });
    const [a, b] = [await host.open(), await host.open()];
    a.wish(allergicTo('peanut, milk'));
    await a.settle();
    b.store.dispatch({ type: 'theme-set', theme: 'dark' });
    await b.settle();
    expect(host.disk.written.at(-1)).toEqual({ theme: 'dark' });
    expect(wishesIn(await host.onDisk()).day.allergies).toBe('peanut, milk');
    expect((await host.onDisk()).theme).toBe('dark');
  });

  it('keep each other’s wishes for the same round, also the first that are kept of it', async () => {
    const host = oneHost();
    const [a, b] = [await host.open(), await host.open()];
    a.wish(allergicTo('peanut'));
    await a.settle();
    b.wish({ ...wishesFor(HERE, []), score: 85 });
    await b.settle();
    expect(wishesIn(await host.onDisk())).toEqual({ ...allergicTo('peanut'), score: 85 });
  });

  it('keep each other’s day, also when one of them is undone', async () => {
    const host = oneHost();
    const [a, b] = [await host.open(), await host.open()];
    const take = ({ store }: typeof a, change: Partial<Conditions>): void => {
      const { present } = store.state().history;
      const conditions = { ...present.conditions, ...change };
      store.dispatch({ type: 'situation-taken', situation: { ...present, conditions }, label: 'the day' });
    };
    take(a, { temperatureC: 4 });
    await a.settle();
    take(b, { greenSpeedFt: 12 });
    await b.settle();
    const day = async (): Promise<unknown> => JSON.parse((await host.onDisk()).days![0]!.conditions);
    expect(await day()).toMatchObject({ temperatureC: 4, greenSpeedFt: 12 });
    b.store.dispatch({ type: 'undone' });
    await b.settle();
    expect(await day()).toMatchObject({ temperatureC: 4 });
    a.store.dispatch({ type: 'undone' });
    take(a, { humidity: 0.9 });
    await a.settle();
    expect(await day()).toMatchObject({ temperatureC: 15, humidity: 0.9 });
  });

  it('write what was refused together with the next change', async () => {
    const host = oneHost();
    const a = await host.open();
    host.disk.full = true;
    a.wish(allergicTo('peanut'));
    expect(await a.settle()).toMatchObject({ ok: false });
    host.disk.full = false;
    a.store.dispatch({ type: 'theme-set', theme: 'dark' });
    await a.settle();
    expect(await host.onDisk()).toMatchObject({ theme: 'dark' });
    expect(wishesIn(await host.onDisk()).day.allergies).toBe('peanut');
  });
});
