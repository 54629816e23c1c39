/** How sure the numbers are: seed, samples, how the field settled between grids; folded away until wanted. */

import type { Convergence } from '../../core/plan/model.ts';
import { DEFAULT_SAMPLES } from '../../core/plan/options.ts';
import { countText } from '../state/measures.ts';
import { currentResult } from '../state/selectors.ts';
import { useApp, useDispatch } from '../state/use-app.ts';

export function AboutNumbers() {
  const result = useApp(currentResult);
  const seed = useApp((state) => state.seed);
  const rough = useApp((state) => state.answers.plan?.rough === true);
  const margin = useApp((state) => state.player?.value.marginStrokes ?? 0);
  const dispatch = useDispatch();
  return (
    <details class="about-numbers">
      <summary>About these numbers</summary>
      <p>
        They are estimates. The ± is the chance error of the sampled shots alone; an honest map and honest
        shots matter more. Shots within {margin.toFixed(2)} strokes, or within twice the error of their
        difference, are called too close to call.
      </p>
      <dl>
        <dt>Shots sampled</dt>
        <dd>
          {rough
            ? 'few, while something moves or the full answer is on its way'
            : `${countText(DEFAULT_SAMPLES, 'shot', 'shots')} for each option, the same draws for all`}
        </dd>
        <dt>Seed</dt>
        <dd>
          <SeedField seed={seed} change={(next) => dispatch({ type: 'seed-set', seed: next })} />
        </dd>
        {result !== null && <Settling convergence={result.convergence} />}
      </dl>
      <p>
        <button
          type="button"
          class="text-button"
          onClick={() => dispatch({ type: 'help-shown', page: 'numbers' })}
        >
          How the numbers come about
        </button>
        <button
          type="button"
          class="text-button"
          onClick={() => dispatch({ type: 'help-shown', page: 'limits' })}
        >
          What they cannot tell
        </button>
      </p>
    </details>
  );
}

/** The same seed gives the same numbers; another one shows how much is chance. */
function SeedField({ seed, change }: { readonly seed: string; readonly change: (seed: string) => void }) {
  return (
    <form
      class="seed-form"
      onSubmit={(event) => {
        event.preventDefault();
        const typed = new FormData(event.currentTarget).get('seed');
        if (typeof typed === 'string' && typed.trim() !== '') change(typed.trim());
      }}
    >
      <input
        name="seed"
        aria-label="Seed"
        defaultValue={seed}
        maxLength={60}
        autocomplete="off"
        spellcheck={false}
      />
      <button type="submit" class="small-button" title="Works out every hole again from this seed">
        Work out again
      </button>
    </form>
  );
}

function Settling({ convergence }: { readonly convergence: Convergence }) {
  const { spacingsM, rmsChange, maxChange, sweeps } = convergence;
  return (
    <>
      <dt>Grid</dt>
      <dd>
        {spacingsM.map((spacing, i) => (
          <span key={spacing} class="settling">
            {spacing} m, {countText(sweeps[i] ?? 0, 'sweep', 'sweeps')}
            {i > 0
              ? `: changed by ${(rmsChange[i - 1] ?? 0).toFixed(3)} strokes (root mean square), at most ${(maxChange[i - 1] ?? 0).toFixed(2)}`
              : ''}
          </span>
        ))}
      </dd>
    </>
  );
}
