/** Two players from the same tee of one hole: what each should hit, what it costs, how the odds differ. */

import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Option, SpotPlan } from '../../../core/plan/model.ts';
import type { Hole } from '../../../core/course/model.ts';
import { Field } from '../../panels/field.tsx';
import { OddsBar } from '../../panels/odds-bar.tsx';
import { shotPhrase } from '../../panels/shot-words.ts';
import { shown } from '../../state/history.ts';
import { chanceText, errorText, lengthText, signedText, strokesText } from '../../state/measures.ts';
import { currentDay, positionOf, teeOf } from '../../state/selectors.ts';
import { useApp } from '../../state/use-app.ts';
import { type Compared, comparePlayers, type CompareRun } from './compare-run.ts';
import type { Pupil } from './pupil-list.ts';
import { WorkNote } from '../work-note.tsx';
import { useWords } from '../../state/use-words.ts';

interface Answer {
  readonly names: readonly [string, string];
  readonly hole: number;
  readonly compared: Compared;
}

const NO_HOLES: readonly Hole[] = [];

export function ComparePlayers({
  pupils,
  open,
}: {
  readonly pupils: readonly Pupil[];
  readonly open: string | null;
}) {
  const words = useWords();
  const course = useApp((state) => state.course);
  const holes = useApp((state) => state.course?.value.holes ?? NO_HOLES);
  const onScreen = useApp((state) => state.view.hole);
  const teeName = useApp((state) => shown(state.history).teeName);
  const conditions = useApp(currentDay);
  const seed = useApp((state) => state.seed);
  const [first, setFirst] = useState<string | null>(null);
  const [second, setSecond] = useState<string | null>(null);
  const [number, setNumber] = useState<number | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const [answer, setAnswer] = useState<Answer | string | null>(null);
  const run = useRef<CompareRun | null>(null);
  useEffect(() => () => run.current?.stop(), []);
  const a = pupils.find(({ entry }) => entry.token === (first ?? open)) ?? pupils[0];
  const b =
    pupils.find(({ entry }) => entry.token === second) ??
    pupils.find(({ entry }) => entry.token !== a?.entry.token);
  const hole = holes.find((one) => one.number === (number ?? onScreen)) ?? holes[0];
  if (course === null || hole === undefined)
    return (
      <section class="bag-card" aria-label={words.player.compare.name}>
        <h2>{words.player.compare.title}</h2>
        <p class="faint">{words.player.compare.openCourse}</p>
      </section>
    );
  if (a === undefined || b === undefined)
    return (
      <section class="bag-card" aria-label={words.player.compare.name}>
        <h2>{words.player.compare.title}</h2>
        <p class="faint">{words.player.compare.onlyOne}</p>
      </section>
    );
  const start = (): void => {
    setShare(0);
    setAnswer(null);
    const started = comparePlayers(
      course.text,
      [a.text, b.text],
      {
        hole: hole.number,
        teeName: teeOf(hole, teeName).name,
        position: positionOf(hole, null).name,
        conditions,
        seed,
      },
      setShare,
      words,
    );
    run.current = started;
    void started.done.then((compared) => {
      if (run.current !== started) return;
      run.current = null;
      setShare(null);
      if (compared === null) return;
      setAnswer(
        typeof compared === 'string' ? compared : { names: [a.name, b.name], hole: hole.number, compared },
      );
    });
  };
  const choice = (value: string, choose: (token: string) => void) => (id: string) => (
    <select id={id} value={value} onChange={(event) => choose(event.currentTarget.value)}>
      {pupils.map(({ entry, name }) => (
        <option key={entry.token} value={entry.token}>
          {name}
        </option>
      ))}
    </select>
  );
  return (
    <section class="bag-card" aria-label={words.player.compare.name}>
      <h2>{words.player.compare.title}</h2>
      <div class="bag-row">
        <Field name={words.player.compare.first} control={choice(a.entry.token, setFirst)} />
        <Field name={words.player.compare.second} control={choice(b.entry.token, setSecond)} />
        <Field
          name={words.player.compare.hole}
          control={(id) => (
            <select
              id={id}
              value={hole.number}
              onChange={(event) => setNumber(Number(event.currentTarget.value))}
            >
              {holes.map((one) => (
                <option key={one.number} value={one.number}>
                  {one.number} {one.name ?? ''}
                </option>
              ))}
            </select>
          )}
        />
        <button
          type="button"
          class="small-button"
          disabled={share !== null || a.entry.token === b.entry.token}
          onClick={start}
        >
          {words.player.compare.compare}
        </button>
      </div>
      {share !== null && (
        <WorkNote
          label={words.player.compare.working}
          share={share}
          stop={() => {
            run.current?.stop();
            run.current = null;
            setShare(null);
          }}
        >
          {words.player.compare.workingOn}
        </WorkNote>
      )}
      {typeof answer === 'string' && (
        <p class="warning" role="alert">
          {answer}
        </p>
      )}
      {answer !== null && typeof answer !== 'string' && <ComparedTable answer={answer} />}
    </section>
  );
}

function ComparedTable({ answer }: { readonly answer: Answer }) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const { names, compared, hole } = answer;
  const [planA, planB] = compared.plans;
  const [a, b] = [recommended(planA), recommended(planB)];
  if (a === null || b === null) return <p>{words.player.compare.cannot}</p>;
  const difference = b.meanStrokes - a.meanStrokes;
  const error = Math.hypot(a.standardError, b.standardError);
  const rows: readonly (readonly [string, (option: Option) => ComponentChildren])[] = [
    [words.player.compare.fromTee, (option) => shotPhrase(option, words)],
    [words.player.compare.carry, (option) => lengthText(option.carryM, units)],
    [
      words.player.compare.strokes,
      (option) => `${strokesText(option.meanStrokes, words)} ± ${errorText(option.standardError, words)}`,
    ],
    [words.player.compare.score, (option) => <OddsBar odds={option.parOdds} named />],
    [words.player.compare.trouble, (option) => chanceText(troubleOf(option))],
  ];
  return (
    <>
      <p>
        {words.player.compare.result({
          hole,
          length: lengthText(compared.lengthM, units),
          said:
            Math.abs(difference) < 2 * error
              ? words.player.compare.alike({ first: names[0], second: names[1] })
              : words.player.compare.more({
                  name: names[difference > 0 ? 1 : 0],
                  strokes: signedText(Math.abs(difference), words).replace('+', ''),
                  error: errorText(error, words),
                }),
        })}
      </p>
      <table class="bag-table compared">
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">{words.player.compare.what}</span>
            </th>
            <th scope="col">{names[0]}</th>
            <th scope="col">{names[1]}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, cell]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{cell(a)}</td>
              <td>{cell(b)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="faint small-print">{words.player.compare.note}</p>
    </>
  );
}

function recommended(plan: SpotPlan): Option | null {
  return plan.options.find(({ id }) => id === plan.recommendation.optionId) ?? plan.options[0] ?? null;
}

/** Balls that end in sand, woods, water or out of bounds. */
function troubleOf({ endShare }: Option): number {
  const { bunker, woods, penaltyRed, penaltyYellow, outOfBounds } = endShare;
  return bunker + woods + penaltyRed + penaltyYellow + outOfBounds;
}
