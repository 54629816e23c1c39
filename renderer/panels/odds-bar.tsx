/** Odds against par as a small stacked bar with its numbers written out. */

import type { ParOdds } from '../../core/plan/model.ts';
import { wholePercents } from '../state/measures.ts';

const PARTS = [
  { name: 'par or better', short: 'par or better', className: 'odds-par' },
  { name: 'bogey', short: 'bogey', className: 'odds-bogey' },
  { name: 'double bogey or worse', short: 'double +', className: 'odds-double' },
] as const;

export function OddsBar({ odds, words }: { readonly odds: ParOdds; readonly words?: boolean }) {
  const whole = wholePercents([odds.parOrBetter, odds.bogey, odds.doubleOrWorse]);
  const told = PARTS.map((part, i) => `${part.name} ${whole[i] ?? 0} %`).join(', ');
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
            {words === true ? `${part.short} ` : ''}
            {whole[i] ?? 0}
            {words === true ? ' %' : ''}
          </span>
        ))}
      </div>
    </div>
  );
}

/** What the three colours mean, once above a table. */
export function OddsKey() {
  return (
    <span class="odds-legend">
      {PARTS.map((part) => (
        <span key={part.className}>
          <i class={`odds-key ${part.className}`} />
          {part.short}
        </span>
      ))}
    </span>
  );
}
