/** How far the background work has come, and how to stop it or take it up again. */

import { tallyWork } from '../state/selectors.ts';
import { useApp, useDispatch } from '../state/use-app.ts';

export function WorkStatus() {
  const tally = useApp((state) => tallyWork(state.course?.value ?? null, state.work));
  const working = useApp((state) => state.working);
  const hasPlayer = useApp((state) => state.player !== null);
  const dispatch = useDispatch();
  if (tally.total === 0) return null;
  if (!hasPlayer) return <p class="work-status">Choose a player to plan the holes.</p>;
  if (tally.ready + tally.failed === tally.total) {
    return (
      <p class="work-status" role="status">
        {tally.failed === 0
          ? `All ${tally.total} holes are worked out.`
          : `${tally.ready} of ${tally.total} holes are worked out; ${tally.failed} cannot be planned.`}
      </p>
    );
  }
  return (
    <div class="work-status">
      <span role="status">
        {working
          ? `${tally.ready} of ${tally.total} holes ready`
          : `Stopped, ${tally.ready} of ${tally.total} ready`}
      </span>
      <button
        type="button"
        class="small-button"
        onClick={() => dispatch({ type: working ? 'work-stopped' : 'work-resumed' })}
      >
        {working ? 'Stop' : 'Go on'}
      </button>
      <progress class="fine-progress" max={tally.total} value={tally.ready} aria-label="Holes worked out" />
    </div>
  );
}
