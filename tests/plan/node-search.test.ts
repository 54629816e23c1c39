/** Where a node looks for its choice, and how settled choices are valued anew, on small holes of one wide spacing. */

import { beforeAll, describe, expect, it } from 'vitest';
import { Lie } from '../../core/ground/lies.ts';
import { overLip } from '../../core/plan/bunker-lip.ts';
import { sensibleChoices } from '../../core/plan/choices.ts';
import { ChoiceEvaluator, type RankedChoice } from '../../core/plan/evaluate.ts';
import { inheritedChoices, type NodeState } from '../../core/plan/inherit.ts';
import type { Choice, Spot } from '../../core/plan/model.ts';
import { type LevelEffort, NodeSearch, WIDE_FAN } from '../../core/plan/node-search.ts';
import type { PreparedHole } from '../../core/plan/prepare.ts';
import { solveNow } from '../../core/plan/solve.ts';
import { LAYER_LIES, layerOfLie, REPLAY_ACTION, type StrokesField } from '../../core/plan/strokes-field.ts';
import { valueAgain } from '../../core/plan/value-again.ts';
import { ShotDrawer } from '../../core/random/shot-draws.ts';
import { makeStreamKey } from '../../core/random/streams.ts';
import {
  box,
  COARSE,
  disc,
  fourClubs,
  mustPrepare,
  type Patch,
  ROUGH_LIES,
  statedPlayer,
  wood,
} from './synthetic.ts';

const player = statedPlayer({ spreads: fourClubs(), lies: ROUGH_LIES });
const ONE_SPACING = { ...COARSE, spacingsM: [20] };
const EFFORT: LevelEffort = {
  choosingDraws: 64,
  valuingDraws: 64,
  tolerance: 0.01,
  mostSweeps: 1,
  firstDraws: 8,
  search: 'refine',
  asideDeg: 2,
  finalDraws: 64,
  farBeyondM: 40,
  keepBeyondM: Infinity,
};

interface Solved {
  readonly prepared: PreparedHole;
  readonly field: StrokesField;
}

function solve(patches: readonly Patch[]): Solved {
  const prepared = mustPrepare({ lengthM: 300, patches }, player, 'test');
  return { prepared, field: solveNow(prepared, ONE_SPACING) };
}

function drawsOf(count: number, label: number): ReturnType<ShotDrawer['redraw']> {
  return new ShotDrawer(count).redraw(makeStreamKey('node search'), label);
}

function stateAt({ prepared, field }: Solved, spot: Spot, lie: NodeState['lie'] = Lie.rough): NodeState {
  const column = Math.round((spot.x - field.ground.west) / field.spacingM);
  const row = Math.round((spot.y - field.ground.south) / field.spacingM);
  const distance = Math.hypot(spot.x - prepared.pin.x, spot.y - prepared.pin.y);
  const node = row * field.columns + column;
  return { layer: layerOfLie(lie), node, spot, lie, distance, isFar: false, choices: [] };
}

const open = box('fairway', -15, -295, 15, 20);
let plain: Solved;
let walled: Solved;
let bounded: Solved;

beforeAll(() => {
  plain = solve([open]);
  walled = solve([open, wood(-60, -150, 32, -110, { topM: 25, baseM: 0, densityPerM: 3 })]);
  bounded = solve([open, box('boundary', -120, -370, 22, 70)]);
}, 60_000);

describe('a search among choices', () => {
  it('that knows of others comes to the same as one among all, where none is dropped on the way', () => {
    const { prepared, field } = plain;
    const evaluator = new ChoiceEvaluator(field, prepared.book);
    const spot = { x: 20, y: -180 };
    const all = sensibleChoices(prepared.book, prepared.ground, spot, Lie.rough, prepared.pin, WIDE_FAN);
    const draws = drawsOf(32, 1);
    const search = (choices: readonly Choice[], tried?: readonly RankedChoice[]): RankedChoice[] =>
      evaluator.bestOf(spot, Lie.rough, choices, draws, 4, 3, { firstDraws: draws.count }, tried);
    const [some, others] = [all.filter((_, i) => i % 3 === 0), all.filter((_, i) => i % 3 !== 0)];
    const whole = search(all).map(({ choice, value }) => ({ choice, value }));
    expect(whole).toHaveLength(3);
    expect(search(others, search(some)).map(({ choice, value }) => ({ choice, value }))).toEqual(whole);
  });
});

