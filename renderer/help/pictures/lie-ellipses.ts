/** Where half of the solid strikes of a mid-iron come down, by lie. */

import type { LieName } from '../../../core/ground/lies.ts';
import { lieEffectsFor } from '../../../core/player/lie-effects.ts';
import { presetSpread, STANDARD_BAG } from '../../../core/player/presets.ts';
import type { PlotData, Point } from './plot-data.ts';

const LIES = ['fairway', 'rough', 'longRough', 'bunker'] as const satisfies readonly LieName[];
const HANDICAP = 15;
/** Standard deviations within which half of a two-dimensional normal law lies: sqrt(2 ln 2). */
const HALF = Math.sqrt(2 * Math.LN2);

export function lieEllipses(): PlotData<(typeof LIES)[number]> {
  const club = STANDARD_BAG.find(({ name }) => name === '7-iron')!;
  const { carryMean, carrySd, directionMean, directionSd } = presetSpread(
    { handicap: HANDICAP, group: 'men' },
    club,
    'full',
  );
  const effectOf = lieEffectsFor(HANDICAP);
  return {
    x: { from: -45, to: 45, ticks: [-40, -30, -20, -10, 0, 10, 20, 30, 40] },
    y: { from: 65, to: 125, ticks: [70, 80, 90, 100, 110, 120] },
    toScale: true,
    lines: LIES.map((lie) => {
      const effect = effectOf(club, 'full', lie);
      const carry = carryMean * effect.carryFactor;
      const long = HALF * carrySd * effect.carryFactor * effect.carrySdFactor;
      const wide = HALF * directionSd * effect.directionSdFactor * carry;
      return {
        label: lie,
        points: Array.from({ length: 73 }, (_, i): Point => {
          const turn = (2 * Math.PI * i) / 72;
          return [carry * directionMean + wide * Math.sin(turn), carry + long * Math.cos(turn)];
        }),
      };
    }),
  };
}
