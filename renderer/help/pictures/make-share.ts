/** Putts holed by distance: the model, for a tour player and two others, and tour putts as they were counted. */

import { presetPutting } from '../../../core/player/presets.ts';
import { chanceToHole } from '../../../core/putting/capture.ts';
import { curve, type PlotData, type Point } from './plot-data.ts';

const FOOT_M = 0.3048;

/** Mean feet, tries, made: tour putts (Broadie 2018, as printed in Gelman 2019, “Model building and expansion for golf putting”). */
export const TOUR_PUTTS: readonly (readonly [feet: number, tries: number, made: number])[] = [
  ...([
    [1.93, 169503, 168594],
    [2.92, 113094, 108953],
    [3.93, 73855, 64740],
    [4.94, 53659, 41106],
  ] as const),
  ...([
    [5.94, 42991, 28205],
    [6.95, 37050, 21334],
    [7.95, 33275, 16615],
    [8.95, 30836, 13503],
  ] as const),
  ...([
    [9.95, 28637, 11060],
    [11.95, 24636, 7687],
    [14.43, 41267, 9813],
    [18.44, 31573, 5290],
  ] as const),
  ...([
    [24.39, 46570, 4767],
    [28.4, 38422, 2980],
    [32.39, 31641, 1996],
    [36.39, 25604, 1327],
  ] as const),
];

/** The tour's errors by the same source: 0.0178 rad and 0.080 of the run. */
const TOUR = { directionSd: 0.0178, distanceSdShare: 0.08 };

export function makeShare(): PlotData<'tour' | 'handicap5' | 'handicap25' | 'counted'> {
  const model = (skill: typeof TOUR): readonly Point[] =>
    curve(0.3, 12, 117, (metres) => 100 * chanceToHole(metres, skill));
  return {
    x: { from: 0, to: 12, ticks: [0, 2, 4, 6, 8, 10, 12] },
    y: { from: 0, to: 100, ticks: [0, 20, 40, 60, 80, 100] },
    lines: [
      { label: 'tour', points: model(TOUR) },
      { label: 'handicap5', points: model(presetPutting({ handicap: 5, group: 'men' })) },
      { label: 'handicap25', points: model(presetPutting({ handicap: 25, group: 'men' })) },
    ],
    dots: {
      label: 'counted',
      points: TOUR_PUTTS.map(([feet, tries, made]): Point => [feet * FOOT_M, (100 * made) / tries]),
    },
  };
}
