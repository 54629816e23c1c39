/**
 * `npx tsx tests/bench/interval-coverage.ts [SETS]`: how often the 90 % intervals hold the law that shots were drawn from,
 * by number of shots and share of poor strikes, over SETS (by default 1000) data sets each. Laws are drawn from the
 * prior about the expectation (Cook, Gelman & Rubin 2006). The small version is in tests/player/posterior-coverage.test.ts.
 * A share more than 3.5 binomial standard errors from nine in ten is marked, and makes the command fail.
 */

import {
  estimateBag,
  estimatesOf,
  numbersOf,
  SPREAD_NUMBERS,
  type SpreadNumber,
} from '../../core/player/posterior.ts';
import { presetSpread, STANDARD_BAG } from '../../core/player/presets.ts';
import { makeStreamKey, RandomStream } from '../../core/random/streams.ts';
import { lawFromPrior, shotsOf } from '../player/prior-draws.ts';

const sets = Number(process.argv[2] ?? 1000);
const club = STANDARD_BAG.find(({ loftDeg }) => loftDeg === 32)!;
const usual = presetSpread({ handicap: 16, group: 'men' }, club, 'full');
const allowed = 3.5 * Math.sqrt((0.9 * 0.1) / sets);
const SHORT: Readonly<Record<SpreadNumber, string>> = {
  carryMean: 'carry',
  carrySd: 'its SD',
  directionMean: 'direction',
  directionSd: 'its SD',
  correlation: 'correl.',
  poorShare: 'poor',
  poorCarryShareMean: 'p. carry',
  poorCarryShareSd: 'its SD',
  poorDirectionSd: 'p. dir.',
};

function row(shots: number, poorShare: number): readonly number[] {
  const stream = new RandomStream();
  const inside = SPREAD_NUMBERS.map(() => 0);
  for (let set = 0; set < sets; set++) {
    stream.restart(makeStreamKey('interval coverage', String(poorShare)), set, shots);
    const expected = { ...usual, poorShare };
    const truth = lawFromPrior(stream, expected);
    const evidence = { club, swing: 'full' as const, expected, shots: shotsOf(stream, truth, shots) };
    const found = estimatesOf(estimateBag([evidence], { draws: 500 }).entries[0]!);
    numbersOf(truth).forEach((value, i) => {
      const { low, high } = found[SPREAD_NUMBERS[i]!];
      if (value >= low && value <= high) inside[i] = inside[i]! + 1;
    });
  }
  return inside.map((count) => count / sets);
}

const titles = ['shots', 'poor %', ...SPREAD_NUMBERS.map((name) => SHORT[name])];
console.log(`${sets} data sets a row; one standard error is ${(allowed / 3.5).toFixed(4)}`);
console.log(titles.map((title) => title.padStart(9)).join(''));
let failed = 0;
for (const shots of [5, 20, 100])
  for (const poorShare of [0, 0.05, 0.1, 0.2]) {
    const shares = row(shots, poorShare);
    const cells = shares.map((share) => {
      const isOff = Math.abs(share - 0.9) > allowed;
      if (isOff) failed++;
      return `${share.toFixed(3)}${isOff ? '*' : ''}`;
    });
    console.log(
      [String(shots), (100 * poorShare).toFixed(0), ...cells].map((cell) => cell.padStart(9)).join(''),
    );
  }
if (failed > 0) {
  console.log(`${failed} shares are off`);
  process.exitCode = 1;
}
