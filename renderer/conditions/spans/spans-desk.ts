/** A planner's desk that also tells how far the day may change, in slices beside its other work. */

import type { Course } from '../../../core/course/model.ts';
import { planFromSpot } from '../../../core/plan/options.ts';
import { type ConditionSpan, conditionSpans } from '../../../core/plan/sensitivity.ts';
import { WorthDesk } from '../../bag/work/worth-desk.ts';
import type { SpotQuestion } from '../../workers/planner-api.ts';
import type { Solved } from '../../workers/planner-desk.ts';
import type { ShareReport } from '../../workers/round-api.ts';
import { type QueueMeans, SolveQueue } from '../../workers/solve-queue.ts';
import type { SpansApi } from './spans-api.ts';

export class SpansDesk extends WorthDesk implements SpansApi {
  private readonly spans: SolveQueue<number, readonly ConditionSpan[]>;

  constructor(means: QueueMeans) {
    super(means);
    this.spans = new SolveQueue(means);
  }

  async daySpans(question: SpotQuestion, report: ShareReport): Promise<readonly ConditionSpan[] | null> {
    this.spans.cancelAll();
    const solved = this.solvedOf(question.resultKey);
    const { opened } = this;
    if (solved === null || solved.rough || opened === null) return null;
    const ended = await this.spans.add({
      ...{ key: 'day spans', group: solved.hole, quick: false, report },
      steps: spansOf(opened.course, solved, question),
    });
    return ended.finished && this.opened === opened ? ended.value : null;
  }

  stopDaySpans(): Promise<void> {
    this.spans.cancelAll();
    return Promise.resolve();
  }
}

function* spansOf(
  course: Course,
  { prepared, field }: Solved,
  { ball, strokesTaken }: SpotQuestion,
): Generator<number, readonly ConditionSpan[], void> {
  yield 0;
  // The same plan as on screen: same spot, same shots.
  const plan = planFromSpot(prepared, field, prepared.frame.toSpot(ball), { strokesTaken });
  return yield* conditionSpans(course, prepared, field, plan);
}
