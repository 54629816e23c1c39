import { linearRegression } from 'simple-statistics';
import seedrandom from 'seedrandom';
import { describe, expect, it } from 'vitest';
import { growthOf } from './growth.ts';
import { bytesIn } from './held.ts';

const random = seedrandom('growth');
const scatter = (): number => random() + random() + random() - 1.5;

describe('the growth of a row of counts', () => {
  it('is the slope of the line through them after warming up, as an independent library has it', () => {
    const counts = Array.from({ length: 90 }, (_, i) => 1000 + 3 * i + 20 * scatter());
    const kept = counts.slice(30).map((count, i) => [i, count]);
    expect(growthOf(counts).slope).toBeCloseTo(linearRegression(kept).m, 9);
  });

  it('is told from scatter by its error: about one row in twenty is two errors off, none of these five', () => {
    let far = 0;
    for (let row = 0; row < 400; row++) {
      const { slope, error } = growthOf(Array.from({ length: 90 }, scatter));
      if (Math.abs(slope) > 2 * error) far++;
      expect(Math.abs(slope)).toBeLessThan(5 * error);
    }
    // Binomial, 400 rows at 4.6 %: standard deviation 4.2; the correlation found by chance widens or not at all.
    expect(far).toBeLessThan(18.4 + 4 * 4.2);
    expect(far).toBeGreaterThan(2);
  });

  it('is seen in rows that leak', () => {
    const { slope, error } = growthOf(Array.from({ length: 60 }, (_, i) => 500 + 2 * i + 5 * scatter()));
    expect(slope).toBeGreaterThan(10 * error);
  });

  it('warming up and few counts say nothing', () => {
    expect(growthOf([1, 2, 3, 4]).error).toBe(Infinity);
    const warm = Array.from({ length: 60 }, (_, i) => (i < 15 ? 100 * i : 1500));
    expect(growthOf(warm).slope).toBe(0);
  });
});

describe('what scripts hold', () => {
  it('is the sizes of their things, whatever the order of the fields, without compiled code', () => {
    const meta = {
      node_fields: ['id', 'self_size', 'type'],
      node_types: ['number', 'number', ['code', 'object', 'string']],
    };
    // The kinds of the field "type" stand where the field stands.
    const nodes = [1, 1000, 0, 3, 40, 1, 5, 7, 2];
    expect(bytesIn({ snapshot: { meta }, nodes })).toBe(47);
  });
});
