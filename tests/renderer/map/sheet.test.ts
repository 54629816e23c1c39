import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import { makeSheet, moveOnScreen } from '../../../renderer/map/sheet.ts';

const frame = makeLocalFrame([4, 52]);
const metres = fc.double({ min: -800, max: 800, noNaN: true });
const bearing = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });

describe('sheet', () => {
  it('puts the chosen bearing up and keeps lengths', () => {
    fc.assert(
      fc.property(bearing, fc.double({ min: 1, max: 500, noNaN: true }), (up, length) => {
        const [lat, lng] = makeSheet(frame, up).toMap({ x: Math.sin(up) * length, y: Math.cos(up) * length });
        expect(lat).toBeCloseTo(length, 6);
        expect(lng).toBeCloseTo(0, 6);
      }),
    );
  });

  it('comes back to the same spot', () => {
    fc.assert(
      fc.property(bearing, metres, metres, (up, x, y) => {
        const sheet = makeSheet(frame, up);
        const [lat, lng] = sheet.toMap({ x, y });
        const back = sheet.fromMap({ lat, lng });
        expect(back.x).toBeCloseTo(x, 6);
        expect(back.y).toBeCloseTo(y, 6);
      }),
    );
  });

  it('moves right on the screen, not on the ground', () => {
    const eastUp = makeSheet(frame, Math.PI / 2);
    const moved = moveOnScreen(eastUp, { x: 0, y: 0 }, 5, 0);
    // With east up, right is south.
    expect(moved.x).toBeCloseTo(0, 9);
    expect(moved.y).toBeCloseTo(-5, 9);
  });
});
