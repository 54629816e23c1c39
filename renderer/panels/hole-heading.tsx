/** Which hole this is, and from which tee to which hole position it is played. */

import { placeName } from '../../core/course/assumed-places.ts';
import { polylineLengthM } from '../../core/course/ellipsoid.ts';
import type { Hole } from '../../core/course/model.ts';
import type { AppState } from '../state/app-state.ts';
import { shown, situationOfHole, withHole } from '../state/history.ts';
import { lengthText } from '../state/measures.ts';
import { teeNames, teeOf } from '../state/selectors.ts';
import { useApp, useDispatch, useTools } from '../state/use-app.ts';
import { Field } from './field.tsx';
import { useWords, wordsOf } from '../state/use-words.ts';

export function HoleHeading({ hole }: { readonly hole: Hole }) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const teeName = useApp((state) => shown(state.history).teeName);
  const invented = useApp((state) => state.course?.value.invented === true);
  const tee = teeOf(hole, teeName);
  const lengthM = polylineLengthM([tee.at, ...hole.line.slice(1)]);
  return (
    <header class="hole-heading">
      <span class="big-number" aria-hidden="true">
        {hole.number}
      </span>
      <div class="hole-title">
        <h2>
          <span class="unseen">{words.bar.holeTitle({ number: hole.number })}: </span>
          {hole.name ?? words.bar.holeTitle({ number: hole.number })}
        </h2>
        <p>
          {words.plan.parIs({ par: hole.par })}
          {hole.strokeIndex === undefined ? '' : ` · ${words.plan.strokeIndex({ index: hole.strokeIndex })}`}{' '}
          · {lengthText(lengthM, units)}
          {invented && <span class="tag">{words.plan.inventedDemo}</span>}
        </p>
      </div>
      <div class="hole-choices">
        <TeeChoice hole={hole} />
        <PositionChoice hole={hole} />
      </div>
    </header>
  );
}

/** The tees for the whole course; on a hole, only those that it has can be chosen. */
export function TeeChoice({ hole }: { readonly hole: Hole | null }) {
  const words = useWords();
  const { store } = useTools();
  const chosen = useApp((state) => shown(state.history).teeName);
  const names = useApp((state) => teeNames(state.course?.value ?? null));
  return (
    <Field
      name={words.plan.tee}
      control={(id) => (
        <select
          id={id}
          value={hole === null ? (chosen ?? names[0] ?? '') : teeOf(hole, chosen).name}
          onChange={(event) => {
            const { history } = store.state();
            const teeName = event.currentTarget.value;
            const situation = { ...history.present, teeName };
            store.dispatch({
              type: 'situation-taken',
              situation,
              label: words.plan.playFromTees({ name: placeName(teeName, words) }),
            });
          }}
        >
          {names.map((name) => (
            <option
              key={name}
              value={name}
              disabled={hole !== null && !hole.tees.some((tee) => tee.name === name)}
            >
              {placeName(name, words)}
            </option>
          ))}
        </select>
      )}
    />
  );
}

const OWN_PLACE = '\u0000own place';

function PositionChoice({ hole }: { readonly hole: Hole }) {
  const words = useWords();
  const dispatch = useDispatch();
  const { store } = useTools();
  const position = useApp((state) => situationOfHole(shown(state.history), hole.number).position);
  const isOwn = position !== null && typeof position !== 'string';
  const value = isOwn ? OWN_PLACE : (position ?? hole.positions[0]?.name ?? '');
  return (
    <Field
      name={words.plan.holePosition}
      control={(id) => (
        <select
          id={id}
          value={value}
          onChange={(event) => {
            const name = event.currentTarget.value;
            if (name === OWN_PLACE) return;
            const situation = withHole(store.state().history.present, hole.number, { position: name });
            dispatch({
              type: 'situation-taken',
              situation,
              label: words.plan.positionTaken({ name: placeName(name, words), hole: hole.number }),
            });
          }}
        >
          {hole.positions.map((each) => (
            <option key={each.name} value={each.name}>
              {placeName(each.name, words)}
            </option>
          ))}
          {isOwn && <option value={OWN_PLACE}>{words.plan.whereYouPutIt}</option>}
        </select>
      )}
    />
  );
}

/** `18 holes, par 70`. */
export function courseFacts(state: AppState): string {
  const holes = state.course?.value.holes ?? [];
  const par = holes.reduce((sum, hole) => sum + hole.par, 0);
  return wordsOf(state).plan.courseFacts({ holes: holes.length, par });
}
