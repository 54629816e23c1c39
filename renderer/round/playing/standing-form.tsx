/** One tee and one score so far: what to play there, and what it is worth. */

import { useState } from 'preact/hooks';
import { startOf } from '../../../core/round/aim.ts';
import type { PlayingAnswer } from '../../workers/round-api.ts';
import { tenthText } from '../target/odds-panel.tsx';
import { Field } from '../../panels/field.tsx';
import { NumberField } from '../number-field.tsx';
import type { RoundHoles } from '../state/planned-holes.ts';
import { optionWords } from './option-words.ts';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly answer: PlayingAnswer;
  readonly holes: RoundHoles;
}

export function StandingForm({ answer, holes }: Props) {
  const words = useWords();
  const { aim } = answer.plan;
  const [index, setIndex] = useState(Math.min(holes.ready.length - 1, 16));
  const [typed, setTyped] = useState<number | null>(null);
  const at = answer.plan.holes[index];
  const hole = holes.ready[index];
  if (at === undefined || hole === undefined) return null;
  const likeliest = at.standings.reduce((best, one) => (one.reach > best.reach ? one : best));
  const soFarOf = (count: number): number => (aim.kind === 'score' ? startOf(aim) - count : count);
  const countOf = (soFar: number): number => (aim.kind === 'score' ? startOf(aim) - soFar : soFar);
  const wanted = typed === null ? likeliest.count : countOf(typed);
  const standing = at.standings.find(({ count }) => count === wanted);
  const name =
    aim.kind === 'score'
      ? words.round.playing.strokesSoFar
      : aim.kind === 'stableford'
        ? words.round.playing.pointsSoFar
        : words.round.playing.holesUp;
  const counts = at.standings.map(({ count }) => soFarOf(count));
  return (
    <section class="table-box" aria-label={words.round.playing.standing}>
      <h3>{words.round.playing.standingTitle}</h3>
      <div class="form-line standing-line">
        <Field
          name={words.round.hole}
          control={(id) => (
            <select
              id={id}
              value={index}
              onChange={(event) => {
                setIndex(Number(event.currentTarget.value));
                setTyped(null);
              }}
            >
              {holes.ready.map(({ hole: number }, i) => (
                <option key={number} value={i}>
                  {number}
                </option>
              ))}
            </select>
          )}
        />
        <NumberField
          name={name}
          value={typed}
          usual={String(soFarOf(likeliest.count))}
          least={Math.min(...counts)}
          most={Math.max(...counts)}
          change={setTyped}
        />
      </div>
      {standing === undefined ? (
        <p class="faint">
          {words.round.playing.cannotBe({ least: Math.min(...counts), most: Math.max(...counts) })}
        </p>
      ) : (
        <p>
          <strong>{optionWords(hole.plan, indexed(hole, standing.option), words)}</strong>,{' '}
          {words.round.playing.onAverageDay({ chance: tenthText(standing.chance, words) })}
          {standing.option === at.lowestMean
            ? words.round.playing.lowestToo
            : ` ${words.round.playing.instead} ${words.round.playing.insteadOf({
                chance: tenthText(standing.chanceByLowestMean, words),
                shot: optionWords(hole.plan, indexed(hole, at.lowestMean), words),
              })}`}
        </p>
      )}
    </section>
  );
}

/** The id of the option at this place among the tee's shots. */
function indexed(hole: RoundHoles['ready'][number], option: number): string {
  return hole.plan.options.filter(({ kind }) => kind === 'shot')[option]?.id ?? '';
}
