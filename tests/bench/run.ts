/**
 * `npm run bench`: the speed of the engine as ratios within one run, so that a busy machine slows both sides alike.
 * `--json FILE` writes the same figures.
 */

import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { lieAt } from '../../core/ground/hole-ground.ts';
import { LIE_NAMES } from '../../core/ground/lies.ts';
import { ShotResolver } from '../../core/plan/resolve-shot.ts';
import { solveNow } from '../../core/plan/solve.ts';
import { ShotDrawer } from '../../core/random/shot-draws.ts';
import { planFromSpot } from '../../core/plan/options.ts';
import { demoHole } from './demo-hole.ts';
import { lieByPolygons } from './polygon-lies.ts';

const { values } = parseArgs({
  options: { json: { type: 'string' }, hole: { type: 'string', default: '16' } },
});
const { course, prepared } = demoHole(Number(values.hole));
const figures: Record<string, number> = {};

/** Seconds of processor time that `work` takes; the best of three, for other programs only ever slow it down. */
function cpuSeconds(work: () => void): number {
  let best = Infinity;
  for (let k = 0; k < 3; k++) {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    best = Math.min(best, (user + system) / 1e6);
  }
  return best;
}

// Kernel: whole shots with the first spread of the bag from the tee.
const law = prepared.book.lawOf(0, 4, 0);
if (law === null) throw new Error('The longest club is not played from the tee.');
const draws = new ShotDrawer(4096).redraw(prepared.key, 99);
const resolver = new ShotResolver(prepared.ground);
const bearing = Math.atan2(prepared.pin.x - prepared.tee.x, prepared.pin.y - prepared.tee.y);
const shots = 40 * draws.count;
const kernel = cpuSeconds(() => {
  for (let turn = 0; turn < 40; turn++) {
    for (let i = 0; i < draws.count; i++)
      resolver.resolve(prepared.tee.x, prepared.tee.y, law, bearing, draws, i);
  }
});
figures['kernelShotsPerSecond'] = shots / kernel;

// The same shots' ends looked up in the raster and in polygons, and the answers compared.
const ends = Array.from({ length: draws.count }, (_, i) => {
  resolver.resolve(prepared.tee.x, prepared.tee.y, law, bearing, draws, i);
  return [resolver.endX, resolver.endY] as const;
});
const byPolygons = lieByPolygons(course, prepared);
let equal = 0;
const slow = cpuSeconds(() => {
  equal = ends.filter(([x, y]) => byPolygons(x, y) === lieAt(prepared.ground, x, y)).length;
});
let checksum = 0;
const fast = cpuSeconds(() => {
  for (let turn = 0; turn < 400; turn++) for (const [x, y] of ends) checksum += lieAt(prepared.ground, x, y);
});
figures['polygonLookUpsPerSecond'] = ends.length / slow;
figures['rasterLookUpsPerSecond'] = (400 * ends.length) / fast;
figures['rasterOverPolygons'] = slow / (fast / 400);
figures['sameLieShare'] = equal / ends.length;

const solve = cpuSeconds(() => void solveNow(prepared));
figures['solveSeconds'] = solve;
const field = solveNow(prepared);
figures['planFromTeeSeconds'] = cpuSeconds(() => void planFromSpot(prepared, field, prepared.tee));
const nodes = field.layers.reduce(
  (sum, layer) => sum + layer.value.filter((value) => !Number.isNaN(value)).length,
  0,
);
figures['nodesOfFinestSpacing'] = nodes;

console.log(`hole ${values.hole}, ${LIE_NAMES.length} lies, checksum ${checksum}`);
console.table(
  Object.fromEntries(Object.entries(figures).map(([name, value]) => [name, Number(value.toPrecision(4))])),
);
if (values.json !== undefined)
  writeFileSync(values.json, `${JSON.stringify({ hole: Number(values.hole), ...figures }, null, 1)}\n`);
