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
    <section class="bag-card" aria-label="Worth of more shots">
      <h2>Which shots to measure next</h2>
      <p>
        What ten more measured shots of a club would gain on {course ?? 'a course'}: strokes per round saved
        by settling close calls rightly.
      </p>
      {course === null && <p class="faint">Open a course first: the gain depends on its holes.</p>}
      {unsaved && <p class="faint">Unsaved changes are not in it: the plan works with the saved player.</p>}
      {share === null ? (
        <div class="save-row">
          <button
            type="button"
            class="small-button"
            disabled={course === null || holes.length === 0}
            onClick={start}
          >
            Work it out
          </button>
          <span class="faint" role="status">
            {holes.length < total
              ? `${holes.length} of ${total} holes are worked out so far; it is over these.`
              : 'Takes a minute or two.'}
          </span>
        </div>
      ) : (
        <WorkNote
          label="Worth of more shots"
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
    return (
      <p>
        Hardly any: whatever ten more shots would say, the plan from {result.spots} spots on {result.holes}{' '}
        holes would stay as it is.
      </p>
    );
  const isClear = best.gainStrokes > 2 * best.standardError;
  return (
    <>
      <p>
        {isClear
          ? `${clubSwing(best.club, best.swing)} first: its ten shots would do most.`
          : 'No club stands out: the differences are within the error of this estimate.'}{' '}
        Knowing everything for sure would gain {result.perfectStrokes.toFixed(2)} strokes a round.
      </p>
      <table class="bag-table">
        <caption class="unseen">Gain of ten more shots per club, strokes per round</caption>
        <thead>
          <tr>
            <th scope="col">Ten more shots with the</th>
            <th scope="col">Gain, strokes a round</th>
            <th scope="col">Standard error</th>
          </tr>
        </thead>
        <tbody>
          {worthwhile.slice(0, 8).map(({ club, swing, gainStrokes, standardError }) => (
            <tr key={`${club}/${swing}`}>
              <th scope="row">{clubSwing(club, swing)}</th>
              <td>{gainStrokes.toFixed(3)}</td>
              <td>{errorText(standardError, words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="faint small-print">
        From {result.spots} spots on {result.holes} holes: the tees, and where the ball typically lies after.
      </p>
    </>
  );
}
