/** The page that printing gives: the hole drawn, the advice, the options. On screen it is not there. */

import { placeName } from '../../core/course/assumed-places.ts';
import { useEffect, useState } from 'preact/hooks';
import { polylineLengthM } from '../../core/course/ellipsoid.ts';
import type { AppState } from '../state/app-state.ts';
import { shown } from '../state/history.ts';
import {
  errorText,
  lengthText,
  strokesText,
  toHoleText,
  wholePercents,
  chanceText,
} from '../state/measures.ts';
import { optionOf, paintedShot, teeOf } from '../state/selectors.ts';
import { useTools } from '../state/use-app.ts';
import { plannedDay } from '../panels/recommendation.tsx';
import { aimPhrase, planFrame } from '../panels/plan-frame.ts';
import { shotPhrase, troubleList } from '../panels/shot-words.ts';
import { HoleDrawing } from './hole-drawing.tsx';
import { useWords } from '../state/use-words.ts';
import { reasonWords } from '../../core/plan/recommend.ts';

/** Options that fit the page. */
const MOST_OPTIONS = 12;

export function HoleSheet() {
  const { store } = useTools();
  // Drawn only for printing: a large SVG that follows each change of the state would slow a drag.
  const [state, setState] = useState<AppState | null>(null);
  useEffect(() => {
    const draw = (): void => setState(store.state());
    const drop = (): void => setState(null);
    const media = window.matchMedia('print');
    const turned = (): void => (media.matches ? draw() : drop());
    window.addEventListener('beforeprint', draw);
    window.addEventListener('afterprint', drop);
    media.addEventListener('change', turned);
    return () => {
      window.removeEventListener('beforeprint', draw);
      window.removeEventListener('afterprint', drop);
      media.removeEventListener('change', turned);
    };
  }, [store]);
  return <div class="paper">{state === null ? null : <Page state={state} />}</div>;
}

function Page({ state }: { readonly state: AppState }) {
  const words = useWords();
  const found = planFrame(state);
  const course = state.course?.value;
  if (found === null || course === undefined) {
    return <p>{words.sheet.nothing}</p>;
  }
  const { hole, plan, frame, from, pin } = found;
  const { units } = state.settings;
  const tee = teeOf(hole, shown(state.history).teeName);
  const shot = paintedShot(state);
  const option = optionOf(state, shot);
  const recommended = optionOf(state, plan.recommendation.optionId);
  const lengthM = polylineLengthM([tee.at, ...hole.line.slice(1)]);
  const day = plannedDay(state);
  return (
    <>
      <header>
        <h1>
          {course.name}, {words.round.entry.holeName({ number: hole.number })}
          {hole.name === undefined ? '' : `: ${hole.name}`}
        </h1>
        <p>
          {words.plan.parIs({ par: hole.par })}
          {hole.strokeIndex === undefined ? '' : `, ${words.plan.strokeIndex({ index: hole.strokeIndex })}`},{' '}
          {lengthText(lengthM, units)}{' '}
          {words.sheet.from({ tee: placeName(tee.name, words), player: state.player?.value.name ?? '' })}
          {course.invented ? ` ${words.sheet.invented}` : ''}
        </p>
        {day !== null && <p>{words.plan.forThisDay({ day })}.</p>}
      </header>
      <div class="paper-body">
        <HoleDrawing
          course={course}
          hole={hole}
          frame={frame}
          ball={from}
          pin={pin}
          option={option}
          ellipses={shot === null ? [] : (state.answers.paint[shot]?.ellipses ?? [])}
          units={units}
        />
        <div>
          <p>
            {words.sheet.ball({
              where: words.golf.whereItLies[plan.lie],
              length: toHoleText(plan.distanceToHoleM, plan.lie === 'green', units, words),
            })}
          </p>
          {recommended !== null && (
            <p>
              <strong>{words.sheet.recommended({ shot: shotPhrase(recommended, words) })}</strong>,{' '}
              {aimPhrase(state, recommended)}. {reasonWords(plan, words)}
            </p>
          )}
          <table>
            <thead>
              <tr>
                <th scope="col">{words.plan.columns.shot}</th>
                <th scope="col">{words.plan.columns.strokes}</th>
                <th scope="col">{words.sheet.odds}</th>
                <th scope="col">{words.plan.columns.trouble}</th>
                <th scope="col">{words.plan.columns.leaves}</th>
              </tr>
            </thead>
            <tbody>
              {plan.options.slice(0, MOST_OPTIONS).map((each) => (
                <tr key={each.id}>
                  <th scope="row">
                    {shotPhrase(each, words)}
                    <small> {aimPhrase(state, each)}</small>
                  </th>
                  <td>
                    {strokesText(each.meanStrokes, words)} ± {errorText(each.standardError, words)}
                    {each.tooCloseToCall ? ` ${words.sheet.close}` : ''}
                  </td>
                  <td>
                    {wholePercents([
                      each.parOdds.parOrBetter,
                      each.parOdds.bogey,
                      each.parOdds.doubleOrWorse,
                    ]).join(' / ')}
                  </td>
                  <td>
                    {troubleList(each.trouble, true, words)
                      .map((entry) => `${entry.words} ${chanceText(entry.chance)}`)
                      .join(', ')}
                  </td>
                  <td>{toHoleText(each.leave.medianM, plan.lie === 'green', units, words)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p class="paper-note">{words.sheet.foot({ seed: plan.seed })}</p>
        </div>
      </div>
    </>
  );
}
