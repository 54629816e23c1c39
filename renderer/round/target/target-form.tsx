/** What to play for, whom to hold the game against, and how much form varies from day to day. */

import { courseHandicap } from '../../../core/round/handicap.ts';
import { FORM_SD_STROKES } from '../../../core/round/score-distribution.ts';
import { Choice } from '../../panels/choice.tsx';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { firstScore, ratingOf, strokesFor } from '../state/planned-holes.ts';
import { RatingFields } from './rating-fields.tsx';
import type { TargetKind } from '../state/round-state.ts';
import { useRound, useRoundDispatch } from '../state/use-round.ts';
import { useWords } from '../../state/use-words.ts';

const KINDS: readonly TargetKind[] = ['beat', 'score', 'net-par', 'handicap'];

export function TargetForm() {
  const words = useWords();
  const wishes = useRound((state) => state.wishes);
  const course = useApp((state) => state.course?.value ?? null);
  const player = useApp((state) => state.player?.value ?? null);
  const dispatch = useRoundDispatch();
  if (course === null) return null;
  const wish = (change: Partial<typeof wishes>): void => dispatch({ type: 'wished', change });
  const isRated = wishes.targetKind === 'net-par' || wishes.targetKind === 'handicap';
  return (
    <section class="round-form" aria-label={words.round.target.title}>
      <Choice
        label={words.round.target.kind}
        name="target-kind"
        value={wishes.targetKind}
        entries={KINDS.map((kind) => [kind, words.round.target.kinds[kind]])}
        choose={(targetKind) => wish({ targetKind })}
      />
      <div class="form-line">
        {(wishes.targetKind === 'beat' || wishes.targetKind === 'score') && (
          <NumberField
            name={wishes.targetKind === 'beat' ? words.round.target.beat : words.round.score}
            value={wishes.score}
            usual={String(firstScore(course, player))}
            least={course.holes.length}
            most={300}
            change={(score) => wish({ score })}
          />
        )}
        {wishes.targetKind === 'handicap' && (
          <NumberField
            name={words.round.target.aimedAt}
            value={wishes.aim}
            usual={String(player?.handicap ?? 18)}
            least={-10}
            most={54}
            step={0.1}
            change={(aim) => wish({ aim })}
          />
        )}
        {isRated && <RatingFields />}
      </div>
      {isRated && (
        <p class="faint">
          {words.round.target.handicaps({
            index:
              player?.handicap === undefined
                ? words.round.target.noHandicap
                : words.figures.short(player.handicap, 1),
            course: courseHandicap(player?.handicap ?? 18, ratingOf(wishes, course)),
            playing: strokesFor(wishes, course, player),
          })}
          {wishes.courseRating === null && ` ${words.round.target.unrated}`}
        </p>
      )}
      <div class="form-line">
        <NumberField
          name={words.round.target.formVaries}
          value={wishes.formSd === FORM_SD_STROKES ? null : wishes.formSd}
          usual={words.figures.fixed(FORM_SD_STROKES, 1)}
          least={0}
          most={10}
          step={0.1}
          change={(formSd) => wish({ formSd: formSd ?? FORM_SD_STROKES })}
        />
        <NumberField
          name={words.round.target.peerHandicap}
          value={wishes.peerHandicap}
          usual={String(player?.handicap ?? '')}
          least={-10}
          most={54}
          step={0.1}
          change={(peerHandicap) => wish({ peerHandicap })}
        />
        <Choice
          label={words.round.target.peer}
          name="peer-group"
          value={wishes.peerGroup}
          entries={[
            ['men', words.round.target.men],
            ['women', words.round.target.women],
          ]}
          choose={(peerGroup) => wish({ peerGroup })}
        />
      </div>
    </section>
  );
}
