import { describe, expect, it } from 'vitest';
import { dialAngle, turnedBy } from '../../../renderer/conditions/dial-angle.ts';

describe('the dial of the wind', () => {
  it('reads the pointer as a compass does, to five degrees', () => {
    expect(dialAngle(0, -40)).toBe(0);
    expect(dialAngle(40, 0)).toBe(90);
    expect(dialAngle(0, 40)).toBe(180);
    expect(dialAngle(-40, 0)).toBe(270);
    expect(dialAngle(-1, -40)).toBe(0);
    expect(dialAngle(30, -31)).toBe(45);
    expect(dialAngle(1, 1)).toBeNull();
  });

  it('turns by keys, past north both ways', () => {
    expect(turnedBy('ArrowLeft', 0)).toBe(355);
    expect(turnedBy('ArrowUp', 355)).toBe(0);
    expect(turnedBy('PageDown', 10)).toBe(325);
    expect(turnedBy('PageUp', 350)).toBe(35);
    expect(turnedBy('Home', 123)).toBe(0);
    expect(turnedBy('a', 123)).toBeNull();
  });
});
