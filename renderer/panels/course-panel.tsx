/** The whole course in short: length, par, what the plan expects, hole by hole. */

import { polylineLengthM } from '../../core/course/ellipsoid.ts';
import type { Words } from '../../core/words/words.ts';
import type { Hole } from '../../core/course/model.ts';
import { DayControl } from '../conditions/day-control.tsx';
import type { AppState } from '../state/app-state.ts';
import { shown } from '../state/history.ts';
import { lengthNumber, lengthText, signedText, strokesText, unitShort } from '../state/measures.ts';
import { remember } from '../state/remember.ts';
import { teeOf } from '../state/selectors.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { recommendedOf } from './hole-list.tsx';
import { courseFacts, TeeChoice } from './hole-heading.tsx';
import { shotPhrase } from './shot-words.ts';
import { useWords, wordsOf } from '../state/use-words.ts';

interface HoleLine {
  readonly hole: Hole;
  readonly lengthM: number;
  readonly shot: string | null;
  readonly strokes: number | null;
}

const linesOf = remember(
  (
    holes: readonly Hole[],
    teeName: string | null,
    work: AppState['work'],
    words: Words,
  ): readonly HoleLine[] =>
    holes.map((hole) => {
      const result = work[hole.number]?.status === 'ready' ? (work[hole.number]?.result ?? null) : null;
      const best = result === null ? null : recommendedOf(result);
      return {
        hole,
        lengthM: polylineLengthM([teeOf(hole, teeName).at, ...hole.line.slice(1)]),
        shot: best === null ? null : shotPhrase(best, words),
        strokes: best?.meanStrokes ?? null,
      };
    }),
);
const NO_HOLES: readonly Hole[] = [];

export function CoursePanel() {
  const words = useWords();
  const name = useApp((state) => state.course?.value.name ?? '');
  const invented = useApp((state) => state.course?.value.invented === true);
  const facts = useApp(courseFacts);
  const lines = useApp((state) =>
    linesOf(state.course?.value.holes ?? NO_HOLES, shown(state.history).teeName, state.work, wordsOf(state)),
  );
  const units = useApp((state) => state.settings.units);
  const dispatch = useDispatch();
  const total = lines.reduce((sum, line) => sum + line.lengthM, 0);
  const planned = lines.filter((line) => line.strokes !== null);
  const strokes = planned.reduce((sum, line) => sum + (line.strokes ?? 0), 0);
  const par = planned.reduce((sum, line) => sum + line.hole.par, 0);
  return (
    <>
      <header class="hole-heading">
        <div class="hole-title">
          <h2>{name}</h2>
          <p>
            {facts} · {lengthText(total, units)}
            {invented && <span class="tag">{words.plan.inventedDemo}</span>}
          </p>
        </div>
        <div class="hole-choices">
          <TeeChoice hole={null} />
        </div>
      </header>
      <DayControl />
      <section class="advice-card" aria-label={words.plan.course.expectedScore}>
        <p class="kicker">
          {planned.length === lines.length ? words.plan.course.expected : words.plan.course.expectedSoFar}
        </p>
        <div class="advice-main">
          <h3>
            <span class="advice-name">
              {planned.length === 0 ? words.plan.course.notYetKnown : strokesText(strokes, words)}
            </span>
          </h3>
          {planned.length > 0 && (
            <p class="advice-cost">
              {words.plan.course.toPar({ difference: signedText(strokes - par, words) })}
            </p>
          )}
        </div>
        <p class="advice-reason">
          {planned.length === lines.length
            ? words.plan.course.overAll
            : words.plan.course.overSome({ ready: planned.length, total: lines.length })}
        </p>
      </section>
      <section class="options" aria-label={words.plan.course.inShort}>
        <table class="course-table">
          <thead>
            <tr>
              <th scope="col">{words.plan.holeWord}</th>
              <th scope="col" class="number">
                {words.plan.par}
              </th>
              <th scope="col" class="number">
                {unitShort(units)}
              </th>
              <th scope="col">{words.plan.course.fromTheTee}</th>
              <th scope="col" class="number">
                {words.plan.columns.strokes}
              </th>
              <th scope="col" class="number">
                {words.plan.course.toParColumn}
              </th>
            </tr>
          </thead>
          <tbody>
            {lines.map(({ hole, lengthM, shot, strokes: cost }) => (
              <tr
                key={hole.number}
                class="option"
                onClick={() => dispatch({ type: 'hole-shown', hole: hole.number })}
              >
                <th scope="row">
                  <button
                    type="button"
                    class="option-name"
                    onClick={() => dispatch({ type: 'hole-shown', hole: hole.number })}
                  >
                    {hole.number} <small>{hole.name ?? ''}</small>
                  </button>
                </th>
                <td class="number">{hole.par}</td>
                <td class="number">{lengthNumber(lengthM, units)}</td>
                <td>{shot ?? <span class="faint">…</span>}</td>
                <td class="number">{cost === null ? '' : strokesText(cost, words)}</td>
                <td class="number">{cost === null ? '' : signedText(cost - hole.par, words)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
