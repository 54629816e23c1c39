/** The panel at the side: the hole's plan, the course in short, or what to do next where there is neither. */

import type { Hole } from '../../core/course/model.ts';
import { DayControl } from '../conditions/day-control.tsx';
import type { AppState, HoleWork } from '../state/app-state.ts';
import { currentHole, currentPlan, currentResult, settledWorkKey, workOf } from '../state/selectors.ts';
import { useApp, useDispatch, useTools } from '../state/use-app.ts';
import { progressShare } from '../workers/progress-share.ts';
import { WaysOutPanel } from '../recovery/ways-out-panel.tsx';
import { AboutNumbers } from './about-numbers.tsx';
import { BallLine } from './ball-line.tsx';
import { ComparisonPanel } from './comparison.tsx';
import { CoursePanel } from './course-panel.tsx';
import { HoleHeading } from './hole-heading.tsx';
import { OptionsTable } from './options-table.tsx';
import { RecommendationCard } from './recommendation.tsx';
import { ShotDetail } from './shot-detail.tsx';

export function SidePanel() {
  const hasCourse = useApp((state) => state.course !== null);
  const hasPlayer = useApp((state) => state.player !== null);
  const hole = useApp(currentHole);
  const filesKnown = useApp((state) => state.files !== null);
  return (
    <aside class="side-panel" aria-label="Plan">
      {!hasCourse && filesKnown && <EmptyState kind="course" />}
      {hasCourse && hole === null && <CoursePanel />}
      {hole !== null && (
        <>
          <HoleHeading hole={hole} />
          <DayControl />
          {hasPlayer ? <HolePlan hole={hole} /> : <EmptyState kind="player" />}
        </>
      )}
    </aside>
  );
}

function HolePlan({ hole }: { readonly hole: Hole }) {
  const hasPlan = useApp((state) => currentPlan(state) !== null);
  return (
    <>
      <WorkLine hole={hole} />
      {hasPlan && (
        <>
          <RecommendationCard />
          <BallLine />
          <WaysOutPanel />
          <ComparisonPanel />
          <OptionsTable />
          <ShotDetail />
          <AboutNumbers />
        </>
      )}
    </>
  );
}

/** While there is no full answer for the hole on screen: what is going on, and what to do. */
function WorkLine({ hole }: { readonly hole: Hole }) {
  const work = useApp((state) => currentWork(state, hole));
  const exact = useApp((state) => currentResult(state)?.rough === false);
  const rough = useApp((state) => currentPlan(state) !== null);
  const moving = useApp((state) => state.history.preview !== null);
  const working = useApp((state) => state.working);
  const dispatch = useDispatch();
  if (work?.status === 'failed') {
    return (
      <div class="fault-box" role="alert">
        <strong>This hole cannot be planned.</strong>
        <p>{work.fault === null ? '' : `${work.fault.where}: ${work.fault.message}`}</p>
      </div>
    );
  }
  if (exact) return null;
  if (moving) return <p class="work-line">Rough while it moves; worked out in full when you let go.</p>;
  if (!working) {
    return (
      <div class="work-line">
        <span>
          {rough ? 'Stopped: these numbers are rough.' : 'Stopped before this hole was worked out.'}
        </span>
        <button type="button" class="small-button" onClick={() => dispatch({ type: 'work-resumed' })}>
          Go on
        </button>
      </div>
    );
  }
  const progress = work?.progress ?? null;
  const share = progress === null ? null : progressShare(progress);
  return (
    <div class="work-line">
      <span role="status">
        {rough ? 'A rough answer for now; working out the full one' : 'Working out this hole'}
      </span>
      <progress class="fine-progress" max={1} value={share ?? 0} aria-label="Working out this hole" />
      <button type="button" class="small-button" onClick={() => dispatch({ type: 'work-stopped' })}>
        Stop
      </button>
    </div>
  );
}

/** The hole's work where it is for the present situation; older work says nothing about it. */
function currentWork(state: AppState, hole: Hole): HoleWork | null {
  const work = workOf(state, hole.number);
  return work?.key === settledWorkKey(state, hole) ? work : null;
}

const EMPTY = {
  course: {
    title: 'No course is open',
    text: 'Bring in a course: one GeoJSON file with the holes, greens, bunkers and water drawn. Or choose the demo course from the list at the top.',
    button: 'Bring in a course file',
  },
  player: {
    title: 'Whose shots?',
    text: 'Planning needs a player: the clubs in the bag and how far they carry. Bring in a player file, or choose the sample player from the list at the top.',
    button: 'Bring in a player file',
  },
} as const;

function EmptyState({ kind }: { readonly kind: 'course' | 'player' }) {
  const { duties, store } = useTools();
  const words = EMPTY[kind];
  return (
    <section class="empty-state">
      <h2>{words.title}</h2>
      <p>{words.text}</p>
      <p>
        <button type="button" class="main-button" onClick={() => void duties.importFile(kind)}>
          {words.button}
        </button>{' '}
        <button
          type="button"
          class="text-button"
          onClick={() => store.dispatch({ type: 'help-shown', page: 'guide' })}
        >
          How to make one
        </button>
      </p>
    </section>
  );
}
