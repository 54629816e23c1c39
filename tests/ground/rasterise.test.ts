/** One hole painted into its raster: what wins where things overlap, what is out of bounds, where canopies are. */

import { describe, expect, it } from 'vitest';
import type { AreaKind } from '../../core/course/model.ts';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import {
  CANOPY_STOREYS,
  cellIndexAt,
  isOnRaster,
  lieAt,
  type HoleGround,
} from '../../core/ground/hole-ground.ts';
import { Lie, LIE_NAMES, PAINTING_ORDER } from '../../core/ground/lies.ts';
import { rasteriseHole } from '../../core/ground/rasterise.ts';
import { box, disc, flatCourse, flatGround, wood, type FlatHole, type Patch } from '../plan/synthetic.ts';

function lieName(ground: HoleGround, x: number, y: number): string {
  return LIE_NAMES[lieAt(ground, x, y)]!;
}

function shareOf(ground: HoleGround, code: number): number {
  return ground.lie.filter((lie) => lie === code).length / ground.lie.length;
}

describe('where features overlap', () => {
  const pairs = PAINTING_ORDER.flatMap(([early, earlyLie], i) =>
    PAINTING_ORDER.slice(i + 1).map(([late, lateLie]) => ({ early, earlyLie, late, lateLie })),
  );

  it.each(pairs)('$late covers $early, in either order of the file', ({ early, earlyLie, late, lateLie }) => {
    const under = box(early, 30, -60, 50, -30);
    const over = box(late, 40, -60, 60, -30);
    for (const patches of [
      [under, over],
      [over, under],
    ]) {
      const ground = flatGround({ lengthM: 100, patches });
      expect(lieAt(ground, 45, -45)).toBe(lateLie);
      expect(lieAt(ground, 35, -45)).toBe(earlyLie);
      expect(lieAt(ground, 55, -45)).toBe(lateLie);
    }
  });

  it('is as a player would have it', () => {
    const stack = (...kinds: AreaKind[]): string => {
      const ground = flatGround({ lengthM: 100, patches: kinds.map((kind) => box(kind, 30, -60, 50, -30)) });
      return lieName(ground, 40, -45);
    };
    // A fairway drawn through its bunker, a pond in the fairway, a path across the rough, stakes across water.
    expect(stack('bunker', 'fairway')).toBe('bunker');
    expect(stack('penalty-red', 'fairway')).toBe('penaltyRed');
    expect(stack('penalty-yellow', 'bunker')).toBe('penaltyYellow');
    expect(stack('bunker', 'green')).toBe('bunker');
    expect(stack('green', 'fairway')).toBe('green');
    expect(stack('tee', 'fairway')).toBe('tee');
    expect(stack('penalty-red', 'penalty-yellow')).toBe('penaltyRed');
    expect(stack('path', 'rough')).toBe('path');
    expect(stack('long-rough', 'rough')).toBe('longRough');
    expect(stack('woods', 'long-rough')).toBe('woods');
    expect(stack('path', 'fairway')).toBe('path');
    expect(stack('fairway', 'woods')).toBe('fairway');
    expect(stack('out-of-bounds', 'penalty-red')).toBe('outOfBounds');
  });

  it('is rough where nothing is drawn', () => {
    expect(lieName(flatGround({ lengthM: 100 }), 40, -45)).toBe('rough');
  });

  it('is the fairway’s ring only: a hole in it stays rough', () => {
    const ring: Patch = box('fairway', -40, -80, 40, -30);
    const course = flatCourse({ lengthM: 100, patches: [ring] });
    const frame = makeLocalFrame(course.holes[0]!.line[1]!);
    const island = [
      { x: -10, y: -60 },
      { x: 10, y: -60 },
      { x: 10, y: -45 },
      { x: -10, y: -45 },
      { x: -10, y: -60 },
    ].map((corner) => frame.toLonLat(corner));
    const areas = course.areas.map((area) =>
      area.kind === 'fairway' ? { ...area, rings: [...area.rings, island] } : area,
    );
    const ground = rasteriseHole({ ...course, areas }, course.holes[0]!, frame);
    expect(lieName(ground, 0, -50)).toBe('rough');
    expect(lieName(ground, 20, -50)).toBe('fairway');
  });
});

