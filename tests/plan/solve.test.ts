/** The solved field against play: what it promises is what playing its own policy out costs. */

import { beforeAll, describe, expect, it } from 'vitest';
import { Lie, LIE_NAMES, type LieCode } from '../../core/ground/lies.ts';
import { isPenaltyArea, lieAt } from '../../core/ground/hole-ground.ts';
import { OPEN_FAN, sensibleChoices, TREES_FAN } from '../../core/plan/choices.ts';
import { ChoiceEvaluator } from '../../core/plan/evaluate.ts';
import { choiceTo } from '../../core/plan/finish.ts';
import type { Spot } from '../../core/plan/model.ts';
import type { PreparedHole } from '../../core/plan/prepare.ts';
import { distanceToLine } from '../../core/plan/inherit.ts';
import { DEFAULT_SETTINGS, SOLVED_WITHIN_M, solveNow, solveStrokes } from '../../core/plan/solve.ts';
import { LAYER_LIES, SCORE_COLUMNS, type StrokesField } from '../../core/plan/strokes-field.ts';
import { strokesSurface } from '../../core/plan/surface.ts';
import { ShotDrawer } from '../../core/random/shot-draws.ts';
import { makeStreamKey } from '../../core/random/streams.ts';
import { rollOut } from './rollout.ts';
import {
  box,
  COARSE,
  disc,
  fourClubs,
  mustPrepare,
  ROUGH_LIES,
  stated,
  statedPlayer,
  wood,
  type FlatHole,
} from './synthetic.ts';

const player = statedPlayer({ spreads: fourClubs(), lies: ROUGH_LIES });
const canopy = { topM: 15, baseM: 2, densityPerM: 0.1 };

const openHole: FlatHole = { lengthM: 300, patches: [box('fairway', -15, -295, 15, 20)] };
/** Something of everything: a boundary on the right, a pond and a wood on the left, a bunker at the green. */
const troubledHole: FlatHole = {
  lengthM: 300,
  patches: [
    box('fairway', -15, -295, 15, 20),
    box('boundary', -70, -370, 25, 70),
    box('penalty-red', -60, -150, -18, -90),
    disc('bunker', 14, -8, 7),
    wood(-60, -60, -20, 0, canopy),
  ],
};
/** A short hole over water, a boundary on both sides: stroke and distance and back-on-the-line drops count. */
const pondHole: FlatHole = {
  lengthM: 150,
  number: 2,
  par: 3,
  patches: [box('penalty-yellow', -60, -80, 60, -16), box('boundary', -40, -220, 40, 50)],
};

interface Solved {
  readonly prepared: PreparedHole;
  readonly field: StrokesField;
}

function solve(hole: FlatHole, who = player, seed = 'test', settings = COARSE): Solved {
  const prepared = mustPrepare(hole, who, seed);
  return { prepared, field: solveNow(prepared, settings) };
}

function teeValue({ prepared, field }: Solved): number {
  return field.valueAt(prepared.tee.x, prepared.tee.y, Lie.tee);
}

/** The field's own statement of how far it moved at the last refinement. */
function refinementError({ field }: Solved): number {
  return field.convergence.rmsChange.at(-1)!;
}

/** One wide spacing, for differences that no refinement turns round. */
const ROUGHEST = { ...COARSE, spacingsM: [20] };

let open: Solved;
let troubled: Solved;
let pond: Solved;

beforeAll(() => {
  open = solve(openHole);
  troubled = solve(troubledHole);
  pond = solve(pondHole);
}, 120_000);

