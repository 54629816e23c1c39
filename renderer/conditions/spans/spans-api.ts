/** What a planner's worker does for the day: how far it may change before the recommendation does. */

import type { ConditionSpan } from '../../../core/plan/sensitivity.ts';
import type { WorthApi } from '../../bag/work/worth-api.ts';
import type { SpotQuestion } from '../../workers/planner-api.ts';
import type { ShareReport } from '../../workers/round-api.ts';

export interface SpansApi extends WorthApi {
  /**
   * In slices beside other work. Null where the hole is not there in full, or where it was stopped or another such question has
   * taken its place.
   */
  daySpans(question: SpotQuestion, report: ShareReport): Promise<readonly ConditionSpan[] | null>;
  stopDaySpans(): Promise<void>;
}