describe('a node that takes its coarser neighbours’ word', () => {
  const spot = { x: 20, y: -200 };
  const searchIn = ({ prepared, field }: Solved, coarser: StrokesField): NodeSearch =>
    new NodeSearch(prepared, new ChoiceEvaluator(field, prepared.book), coarser, EFFORT);

  it('plays one of their choices', () => {
    const state = stateAt(plain, spot);
    const theirs = inheritedChoices(plain.prepared, plain.field, state, false);
    const [best] = searchIn(plain, plain.field).choicesAt(state, drawsOf(64, 2));
    expect(theirs).toContainEqual(best!.choice);
  });

  it('looks for itself where trees are in its way that were not in theirs', () => {
    const state = stateAt(walled, spot);
    const theirs = inheritedChoices(walled.prepared, plain.field, state, false);
    const draws = drawsOf(64, 3);
    const evaluator = new ChoiceEvaluator(walled.field, walled.prepared.book);
    const own = walled.field.valueAt(spot.x, spot.y, Lie.rough);
    const least = Math.min(...theirs.map((choice) => evaluator.valueOf(spot, Lie.rough, choice, draws, own)));
    expect(least).toBeGreaterThan(own + 0.4);
    const [best] = searchIn(walled, plain.field).choicesAt(state, draws);
    expect(best!.value).toBeLessThan(least - 0.3);
  });

  it('looks for itself close under a lip that their shots do not clear', () => {
    const solved = solve([open, { ...disc('bunker', 0, -150, 10), lipM: 2 }]);
    const { prepared, field } = solved;
    const sand = field.layers[layerOfLie(Lie.bunker)]!;
    sand.value.fill(3.5);
    // The longest club, at the hole.
    sand.spreadIndex.fill(0);
    const state = stateAt(solved, { x: 0, y: -141 }, Lie.bunker);
    expect(inheritedChoices(prepared, field, state, false)).toEqual([]);
    const [best] = searchIn(solved, field).choicesAt(state, drawsOf(64, 6));
    expect(overLip(prepared.book, prepared.ground, state.spot, Lie.bunker)(best!.choice)).toBe(true);
  });

  it('plays no shot where none of them does', () => {
    const { prepared, field } = solve([open]);
    field.layers.forEach(({ spreadIndex }) => spreadIndex.fill(REPLAY_ACTION));
    const solved = { prepared, field };
    expect(searchIn(solved, field).choicesAt(stateAt(solved, spot), drawsOf(64, 4))).toEqual([]);
  });
});

describe('settled choices valued anew in groups', () => {
  it('cost what many shots say, where a good part of them is played again from the same place', () => {
    const { prepared, field } = bounded;
    const evaluator = new ChoiceEvaluator(field, prepared.book);
    // Along the boundary, with the longest club straight at it: each group of four shots loses some.
    const states = Array.from({ length: 18 }, (_, k): NodeState => {
      const row = 3 + Math.floor(k / 2);
      const column = Math.round((12 - field.ground.west) / field.spacingM) - (k % 2);
      const node = row * field.columns + column;
      const at = { x: field.nodeX(node), y: field.nodeY(node) };
      const choice = { spreadIndex: 0, bearing: 0.06 + 0.02 * (k % 2), carryM: player.spreads[0]!.carryMean };
      return { ...stateAt(bounded, at), node, choices: [{ choice, value: 5 }] };
    });
    const layer = field.layers[layerOfLie(Lie.rough)]!;
    const many = drawsOf(4096, 5);
    const rates: number[] = [];
    const exact = states.map(({ spot, lie, choices, node }) => {
      const { choice } = choices[0]!;
      layer.spreadIndex[node] = choice.spreadIndex;
      const tally = { sum: 0, replays: 0, count: 0 };
      const law = prepared.book.lawOf(choice.spreadIndex, lie, choice.carryM)!;
      evaluator.addShots(spot, law, choice.bearing, many, 0, many.count, 5, tally);
      rates.push(tally.replays / tally.count);
      return evaluator.valueOf(spot, lie, choice, many, 5);
    });
    const rate = rates.reduce((sum, p) => sum + p, 0) / rates.length;
    expect(rate).toBeGreaterThan(0.2);
    expect(rate).toBeLessThan(0.8);
    const before = LAYER_LIES.map((_, i) => field.layers[i]!.value.slice());
    // One node at a time, so that each is valued on the same field as by the many shots; on several sets of draws.
    const errors = ['one', 'two', 'three', 'four'].flatMap((name) =>
      states.map((state, i) => {
        before.forEach((value, k) => field.layers[k]!.value.set(value));
        const seeded = { ...prepared, key: makeStreamKey(name) };
        const steps = valueAgain(seeded, evaluator, null, [state], 32, Infinity, false, '');
        while (steps.next().done !== true);
        return layer.value[state.node]! - exact[i]!;
      }),
    );
    const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
    const sd = Math.sqrt(errors.reduce((sum, error) => sum + (error - mean) ** 2, 0) / errors.length);
    expect(Math.abs(mean)).toBeLessThan((4 * sd) / Math.sqrt(errors.length));
  });
});
