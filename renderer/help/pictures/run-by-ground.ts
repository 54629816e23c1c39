/** How far a ball runs after landing, by the club that hit it and what it lands on. */

import { DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { flightOf, landingAt } from '../../../core/flight/flight-table.ts';
import { runAfterLanding } from '../../../core/ground-run/run.ts';
import { runGround } from '../../../core/ground-run/surfaces.ts';
import { Lie } from '../../../core/ground/lies.ts';
import { presetSpread, STANDARD_BAG } from '../../../core/player/presets.ts';
import type { PlotData, Point } from './plot-data.ts';

const GROUNDS = [
  ['fairwayFirm', Lie.fairway, 'firm'],
  ['fairway', Lie.fairway, 'medium'],
  ['fairwaySoft', Lie.fairway, 'soft'],
  ['green', Lie.green, 'medium'],
  ['rough', Lie.rough, 'medium'],
] as const;
const GREEN_SPEED_FT = 10;
/** Whose shots land: a man of handicap 15. */
const LEVEL = { handicap: 15, group: 'men' } as const;

export function runByGround(): PlotData<(typeof GROUNDS)[number][0]> {
  const landings = STANDARD_BAG.filter(({ kind }) => kind !== 'putter').map((club) => {
    const { carryMean } = presetSpread(LEVEL, club, 'full');
    return { carryMean, landing: landingAt(flightOf(club, 'full', carryMean, DEFAULT_CONDITIONS), 0) };
  });
  landings.sort((a, b) => a.carryMean - b.carryMean);
  return {
    x: { from: 50, to: 180, ticks: [50, 75, 100, 125, 150, 175] },
    y: { from: 0, to: 25, ticks: [0, 5, 10, 15, 20, 25] },
    lines: GROUNDS.map(([label, lie, firmness]) => ({
      label,
      points: landings.map(({ carryMean, landing }): Point => {
        return [carryMean, runAfterLanding(landing, runGround(lie, firmness, GREEN_SPEED_FT)).totalM];
      }),
    })),
  };
}
