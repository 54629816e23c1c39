import { describe, expect, it } from 'vitest';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import { makeSheet } from '../../renderer/map/sheet.ts';
import { paperFrame } from '../../renderer/print/paper-frame.ts';

const sheet = makeSheet(makeLocalFrame([4, 52]), 0);

describe('a hole on paper', () => {
  it.each([
    ['short and wide', 120, 60],
    ['long', 560, 20],
    ['a dogleg', 350, 240],
  ])('fits the room and stands upright: %s', (_, length, aside) => {
    const spots = [
      { x: 0, y: 0 },
      { x: aside, y: length },
    ];
    const paper = paperFrame(sheet, spots, 66, 210);
    expect(paper.heightMm).toBeLessThanOrEqual(210.001);
    const [tee, green] = spots.map(paper.place) as [readonly [number, number], readonly [number, number]];
    for (const [x, y] of [tee, green]) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(66);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(paper.heightMm);
    }
    expect(tee[1]).toBeGreaterThan(green[1]);
    // One scale for both directions.
    expect(Math.hypot(green[0] - tee[0], green[1] - tee[1])).toBeCloseTo(
      Math.hypot(aside, length) * paper.mmPerM,
      1,
    );
  });
});
