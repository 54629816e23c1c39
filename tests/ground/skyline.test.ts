/** The skyline from a spot misses no canopy that a shot could meet. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canopyBlocks, sectorOf, SkylineBook, skylineFrom } from '../../core/ground/skyline.ts';

const anyScene = fc.record({
  cellM: fc.constantFrom(1, 2),
  columns: fc.integer({ min: 5, max: 70 }),
  rows: fc.integer({ min: 5, max: 70 }),
  trees: fc.array(
    fc.record({ at: fc.nat({ max: 4899 }), top: fc.double({ min: -20, max: 40, noNaN: true }) }),
    {
      maxLength: 25,
    },
  ),
  from: fc.record({
    x: fc.double({ min: -60, max: 200, noNaN: true }),
    y: fc.double({ min: -60, max: 200, noNaN: true }),
  }),
});

describe('a skyline', () => {
  it('names in every direction canopies no farther, no nearer and no lower than they stand', () => {
    fc.assert(
      fc.property(anyScene, ({ cellM, columns, rows, trees, from }) => {
        const raster = { cellM, columns, rows, west: -13, south: 7 };
        const tops = new Float32Array(columns * rows).fill(-Infinity);
        for (const { at, top } of trees) tops[at % tops.length] = top;
        const skyline = skylineFrom(raster, canopyBlocks(raster, tops), from.x, from.y);
        tops.forEach((top, cell) => {
          if (top === -Infinity) return;
          // The corners and the middle of the cell.
          for (const [u, v] of [
            [0.02, 0.02],
            [0.98, 0.02],
            [0.5, 0.5],
            [0.02, 0.98],
            [0.98, 0.98],
          ] as const) {
            const dx = raster.west + ((cell % columns) + u) * cellM - from.x;
            const dy = raster.south + (Math.floor(cell / columns) + v) * cellM - from.y;
            const away = Math.hypot(dx, dy);
            const sector = sectorOf(Math.atan2(dx, dy));
            if (!(skyline[sector]! <= away && skyline[sector + 1]! >= away && skyline[sector + 2]! >= top))
              throw new Error(
                `a crown of ${top} m ${away} m away; the sector says ${[...skyline.slice(sector, sector + 3)].join(', ')}`,
              );
          }
        });
      }),
      { numRuns: 200, seed: 71 },
    );
  });

  it('is open where no tree stands', () => {
    const raster = { cellM: 1, columns: 300, rows: 300, west: -150, south: -150 };
    const tops = new Float32Array(300 * 300).fill(-Infinity);
    // A tree 100 m to the north: its block is seen under 10° or less.
    tops[250 * 300 + 150] = 12;
    const skyline = skylineFrom(raster, canopyBlocks(raster, tops), 0, 0);
    expect(skyline[sectorOf(0)]).toBeLessThan(100);
    for (const degrees of [12, 90, 180, 270, 348, -90, 3600 + 45]) {
      expect(skyline[sectorOf((degrees * Math.PI) / 180)]).toBe(Infinity);
    }
    expect(sectorOf(2 * Math.PI + 0.3)).toBe(sectorOf(0.3));
  });

  it('is worked out once for a spot', () => {
    const raster = { cellM: 1, columns: 20, rows: 20, west: 0, south: 0 };
    const book = new SkylineBook(raster, canopyBlocks(raster, new Float32Array(400).fill(5)));
    const first = book.from(3, 4);
    expect(book.from(3, 4)).toBe(first);
    expect(book.from(3.01, 4)).not.toBe(first);
  });
});