describe('playing the hole out under the field’s own policy', () => {
  const rounds = 6000;

  it.each(['open', 'troubled', 'pond'] as const)(
    'costs what the field says, from the tee of the %s hole',
    (name) => {
      const solved = { open, troubled, pond }[name];
      const { prepared, field } = solved;
      const played = rollOut(prepared, field, prepared.tee, Lie.tee, rounds, `tee of ${name}`);
      expect(Math.abs(played.mean - teeValue(solved))).toBeLessThan(
        4 * played.standardError + refinementError(solved),
      );
    },
  );

  it('costs what the field says from fairway, rough, sand and trees, and on average nearly exactly', () => {
    const { prepared, field } = troubled;
    const spots: Spot[] = [
      { x: 0, y: -200 },
      { x: 20, y: -150 },
      { x: -30, y: -40 },
      { x: 14, y: -8 },
      { x: 0, y: -60 },
      { x: -40, y: -30 },
      { x: -10, y: -20 },
      { x: -30, y: -200 },
    ];
    let bias = 0;
    let variance = 0;
    const lies = new Set<number>();
    for (const spot of spots) {
      const lie = lieAt(prepared.ground, spot.x, spot.y);
      lies.add(lie);
      const played = rollOut(prepared, field, spot, lie, 2000, `from ${spot.x}, ${spot.y}`);
      const difference = played.mean - field.valueAt(spot.x, spot.y, lie);
      expect(Math.abs(difference)).toBeLessThan(4 * played.standardError + refinementError(troubled));
      bias += difference / spots.length;
      variance += played.standardError ** 2 / spots.length ** 2;
    }
    expect(lies).toEqual(new Set([Lie.fairway, Lie.rough, Lie.bunker, Lie.woods]));
    // What is left beside chance: interpolation between nodes 10 m apart, up and down.
    expect(Math.abs(bias)).toBeLessThan(4 * Math.sqrt(variance) + 0.02);
  });

  it('costs the same on the finest spacing, which moved less', () => {
    const fine = solve(pondHole, player, 'test', DEFAULT_SETTINGS);
    const played = rollOut(fine.prepared, fine.field, fine.prepared.tee, Lie.tee, rounds, 'fine');
    expect(refinementError(fine)).toBeLessThan(refinementError(pond));
    expect(Math.abs(played.mean - teeValue(fine))).toBeLessThan(
      4 * played.standardError + refinementError(fine),
    );
  });
});

describe('the value at a node', () => {
  /** Up to `count` nodes of a layer at which a shot is played; not those far out, which take a coarser spacing's word. */
  function shotNodes(
    { playLine }: PreparedHole,
    field: StrokesField,
    layer: number,
    count: number,
  ): number[] {
    const nodes = Array.from(field.neededNodes(layer)).filter(
      (node) =>
        field.layers[layer]!.spreadIndex[node]! >= 0 &&
        distanceToLine(playLine, { x: field.nodeX(node), y: field.nodeY(node) }) <= SOLVED_WITHIN_M.second,
    );
    const step = Math.max(1, Math.floor(nodes.length / count));
    return nodes.filter((_, i) => i % step === 0);
  }

  it('is the mean of its own choice on fresh draws, and no other sensible choice is much better', () => {
    const { prepared, field } = troubled;
    const evaluator = new ChoiceEvaluator(field, prepared.book);
    const key = makeStreamKey('fresh draws');
    LAYER_LIES.forEach((lie, layer) => {
      const differences: number[] = [];
      const gains: number[] = [];
      const { value, spreadIndex, aimX, aimY } = field.layers[layer]!;
      for (const node of shotNodes(prepared, field, layer, 24)) {
        const spot = { x: field.nodeX(node), y: field.nodeY(node) };
        const finish = { x: aimX[node]!, y: aimY[node]! };
        const own = choiceTo(prepared.book, spot, lie, spreadIndex[node]!, finish);
        const draws = new ShotDrawer(512).redraw(key, node, layer);
        const fresh = evaluator.valueOf(spot, lie, own, draws, value[node]!);
        differences.push(value[node]! - fresh);
        const fan = lie === Lie.woods ? TREES_FAN : OPEN_FAN;
        const others = sensibleChoices(prepared.book, prepared.ground, spot, lie, prepared.pin, fan);
        const search = new ShotDrawer(128).redraw(key, node, layer, 1);
        const best = evaluator.bestOf(spot, lie, others, search, value[node]!, 1)[0];
        if (best !== undefined)
          gains.push(fresh - evaluator.valueOf(spot, lie, best.choice, draws, value[node]!));
      }
      if (differences.length === 0) return;
      const mean = average(differences);
      const sd = Math.sqrt(average(differences.map((difference) => (difference - mean) ** 2)));
      // 64 draws a node scatter; their mean must not lean to either side by more than the sweeps' tolerance and 4 errors.
      expect(Math.abs(mean)).toBeLessThan((4 * sd) / Math.sqrt(differences.length) + COARSE.tolerance);
      expect(Math.max(...differences.map(Math.abs))).toBeLessThan(0.3);
      // What the choice at a node gives away against a search of its own, on average.
      expect(average(gains)).toBeLessThan(0.04);
    });
  });

  it('exists for every ball that can come to rest, and for no other', () => {
    const { prepared, field } = troubled;
    const { ground } = prepared;
    ground.lie.forEach((lie, cell) => {
      const x = ground.west + (cell % ground.columns) + 0.5;
      const y = ground.south + Math.floor(cell / ground.columns) + 0.5;
      const value = field.valueAt(x, y, lie);
      const isLost = isPenaltyArea(lie) || lie === Lie.outOfBounds;
      if (isLost ? !Number.isNaN(value) : !(value >= 1 && value < 9)) {
        throw new Error(`${value} strokes at ${x}, ${y} in ${LIE_NAMES[lie]!}`);
      }
    });
  });

  it('is what the painted surface shows', () => {
    const { prepared, field } = troubled;
    const surface = strokesSurface(field, 7);
    expect(surface.values).toHaveLength(surface.columns * surface.rows);
    let shown = 0;
    surface.values.forEach((value, i) => {
      const x = surface.originX + (i % surface.columns) * surface.cellM;
      const y = surface.originY + Math.floor(i / surface.columns) * surface.cellM;
      const lie = lieAt(prepared.ground, x, y);
      expect(value).toBe(Math.fround(field.valueAt(x, y, lie)));
      if (!Number.isNaN(value)) shown++;
    });
    expect(shown).toBeGreaterThan(surface.values.length / 3);
  });
});

