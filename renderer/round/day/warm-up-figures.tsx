/** A line drawing of one step of the warm-up. */

import { WARM_UP_BOX, WARM_UP_FIGURES } from '../../../core/card/warm-up-figures.ts';

export function WarmUpFigure({ step }: { readonly step: number }) {
  const figure = WARM_UP_FIGURES[step];
  if (figure === undefined) return null;
  const { width, height, headRadius } = WARM_UP_BOX;
  return (
    <svg class="warm-up-figure" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <circle cx={figure.head[0]} cy={figure.head[1]} r={headRadius} class="limb" />
      <path class="limb" d={figure.limbs} />
      {figure.club !== undefined && <path class="club" d={figure.club} />}
      <path class="moves" d={figure.moves} />
    </svg>
  );
}
