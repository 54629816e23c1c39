/** Which shots the map paints and in what part: the chosen one, two compared, and the recommendation behind. */

import type { LonLat } from '../../core/course/model.ts';
import type { Option, ShotSample, SpreadEllipse } from '../../core/plan/model.ts';
import { type AppState, OWN_AIM } from '../state/app-state.ts';
import { holeSituation, optionOf, paintedShot, currentPlan, ballPlace } from '../state/selectors.ts';

/** `main` and `rival` carry spread and balls, `ghost` only its line. */
export type ShotPart = 'main' | 'rival' | 'ghost';

export interface DrawnShot {
  readonly part: ShotPart;
  readonly id: string;
  readonly from: LonLat;
  readonly aim: LonLat;
  readonly option: Option | null;
  readonly sample: ShotSample | null;
  readonly ellipses: readonly SpreadEllipse[];
}

export function isComparing(state: AppState): boolean {
  const { compareA, compareB } = state.view;
  return optionOf(state, compareA) !== null && optionOf(state, compareB) !== null;
}

export function shotScene(state: AppState): readonly DrawnShot[] {
  const plan = currentPlan(state);
  if (plan === null) return [];
  const { compareA, compareB } = state.view;
  const parts: (readonly [string | null, ShotPart])[] = isComparing(state)
    ? [
        [compareB, 'rival'],
        [compareA, 'main'],
      ]
    : [
        [plan.recommendation.optionId, 'ghost'],
        [paintedShot(state), 'main'],
      ];
  const main = paintedShot(state);
  return parts
    .filter(([id, part]) => part !== 'ghost' || id !== main)
    .map(([id, part]) => drawn(state, id, part))
    .filter((shot) => shot !== null);
}

function drawn(state: AppState, id: string | null, part: ShotPart): DrawnShot | null {
  const { hole } = state.view;
  if (id === null || hole === null) return null;
  const option = optionOf(state, id);
  const ownAim = holeSituation(state, hole).aim;
  const plan = currentPlan(state);
  const from = id === OWN_AIM ? ballPlace(state) : (plan?.fromLonLat ?? null);
  const aim = id === OWN_AIM ? (ownAim?.target ?? null) : (option?.aim.lonLat ?? null);
  if (from === null || aim === null) return null;
  const paint = part === 'ghost' ? undefined : state.answers.paint[id];
  return { part, id, from, aim, option, sample: paint?.sample ?? null, ellipses: paint?.ellipses ?? [] };
}
