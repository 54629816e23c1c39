import { describe, expect, it } from 'vitest';
import { reduce } from '../../../renderer/state/reduce.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { TOUR_STEPS } from '../../../renderer/tour/steps.ts';

describe('the first walk', () => {
  it('goes to the room of each step', () => {
    for (const { name, room } of TOUR_STEPS) {
      const { view } = reduce(initialState(), { type: 'tour-shown', step: name });
      expect(view).toMatchObject({ tour: name, room, help: null });
    }
  });

  it('is over for good once it was left', () => {
    const begun = reduce(initialState(), { type: 'tour-shown', step: 'plan' });
    expect(begun.settings.tourSeen).toBeUndefined();
    const left = reduce(begun, { type: 'tour-left' });
    expect(left.view.tour).toBeNull();
    expect(left.settings.tourSeen).toBe(true);
  });
});