describe('the odds of each score', () => {
  /** Sum and mean of the odds at a node, and how likely ten or more are. */
  function oddsAt(
    field: StrokesField,
    layer: number,
    node: number,
  ): { sum: number; mean: number; many: number } {
    const { odds } = field.layers[layer]!;
    let sum = 0;
    let mean = 0;
    for (let k = 0; k < SCORE_COLUMNS; k++) {
      const share = odds[node * SCORE_COLUMNS + k]!;
      if (!(share >= 0)) throw new Error(`share ${share} of ${k + 1} strokes at node ${node}`);
      sum += share;
      mean += share * (k + 1);
    }
    return { sum, mean, many: odds[node * SCORE_COLUMNS + SCORE_COLUMNS - 1]! };
  }

  /**
   * Largest distance between the mean of the odds and the value, over the nodes that `counts` lets in. Left out are
   * hopeless places, whose value is that of starting again from the tee.
   */
  function worstMean(field: StrokesField, counts: (x: number, y: number) => boolean): number {
    let worst = 0;
    const startAgain = Math.max(
      ...field.layers.flatMap((layer) => Array.from(layer.value).filter((v) => v > 0)),
    );
    field.layers.forEach((layer, index) => {
      for (const node of field.neededNodes(index)) {
        if (!counts(field.nodeX(node), field.nodeY(node)) || layer.value[node] === startAgain) continue;
        const { mean, many } = oddsAt(field, index, node);
        // Ten or more count as ten, so a mean may fall short where they are likely.
        worst = Math.max(worst, Math.abs(mean - layer.value[node]!) - 2 * many);
      }
    });
    return worst;
  }

  function meanOfDifferences(field: StrokesField, counts: (x: number, y: number) => boolean): number {
    let sum = 0;
    let nodes = 0;
    field.layers.forEach((layer, index) => {
      for (const node of field.neededNodes(index)) {
        const { mean, many } = oddsAt(field, index, node);
        if (!counts(field.nodeX(node), field.nodeY(node)) || many > 0.01) continue;
        sum += mean - layer.value[node]!;
        nodes++;
      }
    });
    return sum / nodes;
  }

  it('add up to one at every node', () => {
    for (const { field } of [open, troubled, pond]) {
      field.layers.forEach((_, index) => {
        for (const node of field.neededNodes(index)) {
          // Kept in single precision.
          expect(Math.abs(oddsAt(field, index, node).sum - 1)).toBeLessThan(1e-5);
        }
      });
    }
  });

  it('have the value as their mean', () => {
    for (const { prepared, field } of [open, troubled, pond]) {
      // The odds of a node come from 64 draws, its value from 256 others: one node's difference scatters by 0.05, the
      // largest of a thousand nodes by four times that; what is common to all would show in the mean.
      const nearLine = (x: number, y: number): boolean =>
        Math.hypot(x, Math.max(0, y, prepared.tee.y - y)) < 9 * field.spacingM;
      expect(worstMean(field, nearLine)).toBeLessThan(0.2);
      expect(Math.abs(meanOfDifferences(field, nearLine))).toBeLessThan(0.02);
    }
  });

  // Far from the line a node keeps the wider spacing's value; its odds are the two neighbouring scores with that mean.
  it('have the value as their mean far from the line of play as well', () => {
    const { field } = solve(
      { lengthM: 100, patches: [wood(-75, -90, -30, 0, canopy), box('fairway', -12, -95, 12, 15)] },
      player,
      'test',
      { ...COARSE, spacingsM: [10, 5] },
    );
    expect(worstMean(field, () => true)).toBeLessThan(0.2);
  });

  it('are the shares of rounds played out', () => {
    for (const { prepared, field } of [troubled, pond]) {
      const rounds = 6000;
      const odds = new Float64Array(SCORE_COLUMNS);
      field.addOdds(prepared.tee.x, prepared.tee.y, Lie.tee, 1, 0, odds);
      const played = rollOut(prepared, field, prepared.tee, Lie.tee, rounds, 'odds');
      for (let k = 0; k < SCORE_COLUMNS; k++) {
        const share = played.shares[k + 1]!;
        // Four binomial errors, and two in a hundred for the interpolation between nodes.
        const error = Math.sqrt(Math.max(share * (1 - share), 1 / rounds) / rounds);
        expect(Math.abs(share - odds[k]!)).toBeLessThan(4 * error + 0.02);
      }
    }
  });
});

