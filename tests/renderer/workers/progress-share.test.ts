import { describe, expect, it } from 'vitest';
import { DEFAULT_SETTINGS } from '../../../core/plan/solve.ts';
import { progressShare } from '../../../renderer/workers/progress-share.ts';

describe('progress', () => {
  it('never runs backwards over levels, sweeps and odds', () => {
    const levels = DEFAULT_SETTINGS.spacingsM.length;
    let last = 0;
    for (let level = 1; level <= levels; level++) {
      const stages = [1, 2, 3, 4].map((sweep) => `level ${level} of ${levels}, sweep ${sweep}`);
      if (level === levels)
        stages.push(...[1, 2, 3].map((odds) => `level ${level} of ${levels}, odds ${odds}`));
      for (const stage of stages) {
        for (const done of [0, 50, 100]) {
          const share = progressShare({ stage, done, total: 100 });
          expect(share).not.toBeNull();
          expect(share!).toBeGreaterThanOrEqual(last);
          expect(share!).toBeLessThanOrEqual(1);
          last = share!;
        }
      }
    }
    expect(last).toBeGreaterThan(0.9);
  });

  it('says so where a stage tells nothing', () => {
    expect(progressShare({ stage: 'reading the ground', done: 0, total: 1 })).toBeNull();
  });
});
