/** The wind on the map: an arrow that flies with it, its speed, and the same in words for those who hear the map. */

import { speedText } from '../../core/conditions/day-words.ts';
import { currentDay } from '../state/selectors.ts';
import { useApp } from '../state/use-app.ts';
import { mapUpDeg, windSaid } from './hole-bearing.ts';
import { useWords } from '../state/use-words.ts';

export function WindSign() {
  const words = useWords();
  const said = useApp(windSaid);
  const { speedMps, fromDeg } = useApp((state) => currentDay(state).wind);
  const up = useApp(mapUpDeg);
  const units = useApp((state) => state.settings.units);
  if (said === null) return null;
  const towards = fromDeg + 180 - up;
  return (
    <div class="wind-sign" role="img" aria-label={said.charAt(0).toUpperCase() + said.slice(1)} title={said}>
      <svg viewBox="-20 -20 40 40" width="40" height="40" aria-hidden="true">
        <g transform={`rotate(${towards})`}>
          <path class="wind-sign-case" d="M0 16V-6M-7 -4L0 -16L7 -4Z" />
          <path class="wind-sign-arrow" d="M0 16V-6M-7 -4L0 -16L7 -4Z" />
        </g>
      </svg>
      <span>{speedText(speedMps, units, words)}</span>
    </div>
  );
}
