/** Where units of a card go on paper, and that a folded booklet reads in order. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layoutOf, placeUnits, type SheetSide } from '../../../renderer/round/cards/paper.ts';
import { mayDrawGreen } from '../../../renderer/round/cards/card-unit.tsx';
import type { CardHole } from '../../../core/card/model.ts';

const card = { greenDrawing: {} } as CardHole;

/** Reads a booklet as a hand does: sheets cut across, halves folded upright and laid into each other, pages turned. */
function readBooklet(sides: readonly SheetSide[]): (number | null)[] {
  const leaves: { front: (number | null)[]; back: (number | null)[] }[] = [];
  for (let i = 0; i < sides.length; i += 2) {
    const [front, back] = [sides[i]!, sides[i + 1]!];
    leaves.push({ front: front.slice(0, 2), back: back.slice(0, 2) });
    leaves.push({ front: front.slice(2, 4), back: back.slice(2, 4) });
  }
  // Turned on the long edge, what is printed behind a front's right half is the back's left half.
  const firstHalf = leaves.flatMap(({ front, back }) => [front[1]!, back[0]!]);
  const secondHalf = [...leaves].reverse().flatMap(({ front, back }) => [back[1]!, front[0]!]);
  return [...firstHalf, ...secondHalf];
}

describe('the places of units on paper', () => {
  it('four to a sheet of A4 and Letter, one to a sheet of A6', () => {
    expect(placeUnits(5, layoutOf({ kind: 'a4', style: 'plain' }))).toEqual([
      [0, 1, 2, 3],
      [4, null, null, null],
    ]);
    expect(placeUnits(2, layoutOf({ kind: 'a6', style: 'plain' }))).toEqual([[0], [1]]);
  });

  it('a booklet reads in order once it is cut, folded and laid together', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), (count) => {
        const sides = placeUnits(count, layoutOf({ kind: 'booklet-a4', style: 'plain' }));
        expect(sides.length % 2).toBe(0);
        const read = readBooklet(sides).filter((unit) => unit !== null);
        expect(read).toEqual(Array.from({ length: count }, (_, i) => i));
      }),
    );
  });

  it('a unit fills its share of the paper, to the millimetre', () => {
    const a4 = layoutOf({ kind: 'booklet-a4', style: 'plain' });
    expect([a4.unitWidthMm, a4.unitHeightMm]).toEqual([105, 148.5]);
    const letter = layoutOf({ kind: 'letter', style: 'plain' });
    expect(letter.unitWidthMm).toBeCloseTo(4.25 * 25.4, 9);
    expect(letter.unitHeightMm).toBeCloseTo(5.5 * 25.4, 9);
  });

  it('a green is drawn only on what is small enough to be carried (Rule 4.3a)', () => {
    expect(mayDrawGreen(card, layoutOf({ kind: 'a4', style: 'plain' }))).toBe(true);
    expect(mayDrawGreen(card, layoutOf({ kind: 'letter', style: 'ink-saving' }))).toBe(true);
    expect(mayDrawGreen(card, layoutOf({ kind: 'a6', style: 'large-print' }))).toBe(true);
    expect(mayDrawGreen(card, layoutOf({ kind: 'a4', style: 'large-print' }))).toBe(false);
  });
});
