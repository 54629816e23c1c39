/** A round about to be entered: who, where, the target and the plan that was carried. */

import type { Course } from '../../../core/course/model.ts';
import type { PlannedHoleRecord, RoundDocument } from '../../../core/round/format.ts';
import { newRound } from '../../../core/round/record.ts';
import { recordOfPlan } from '../../../core/round/record-play.ts';
import type { AppState } from '../../state/app-state.ts';
import { type Outlook, roundHoles, targetOf } from '../state/planned-holes.ts';
import type { Wishes } from '../state/round-state.ts';

/** `playedAt`: the day, as `2026-04-11`. Throws where no course is open. */
export function roundToEnter(
  app: AppState,
  wishes: Wishes,
  outlook: Outlook | null,
  playedAt: string,
  id: string = randomId(),
): RoundDocument {
  const { course, player } = app;
  if (course === null) throw new Error('A round was begun without a course.');
  const { ready, all } = roundHoles(app);
  const isWhole = ready.length === all.length;
  const planned = ready.flatMap((hole, i): PlannedHoleRecord[] => {
    const budget = isWhole ? outlook?.budget.holes[i]?.budget : undefined;
    const position = hole.result.positionName;
    const record = recordOfPlan(
      hole.plan,
      hole.result.teeName,
      position === 'your own' ? null : position,
      budget === undefined || budget < 1 || budget > 20 ? {} : { budget },
    );
    return record === null ? [] : [record];
  });
  const { handicap, name } = player?.value ?? { handicap: undefined, name: 'nobody in particular' };
  return newRound({
    id,
    name: `${course.value.name}, ${playedAt}`.slice(0, 120),
    playedAt,
    course: { name: course.value.name, sha256: course.revision },
    player: {
      name,
      ...(player === null ? {} : { sha256: player.revision }),
      ...(handicap === undefined ? {} : { handicap }),
    },
    day: { ...app.history.present.conditions },
    target: recordedTarget(wishes, course.value, player?.value ?? null),
    plan: { seed: app.seed, holes: planned },
  });
}

/** Sixteen random bytes as hexadecimal digits. */
function randomId(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('');
}

function recordedTarget(
  wishes: Wishes,
  course: Course,
  player: Parameters<typeof targetOf>[2],
): NonNullable<RoundDocument['target']> {
  const target = targetOf(wishes, course, player);
  return target.kind === 'handicap'
    ? {
        kind: 'handicap',
        aim: target.aim,
        ...(target.tees === undefined ? {} : { tees: { ...target.tees } }),
      }
    : target;
}
