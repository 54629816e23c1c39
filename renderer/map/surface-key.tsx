/** The key of the strokes-to-hole-out surface. */

import type { AppState } from '../state/app-state.ts';
import { useApp } from '../state/use-app.ts';
import { rampColour, type StrokesScale, strokesScale } from './strokes-ramp.ts';

const WIDTH = 220;
const STEPS = 44;

function scaleOf(state: AppState): StrokesScale | null {
  const { surface } = state.answers;
  return state.view.showSurface && surface !== null ? strokesScale(surface.surface.values) : null;
}

export function SurfaceKey() {
  const wanted = useApp((state) => state.view.showSurface && state.view.hole !== null);
  const scale = useApp(scaleOf);
  if (!wanted) return null;
  if (scale === null) return <p class="surface-key">The surface comes when the hole is worked out.</p>;
  const x = (strokes: number): number => ((strokes - scale.low) / (scale.high - scale.low)) * WIDTH;
  return (
    <figure class="surface-key">
      <figcaption>Strokes to hole out from each place</figcaption>
      <svg
        viewBox={`-12 0 ${WIDTH + 24} 30`}
        width={WIDTH + 24}
        height="30"
        role="img"
        aria-label={`From ${scale.low.toFixed(1)} to ${scale.high.toFixed(1)} strokes, pale to dark`}
      >
        {Array.from({ length: STEPS }, (_, i) => (
          <rect
            key={i}
            x={(i * WIDTH) / STEPS}
            y="0"
            width={WIDTH / STEPS + 0.5}
            height="12"
            fill={rampColour((i + 0.5) / STEPS)}
          />
        ))}
        {scale.ticks.map((tick) => (
          <g key={tick}>
            <path d={`M${x(tick)} 12v4`} class="key-tick" />
            <text x={x(tick)} y="27" class="key-text">
              {tick}
            </text>
          </g>
        ))}
      </svg>
    </figure>
  );
}
