/** Draws of shots: the right laws, evenly spread, repeatable and independent between labels. */

import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../core/random/normal.ts';
import { DrawPool, ShotDrawer, type ShotDraws } from '../../core/random/shot-draws.ts';
import { makeStreamKey } from '../../core/random/streams.ts';

const key = makeStreamKey('draws');
const SHOTS = 64;
const BATCHES = 500;

function copy(draws: ShotDraws): ShotDraws {
  return {
    count: draws.count,
    distanceZ: draws.distanceZ.slice(),
    directionZ: draws.directionZ.slice(),
    rollZ: draws.rollZ.slice(),
    gustZ: draws.gustZ.slice(),
    poorU: draws.poorU.slice(),
    canopyDepth: draws.canopyDepth.slice(),
  };
}

/** What one shot's draws have as their mean, if the law is right. */
const EXPECTED: readonly (readonly [string, number, (d: ShotDraws, i: number) => number])[] = [
  ['distance', 0, (d, i) => d.distanceZ[i]!],
  ['direction', 0, (d, i) => d.directionZ[i]!],
  ['roll', 0, (d, i) => d.rollZ[i]!],
  ['distance squared', 1, (d, i) => d.distanceZ[i]! ** 2],
  ['direction squared', 1, (d, i) => d.directionZ[i]! ** 2],
  ['gust', 0, (d, i) => d.gustZ[i]!],
  ['gust squared', 1, (d, i) => d.gustZ[i]! ** 2],
  ['distance x gust', 0, (d, i) => d.distanceZ[i]! * d.gustZ[i]!],
  ['roll x gust', 0, (d, i) => d.rollZ[i]! * d.gustZ[i]!],
  ['roll squared', 1, (d, i) => d.rollZ[i]! ** 2],
  ['distance to the fourth', 3, (d, i) => d.distanceZ[i]! ** 4],
  ['poor strike', 0.5, (d, i) => d.poorU[i]!],
  ['poor strike below 0.06', 0.06, (d, i) => (d.poorU[i]! < 0.06 ? 1 : 0)],
  ['canopy depth', 1, (d, i) => d.canopyDepth[i]!],
  ['canopy depth squared', 2, (d, i) => d.canopyDepth[i]! ** 2],
  ['canopy deeper than 2', Math.exp(-2), (d, i) => (d.canopyDepth[i]! > 2 ? 1 : 0)],
  // Products of two: nothing may hang together.
  ['distance x direction', 0, (d, i) => d.distanceZ[i]! * d.directionZ[i]!],
  ['distance x roll', 0, (d, i) => d.distanceZ[i]! * d.rollZ[i]!],
  ['direction x roll', 0, (d, i) => d.directionZ[i]! * d.rollZ[i]!],
  ['distance x poor', 0, (d, i) => d.distanceZ[i]! * (d.poorU[i]! - 0.5)],
  ['direction x poor', 0, (d, i) => d.directionZ[i]! * (d.poorU[i]! - 0.5)],
  ['distance x canopy', 0, (d, i) => d.distanceZ[i]! * (d.canopyDepth[i]! - 1)],
  ['direction x canopy', 0, (d, i) => d.directionZ[i]! * (d.canopyDepth[i]! - 1)],
  ['poor x canopy', 0, (d, i) => (d.poorU[i]! - 0.5) * (d.canopyDepth[i]! - 1)],
];

/** Mean over batches, its standard error from their spread, and the variance of one batch's mean. */
function batchStatistics(batches: readonly ShotDraws[], of: (d: ShotDraws, i: number) => number) {
  const means = batches.map((draws) => {
    let sum = 0;
    for (let i = 0; i < draws.count; i++) sum += of(draws, i);
    return sum / draws.count;
  });
  const mean = means.reduce((sum, value) => sum + value, 0) / means.length;
  const variance = means.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (means.length - 1);
  return { mean, variance, standardError: Math.sqrt(variance / means.length) };
}

