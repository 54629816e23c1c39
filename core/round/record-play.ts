/** A hole played at the desk, and the plan on the card, as a round file records them. */

import type { LocalFrame } from '../course/local-frame.ts';
import type { Option, SpotPlan } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import type { PlannedHoleRecord, PlannedOption, PlayedHoleRecord, RecordedStroke } from './format.ts';
import type { PlayedHole, PlayedShot } from './play-hole.ts';

/** Drops are no shots of their own: their penalty goes to the stroke before. */
export function recordOfPlay(played: PlayedHole, prepared: PreparedHole): PlayedHoleRecord {
  const { frame } = prepared;
  const shots: RecordedStroke[] = [];
  for (const shot of played.shots) {
    const before = shots.at(-1);
    if (shot.kind === 'drop') {
      if (before !== undefined)
        shots[shots.length - 1] = { ...before, penalty: (before.penalty ?? 0) + shot.penalty };
    } else shots.push(strokeOf(shot, frame));
  }
  const tee = played.shots[0];
  const { strokeIndex } = prepared.hole;
  return {
    hole: played.hole,
    par: played.par,
    ...(strokeIndex === undefined ? {} : { strokeIndex }),
    score: played.score,
    putts: played.shots.filter(({ kind }) => kind === 'putt').length,
    penalties: played.shots.reduce((sum, { penalty }) => sum + penalty, 0),
    ...(tee === undefined ? {} : { teeClub: tee.club, teeEnd: tee.endLie }),
    shots,
  };
}

function strokeOf(shot: PlayedShot, frame: LocalFrame): RecordedStroke {
  const place = (spot: PlayedShot['from']): [number, number] => {
    const [lon, lat] = frame.toLonLat(spot);
    return [lon, lat];
  };
  return {
    club: shot.club,
    ...(shot.swing === null ? {} : { swing: shot.swing }),
    from: place(shot.from),
    fromLie: shot.fromLie,
    aim: place(shot.aim),
    to: place(shot.end),
    toLie: shot.endLie,
    ...(shot.penalty === 0 ? {} : { penalty: shot.penalty }),
    ...(shot.wasPoor ? { poor: true } : {}),
    ...(shot.hitTree ? { hitTree: true } : {}),
  };
}

/** The tee plan as the round file keeps it; `chosen` defaults to the recommendation. Null where the plan has no shots. */
export function recordOfPlan(
  plan: SpotPlan,
  tee: string,
  holePosition: string | null,
  extra: { readonly budget?: number; readonly chosen?: string; readonly most?: number } = {},
): PlannedHoleRecord | null {
  const shots = plan.options.filter(({ kind }) => kind === 'shot');
  const chosen = extra.chosen ?? plan.recommendation.optionId;
  const kept = shots.filter(({ id }, rank) => rank < (extra.most ?? 6) || id === chosen);
  if (!kept.some(({ id }) => id === chosen)) return null;
  return {
    hole: plan.hole,
    tee,
    ...(holePosition === null ? {} : { holePosition }),
    ...(extra.budget === undefined ? {} : { budget: extra.budget }),
    chosen,
    options: kept.map(plannedOption),
  };
}

function plannedOption({ id, club, swing, aim, carryM, meanStrokes, scoreOdds }: Option): PlannedOption {
  return { id, club, swing, aim: [...aim.lonLat], carryM, meanStrokes, scoreOdds: [...scoreOdds] };
}
