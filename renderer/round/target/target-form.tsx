/** What to play for, whom to hold the game against, and how much form varies from day to day. */

import { courseHandicap } from '../../../core/round/handicap.ts';
import { FORM_SD_STROKES } from '../../../core/round/score-distribution.ts';
import { Choice } from '../../panels/choice.tsx';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { firstScore, parOf, ratingOf, strokesFor } from '../state/planned-holes.ts';
import type { TargetKind } from '../state/round-state.ts';
import { useRound, useRoundDispatch } from '../state/use-round.ts';

const KINDS: readonly (readonly [TargetKind, string])[] = [
  ['beat', 'Beat a score'],
  ['score', 'A score or fewer'],
  ['net-par', 'Net par'],
  ['handicap', 'Play to a handicap'],
];

export function TargetForm() {
  const wishes = useRound((state) => state.wishes);
  const course = useApp((state) => state.course?.value ?? null);
  const player = useApp((state) => state.player?.value ?? null);
  const dispatch = useRoundDispatch();
  if (course === null) return null;
  const wish = (change: Partial<typeof wishes>): void => dispatch({ type: 'wished', change });
  const par = parOf(course.holes);
  const isRated = wishes.targetKind === 'net-par' || wishes.targetKind === 'handicap';
  return (
    <section class="round-form" aria-label="What to play for">
      <Choice
        label="Kind of target"
        name="target-kind"
        value={wishes.targetKind}
        entries={KINDS}
        choose={(targetKind) => wish({ targetKind })}
      />
      <div class="form-line">
        {(wishes.targetKind === 'beat' || wishes.targetKind === 'score') && (
          <NumberField
            name={wishes.targetKind === 'beat' ? 'Beat' : 'Score'}
            value={wishes.score}
            usual={String(firstScore(course, player))}
            least={course.holes.length}
            most={300}
            change={(score) => wish({ score })}
          />
        )}
        {wishes.targetKind === 'handicap' && (
          <NumberField
            name="Handicap aimed at"
            value={wishes.aim}
            usual={String(player?.handicap ?? 18)}
            least={-10}
            most={54}
            step={0.1}
            change={(aim) => wish({ aim })}
          />
        )}
        {isRated && (
          <>
            <NumberField
              name="Course rating"
              value={wishes.courseRating}
              usual={String(par)}
              least={20}
              most={90}
              step={0.1}
              change={(courseRating) => wish({ courseRating })}
            />
            <NumberField
              name="Slope"
              value={wishes.slopeRating}
              usual="113"
              least={55}
              most={155}
              change={(slopeRating) => wish({ slopeRating })}
            />
          </>
        )}
      </div>
      {isRated && (
        <p class="faint">
          Handicap index {player?.handicap ?? '18 (the player file has none)'}: course handicap{' '}
          {courseHandicap(player?.handicap ?? 18, ratingOf(wishes, course))}, playing handicap in stroke play{' '}
          {strokesFor(wishes, course, player)} (World Handicap System, 95 %).
          {wishes.courseRating === null &&
            ' Without the rating on the scorecard the course counts as rated at its par, slope 113.'}
        </p>
      )}
      <div class="form-line">
        <NumberField
          name="Form varies by"
          value={wishes.formSd === FORM_SD_STROKES ? null : wishes.formSd}
          usual={FORM_SD_STROKES.toFixed(1)}
          least={0}
          most={10}
          step={0.1}
          change={(formSd) => wish({ formSd: formSd ?? FORM_SD_STROKES })}
        />
        <NumberField
          name="Peer’s handicap"
          value={wishes.peerHandicap}
          usual={String(player?.handicap ?? '')}
          least={-10}
          most={54}
          step={0.1}
          change={(peerHandicap) => wish({ peerHandicap })}
        />
        <Choice
          label="Peer"
          name="peer-group"
          value={wishes.peerGroup}
          entries={[
            ['men', 'men'],
            ['women', 'women'],
          ]}
          choose={(peerGroup) => wish({ peerGroup })}
        />
      </div>
    </section>
  );
}