describe('draws of a batch of shots', () => {
  const drawer = new ShotDrawer(SHOTS);
  const batches = Array.from({ length: BATCHES }, (_, batch) => copy(drawer.redraw(key, batch, 3)));

  it.each(EXPECTED)('%s averages %f', (_name, expected, of) => {
    const { mean, standardError } = batchStatistics(batches, of);
    // Four standard errors, and a thousandth for what 64 even points lose in the far tails.
    expect(Math.abs(mean - expected)).toBeLessThan(4 * standardError + 1e-3);
  });

  it('average out far sooner than independent shots', () => {
    // Variance of a batch's mean against that of independent draws, variance / count.
    for (const of of [EXPECTED[0]![2], EXPECTED[1]![2], EXPECTED[2]![2], EXPECTED[12]![2]]) {
      expect(batchStatistics(batches, of).variance * SHOTS).toBeLessThan(0.1);
    }
  });

  it('keep one shot in each slice of every law after the shift', () => {
    for (const draws of batches.slice(0, 50)) {
      const slices = (of: (i: number) => number): number =>
        new Set(Array.from({ length: SHOTS }, (_, i) => Math.floor(of(i) * SHOTS))).size;
      expect(slices((i) => normalCdf(draws.distanceZ[i]!))).toBe(SHOTS);
      expect(slices((i) => normalCdf(draws.directionZ[i]!))).toBe(SHOTS);
      expect(slices((i) => normalCdf(draws.rollZ[i]!))).toBe(SHOTS);
      expect(slices((i) => draws.poorU[i]!)).toBe(SHOTS);
      expect(slices((i) => Math.exp(-draws.canopyDepth[i]!))).toBe(SHOTS);
    }
  });

  it('are the same for the same labels, whatever was drawn in between', () => {
    const again = new ShotDrawer(SHOTS);
    again.redraw(key, 77, 1);
    expect(copy(again.redraw(key, 12, 3))).toEqual(batches[12]);
  });

  it('differ by each label and by the key', () => {
    const other = makeStreamKey('other draws');
    const directions = [
      drawer.redraw(key, 1, 2, 3).directionZ[0],
      drawer.redraw(key, 2, 2, 3).directionZ[0],
      drawer.redraw(key, 1, 3, 3).directionZ[0],
      drawer.redraw(key, 1, 2, 4).directionZ[0],
      drawer.redraw(other, 1, 2, 3).directionZ[0],
    ];
    expect(new Set(directions).size).toBe(directions.length);
  });

  it('are finite for every label tried', () => {
    for (const draws of batches) {
      for (const column of [draws.distanceZ, draws.directionZ, draws.rollZ, draws.canopyDepth]) {
        expect(column.every(Number.isFinite)).toBe(true);
      }
      expect(draws.poorU.every((u) => u > 0 && u < 1)).toBe(true);
    }
  });
});

describe('pool of draws', () => {
  const pool = new DrawPool(key, 32, 128, 1);
  const nodes = Array.from({ length: 4000 }, (_, node) => pool.drawsOf(node, node % 5));

  it('gives the same draws to the same state', () => {
    expect(pool.drawsOf(17, 3)).toBe(pool.drawsOf(17, 3));
    expect(new DrawPool(key, 32, 128, 1).drawsOf(17, 3)).toEqual(pool.drawsOf(17, 3));
  });

  it('uses all its sets, and neighbours share one no more often than chance has it', () => {
    expect(new Set(nodes).size).toBe(128);
    const shared = nodes.filter((draws, i) => i > 0 && draws === nodes[i - 1]).length;
    // Binomial with chance 1/128: mean 31, standard deviation 5.6.
    expect(Math.abs(shared - 4000 / 128)).toBeLessThan(4 * Math.sqrt(4000 / 128));
  });

  it('draws otherwise for another purpose', () => {
    const valuing = new DrawPool(key, 32, 128, 2);
    const choosing = new Set(nodes.map((draws) => draws.distanceZ[0]));
    const common = Array.from({ length: 500 }, (_, n) => valuing.drawsOf(n, 0)).filter((draws) =>
      choosing.has(draws.distanceZ[0]),
    );
    expect(common).toHaveLength(0);
  });

  it('keeps the laws over its sets', () => {
    const sets = [...new Set(nodes)];
    for (const [, expected, of] of EXPECTED) {
      const { mean, standardError } = batchStatistics(sets, of);
      expect(Math.abs(mean - expected)).toBeLessThan(4 * standardError + 2e-3);
    }
  });
});
