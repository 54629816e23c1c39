/** The doubt of a law that is worked out from another: every draw goes through the same step as the law itself. */

import type { ShotSpread } from '../model.ts';
import { drawAt, numbersOf, SPREAD_WIDTH, type SpreadPosterior } from '../posterior.ts';

/** The posterior of `derive(spread)` from that of `spread`; it has no shots of its own. */
export function transformDraws(
  posterior: SpreadPosterior,
  derive: (spread: ShotSpread) => ShotSpread,
): SpreadPosterior {
  const draws = new Float64Array(posterior.draws.length);
  let swing = posterior.swing;
  for (let row = 0; row * SPREAD_WIDTH < draws.length; row++) {
    const derived = derive(drawAt(posterior, row, { from: 'stated' }));
    swing = derived.swing;
    draws.set(numbersOf(derived), row * SPREAD_WIDTH);
  }
  return { ...posterior, swing, shots: 0, effectiveShots: 0, poorShots: 0, strays: 0, draws };
}