describe('the boundary', () => {
  const boundary = box('boundary', -40, -130, 35, 30);

  it('makes everything outside it out of bounds, whatever is drawn there', () => {
    const wide = PAINTING_ORDER.map(([kind]) => box(kind, -75, -20, 75, -5));
    for (const patches of [wide, []]) {
      const ground = flatGround({
        lengthM: 100,
        patches: [...patches, boundary, box('fairway', -75, -90, 75, -60)],
      });
      for (let index = 0; index < ground.lie.length; index++) {
        const x = ground.west + (index % ground.columns) + 0.5;
        const y = ground.south + Math.floor(index / ground.columns) + 0.5;
        const isInside = x > -40 && x < 35 && y > -130 && y < 30;
        if (!isInside && ground.lie[index] !== Lie.outOfBounds) throw new Error(`in bounds at ${x}, ${y}`);
      }
      expect(lieName(ground, 34, -75)).toBe('fairway');
      expect(lieName(ground, 36, -75)).toBe('outOfBounds');
      expect(lieName(ground, -39, -75)).toBe('fairway');
      expect(lieName(ground, -41, -75)).toBe('outOfBounds');
    }
  });

  it('may be of several parts', () => {
    const ground = flatGround({ lengthM: 100, patches: [boundary, box('boundary', 50, -60, 70, -30)] });
    expect(lieName(ground, 60, -45)).toBe('rough');
    expect(lieName(ground, 42, -45)).toBe('outOfBounds');
  });

  it('leaves nothing out of bounds where none is drawn', () => {
    expect(shareOf(flatGround({ lengthM: 100 }), Lie.outOfBounds)).toBe(0);
  });

  it('still lets a drawn out-of-bounds area lie inside it', () => {
    const ground = flatGround({ lengthM: 100, patches: [boundary, box('out-of-bounds', 0, -60, 10, -40)] });
    expect(lieName(ground, 5, -50)).toBe('outOfBounds');
  });
});

describe('greens', () => {
  it('of other holes are fairway, one without a number is a green', () => {
    const ground = flatGround({
      lengthM: 100,
      number: 3,
      patches: [
        { ...disc('green', 40, -50, 10), hole: 4 },
        { ...disc('green', -40, -50, 10) },
        { ...disc('green', 40, -90, 10), hole: 3 },
      ],
    });
    expect(lieName(ground, 40, -50)).toBe('fairway');
    expect(lieName(ground, -40, -50)).toBe('green');
    expect(lieName(ground, 40, -90)).toBe('green');
    expect(lieName(ground, 0, 0)).toBe('green');
  });

  it('have the area that is drawn', () => {
    const ground = flatGround({ lengthM: 100, greenRadiusM: 15 });
    const cells = ground.lie.filter((lie) => lie === Lie.green).length;
    // Cells are counted by their centres: about half of those on the rim are wrong either way, √(rim)/2 in all.
    expect(Math.abs(cells - Math.PI * 225)).toBeLessThan(4 * 0.5 * Math.sqrt(2 * Math.PI * 15));
  });
});

