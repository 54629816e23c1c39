/** Looks at the holes of a played round one after the other, each where its solution is held. */

import type { PlayedHoleRecord, RoundDocument } from '../../../core/round/format.ts';
import { plannedHole, reviewOf, type RoundReview } from '../../../core/round/review.ts';
import { type HoleReview, reviewHole } from '../../../core/round/review-hole.ts';
import type { PlannerPool } from '../../workers/planner-pool.ts';
import type { RoundHoles } from '../state/planned-holes.ts';

/** Reviews that still hold, by what was typed and the solution it was held against. */
export class HoleReviews {
  private readonly known = new WeakMap<
    PlayedHoleRecord,
    { readonly key: string; readonly review: HoleReview }
  >();

  constructor(private readonly pool: PlannerPool) {}

  /** `sameCourse`: the solved holes are those that the round was played on; otherwise only totals are compared. */
  async review(
    round: RoundDocument,
    holes: RoundHoles,
    sameCourse: boolean,
    formSd: number,
  ): Promise<RoundReview> {
    const reviews = await Promise.all(
      round.played.map(async (played): Promise<HoleReview> => {
        const ready = sameCourse ? holes.ready.find(({ hole }) => hole === played.hole) : undefined;
        const planned = plannedHole(round, played.hole);
        const seed = round.plan?.seed ?? 'review';
        const key = `${ready?.result.key ?? 'totals'} ${planned?.chosen ?? ''}`;
        const known = this.known.get(played);
        if (known?.key === key) return known.review;
        const hasPlaces = (played.shots ?? []).length > 0;
        const looked =
          ready === undefined || !hasPlaces
            ? null
            : await this.pool.deskOf(played.hole).reviewHole(ready.result.key, played, planned ?? null, seed);
        const review = looked ?? reviewHole(played, planned, null, seed);
        this.known.set(played, { key, review });
        return review;
      }),
    );
    return reviewOf(round, reviews, formSd);
  }
}
