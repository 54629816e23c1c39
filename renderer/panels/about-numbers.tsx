/** How sure the numbers are: seed, samples, how the field settled between grids; folded away until wanted. */

import type { Convergence } from '../../core/plan/model.ts';
import { DEFAULT_SAMPLES } from '../../core/plan/options.ts';
import { currentResult } from '../state/selectors.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { useWords } from '../state/use-words.ts';

export function AboutNumbers() {
  const words = useWords();
  const result = useApp(currentResult);
  const seed = useApp((state) => state.seed);
  const rough = useApp((state) => state.answers.plan?.rough === true);
  const margin = useApp((state) => state.player?.value.marginStrokes ?? 0);
  const dispatch = useDispatch();
  return (
    <details class="about-numbers">
      <summary>{words.plan.about.title}</summary>
      <p>{words.plan.about.text({ margin: words.figures.fixed(margin, 2) })}</p>
      <dl>
        <dt>{words.plan.about.sampled}</dt>
        <dd>{rough ? words.plan.about.few : words.plan.about.each({ count: DEFAULT_SAMPLES })}</dd>
        <dt>{words.plan.about.seed}</dt>
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
          {words.plan.about.how}
        </button>
        <button
          type="button"
          class="text-button"
          onClick={() => dispatch({ type: 'help-shown', page: 'limits' })}
        >
          {words.plan.about.limits}
        </button>
      </p>
    </details>
  );
}

/** The same seed gives the same numbers; another one shows how much is chance. */
function SeedField({ seed, change }: { readonly seed: string; readonly change: (seed: string) => void }) {
  const words = useWords();
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
        aria-label={words.plan.about.seed}
        defaultValue={seed}
        maxLength={60}
        autocomplete="off"
        spellcheck={false}
      />
      <button type="submit" class="small-button" title={words.plan.about.fromSeed}>
        {words.plan.about.again}
      </button>
    </form>
  );
}

function Settling({ convergence }: { readonly convergence: Convergence }) {
  const words = useWords();
  const { spacingsM, rmsChange, maxChange, sweeps } = convergence;
  return (
    <>
      <dt>{words.plan.about.grid}</dt>
      <dd>
        {spacingsM.map((spacing, i) => (
          <span key={spacing} class="settling">
            {words.plan.about.sweeps({ spacing, sweeps: sweeps[i] ?? 0 })}
            {i > 0
              ? words.plan.about.changed({
                  rms: words.figures.fixed(rmsChange[i - 1] ?? 0, 3),
                  most: words.figures.fixed(maxChange[i - 1] ?? 0, 2),
                })
              : ''}
          </span>
        ))}
      </dd>
    </>
  );
}
