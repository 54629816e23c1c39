/** The day that the round was played under, and how far its holes are worked out for it. */

import { dayKey, dayWords } from '../../../core/conditions/day-words.ts';
import type { RoundDocument } from '../../../core/round/format.ts';
import { dayOfRound } from '../../../core/round/round-day.ts';
import { useApp } from '../../state/use-app.ts';
import { useWords } from '../../state/use-words.ts';
import type { ReviewWork } from './use-review.ts';

interface Props {
  readonly round: RoundDocument;
  readonly isFixed: boolean;
  readonly change: (label: string, round: RoundDocument) => void;
  readonly work: ReviewWork;
}

export function RoundDay({ round, isFixed, change, work: { progress, isStopped, stop, goOn } }: Props) {
  const words = useWords();
  const units = useApp((app) => app.settings.units);
  const now = useApp((app) => app.history.present.conditions);
  const told = words.day.ofRound;
  const day = dayOfRound(round);
  const isAsNow = day !== null && dayKey(day) === dayKey(now);
  return (
    <section class="round-day" aria-label={told.label}>
      <p>
        {day === null ? told.none : told.under({ day: dayWords(day, units, words) })}{' '}
        {!isAsNow && !isFixed && (
          <button
            type="button"
            class="small-button"
            onClick={() => change(told.step, { ...round, day: { ...now } })}
          >
            {told.take}
          </button>
        )}
      </p>
      {progress !== null && (
        <div class="work-line">
          <span role="status">{told.working(progress)}</span>
          <progress
            class="fine-progress"
            max={progress.total}
            value={progress.done}
            aria-label={told.working(progress)}
          />
          <button type="button" class="small-button" onClick={stop}>
            {told.stop}
          </button>
        </div>
      )}
      {isStopped && (
        <div class="work-line">
          <span role="status">{told.stopped}</span>
          <button type="button" class="small-button" onClick={goOn}>
            {told.goOn}
          </button>
        </div>
      )}
    </section>
  );
}
