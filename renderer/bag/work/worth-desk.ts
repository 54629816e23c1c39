/** A planner's desk that also answers what more measured shots would be worth, in slices beside its other work. */

import type { SolveProgress, Spot } from '../../../core/plan/model.ts';
import { planFromSpot } from '../../../core/plan/options.ts';
import { choiceOf } from '../../../core/plan/choices.ts';
import type { PreparedHole } from '../../../core/plan/prepare.ts';
import { sampleShot } from '../../../core/plan/sample.ts';
import type { StrokesField } from '../../../core/plan/strokes-field.ts';
import { type SpotValue, valueOfShots } from '../../../core/plan/value-of-shots.ts';
import type { Solved } from '../../workers/planner-desk.ts';
import { RoundDesk } from '../../workers/round-desk.ts';
import type { ShareReport } from '../../workers/round-api.ts';
import { type QueueMeans, SolveQueue } from '../../workers/solve-queue.ts';
import type { WorthApi, WorthTask } from './worth-api.ts';

/** Posterior draws and shots per choice: a spot takes a few seconds. */
const DRAWS = 128;
const SAMPLES = 192;
/** Spots of a hole: the tee, and two more on a long one. */
const MOST_SPOTS = 3;
/** So near the hole there is hardly a choice of clubs left, metres. */
const NEAR_M = 50;
/** Balls of which the typical one is taken. */
const BALLS = 99;

export class WorthDesk extends RoundDesk implements WorthApi {
  private readonly worths: SolveQueue<number, readonly SpotValue[]>;

  constructor(means: QueueMeans) {
    super(means);
    this.worths = new SolveQueue(means);
  }

  async worth(task: WorthTask, report: ShareReport): Promise<readonly SpotValue[] | null> {
    const solved = this.solvedOf(task.resultKey);
    if (solved === null || solved.rough) return null;
    const ended = await this.worths.add({
      ...{ key: `worth ${task.resultKey}`, group: solved.hole, quick: false, report },
      steps: worthOf(solved, task.shots),
    });
    return ended.finished ? ended.value : null;
  }

  stopWorth(): Promise<void> {
    this.worths.cancelAll();
    return Promise.resolve();
  }
}

function* worthOf({ prepared, field }: Solved, shots: number): Generator<number, readonly SpotValue[], void> {
  yield 0;
  const posterior = prepared.player.posterior?.();
  if (posterior === undefined) return [];
  const spots = typicalSpots(prepared, field);
  const values: SpotValue[] = [];
  for (const [i, spot] of spots.entries()) {
    yield i / spots.length;
    const steps = valueOfShots(prepared, field, spot, posterior, { shots, draws: DRAWS, samples: SAMPLES });
    for (;;) {
      const step = steps.next();
      if (step.done === true) {
        values.push(step.value);
        break;
      }
      yield (i + shareOf(step.value)) / spots.length;
    }
  }
  return values;
}

function shareOf({ done, total }: SolveProgress): number {
  return total === 0 ? 0 : done / total;
}

/** The tee, then where the middle one of the balls ends, played as recommended, until the hole is near. */
export function typicalSpots(prepared: PreparedHole, field: StrokesField): readonly Spot[] {
  const spots: Spot[] = [prepared.tee];
  while (spots.length < MOST_SPOTS) {
    const spot = spots.at(-1)!;
    const plan = planFromSpot(prepared, field, spot, { samples: 256 });
    const option = plan.options.find(({ id }) => id === plan.recommendation.optionId);
    if (option?.kind !== 'shot' || option.clubKind === 'putter') break;
    const next = typicalEnd(prepared, spot, choiceOf(prepared, option));
    if (next === null || toPin(prepared, next) < NEAR_M || toPin(prepared, next) >= toPin(prepared, spot))
      break;
    spots.push(next);
  }
  return spots;
}

function typicalEnd(
  prepared: PreparedHole,
  spot: Spot,
  choice: Parameters<typeof sampleShot>[2],
): Spot | null {
  const { count, end } = sampleShot(prepared, spot, choice, BALLS);
  if (count === 0) return null;
  const balls = Array.from({ length: count }, (_, i) => ({ x: end[2 * i]!, y: end[2 * i + 1]! }));
  balls.sort((a, b) => toPin(prepared, a) - toPin(prepared, b));
  return balls[count >> 1]!;
}

function toPin({ pin }: PreparedHole, { x, y }: Spot): number {
  return Math.hypot(x - pin.x, y - pin.y);
}
