/** The shot kernel against the same kernel in C (`kernel.c`), built here and now by the machine's compiler; left out where there is none. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { aimedShot } from '../../../core/flight/aimed-shot.ts';
import { LOWEST_RISE_SHARE, RISE_STEPS } from '../../../core/flight/flight-table.ts';
import { SLOPE_PULL_MPS2 } from '../../../core/green/surface.ts';
import { elevationAt } from '../../../core/ground/hole-ground.ts';
import { CANOPY_STEP_M, countOf, firstOf, SightBook, STRETCH } from '../../../core/ground/sight-lines.ts';
import { LONGEST_ROLL_M } from '../../../core/ground-run/run.ts';
import { LEVEL_ROW, ROWS_PER_SLOPE, RUN_LIES } from '../../../core/ground-run/run-table.ts';
import { BATCH_SHOTS } from '../../../core/plan/batch-shots.ts';
import { POOR_WIND, SHORTEST_CARRY_M } from '../../../core/plan/resolve-shot.ts';
import {
  FIRST_HOP_SHARE,
  LEAST_COST_SHARE,
  MOST_ASIDE,
  ROLL_STEP_M,
  runWords,
  SLOPE_STEP,
  SLOPE_ZERO,
} from '../../../core/plan/run-out.ts';
import { ShotBatch } from '../../../core/plan/shot-batch.ts';
import { stanceTurn } from '../../../core/plan/shot-turn.ts';
import { POOR_LAUNCH, TreeWalk } from '../../../core/plan/tree-walk.ts';
import { ShotDrawer, type ShotDraws } from '../../../core/random/shot-draws.ts';
import { demoHole } from '../demo-hole.ts';
import { stands, type Stand } from '../kernel.ts';
import { cpuSeconds, type Figure } from '../measure.ts';

const RAYS = 240;
const TURNS = 40;
/** Farther than any shot flies, metres. */
const FAR_M = 350;