describe('the same seed', () => {
  it('gives the same numbers, whatever other holes are solved before or in between', () => {
    const first = mustPrepare(pondHole, player);
    const second = mustPrepare({ ...openHole, lengthM: 160, number: 5 }, player);
    const alone = pond.field;
    const others = solveNow(second, COARSE);
    // Step by step in turn, as two workers on one thread would.
    const turns = [solveStrokes(first, COARSE), solveStrokes(second, COARSE)];
    const fields: StrokesField[] = [];
    const open = [true, true];
    while (open[0] === true || open[1] === true) {
      turns.forEach((steps, i) => {
        if (open[i] !== true) return;
        const step = steps.next();
        if (step.done !== true) return;
        open[i] = false;
        fields[i] = step.value;
      });
    }
    expectSame(fields[0]!, alone);
    expectSame(fields[1]!, others);
  });

  function expectSame(a: StrokesField, b: StrokesField): void {
    a.layers.forEach((layer, index) => {
      const twin = b.layers[index]!;
      for (const column of ['value', 'spreadIndex', 'aimX', 'aimY', 'odds'] as const) {
        expect(Buffer.compare(Buffer.from(layer[column].buffer), Buffer.from(twin[column].buffer))).toBe(0);
      }
    });
    expect(a.convergence).toEqual(b.convergence);
  }
});

describe('another seed', () => {
  it('agrees to the scatter of the draws at the nodes', () => {
    const values = ['a', 'b', 'c'].map((seed) => teeValue(solve(pondHole, player, seed)));
    const spread = Math.max(...values) - Math.min(...values);
    expect(new Set(values).size).toBe(3);
    // Each within the refinement error of the middle.
    expect(spread).toBeLessThan(2 * refinementError(pond));
  });
});

