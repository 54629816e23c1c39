/**
 * `npm run bench`: what the engine costs, measured in one run on the demo. `--part NAME` measures one part only, `--hole N`
 * another hole, `--seeds N` adds the check of the standard errors over N seeds, `--json FILE` writes the figures.
 */

import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { benchKernel } from './kernel.ts';
import type { Figure } from './measure.ts';
import { benchSampling, benchSeeds } from './sampling.ts';
import { benchTwin } from './twin/twin.ts';
import { benchAnswers, benchGrowth, benchHole, benchRound } from './solving.ts';

const { values } = parseArgs({
  options: {
    json: { type: 'string' },
    part: { type: 'string' },
    hole: { type: 'string', default: '4' },
    seeds: { type: 'string' },
  },
});
const hole = Number(values.hole);
const seeds = Number(values.seeds ?? 0);

const PARTS: Readonly<Record<string, () => Figure[] | Promise<Figure[]>>> = {
  // First: its memory is the most that the process had until then.
  round: benchRound,
  kernel: () => benchKernel(hole),
  twin: () => benchTwin(hole),
  hole: () => benchHole(hole),
  answers: () => benchAnswers(hole),
  growth: () => benchGrowth(hole),
  sampling: () => benchSampling([4, 9, 16]),
  ...(seeds > 0 ? { seeds: () => benchSeeds(16, seeds) } : {}),
};

const chosen = values.part === undefined ? Object.keys(PARTS) : [values.part];
const figures: Figure[] = [];
for (const name of chosen) {
  const part = PARTS[name];
  if (part === undefined) {
    console.error(`There is no part “${name}”; there are ${Object.keys(PARTS).join(', ')}.`);
    process.exit(2);
  }
  console.error(`measuring: ${name}`);
  figures.push(...(await part()));
}
console.table(
  Object.fromEntries(
    figures.map(({ name, value, unit, target }) => [
      name,
      { value: Number(value.toPrecision(4)), unit, target: target ?? '' },
    ]),
  ),
);
if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify(figures, null, 1)}\n`);
