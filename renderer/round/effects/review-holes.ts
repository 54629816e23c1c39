/** Looks at the holes of a played round one after the other, each where its solution is held. */

import { DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { dayKey } from '../../../core/conditions/day-words.ts';
import type { PlayedHoleRecord, RoundDocument } from '../../../core/round/format.ts';
import { plannedHole, reviewOf, type RoundReview } from '../../../core/round/review.ts';
import { type HoleReview, reviewHole } from '../../../core/round/review-hole.ts';
import { dayOfRound } from '../../../core/round/round-day.ts';
import type { PlannerPool } from '../../workers/planner-pool.ts';
import type { RoundHoles } from '../state/planned-holes.ts';

/** Reviews that still hold, by what was typed and the solution it was held against. */
export class HoleReviews {
  private readonly known = new WeakMap<
    PlayedHoleRecord,
    { readonly key: string; readonly review: HoleReview }
  >();

  /** A day for which no more holes are to be worked out. */
  private stoppedDay: string | null = null;

  constructor(private readonly pool: PlannerPool) {}

  /**
   * Against the day that the round keeps, an ordinary one where it keeps none. `sameCourse`: the solved holes are those that
   * the round was played on; otherwise only totals are compared. `report`: how many of how many holes are looked at.
   */
  async review(
    round: RoundDocument,
    holes: RoundHoles,
    sameCourse: boolean,
    formSd: number,
    report: (done: number, total: number) => void = () => undefined,
  ): Promise<RoundReview> {
    const day = dayOfRound(round) ?? DEFAULT_CONDITIONS;
    let done = 0;
    const reviews = await Promise.all(
      round.played.map(async (played): Promise<HoleReview> => {
        const ready = sameCourse ? holes.ready.find(({ hole }) => hole === played.hole) : undefined;
        const planned = plannedHole(round, played.hole);
        const seed = round.plan?.seed ?? 'review';
        const key = `${ready?.result.key ?? 'totals'} ${planned?.chosen ?? ''} ${dayKey(day)}`;
        const known = this.known.get(played);
        if (known?.key === key) return known.review;
        const hasPlaces = (played.shots ?? []).length > 0;
        const isStopped =
          this.stoppedDay === dayKey(day) &&
          ready !== undefined &&
          dayKey(ready.result.conditions) !== this.stoppedDay;
        const looked =
          ready === undefined || !hasPlaces || isStopped
            ? null
            : await this.pool
                .deskOf(played.hole)
                .reviewHole(ready.result.key, played, planned ?? null, seed, day);
        done += 1;
        report(done, round.played.length);
        const review = looked ?? reviewHole(played, planned, null, seed);
        // One that was stopped may be asked again.
        if (looked !== null || ready === undefined || !hasPlaces) this.known.set(played, { key, review });
        return review;
      }),
    );
    return reviewOf(round, reviews, formSd);
  }

  /** Holes that are not worked out for the round's day are compared by their totals instead, until `goOn`. */
  stop(round: RoundDocument): void {
    this.stoppedDay = dayKey(dayOfRound(round) ?? DEFAULT_CONDITIONS);
    for (let i = 0; i < this.pool.workers; i++) void this.pool.deskOf(i).cancelReviews();
  }

  goOn(): void {
    this.stoppedDay = null;
  }
}
