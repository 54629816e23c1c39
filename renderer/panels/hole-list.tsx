/** The holes at the side: number, par, stroke index, length, what to hit and what it costs; how the work goes. */

import { useRef } from 'preact/hooks';
import type { Hole } from '../../core/course/model.ts';
import { polylineLengthM } from '../../core/course/ellipsoid.ts';
import type { Option } from '../../core/plan/model.ts';
import type { HoleResult, HoleWork } from '../state/app-state.ts';
import { shown } from '../state/history.ts';
import { lengthText, strokesText } from '../state/measures.ts';
import { settledWorkKey, teeOf, workOf } from '../state/selectors.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { progressShare } from '../workers/progress-share.ts';
import { shotPhrase } from './shot-words.ts';
import { WorkStatus } from './work-status.tsx';
import { useWords } from '../state/use-words.ts';

export function HoleList() {
  const words = useWords();
  const course = useApp((state) => state.course?.value ?? null);
  const current = useApp((state) => state.view.hole);
  const dispatch = useDispatch();
  const list = useRef<HTMLDivElement>(null);
  if (course === null) return <nav class="hole-list" aria-label={words.plan.holes} />;
  const show = (hole: number | null): void => dispatch({ type: 'hole-shown', hole });
  const stops: readonly (number | null)[] = [null, ...course.holes.map((hole) => hole.number)];
  const step = (by: number): void => {
    const next = stops[stops.indexOf(current) + by];
    if (next === undefined) return;
    show(next);
    list.current?.querySelector<HTMLElement>(`[data-hole="${next ?? 'all'}"]`)?.focus();
  };
  return (
    <nav class="hole-list" aria-label={words.plan.holes}>
      <WorkStatus />
      <div
        class="hole-rows"
        ref={list}
        onKeyDown={(event) => {
          if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
          event.preventDefault();
          step(event.key === 'ArrowDown' ? 1 : -1);
        }}
      >
        <button
          type="button"
          class="hole-row whole-course"
          data-hole="all"
          aria-current={current === null ? 'true' : undefined}
          onClick={() => show(null)}
        >
          <span class="hole-number">
            <svg viewBox="0 0 20 20" width="18" height="18" class="picture" aria-hidden="true">
              <path d="M4 15c3-8 4 2 7-4s3-5 5-6M4 15h0" />
            </svg>
          </span>
          <span class="hole-facts">{words.plan.theWholeCourse}</span>
        </button>
        {course.holes.map((hole) => (
          <HoleRow key={hole.number} hole={hole} isCurrent={hole.number === current} show={show} />
        ))}
      </div>
    </nav>
  );
}

function HoleRow({
  hole,
  isCurrent,
  show,
}: {
  readonly hole: Hole;
  readonly isCurrent: boolean;
  readonly show: (hole: number) => void;
}) {
  const words = useWords();
  const work = useApp((state) => workOf(state, hole.number));
  const units = useApp((state) => state.settings.units);
  const teeName = useApp((state) => shown(state.history).teeName);
  const key = useApp((state) => settledWorkKey(state, hole));
  const tee = teeOf(hole, teeName);
  const lengthM = polylineLengthM([tee.at, ...hole.line.slice(1)]);
  const strokeIndex =
    hole.strokeIndex === undefined ? '' : ` · ${words.plan.shortStrokeIndex({ index: hole.strokeIndex })}`;
  return (
    <button
      type="button"
      class="hole-row"
      data-hole={hole.number}
      aria-current={isCurrent ? 'true' : undefined}
      title={
        hole.name === undefined ? undefined : words.plan.holeNamed({ number: hole.number, name: hole.name })
      }
      onClick={() => show(hole.number)}
    >
      <span class="hole-number">
        <span class="unseen">{words.plan.holeWord} </span>
        {hole.number}
      </span>
      <span class="hole-facts">
        <span>
          {words.plan.parIs({ par: hole.par })}
          {strokeIndex}
        </span>
        <span class="hole-length">{lengthText(lengthM, units)}</span>
      </span>
      <span class="hole-advice">
        <Advice work={work} fresh={work?.result?.key === key} />
      </span>
    </button>
  );
}

/** What to hit and its cost, or how far the work has come. */
function Advice({ work, fresh }: { readonly work: HoleWork | null; readonly fresh: boolean }) {
  const words = useWords();
  if (work === null) return <span class="faint">{words.plan.waiting}</span>;
  if (work.status === 'failed') return <span class="warning">{words.plan.cannotBePlanned}</span>;
  const { result } = work;
  if (result !== null && fresh) return <ReadyAdvice result={result} />;
  if (work.status === 'stopped') return <span class="faint">{words.plan.stopped}</span>;
  const share = work.progress === null ? null : progressShare(work.progress);
  if (share === null) return <span class="faint">{words.plan.waiting}</span>;
  return (
    <>
      <progress class="fine-progress" max={1} value={share} aria-label={words.plan.workingOut} />
      <span class="faint">{Math.round(share * 100)} %</span>
    </>
  );
}

function ReadyAdvice({ result }: { readonly result: HoleResult }) {
  const words = useWords();
  const best = recommendedOf(result);
  return (
    <>
      <span class="advice-club">{best === null ? '–' : shotPhrase(best, words)}</span>
      <span class="advice-strokes">{best === null ? '' : strokesText(best.meanStrokes, words)}</span>
    </>
  );
}

export function recommendedOf(result: HoleResult): Option | null {
  const { options, recommendation } = result.teePlan;
  return options.find((option) => option.id === recommendation.optionId) ?? null;
}
