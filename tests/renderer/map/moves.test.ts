import { describe, expect, it } from 'vitest';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import type { Spot } from '../../../core/plan/model.ts';
import { parsePlayerText } from '../../../core/player/parse.ts';
import { keepInReach, moveLabel, moveMarker } from '../../../renderer/map/moves.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import type { AppState } from '../../../renderer/state/app-state.ts';
import { drawingFrame } from '../../../renderer/state/selectors.ts';
import { mustParse } from '../../course/builders.ts';
import { smallCourse, smallPlayerText } from '../small-course.ts';

const entry = {
  token: 'token-token',
  name: 'file',
  kind: 'course',
  readOnly: false,
  modifiedAt: 0,
  bytes: 1,
} as const;

function openState(): AppState {
  const player = parsePlayerText(smallPlayerText());
  if (!player.ok) throw new Error('the player does not parse');
  const course = { entry, text: '', revision: 'r', value: mustParse(smallCourse()) };
  let state = reduce(initialState(), { type: 'course-opened', document: course });
  state = reduce(state, {
    type: 'player-opened',
    document: { entry, text: '', revision: 'r', value: player.value },
  });
  return state;
}

const state = openState();
const frame = drawingFrame(state) ?? makeLocalFrame([4, 52]);
const spotOf = (place: readonly [number, number]): Spot => frame.toSpot(place);

describe('moving the ball', () => {
  it('puts it where it was dropped', () => {
    const moved = moveMarker(state, 'ball', spotOf([4, 52.0006]));
    if (!moved.ok) throw new Error(moved.error);
    expect(moved.value.holes[1]?.ball?.[1]).toBeCloseTo(52.0006, 8);
    expect(moveLabel(state, 'ball')).toBe('move the ball on hole 1');
  });

  it('puts it back on the tee when it is dropped beside the marker', () => {
    const { x, y } = spotOf([4, 52]);
    const moved = moveMarker(state, 'ball', { x: x + 0.4, y: y - 0.4 });
    if (!moved.ok) throw new Error(moved.error);
    expect(moved.value.holes[1]?.ball).toBeNull();
  });
});

describe('moving the hole position', () => {
  it('stays on the green', () => {
    expect(moveMarker(state, 'pin', spotOf([4, 52.0013])).ok).toBe(true);
    expect(moveMarker(state, 'pin', spotOf([4, 52.0008]))).toEqual({
      ok: false,
      error: 'The hole stays on its green.',
    });
  });
});

describe('moving the aim', () => {
  it('is refused before there is a shot', () => {
    expect(moveMarker(state, 'aim', spotOf([4, 52.001])).ok).toBe(false);
  });

  it('keeps a full swing at its one carry and lets a part swing end anywhere up to its longest', () => {
    const ball = { x: 0, y: 0 };
    const full = keepInReach(ball, { x: 30, y: 40 }, { spreadIndex: 0, nearestM: 150, farthestM: 150 });
    expect(full.x).toBeCloseTo(90, 9);
    expect(full.y).toBeCloseTo(120, 9);
    const part = { spreadIndex: 0, nearestM: 3, farthestM: 60 };
    expect(keepInReach(ball, { x: 30, y: 40 }, part)).toEqual({ x: 30, y: 40 });
    expect(
      Math.hypot(
        keepInReach(ball, { x: 300, y: 400 }, part).x,
        keepInReach(ball, { x: 300, y: 400 }, part).y,
      ),
    ).toBeCloseTo(60, 9);
  });
});
