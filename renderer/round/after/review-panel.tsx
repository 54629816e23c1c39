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

const CLASS_WORDS: Readonly<Record<ShotClass, string>> = {
  tee: 'tee shots',
  approach: 'approaches',
  short: 'short game',
  putt: 'putts',
};

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
  if (review.holes.length === 0)
    return <p class="faint">The comparison with the plan begins with the first score.</p>;
  const classes = Object.entries(review.byClass) as [ShotClass, number][];
  return (
    <section class="table-box" aria-label="Against the plan">
      <h3>Against the plan</h3>
      <ul class="review-words">
        {reviewWords(review).map((words) => (
          <li key={words}>{words}</li>
        ))}
        {classes.length > 0 && (
          <li>
            Of the shots whose places are known:{' '}
            {classes.map(([kind, gained]) => `${CLASS_WORDS[kind]} ${signedText(gained, words)}`).join(', ')}.
          </li>
        )}
      </ul>
      <p class="faint">
        Gained and lost are against your own expected strokes, not somebody else’s. One round says little
        about skill: the page over rounds says what lasts.
        {isOtherPlan &&
          ' The player’s shots have changed since this round was planned: strokes with places are held against the plan as it is now.'}
      </p>
    </section>
  );
}
