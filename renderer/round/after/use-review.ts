/** The review of a round, kept up to date as it is typed; work on another day tells how far it is and can be stopped. */

import { useEffect, useMemo, useState } from 'preact/hooks';
import { DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { dayKey } from '../../../core/conditions/day-words.ts';
import type { RoundDocument } from '../../../core/round/format.ts';
import type { RoundReview } from '../../../core/round/review.ts';
import { dayOfRound } from '../../../core/round/round-day.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { HoleReviews } from '../effects/review-holes.ts';
import { useRound, useRoundHoles } from '../state/use-round.ts';

export interface ReviewWork {
  /** Null until the first review is there. */
  readonly review: RoundReview | null;
  /** While holes are worked out for the round's own day. */
  readonly progress: { readonly done: number; readonly total: number } | null;
  readonly isStopped: boolean;
  readonly stop: () => void;
  readonly goOn: () => void;
}

export function useReview(round: RoundDocument): ReviewWork {
  const { pool } = useTools();
  const reviews = useMemo(() => new HoleReviews(pool), [pool]);
  const holes = useRoundHoles();
  const course = useApp((app) => app.course?.value.name);
  const day = useApp((app) => dayKey(app.history.present.conditions));
  const formSd = useRound((state) => state.wishes.formSd);
  const [review, setReview] = useState<RoundReview | null>(null);
  const [progress, setProgress] = useState<ReviewWork['progress']>(null);
  const [isStopped, setStopped] = useState(false);
  const isOtherDay = dayKey(dayOfRound(round) ?? DEFAULT_CONDITIONS) !== day;
  useEffect(() => {
    let isOld = false;
    const report = (done: number, total: number): void => {
      if (!isOld && isOtherDay) setProgress(done < total ? { done, total } : null);
    };
    const look = async (): Promise<void> => {
      const isSame = round.course.name === course;
      const found = await reviews.review(round, holes, isSame, formSd, report);
      if (isOld) return;
      setReview(found);
      setProgress(null);
    };
    void look();
    return () => {
      isOld = true;
    };
  }, [reviews, round, holes, course, formSd, isOtherDay, isStopped]);
  return {
    ...{ review, progress: isStopped ? null : progress, isStopped: isStopped && isOtherDay },
    stop: () => {
      reviews.stop(round);
      setStopped(true);
    },
    goOn: () => {
      reviews.goOn();
      setStopped(false);
    },
  };
}
