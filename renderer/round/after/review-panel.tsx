/** The round against its plan: what followed it, what luck and what skill, strokes gained or lost. */

import type { ShotClass } from '../../../core/round/play-hole.ts';
import { type RoundReview, reviewWords } from '../../../core/round/review.ts';
import { signedText } from '../../state/measures.ts';
import { useWords } from '../../state/use-words.ts';

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
