/** The green speed of the day from how far one stroke rolls up and down the same flat stretch; it goes into the day. */

import { useState } from 'preact/hooks';
import { greenSpeedToday } from '../../../core/card/green-speed.ts';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { DAY_RANGES } from '../../../core/conditions/ranges.ts';
import { useDay } from '../../conditions/use-day.ts';
import { useWords } from '../../state/use-words.ts';

const YARD_M = 0.9144;
const LEAST_FT = 3;
const MOST_FT = 18;

export function GreenSpeedForm() {
  const isYards = useApp((app) => app.settings.units === 'yards');
  const words = useWords();
  const { day, take } = useDay();
  const [known, setKnown] = useState<number | null>(null);
  const [knownSpeed, setKnownSpeed] = useState<number | null>(null);
  const [up, setUp] = useState<number | null>(null);
  const [down, setDown] = useState<number | null>(null);
  const pace = isYards ? YARD_M : 1;
  const given = known !== null && knownSpeed !== null && up !== null && down !== null;
  const found = given
    ? greenSpeedToday(up * pace, down * pace, { rollM: known * pace, greenSpeedFt: knownSpeed })
    : null;
  // To the tenth that is shown: that is what is written down.
  const reading = found === null ? null : Math.round(10 * found) / 10;
  const { least, most } = DAY_RANGES.greenSpeedFt;
  const isLikely = reading !== null && reading >= least && reading <= most;
  const roll = { least: 1, most: 60, step: 0.5 } as const;
  return (
    <section class="round-form" aria-label={words.prepare.speed.title}>
      <h3>{words.prepare.speed.title}</h3>
      <p class="faint">{words.prepare.speed.how}</p>
      <div class="form-line">
        <NumberField name={words.prepare.speed.rolled} value={known} {...roll} change={setKnown} />
        <NumberField
          name={words.prepare.speed.onGreen}
          value={knownSpeed}
          least={LEAST_FT}
          most={MOST_FT}
          step={0.1}
          change={setKnownSpeed}
        />
        <NumberField name={words.prepare.speed.up} value={up} {...roll} change={setUp} />
        <NumberField name={words.prepare.speed.down} value={down} {...roll} change={setDown} />
        {reading !== null && (
          <>
            <output>
              {isLikely
                ? words.prepare.speed.feet({ feet: words.figures.fixed(reading, 1) })
                : words.prepare.speed.unlikely}
            </output>
            <button
              type="button"
              class="small-button"
              disabled={!isLikely || reading === day.greenSpeedFt}
              onClick={() =>
                take(
                  { greenSpeedFt: reading },
                  words.day.steps.greenSpeed({ feet: words.figures.short(reading, 1) }),
                )
              }
            >
              {words.prepare.speed.use}
            </button>
          </>
        )}
        <span class="faint">
          {words.prepare.speed.planned({ feet: words.figures.fixed(day.greenSpeedFt, 1) })}
        </span>
      </div>
    </section>
  );
}
