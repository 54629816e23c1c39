/** The round against its plan: what followed it, what luck and what skill, strokes gained or lost. */

import { useEffect, useMemo, useState } from 'preact/hooks';
import type { RoundDocument } from '../../../core/round/format.ts';
import type { ShotClass } from '../../../core/round/play-hole.ts';
import { type RoundReview, reviewWords } from '../../../core/round/review.ts';
import { signedText } from '../../state/measures.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { HoleReviews } from '../effects/review-holes.ts';
import { useRound, useRoundHoles } from '../state/use-round.ts';
import { useWords } from '../../state/use-words.ts';

export function useReview(round: RoundDocument): RoundReview | null {
  const { pool } = useTools();
  const reviews = useMemo(() => new HoleReviews(pool), [pool]);
  const holes = useRoundHoles();
  const course = useApp((app) => app.course?.value.name);
  const formSd = useRound((state) => state.wishes.formSd);
  const [review, setReview] = useState<RoundReview | null>(null);
  useEffect(() => {
    let isOld = false;
    const look = async (): Promise<void> => {
      const found = await reviews.review(round, holes, round.course.name === course, formSd);
      if (!isOld) setReview(found);
    };
    void look();
    return () => {
      isOld = true;
    };
  }, [reviews, round, holes, course, formSd]);
  return review;
}

interface Props {
  readonly review: RoundReview;
  /** The player's file is another than the one that the round was planned with. */
  readonly isOtherPlan: boolean;
}

export function ReviewPanel({ review, isOtherPlan }: Props) {
  const words = useWords();
  if (review.holes.length === 0) return <p class="faint">{words.round.review.begins}</p>;
  const classes = Object.entries(review.byClass) as [ShotClass, number][];
  return (
    <section class="table-box" aria-label={words.round.review.title}>
      <h3>{words.round.review.title}</h3>
      <ul class="review-words">
        {reviewWords(review, words).map((line) => (
          <li key={line}>{line}</li>
        ))}
        {classes.length > 0 && (
          <li>
            {words.round.review.known({
              classes: classes
                .map(([kind, gained]) => `${words.round.review.classes[kind]} ${signedText(gained, words)}`)
                .join(', '),
            })}
          </li>
        )}
      </ul>
      <p class="faint">
        {words.round.review.note}
        {isOtherPlan && ` ${words.round.review.otherPlan}`}
      </p>
    </section>
  );
}
