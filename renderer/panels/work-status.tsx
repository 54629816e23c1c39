/** How far the background work has come, and how to stop it or take it up again. */

import { tallyWork } from '../state/selectors.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { useWords } from '../state/use-words.ts';

export function WorkStatus() {
  const words = useWords();
  const tally = useApp((state) => tallyWork(state.course?.value ?? null, state.work));
  const working = useApp((state) => state.working);
  const hasPlayer = useApp((state) => state.player !== null);
  const dispatch = useDispatch();
  if (tally.total === 0) return null;
  if (!hasPlayer) return <p class="work-status">{words.plan.choosePlayer}</p>;
  if (tally.ready + tally.failed === tally.total) {
    return (
      <p class="work-status" role="status">
        {tally.failed === 0
          ? words.plan.allWorkedOut({ total: tally.total })
          : words.plan.someWorkedOut({ ready: tally.ready, total: tally.total, failed: tally.failed })}
      </p>
    );
  }
  return (
    <div class="work-status">
      <span role="status">
        {working
          ? words.plan.holesReady({ ready: tally.ready, total: tally.total })
          : words.plan.stoppedReady({ ready: tally.ready, total: tally.total })}
      </span>
      <button
        type="button"
        class="small-button"
        onClick={() => dispatch({ type: working ? 'work-stopped' : 'work-resumed' })}
      >
        {working ? words.plan.stop : words.plan.goOn}
      </button>
      <progress
        class="fine-progress"
        max={tally.total}
        value={tally.ready}
        aria-label={words.plan.holesWorkedOut}
      />
    </div>
  );
}
