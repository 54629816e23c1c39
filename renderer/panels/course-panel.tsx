/** The whole course in short: length, par, what the plan expects, hole by hole. */

import { polylineLengthM } from '../../core/course/ellipsoid.ts';
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

interface HoleLine {
  readonly hole: Hole;
  readonly lengthM: number;
  readonly shot: string | null;
  readonly strokes: number | null;
}

const linesOf = remember(
  (holes: readonly Hole[], teeName: string | null, work: AppState['work']): readonly HoleLine[] =>
    holes.map((hole) => {
      const result = work[hole.number]?.status === 'ready' ? (work[hole.number]?.result ?? null) : null;
      const best = result === null ? null : recommendedOf(result);
      return {
        hole,
        lengthM: polylineLengthM([teeOf(hole, teeName).at, ...hole.line.slice(1)]),
        shot: best === null ? null : shotPhrase(best),
        strokes: best?.meanStrokes ?? null,
      };
    }),
);
const NO_HOLES: readonly Hole[] = [];

export function CoursePanel() {
  const name = useApp((state) => state.course?.value.name ?? '');
  const invented = useApp((state) => state.course?.value.invented === true);
  const facts = useApp(courseFacts);
  const lines = useApp((state) =>
    linesOf(state.course?.value.holes ?? NO_HOLES, shown(state.history).teeName, state.work),
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
            {invented && <span class="tag">invented demo</span>}
          </p>
        </div>
        <div class="hole-choices">
          <TeeChoice hole={null} />
        </div>
      </header>
      <DayControl />
      <section class="advice-card" aria-label="Expected score">
        <p class="kicker">
          {planned.length === lines.length ? 'Expected under the plan' : 'Expected so far under the plan'}
        </p>
        <div class="advice-main">
          <h3>
            <span class="advice-name">{planned.length === 0 ? 'Not yet known' : strokesText(strokes)}</span>
          </h3>
          {planned.length > 0 && <p class="advice-cost">{signedText(strokes - par)} to par</p>}
        </div>
        <p class="advice-reason">
          {planned.length === lines.length
            ? 'Strokes over all holes, each played as recommended from its tee. A single round comes out higher or lower: choose a hole for its odds.'
            : `${planned.length} of ${lines.length} holes are worked out so far; the sum is over these.`}
        </p>
      </section>
      <section class="options" aria-label="Holes in short">
        <table class="course-table">
          <thead>
            <tr>
              <th scope="col">Hole</th>
              <th scope="col" class="number">
                Par
              </th>
              <th scope="col" class="number">
                {unitShort(units)}
              </th>
              <th scope="col">From the tee</th>
              <th scope="col" class="number">
                Strokes
              </th>
              <th scope="col" class="number">
                To par
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
                <td class="number">{cost === null ? '' : strokesText(cost)}</td>
                <td class="number">{cost === null ? '' : signedText(cost - hole.par)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