describe('the raster', () => {
  it('reaches 80 m around line, tee and pin', () => {
    const ground = flatGround({ lengthM: 100 });
    for (const [x, y] of [
      [79.9, 79.9],
      [-79.9, 79.9],
      [79.9, -179.9],
      [-79.9, -179.9],
    ] as const) {
      expect(isOnRaster(ground, x, y)).toBe(true);
    }
    expect(isOnRaster(ground, 82, 0)).toBe(false);
    expect(isOnRaster(ground, 0, 82)).toBe(false);
    expect(isOnRaster(ground, 0, -182)).toBe(false);
  });

  it('says the same at any size of cell', () => {
    const spec: FlatHole = {
      lengthM: 100,
      patches: [
        box('fairway', -20, -80, 20, -20),
        disc('bunker', 30, -10, 8),
        box('boundary', -60, -160, 60, 60),
      ],
    };
    const fine = flatGround(spec, 0.5);
    const plain = flatGround(spec);
    const coarse = flatGround(spec, 2);
    for (const code of [Lie.fairway, Lie.bunker, Lie.outOfBounds, Lie.green]) {
      expect(shareOf(fine, code)).toBeCloseTo(shareOf(plain, code), 2);
      expect(shareOf(coarse, code)).toBeCloseTo(shareOf(plain, code), 2);
    }
    expect(coarse.cellsPerM).toBe(0.5);
  });

  it('answers points beyond its rim with the rim’s cell', () => {
    const ground = flatGround({ lengthM: 100 });
    const east = ground.west + ground.columns;
    const north = ground.south + ground.rows;
    expect(cellIndexAt(ground, ground.west - 50, ground.south - 50)).toBe(0);
    expect(cellIndexAt(ground, east + 50, ground.south + 0.5)).toBe(ground.columns - 1);
    expect(cellIndexAt(ground, east + 50, north + 50)).toBe(ground.lie.length - 1);
    for (const [column, row] of [
      [0, 0],
      [3, 7],
      [ground.columns - 1, ground.rows - 1],
    ] as const) {
      const index = cellIndexAt(ground, ground.west + column + 0.3, ground.south + row + 0.8);
      expect(index).toBe(row * ground.columns + column);
    }
  });
});

