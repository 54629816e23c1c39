/** Course and slope rating of the tees played, wherever strokes follow from them. */

import { useApp } from '../../state/use-app.ts';
import { useWords } from '../../state/use-words.ts';
import { NumberField } from '../number-field.tsx';
import { parOf } from '../state/planned-holes.ts';
import { useRound, useRoundDispatch } from '../state/use-round.ts';

export function RatingFields() {
  const words = useWords();
  const wishes = useRound((state) => state.wishes);
  const course = useApp((state) => state.course?.value ?? null);
  const dispatch = useRoundDispatch();
  return (
    <>
      <NumberField
        name={words.round.target.rating}
        value={wishes.courseRating}
        usual={course === null ? '' : String(parOf(course.holes))}
        least={20}
        most={90}
        step={0.1}
        change={(courseRating) => dispatch({ type: 'wished', change: { courseRating } })}
      />
      <NumberField
        name={words.round.target.slope}
        value={wishes.slopeRating}
        usual="113"
        least={55}
        most={155}
        change={(slopeRating) => dispatch({ type: 'wished', change: { slopeRating } })}
      />
    </>
  );
}
