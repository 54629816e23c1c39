/** What a planner's worker does for the player's room: what more measured shots would be worth on a hole. */

import type { SpotValue } from '../../../core/plan/value-of-shots.ts';
import type { RoundApi, ShareReport } from '../../workers/round-api.ts';

export interface WorthTask {
  /** The worked-out hole to be asked, by its key. */
  readonly resultKey: string;
  /** Measured shots that would be added. */
  readonly shots: number;
}

export interface WorthApi extends RoundApi {
  /** One value per spot of the hole: the tee, and where the ball typically lies after. Null where it was stopped. */
  worth(task: WorthTask, report: ShareReport): Promise<readonly SpotValue[] | null>;
  stopWorth(): Promise<void>;
}