describe('canopies', () => {
  const low = { topM: 8, baseM: 2, densityPerM: 0.05 };
  const high = { topM: 20, baseM: 6, densityPerM: 0.02 };

  it('have the top, base and density of their wood, and none outside', () => {
    const ground = flatGround({ lengthM: 100, patches: [wood(30, -60, 50, -30, high)] });
    const inside = cellIndexAt(ground, 40, -45);
    const outside = cellIndexAt(ground, 25, -45);
    expect(ground.canopyTop[inside]).toBe(20);
    expect(ground.canopyBase[inside]).toBe(6);
    expect(ground.canopyDensity[inside]).toBeCloseTo(0.02, 6);
    expect(ground.canopyTop[outside]).toBe(0);
    expect(lieName(ground, 40, -45)).toBe('woods');
    expect(ground.highestCanopy).toBe(20);
  });

  it('take the highest top, the lowest base and the greatest density where crowns overlap', () => {
    for (const [first, second] of [
      [low, high],
      [high, low],
    ] as const) {
      const ground = flatGround({
        lengthM: 100,
        patches: [wood(30, -60, 50, -30, first)],
        trees: [{ x: 50, y: -45, radiusM: 5, canopy: second }],
      });
      const both = cellIndexAt(ground, 48.5, -45);
      expect(ground.canopyTop[both]).toBe(20);
      expect(ground.canopyBase[both]).toBe(2);
      expect(ground.canopyDensity[both]).toBeCloseTo(0.05, 6);
      const alone = cellIndexAt(ground, 52.5, -45);
      expect(ground.canopyTop[alone]).toBe(second.topM);
      expect(ground.canopyBase[alone]).toBe(second.baseM);
    }
  });

  it('are thinner where leaves have fallen, and as dense as ever where needles stay', () => {
    const crown = { topM: 12, baseM: 3, densityPerM: 0.12 };
    const course = flatCourse({
      lengthM: 100,
      patches: [{ ...box('woods', 20, -60, 40, -40), canopy: { ...crown, leafType: 'mixed' } }],
      trees: [
        { x: 0, y: -50, radiusM: 4, canopy: crown },
        { x: -20, y: -50, radiusM: 4, canopy: { ...crown, leafType: 'needleleaved' } },
      ],
    });
    const frame = makeLocalFrame(course.holes[0]!.line[1]!);
    const densities = (season: 'leaf' | 'bare'): readonly number[] => {
      const ground = rasteriseHole(course, course.holes[0]!, frame, 1, season);
      return [0, -20, 30].map((x) => ground.canopyDensity[cellIndexAt(ground, x + 0.5, -49.5)]!);
    };
    expect(densities('leaf')).toEqual([0.12, 0.12, 0.12].map(Math.fround));
    const [broad, needles, mixed] = densities('bare');
    expect(broad).toBeCloseTo(0.048, 6);
    expect(needles).toBeCloseTo(0.12, 6);
    expect(mixed).toBeCloseTo(0.084, 6);
  });

  it('of single trees stand over whatever lie is below', () => {
    const ground = flatGround({
      lengthM: 100,
      patches: [box('fairway', -20, -80, 20, -20)],
      trees: [{ x: 0, y: -50, radiusM: 6, canopy: high }],
    });
    expect(lieName(ground, 0, -50)).toBe('fairway');
    expect(ground.canopyTop[cellIndexAt(ground, 0, -50)]).toBe(20);
    expect(ground.clearOfTrees[cellIndexAt(ground, 0, -50) * CANOPY_STOREYS]).toBe(0);
  });

  it('stand on the ground: the highest top counts the height of the land', () => {
    const ground = flatGround({
      lengthM: 100,
      patches: [wood(30, -60, 50, -30, high)],
      levels: [{ x: 40, y: -45, elevationM: 100 }],
    });
    expect(ground.highestCanopy).toBeCloseTo(120, 3);
    expect(flatGround({ lengthM: 100 }).highestCanopy).toBe(-Infinity);
  });

  it('are never nearer than a storey says, counting those that rise above its floor', () => {
    const spec: FlatHole = {
      lengthM: 150,
      trees: [
        { x: 40, y: -45, radiusM: 7, canopy: high },
        { x: -33, y: -120, radiusM: 5, canopy: low },
        { x: 5, y: 60, radiusM: 3, canopy: { ...low, topM: 30 } },
      ],
    };
    for (const levels of [
      [],
      [
        { x: 0, y: -150, elevationM: 12 },
        { x: 0, y: 0, elevationM: 30 },
      ],
    ]) {
      for (const cellM of [1, 2]) {
        const ground = flatGround({ ...spec, levels }, cellM);
        const canopied = Array.from(ground.canopyTop.keys()).filter((cell) => ground.canopyTop[cell]! > 0);
        const centre = (cell: number): { x: number; y: number } => ({
          x: ground.west + ((cell % ground.columns) + 0.5) * cellM,
          y: ground.south + (Math.floor(cell / ground.columns) + 0.5) * cellM,
        });
        const tops = canopied.map((tree) =>
          Math.fround(ground.canopyTop[tree]! + (ground.elevation?.[tree] ?? 0)),
        );
        for (let cell = 0; cell < ground.lie.length; cell += 7) {
          const at = centre(cell);
          for (let storey = 0; storey < CANOPY_STOREYS; storey++) {
            const floor = storey === 0 ? -Infinity : ground.storeyBase + storey * ground.storeyM;
            const claimed = ground.clearOfTrees[cell * CANOPY_STOREYS + storey]!;
            canopied.forEach((tree, k) => {
              const stands = centre(tree);
              // From centre to centre, so by half a diagonal on either side more than what is claimed.
              const away = Math.hypot(stands.x - at.x, stands.y - at.y);
              if (tops[k]! > floor && away < claimed)
                throw new Error(
                  `a crown of ${tops[k]} m ${away} m from ${at.x}, ${at.y}; claimed ${claimed}`,
                );
            });
          }
        }
        expect(ground.highestCanopy).toBe(Math.max(...tops));
        // The tallest tree stands alone: higher up more of the ground is clear.
        const clearAt = (storey: number): number =>
          ground.lie.reduce((sum, _, cell) => sum + ground.clearOfTrees[cell * CANOPY_STOREYS + storey]!, 0);
        expect(clearAt(CANOPY_STOREYS - 1)).toBeGreaterThan(1.2 * clearAt(0));
      }
    }
  });

  it('are given to woods only: a wood drawn without measures stops no ball', () => {
    const ground = flatGround({ lengthM: 100, patches: [box('woods', 30, -60, 50, -30)] });
    expect(ground.highestCanopy).toBe(-Infinity);
    expect(lieName(ground, 40, -45)).toBe('woods');
  });
});
