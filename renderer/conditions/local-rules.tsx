/**
 * Two local rules that change what a shot costs. The sentences give the gist of Model Local Rules E-5 and E-3 (Rules of Golf,
 * Committee Procedures, section 8E), from memory; the committee's own text is what counts.
 */

import { useId } from 'preact/hooks';
import type { Conditions } from '../../core/conditions/conditions.ts';
import type { DayTools } from './use-day.ts';

interface LocalRule {
  readonly member: keyof Conditions['rules'];
  readonly name: string;
  readonly label: string;
  readonly words: string;
}

const RULES: readonly LocalRule[] = [
  {
    member: 'strokeAndDistanceAlternative',
    name: 'Alternative to stroke and distance (Model Local Rule E-5)',
    label: 'Local Rule E-5',
    words:
      'A ball lost or out of bounds may be dropped for two penalty strokes between where it is thought to be and the nearest edge of the fairway, not nearer the hole, instead of playing again.',
  },
  {
    member: 'preferredLies',
    name: 'Preferred lies (Model Local Rule E-3)',
    label: 'preferred lies (E-3)',
    words:
      'A ball on grass cut to fairway height may be lifted, cleaned and placed nearby, not nearer the hole, without penalty.',
  },
];

export function LocalRules({ tools: { day, take } }: { readonly tools: DayTools }) {
  const id = useId();
  const inForce = RULES.filter(({ member }) => day.rules[member]).map(({ label }) => label);
  return (
    <details class="local-rules">
      <summary>
        Local rules: {inForce.length === 0 ? 'none in force' : `${inForce.join(' and ')} in force`}
      </summary>
      <p>Only where the committee has made them; its own text is what counts.</p>
      {RULES.map(({ member, name, label, words }) => (
        <div key={member}>
          <label class="switch">
            <input
              type="checkbox"
              checked={day.rules[member]}
              aria-describedby={`${id}-${member}`}
              onChange={(event) => {
                const on = event.currentTarget.checked;
                take(
                  { rules: { ...day.rules, [member]: on } },
                  `${label} ${on ? 'in force' : 'not in force'}`,
                );
              }}
            />
            {name}
          </label>
          <p id={`${id}-${member}`} class="faint">
            {words}
          </p>
        </div>
      ))}
    </details>
  );
}
