/** A level for a player who gives no handicap, judged by carries alone; used only to choose presets. */

import type { BagClub } from './format.ts';
import { groupKey } from './group-shots.ts';
import { LEAST_SHOTS, type MeasuredShot } from './measured-shot.ts';
import { type PlayerGroup, type PlayerLevel, presetSpread } from './presets.ts';

/** Levels tried, in half strokes. */
const FIRST_HANDICAP = -5;
const LAST_HANDICAP = 36;

/**
 * The level whose preset carries come closest (least squares of the logarithms of their ratios) to the full swings
 * that are measured often enough or stated; undefined where there is none.
 */
export function inferLevel(
  bag: readonly BagClub[],
  groups: ReadonlyMap<string, readonly MeasuredShot[]>,
  group: PlayerGroup,
  hand: 'right' | 'left' = 'right',
): PlayerLevel | undefined {
  const known = bag.flatMap((club) => {
    if (club.kind === 'putter') return [];
    const carries = (groups.get(groupKey(club.name, 'full')) ?? [])
      .map((shot) => shot.carryM)
      .sort((a, b) => a - b);
    const carryM = carries.length >= LEAST_SHOTS ? carries[carries.length >> 1] : club.stated?.carryM;
    const { name, kind, loftDeg, swings } = club;
    return carryM === undefined ? [] : [{ carryM, club: { name, kind, loftDeg, swings } }];
  });
  if (known.length === 0) return undefined;
  let best: PlayerLevel = { handicap: FIRST_HANDICAP, group, hand };
  let bestSum = Infinity;
  for (let handicap = FIRST_HANDICAP; handicap <= LAST_HANDICAP; handicap += 0.5) {
    const level = { handicap, group, hand };
    let sum = 0;
    for (const { club, carryM } of known) {
      sum += Math.log(carryM / presetSpread(level, club, 'full').carryMean) ** 2;
    }
    if (sum < bestSum) [best, bestSum] = [level, sum];
  }
  return best;
}
