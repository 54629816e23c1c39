import { describe, expect, it } from 'vitest';
import { cornerFor } from '../../../renderer/tour/place-card.ts';

const view = { width: 1280, height: 800 };
const card = { width: 380, height: 230 };

describe('the corner of the walk’s card', () => {
  it('is the lower left one where nothing is pointed at, or nothing hidden', () => {
    expect(cornerFor(card, null, view)).toBe('bottom-left');
    expect(cornerFor(card, { left: 900, top: 100, width: 200, height: 100 }, view)).toBe('bottom-left');
  });

  it('leaves what is pointed at in sight', () => {
    expect(cornerFor(card, { left: 20, top: 700, width: 60, height: 40 }, view)).toBe('bottom-right');
    expect(cornerFor(card, { left: 0, top: 600, width: 1280, height: 200 }, view)).toBe('top-right');
  });

  it('hides least where the window is too small to hide nothing', () => {
    const small = { width: 400, height: 300 };
    expect(cornerFor(card, { left: 0, top: 200, width: 400, height: 100 }, small)).toBe('top-right');
  });
});
