/** What was wished for a round comes back with its course and player. */

import { describe, expect, it } from 'vitest';
import { LONGEST_WISHES, MOST_KEPT_ROUNDS, settingsSchema } from '../../../electron/contract/wire.ts';
import * as v from 'valibot';
import { type Conditions, DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { parseCourseText } from '../../../core/course/parse.ts';
import { parsePlayerText } from '../../../core/player/parse.ts';
import { dayFor } from '../../../renderer/state/kept-days.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import { makeStore, type Store } from '../../../renderer/state/store.ts';
import { keepFor, keepWishes } from '../../../renderer/round/effects/keep-wishes.ts';
import { keeping, wishesFor, wishesFrom } from '../../../renderer/round/state/kept-wishes.ts';
import {
  FIRST_ROUND,
  FIRST_WISHES,
  reduceRound,
  type Wishes,
} from '../../../renderer/round/state/round-state.ts';
import { smallCourseText, smallPlayerText } from '../small-course.ts';

const HERE = { course: 'course-one', player: 'player-one' };
const ELSEWHERE = { course: 'course-two', player: 'player-one' };
const WISHED: Wishes = {
  ...FIRST_WISHES,
  ...{ score: 90, courseRating: 71.2 },
  paper: { kind: 'booklet-letter', style: 'large-print', hasGreens: false, hole: 3 },
  day: { ...FIRST_WISHES.day, teeOff: '07:10', allergies: 'nut', hasRain: true },
};

function open(store: Store, { course, player }: typeof HERE): void {
  const entry = { modifiedAt: 0, bytes: 1, readOnly: false, name: 'a' };
  const parsed = parseCourseText(smallCourseText());
  const read = parsePlayerText(smallPlayerText());
  if (!parsed.ok || !read.ok) throw new Error('the small course is damaged');
  const rest = { text: '', revision: 'x' };
  store.dispatch({
    type: 'course-opened',
    document: { ...rest, entry: { ...entry, kind: 'course', token: course }, value: parsed.value },
  });
  store.dispatch({
    type: 'player-opened',
    document: { ...rest, entry: { ...entry, kind: 'player', token: player }, value: read.value },
  });
}

const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

function window(rounds = keeping(HERE, FIRST_WISHES, [])) {
  const store = makeStore(initialState(), reduce);
  store.dispatch({ type: 'settings-read', settings: { ...store.state().settings, rounds } });
  const round = makeStore(FIRST_ROUND, reduceRound);
  return { store, round };
}

describe('wishes for a round', () => {
  it('come back with their course and player after the window was closed', async () => {
    const { store, round } = window([]);
    open(store, HERE);
    keepWishes({ store }, round);
    round.dispatch({ type: 'wished', change: WISHED });
    await turn();
    const { rounds = [] } = store.state().settings;
    expect(v.is(settingsSchema, store.state().settings)).toBe(true);
    const again = window(rounds);
    open(again.store, HERE);
    keepWishes({ store: again.store }, again.round);
    expect(again.round.state().wishes).toEqual(WISHED);
  });

  it('do not follow to another course, but habits and allergies of the player do', async () => {
    const { store, round } = window(keeping(HERE, WISHED, []));
    open(store, HERE);
    keepWishes({ store }, round);
    open(store, ELSEWHERE);
    await turn();
    const { wishes } = round.state();
    expect(wishes.score).toBeNull();
    expect(wishes.courseRating).toBeNull();
    expect(wishes.day).toMatchObject({ teeOff: '07:10', allergies: 'nut', hasRain: false });
    expect(wishes.paper).toMatchObject({ kind: 'booklet-letter', hole: null });
    open(store, HERE);
    await turn();
    expect(round.state().wishes).toEqual(WISHED);
    open(store, { course: HERE.course, player: 'player-two' });
    await turn();
    expect(round.state().wishes).toEqual(FIRST_WISHES);
  });

  it('typed just before another file is opened stay with the files they were typed for', async () => {
    const { store, round } = window([]);
    open(store, HERE);
    keepWishes({ store }, round);
    round.dispatch({ type: 'wished', change: { score: 77 } });
    open(store, ELSEWHERE);
    await turn();
    expect(round.state().wishes.score).toBeNull();
    expect(wishesFor(HERE, store.state().settings.rounds ?? []).score).toBe(77);
  });

  it('go along to a copy of the player', () => {
    const { store } = window([]);
    keepFor(store, { ...HERE, player: 'the-copy' }, WISHED);
    expect(wishesFor({ ...HERE, player: 'the-copy' }, store.state().settings.rounds ?? [])).toEqual(WISHED);
  });

  it('that are damaged in part lose that part alone', () => {
    const spoilt = { ...WISHED, score: 'ninety', paper: { ...WISHED.paper, kind: 'a0' }, more: 1 };
    expect(wishesFrom(JSON.stringify(spoilt))).toEqual({
      ...WISHED,
      score: null,
      paper: { ...WISHED.paper, kind: 'a4' },
    });
    expect(wishesFrom('{"score":')).toEqual(FIRST_WISHES);
    expect(wishesFrom('null')).toEqual(FIRST_WISHES);
  });

  it('are as many and as long as the host accepts', () => {
    const long = { ...WISHED, day: { ...WISHED.day, food: '"'.repeat(300), allergies: '"'.repeat(300) } };
    let rounds = keeping(HERE, long, []);
    expect(rounds[0]!.wishes.length).toBeLessThanOrEqual(LONGEST_WISHES);
    for (let i = 0; i < 30; i++) rounds = keeping({ ...HERE, course: `course-no-${i}` }, long, rounds);
    expect(rounds).toHaveLength(MOST_KEPT_ROUNDS);
    expect(rounds[0]!.course).toBe('course-no-29');
    expect(v.is(settingsSchema, { ...initialState().settings, rounds })).toBe(true);
  });
});

describe('weather that a round kept of its own', () => {
  /** As settings of earlier versions hold it. */
  function earlier(weather: object): ReturnType<typeof keeping> {
    const [kept] = keeping(HERE, WISHED, []);
    const wishes = JSON.parse(kept!.wishes) as { readonly day: object };
    return [{ ...kept!, wishes: JSON.stringify({ ...wishes, day: { ...wishes.day, ...weather } }) }];
  }

  async function opened(weather: object, before: Partial<Conditions> = {}) {
    const { store, round } = window(earlier(weather));
    open(store, HERE);
    const { present } = store.state().history;
    const situation = { ...present, conditions: { ...present.conditions, ...before } };
    if (Object.keys(before).length > 0) store.dispatch({ type: 'situation-taken', situation, label: 'x' });
    keepWishes({ store }, round);
    await turn();
    const said = store
      .state()
      .notices.map((notice) =>
        notice.kind === 'trouble' && typeof notice.message === 'string' ? notice.message : '',
      );
    return { store, round, day: store.state().history.present.conditions, said: said.join(' ') };
  }

  it('joins the day of the course, is kept there, once, and can be taken back', async () => {
    const { store, round, day, said } = await opened({
      temperatureC: 24,
      windFromDeg: null,
      greenSpeedFt: 9.3,
    });
    expect(day).toEqual({ ...DEFAULT_CONDITIONS, temperatureC: 24, greenSpeedFt: 9.3 });
    expect(said).toBe('');
    expect(round.state().wishes).toEqual(WISHED);
    const { days = [], rounds = [] } = store.state().settings;
    expect(dayFor(HERE.course, days)).toEqual(day);
    expect(rounds[0]!.wishes).not.toContain('greenSpeedFt');
    store.dispatch({ type: 'undone' });
    await turn();
    expect(store.state().history.present.conditions).toEqual(DEFAULT_CONDITIONS);
  });

  it('leaves what the day says already, and tells what the round had', async () => {
    const { day, said } = await opened({ temperatureC: 24, greenSpeedFt: 9.3 }, { greenSpeedFt: 11 });
    expect(day).toMatchObject({ temperatureC: 24, greenSpeedFt: 11 });
    expect(said).toContain('9.3 ft');
    expect(said).not.toContain('24');
  });

  it('keeps the direction of a wind that had no speed, also over the night, and asks for one', async () => {
    const { store, day, said } = await opened({ windFromDeg: 225 });
    expect(day.wind).toEqual({ speedMps: 0, fromDeg: 225, gustSdMps: 0 });
    expect(said).toMatch(/south-west without a speed/);
    expect(dayFor(HERE.course, store.state().settings.days ?? []).wind.fromDeg).toBe(225);
  });

  it('is not sought in other rounds, nor in damaged ones', async () => {
    expect((await opened({})).said).toBe('');
    expect((await opened({ temperatureC: 'warm' })).day).toEqual(DEFAULT_CONDITIONS);
    const { store, round } = window([{ ...HERE, wishes: '{"day":' }]);
    open(store, HERE);
    keepWishes({ store }, round);
    await turn();
    expect(store.state().history.present.conditions).toEqual(DEFAULT_CONDITIONS);
  });
});
