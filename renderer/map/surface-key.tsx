/** The key of the strokes-to-hole-out surface. */

import type { AppState } from '../state/app-state.ts';
import { useApp } from '../state/use-app.ts';
import { rampColour, type StrokesScale, strokesScale } from './strokes-ramp.ts';
import { useWords } from '../state/use-words.ts';

const WIDTH = 220;
const STEPS = 44;

function scaleOf(state: AppState): StrokesScale | null {
  const { surface } = state.answers;
  return state.view.showSurface && surface !== null ? strokesScale(surface.surface.values) : null;
}

export function SurfaceKey() {
  const words = useWords();
  const wanted = useApp((state) => state.view.showSurface && state.view.hole !== null);
  const scale = useApp(scaleOf);
  if (!wanted) return null;
  if (scale === null) return <p class="surface-key">{words.map.surfaceComes}</p>;
  const x = (strokes: number): number => ((strokes - scale.low) / (scale.high - scale.low)) * WIDTH;
  return (
    <figure class="surface-key">
      <figcaption>{words.map.surfaceKey}</figcaption>
      <svg
        viewBox={`-12 0 ${WIDTH + 24} 30`}
        width={WIDTH + 24}
        height="30"
        role="img"
        aria-label={words.map.surfaceRange({
          low: words.figures.fixed(scale.low, 1),
          high: words.figures.fixed(scale.high, 1),
        })}
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
              {words.figures.short(tick, 2)}
            </text>
          </g>
        ))}
      </svg>
    </figure>
  );
}
