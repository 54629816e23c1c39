/**
 * Two local rules that change what a shot costs. The sentences give the gist of Model Local Rules E-5 and E-3 (Rules of Golf,
 * Committee Procedures, section 8E), from memory; the committee's own text is what counts.
 */

import { useId } from 'preact/hooks';
import type { Conditions } from '../../core/conditions/conditions.ts';
import type { DayTools } from './use-day.ts';
import { useWords } from '../state/use-words.ts';

const RULES = [
  'strokeAndDistanceAlternative',
  'preferredLies',
] as const satisfies readonly (keyof Conditions['rules'])[];

export function LocalRules({ tools: { day, take } }: { readonly tools: DayTools }) {
  const words = useWords();
  const id = useId();
  const inForce = RULES.filter((member) => day.rules[member]).map((member) => words.day.rules[member].label);
  const which =
    inForce.length === 0 ? words.day.noneInForce : words.day.inForce({ rules: words.figures.list(inForce) });
  return (
    <details class="local-rules">
      <summary>{words.day.localRules({ which })}</summary>
      <p>{words.day.onlyWhereMade}</p>
      {RULES.map((member) => {
        const rule = words.day.rules[member];
        const { inForce: set, notInForce: lifted } = words.day.steps;
        return (
          <div key={member}>
            <label class="switch">
              <input
                type="checkbox"
                checked={day.rules[member]}
                aria-describedby={`${id}-${member}`}
                onChange={(event) => {
                  const on = event.currentTarget.checked;
                  const step = on ? set : lifted;
                  take({ rules: { ...day.rules, [member]: on } }, step({ rule: rule.label }));
                }}
              />
              {rule.name}
            </label>
            <p id={`${id}-${member}`} class="faint">
              {rule.text}
            </p>
          </div>
        );
      })}
    </details>
  );
}