describe('what must cost more', () => {
  it('is a longer way on open ground', () => {
    // One club for every length: with gaps between clubs a longer way may truly be the easier one.
    const anyLength = stated({ club: 'Any', swing: 'part', carryM: 200, carrySd: 12, directionSd: 0.06 });
    const { field } = solve(
      { lengthM: 260, patches: [box('fairway', -20, -255, 20, 20)] },
      statedPlayer({ spreads: [anyLength], lies: ROUGH_LIES }),
    );
    for (const [x, lie] of [
      [0, Lie.fairway],
      [12, Lie.fairway],
      [35, Lie.rough],
    ] as const) {
      let last = 0;
      // From a pitch over the fringe on: a chip that has to land short of the green may cost more than a longer one.
      for (let y = -50; y >= -250; y -= 20) {
        const value = field.valueAt(x, y, lie);
        // The scatter of a node's value on 64 draws, and what a shorter run of a longer shot saves.
        expect(value).toBeGreaterThan(last - 0.08);
        last = Math.max(last, value);
      }
      // 250 m are the longest swing, 200 m and its run, and some 30 m: a stroke more than a chip, less what 20 m save.
      expect(last).toBeGreaterThan(field.valueAt(x, -50, lie) + 0.6);
      expect(last).toBeLessThan(field.valueAt(x, -50, lie) + 1.1);
    }
  });

  it('is rough than fairway, trees than rough', () => {
    const { field } = troubled;
    const at = (x: number, y: number): number => field.valueAt(x, y, lieAt(field.ground, x, y));
    expect(at(20, -150)).toBeGreaterThan(at(10, -150));
    expect(at(-25, -30)).toBeGreaterThan(at(-15, -30));
  });

  it('is a wider spread, everywhere', () => {
    const short: FlatHole = {
      lengthM: 200,
      patches: [box('fairway', -15, -195, 15, 20), disc('bunker', 16, 0, 6)],
    };
    const [narrow, wide] = [1, 1.6].map((width) =>
      solve(short, statedPlayer({ spreads: fourClubs(width), lies: ROUGH_LIES }), 'test', ROUGHEST),
    ) as [Solved, Solved];
    expect(teeValue(wide)).toBeGreaterThan(teeValue(narrow) + 0.05);
    for (const [x, y, lie] of [
      [0, -150, Lie.fairway],
      [0, -90, Lie.fairway],
      [30, -120, Lie.rough],
      [0, -40, Lie.fairway],
    ] as readonly (readonly [number, number, LieCode])[]) {
      expect(wide.field.valueAt(x, y, lie)).toBeGreaterThan(narrow.field.valueAt(x, y, lie));
    }
  });

  it('is out of bounds beside the hole than long rough, long rough than rough', () => {
    const beside = (kind: 'out-of-bounds' | 'long-rough' | 'rough'): number =>
      teeValue(
        solve(
          {
            lengthM: 200,
            patches: [
              box('fairway', -12, -195, 12, 20),
              box(kind, 18, -300, 90, 90),
              box(kind, -90, -300, -18, 90),
            ],
          },
          player,
          'test',
          ROUGHEST,
        ),
      );
    const rough = beside('rough');
    const long = beside('long-rough');
    const out = beside('out-of-bounds');
    expect(long).toBeGreaterThan(rough);
    expect(out).toBeGreaterThan(long + 0.1);
  });
});

describe('a solution under way', () => {
  it('reports what it has done of how much, and may be left alone', () => {
    const steps = solveStrokes(mustPrepare(pondHole, player), COARSE);
    const stages = new Set<string>();
    for (let i = 0; i < 12; i++) {
      const step = steps.next();
      if (step.done === true) break;
      expect(step.value.done).toBeLessThanOrEqual(step.value.total);
      stages.add(step.value.stage);
    }
    expect(stages.has('level 1 of 2, sweep 1')).toBe(true);
    steps.return(pond.field);
    expect(steps.next().done).toBe(true);
  });

  it('needs a spacing', () => {
    expect(() => solveNow(pond.prepared, { ...COARSE, spacingsM: [] })).toThrow(/spacings/);
  });
});

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
