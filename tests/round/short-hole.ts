/** A short par 3 with water, sand and a tree line, quick to solve, and its plan: made once per test file. */

import { planFromSpot } from '../../core/plan/options.ts';
import { choiceOf } from '../../core/plan/choices.ts';
import type { SpotPlan } from '../../core/plan/model.ts';
import type { SolveSettings } from '../../core/plan/solve.ts';
import { solveNow } from '../../core/plan/solve.ts';
import { HolePlay } from '../../core/round/play-hole.ts';
import { box, fourClubs, mustPrepare, ROUGH_LIES, statedPlayer, wood } from '../plan/synthetic.ts';

/** Wider spacings and fewer draws than a plan: the tests below ask how things hang together, not for a good plan. */
const ROUGHLY: SolveSettings = { spacingsM: [20, 10], draws: 32, tolerance: 0.01, mostSweeps: 8 };

export interface ShortHole {
  readonly play: HolePlay;
  readonly plan: SpotPlan;
}

export function shortHole(width = 1, lengthM = 150): ShortHole {
  const player = statedPlayer({ spreads: fourClubs(width), lies: ROUGH_LIES });
  const prepared = mustPrepare(
    {
      lengthM,
      par: 3,
      greenRadiusM: 11,
      patches: [
        box('fairway', -15, -lengthM + 20, 15, 15),
        box('penalty-red', -40, -40, -13, 20),
        box('bunker', 13, -10, 22, 8),
        box('out-of-bounds', -90, 40, 90, 90),
        wood(25, -90, 45, 30, { topM: 12, baseM: 2, densityPerM: 0.15 }),
      ],
    },
    player,
  );
  const field = solveNow(prepared, ROUGHLY);
  const plan = planFromSpot(prepared, field, prepared.tee, { samples: 1024 });
  const best = plan.options[0]!;
  const play = new HolePlay(prepared, field, {
    choice: choiceOf(prepared, best),
    expected: best.meanStrokes,
  });
  return { play, plan };
}
