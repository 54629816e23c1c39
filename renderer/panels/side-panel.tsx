/** The panel at the side: the hole's plan, the course in short, or what to do next where there is neither. */

import { faultsText } from '../../core/words/told.ts';
import type { Hole } from '../../core/course/model.ts';
import { DayControl } from '../conditions/day-control.tsx';
import { DaySpansPanel } from '../conditions/spans/spans-panel.tsx';
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
import { useWords } from '../state/use-words.ts';

export function SidePanel() {
  const words = useWords();
  const hasCourse = useApp((state) => state.course !== null);
  const hasPlayer = useApp((state) => state.player !== null);
  const hole = useApp(currentHole);
  const filesKnown = useApp((state) => state.files !== null);
  return (
    <aside class="side-panel" aria-label={words.bar.rooms.plan}>
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
          <DaySpansPanel />
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
  const words = useWords();
  const work = useApp((state) => currentWork(state, hole));
  const exact = useApp((state) => currentResult(state)?.rough === false);
  const rough = useApp((state) => currentPlan(state) !== null);
  const moving = useApp((state) => state.history.preview !== null);
  const working = useApp((state) => state.working);
  const dispatch = useDispatch();
  if (work?.status === 'failed') {
    return (
      <div class="fault-box" role="alert">
        <strong>{words.plan.holeCannotBePlanned}</strong>
        <p>{work.fault === null ? '' : faultsText([work.fault], words)}</p>
      </div>
    );
  }
  if (exact) return null;
  if (moving) return <p class="work-line">{words.plan.roughWhileMoving}</p>;
  if (!working) {
    return (
      <div class="work-line">
        <span>{rough ? words.plan.stoppedRough : words.plan.stoppedBefore}</span>
        <button type="button" class="small-button" onClick={() => dispatch({ type: 'work-resumed' })}>
          {words.plan.goOn}
        </button>
      </div>
    );
  }
  const progress = work?.progress ?? null;
  const share = progress === null ? null : progressShare(progress);
  return (
    <div class="work-line">
      <span role="status">{rough ? words.plan.roughForNow : words.plan.workingOutHole}</span>
      <progress class="fine-progress" max={1} value={share ?? 0} aria-label={words.plan.workingOutHole} />
      <button type="button" class="small-button" onClick={() => dispatch({ type: 'work-stopped' })}>
        {words.plan.stop}
      </button>
    </div>
  );
}

/** The hole's work where it is for the present situation; older work says nothing about it. */
function currentWork(state: AppState, hole: Hole): HoleWork | null {
  const work = workOf(state, hole.number);
  return work?.key === settledWorkKey(state, hole) ? work : null;
}

function EmptyState({ kind }: { readonly kind: 'course' | 'player' }) {
  const words = useWords();
  const { duties, store } = useTools();
  const told = words.plan.empty[kind];
  return (
    <section class="empty-state">
      <h2>{told.title}</h2>
      <p>{told.text}</p>
      <p>
        <button type="button" class="main-button" onClick={() => void duties.importFile(kind)}>
          {told.button}
        </button>{' '}
        <button
          type="button"
          class="text-button"
          onClick={() => store.dispatch({ type: 'help-shown', page: 'guide' })}
        >
          {words.plan.howToMakeOne}
        </button>
      </p>
    </section>
  );
}