export function benchTwin(holeNumber: number): Figure[] {
  const { prepared } = demoHole(holeNumber);
  const { ground } = prepared;
  const from = stands(prepared);
  const draws = new ShotDrawer(BATCH_SHOTS).redraw(prepared.key, 99);
  const folder = mkdtempSync(join(tmpdir(), 'holewright-twin-'));
  try {
    const [source, program, input] = [
      // npm runs scripts in the project's folder; this one runs built, elsewhere than its source.
      join('tests', 'bench', 'twin', 'kernel.c'),
      join(folder, 'kernel'),
      join(folder, 'input'),
    ];
    try {
      execFileSync('cc', ['-O3', '-march=native', '-o', program, source, '-lm'], {
        stdio: ['ignore', 'ignore', 'inherit'],
      });
    } catch {
      console.error('no C compiler here: the twin in C is left out');
      return [];
    }
    writeFileSync(input, inputOf(ground, from, draws));
    const [seconds, east, north, lies] = execFileSync(program, [input], { encoding: 'utf8' })
      .split(' ')
      .map(Number);

    const batch = new ShotBatch(ground);
    const sums = [0, 0, 0];
    const play = (visit: () => void): void => {
      for (const { spot, law, bearing } of from) {
        batch.play(spot.x, spot.y, law, bearing, draws, 0, BATCH_SHOTS);
        visit();
      }
    };
    const { endX, endY, endLie } = batch.shots;
    play(() => {
      for (let k = 0; k < BATCH_SHOTS; k++) {
        sums[0]! += endX[k]!;
        sums[1]! += endY[k]!;
        sums[2]! += endLie[k]!;
      }
    });
    const shots = from.length * BATCH_SHOTS;
    const apart = Math.max(Math.abs(sums[0]! - east!), Math.abs(sums[1]! - north!)) / shots;
    // Both add the same doubles in the same order, but for what a compiler makes of them and rays that were walked less far.
    if (!(apart < 0.01) || Math.abs(sums[2]! - lies!) > 0.01 * shots)
      throw new Error(
        `The twin in C plays other shots: ends ${apart} m apart on the mean, lies ${sums[2]} and ${lies}.`,
      );
    const own = cpuSeconds(() => {
      for (let turn = 0; turn < TURNS; turn++) play(() => undefined);
    }, 10);
    return [
      {
        name: 'shots a second and core, the same kernel in C',
        value: (TURNS * shots) / seconds!,
        unit: '1/s',
      },
      { name: 'time of the batch over that in C', value: own / seconds!, unit: 'times', target: '1.3' },
      { name: 'ends of both apart, mean', value: apart, unit: 'm' },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Everything as doubles, in the order in which `kernel.c` reads it. */
function inputOf(ground: ShotBatch['ground'], from: readonly Stand[], draws: ShotDraws): Float64Array {
  const out: number[] = [];
  const { columns, rows, west, south, cellM, cellsPerM, elevation, slopes } = ground;
  const margin = cellM / 2;
  const walk = new TreeWalk(ground);
  const book = new SightBook(ground, walk.allTrunks);
  const lines = from.map(({ spot }) => book.from(spot.x, spot.y));
  const entries = lines.map((line) => Array.from({ length: RAYS }, (_, ray) => line.entry(ray, FAR_M)));
  const numbers = lines[0]!.numbers;
  const used = Math.max(...entries.flat().map((entry) => firstOf(entry) + STRETCH * countOf(entry)));
  out.push(
    columns,
    rows,
    elevation === null ? 0 : 1,
    slopes === null ? 1 : 0,
    RUN_LIES,
    draws.count,
    RISE_STEPS,
  );
  out.push(from.length, used, TURNS);
  out.push(west, south, cellsPerM, west + margin, south + margin);
  out.push(west + columns * cellM - margin, south + rows * cellM - margin);
  out.push(SLOPE_PULL_MPS2, LONGEST_ROLL_M, FIRST_HOP_SHARE, LEAST_COST_SHARE, ROLL_STEP_M, MOST_ASIDE);
  out.push(POOR_WIND, SHORTEST_CARRY_M, POOR_LAUNCH, CANOPY_STEP_M, LOWEST_RISE_SHARE, ROWS_PER_SLOPE);
  out.push(LEVEL_ROW, SLOPE_STEP, SLOPE_ZERO);
  const add = (values: ArrayLike<number>, count = values.length): void => {
    for (let i = 0; i < count; i++) out.push(values[i]!);
  };
  add(runWords(ground));
  add(elevation ?? new Float32Array(columns * rows));
  const { distanceZ, directionZ, rollZ, gustZ, poorU, canopyDepth } = draws;
  for (const column of [distanceZ, directionZ, rollZ, gustZ, poorU, canopyDepth]) add(column);
  add(numbers, used);
  from.forEach(({ spot, law, bearing }, i) => {
    const day = aimedShot(law, bearing);
    const { x, y } = spot;
    out.push(x, y, bearing, elevationAt(ground, x, y), stanceTurn(ground, x, y, law.loft, bearing));
    out.push(
      law.carryMean,
      law.carrySd,
      law.directionMean,
      law.directionSd,
      law.correlation,
      law.directionOwn,
    );
    out.push(
      law.poorShare,
      law.poorCarryMean,
      law.poorCarrySd,
      law.poorDirectionSd,
      law.runFactor,
      law.runSdShare,
    );
    out.push(day.carryFactor, day.turn, day.isGusty ? 1 : 0, day.gustCarry, day.gustTurn);
    out.push(day.window.tanLaunch, day.window.skew, day.rise.topShare);
    out.push(day.runCarryM, day.launchMps, day.landingMps);
    add(day.rise.carryShare);
    add(day.run.costPerM);
    add(day.run.bounceM);
    add(day.run.rollSquare);
    add(day.run.sideM);
    for (const entry of entries[i]!) out.push(firstOf(entry), countOf(entry));
    const { trunks } = lines[i]!;
    out.push(trunks.length);
    for (const trunk of trunks) out.push(trunk.x, trunk.y, trunk.meetsM, trunk.topM);
  });
  return Float64Array.from(out);
}
