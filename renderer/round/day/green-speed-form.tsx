/** The green speed of the day from how far one stroke rolls up and down the same flat stretch. */

import { useState } from 'preact/hooks';
import { greenSpeedToday } from '../../../core/card/green-speed.ts';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { useRound, useRoundDispatch } from '../state/use-round.ts';

const YARD_M = 0.9144;
const LEAST_FT = 3;
const MOST_FT = 18;

export function GreenSpeedForm() {
  const isYards = useApp((app) => app.settings.units === 'yards');
  const speed = useRound((state) => state.wishes.day.greenSpeedFt);
  const dispatch = useRoundDispatch();
  const [known, setKnown] = useState<number | null>(null);
  const [knownSpeed, setKnownSpeed] = useState<number | null>(null);
  const [up, setUp] = useState<number | null>(null);
  const [down, setDown] = useState<number | null>(null);
  const pace = isYards ? YARD_M : 1;
  const given = known !== null && knownSpeed !== null && up !== null && down !== null;
  const found = given
    ? greenSpeedToday(up * pace, down * pace, { rollM: known * pace, greenSpeedFt: knownSpeed })
    : null;
  const isLikely = found !== null && found >= LEAST_FT && found <= MOST_FT;
  const roll = { least: 1, most: 60, step: 0.5 } as const;
  return (
    <section class="round-form" aria-label="Green speed today">
      <h3>Green speed today</h3>
      <p class="faint">
        One stroke that you know, paced out once on a green of known speed; then the same stroke today, up and
        down one flat stretch.
      </p>
      <div class="form-line">
        <NumberField name="It rolled, paces" value={known} {...roll} change={setKnown} />
        <NumberField
          name="on a green of, feet"
          value={knownSpeed}
          least={LEAST_FT}
          most={MOST_FT}
          step={0.1}
          change={setKnownSpeed}
        />
        <NumberField name="Today up, paces" value={up} {...roll} change={setUp} />
        <NumberField name="down, paces" value={down} {...roll} change={setDown} />
        {found !== null && (
          <>
            <output>{isLikely ? `${found.toFixed(1)} feet` : 'not a likely speed: pace again'}</output>
            <button
              type="button"
              class="small-button"
              disabled={!isLikely}
              onClick={() =>
                dispatch({ type: 'day-wished', change: { greenSpeedFt: Math.round(10 * found) / 10 } })
              }
            >
              Use it today
            </button>
          </>
        )}
        {speed !== null && <span class="faint">Written down for today: {speed.toFixed(1)} feet.</span>}
      </div>
    </section>
  );
}
