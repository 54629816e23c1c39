/** One condition as a bar: plain where the recommendation stays, dots where the aim turns, stripes where another club takes over. */

import type { ConditionSpan } from '../../../core/plan/sensitivity.ts';

export type ZoneKind = 'stays' | 'turns' | 'changes';

export interface Zone {
  readonly kind: ZoneKind;
  /** Shares of the bar. */
  readonly from: number;
  readonly to: number;
}

/** The bar's zones from left to right, and where today stands on it. A step is as wide as any other. */
export function zonesOf(span: ConditionSpan): { readonly zones: readonly Zone[]; readonly now: number } {
  // Steps stand in the middle of their fields.
  const half = span.unit === 'step' ? 0.5 : 0;
  const [least, most] = [span.from - half, span.to + half];
  const share = (value: number): number => (value - least) / (most - least);
  const marks = [
    { kind: 'changes', at: span.changesBelow?.at, side: 1 },
    { kind: 'turns', at: span.turnsBelow?.at, side: 1 },
    { kind: 'stays', at: most, side: 0 },
  ] as const;
  const zones: Zone[] = [];
  let from = 0;
  const add = (kind: ZoneKind, to: number): void => {
    if (to > from) zones.push({ kind, from, to });
    from = Math.max(from, to);
  };
  for (const { kind, at, side } of marks.slice(0, 2))
    if (at !== undefined) add(kind, share(at + side * half));
  const turns = span.turnsAbove?.at;
  const changes = span.changesAbove?.at;
  add('stays', share(Math.min(most, (turns ?? Infinity) - half, (changes ?? Infinity) - half)));
  if (turns !== undefined) add('turns', share(changes === undefined ? most : changes - half));
  if (changes !== undefined) add('changes', 1);
  return { zones, now: share(span.now) };
}

/** Said in words beside it, so it is hidden from those who hear the page. */
export function SpanBar({ span }: { readonly span: ConditionSpan }) {
  const { zones, now } = zonesOf(span);
  const steps = span.unit === 'step' ? span.to - span.from + 1 : 1;
  const percent = (share: number): string => `${100 * share}%`;
  return (
    <div class="span-bar" aria-hidden="true">
      {zones.map(({ kind, from, to }) => (
        <span
          key={`${kind} ${from}`}
          class={`span-zone span-${kind}`}
          style={{ left: percent(from), width: percent(to - from) }}
        />
      ))}
      {Array.from({ length: steps - 1 }, (_, k) => (
        <span key={k} class="span-step" style={{ left: percent((k + 1) / steps) }} />
      ))}
      <span class="span-now" style={{ left: percent(now) }} />
    </div>
  );
}
