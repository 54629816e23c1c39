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

const HEIGHT = 14;
const WIDTH = 200;

/** Said in words beside it, so it is hidden from those who hear the page. */
export function SpanBar({ span, id }: { readonly span: ConditionSpan; readonly id: string }) {
  const { zones, now } = zonesOf(span);
  const steps = span.unit === 'step' ? span.to - span.from + 1 : 0;
  return (
    <svg
      class="span-bar"
      viewBox={`0 0 ${WIDTH} ${HEIGHT + 6}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <defs>
        <pattern id={`${id}-changes`} width="6" height="6" patternUnits="userSpaceOnUse">
          <path class="span-stripe" d="M-1 7L7 -1M-4 4L4 -4M2 10L10 2" />
        </pattern>
        <pattern id={`${id}-turns`} width="5" height="5" patternUnits="userSpaceOnUse">
          <circle class="span-dot" cx="2.5" cy="2.5" r="1" />
        </pattern>
      </defs>
      {zones.map(({ kind, from, to }) => {
        const box = { x: from * WIDTH, y: 3, width: (to - from) * WIDTH, height: HEIGHT };
        return (
          <g key={`${kind} ${from}`}>
            <rect class={`span-zone span-${kind}`} {...box} />
            {kind !== 'stays' && <rect fill={`url(#${id}-${kind})`} {...box} />}
          </g>
        );
      })}
      {Array.from({ length: Math.max(0, steps - 1) }, (_, k) => (
        <path key={k} class="span-step" d={`M${((k + 1) * WIDTH) / steps} 3v${HEIGHT}`} />
      ))}
      <rect class="span-frame" x="0" y="3" width={WIDTH} height={HEIGHT} />
      <path class="span-now" d={`M${now * WIDTH} 0v${HEIGHT + 6}`} />
    </svg>
  );
}
