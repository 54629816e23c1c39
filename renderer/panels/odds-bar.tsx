/** Odds against par as a small stacked bar with its numbers written out. */

import type { ParOdds } from '../../core/plan/model.ts';
import { wholePercents } from '../state/measures.ts';
import { useWords } from '../state/use-words.ts';

const PARTS = [
  { kind: 'parOrBetter', className: 'odds-par' },
  { kind: 'bogey', className: 'odds-bogey' },
  { kind: 'doubleOrWorse', className: 'odds-double' },
] as const;

export function OddsBar({ odds, named }: { readonly odds: ParOdds; readonly named?: boolean }) {
  const names = useWords().plan.odds;
  const whole = wholePercents([odds.parOrBetter, odds.bogey, odds.doubleOrWorse]);
  const told = PARTS.map((part, i) => `${names[part.kind]} ${whole[i] ?? 0} %`).join(', ');
  return (
    <div class="odds">
      <svg class="odds-bar" viewBox="0 0 100 8" preserveAspectRatio="none" role="img" aria-label={told}>
        {PARTS.map((part, i) => (
          <rect
            key={part.className}
            class={part.className}
            x={whole.slice(0, i).reduce((a, b) => a + b, 0)}
            y="0"
            width={whole[i] ?? 0}
            height="8"
          />
        ))}
      </svg>
      <div class="odds-numbers" aria-hidden="true">
        {PARTS.map((part, i) => (
          <span key={part.className}>
            <i class={`odds-key ${part.className}`} />
            {named === true ? `${names.short[part.kind]} ` : ''}
            {whole[i] ?? 0}
            {named === true ? ' %' : ''}
          </span>
        ))}
      </div>
    </div>
  );
}

/** What the three colours mean, once above a table. */
export function OddsKey() {
  const names = useWords().plan.odds.short;
  return (
    <span class="odds-legend">
      {PARTS.map((part) => (
        <span key={part.className}>
          <i class={`odds-key ${part.className}`} />
          {names[part.kind]}
        </span>
      ))}
    </span>
  );
}
