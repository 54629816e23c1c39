/** Which club's next ten measured shots would firm up the plan of the open course most. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { remember } from '../../state/remember.ts';
import type { AppState } from '../../state/app-state.ts';
import { errorText } from '../../state/measures.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { isUnsaved } from '../state/reduce-bag.ts';
import { useBag } from '../state/use-bag.ts';
import { clubSwing } from '../words.ts';
import { askWorth, type WorthHole, type WorthResult, type WorthRun } from './worth-run.ts';
import { WorkNote } from '../work-note.tsx';
import { useWords } from '../../state/use-words.ts';

const SHOTS = 10;
/** A gain below this is nothing that a round shows, strokes. */
const LEAST_GAIN = 0.001;

const readyHoles = remember((work: AppState['work']): readonly WorthHole[] =>
  Object.values(work).flatMap(({ status, result }) =>
    status === 'ready' && result !== null && !result.rough
      ? [{ hole: result.hole, resultKey: result.key }]
      : [],
  ),
);

interface Shown {
  readonly of: string;
  readonly result: WorthResult;
}

export function ShotWorth() {
  const words = useWords();
  const { pool } = useTools();
  const course = useApp((state) => state.course?.value.name ?? null);
  const holes = useApp((state) => readyHoles(state.work));
  const total = useApp((state) => state.course?.value.holes.length ?? 0);
  const revision = useApp((state) => `${state.course?.revision ?? ''}/${state.player?.revision ?? ''}`);
  const unsaved = useBag((state) => state.file !== null && isUnsaved(state.file));
  const run = useRef<WorthRun | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const [shown, setShown] = useState<Shown | null>(null);
  useEffect(() => () => run.current?.stop(), []);
  const start = (): void => {
    setShare(0);
    const started = askWorth(pool, holes, SHOTS, setShare);
    run.current = started;
    void started.done.then((result) => {
      if (run.current !== started) return;
      run.current = null;
      setShare(null);
      if (result !== null) setShown({ of: revision, result });
    });
  };
  const result = shown?.of === revision ? shown.result : null;
  return (
    <section class="bag-card" aria-label={words.player.worth.name}>
      <h2>{words.player.worth.title}</h2>
      <p>{words.player.worth.explain({ course: course ?? words.player.worth.aCourse })}</p>
      {course === null && <p class="faint">{words.player.worth.openCourse}</p>}
      {unsaved && <p class="faint">{words.player.worth.unsaved}</p>}
      {share === null ? (
        <div class="save-row">
          <button
            type="button"
            class="small-button"
            disabled={course === null || holes.length === 0}
            onClick={start}
          >
            {words.player.worth.workOut}
          </button>
          <span class="faint" role="status">
            {holes.length < total
              ? words.player.worth.holesSoFar({ done: holes.length, total })
              : words.player.worth.takes}
          </span>
        </div>
      ) : (
        <WorkNote
          label={words.player.worth.name}
          share={share}
          stop={() => {
            run.current?.stop();
            run.current = null;
            setShare(null);
          }}
        >
          {Math.round(100 * share)} %
        </WorkNote>
      )}
      {result !== null && <WorthTable result={result} />}
    </section>
  );
}

function WorthTable({ result }: { readonly result: WorthResult }) {
  const words = useWords();
  const best = result.clubs[0];
  const worthwhile = result.clubs.filter(({ gainStrokes }) => gainStrokes >= LEAST_GAIN);
  if (best === undefined || worthwhile.length === 0)
    return <p>{words.player.worth.hardly({ spots: result.spots, holes: result.holes })}</p>;
  const isClear = best.gainStrokes > 2 * best.standardError;
  return (
    <>
      <p>
        {words.player.worth.first({
          best: isClear
            ? words.player.worth.best({ club: clubSwing(best.club, best.swing, words) })
            : words.player.worth.noBest,
          strokes: words.figures.fixed(result.perfectStrokes, 2),
        })}
      </p>
      <table class="bag-table">
        <caption class="unseen">{words.player.worth.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.player.worth.tenMore}</th>
            <th scope="col">{words.player.worth.gain}</th>
            <th scope="col">{words.player.worth.error}</th>
          </tr>
        </thead>
        <tbody>
          {worthwhile.slice(0, 8).map(({ club, swing, gainStrokes, standardError }) => (
            <tr key={`${club}/${swing}`}>
              <th scope="row">{clubSwing(club, swing, words)}</th>
              <td>{words.figures.fixed(gainStrokes, 3)}</td>
              <td>{errorText(standardError, words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="faint small-print">{words.player.worth.from({ spots: result.spots, holes: result.holes })}</p>
    </>
  );
}
