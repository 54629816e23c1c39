/** Lie, wind, temperature and altitude of shots; what is left open is as on an ordinary day: good lie, still, 15 °C, sea level. */

import { fahrenheit, MPS_PER_MPH } from '../../../core/conditions/day-words.ts';
import { M_PER_FOOT } from '../../../core/words/lengths.ts';
import { windSide } from '../../../core/player/count-shot.ts';
import type { TableConditions } from '../../../core/player/csv/mapping.ts';
import { Field } from '../../panels/field.tsx';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { LIES_TO_CHOOSE } from '../../../core/player/in-play.ts';
import { lieName } from '../words.ts';
import { useWords } from '../../state/use-words.ts';

export type ConditionChange = { readonly [K in keyof TableConditions]?: TableConditions[K] | undefined };

interface Props {
  readonly value: ConditionChange;
  readonly change: (change: ConditionChange) => void;
  readonly disabled?: boolean;
  /** For shots that have a column of lies of their own. */
  readonly withoutLie?: boolean;
}

const SIDES = [0, 45, 90, 135, 180, 225, 270, 315];
const LIES: readonly string[] = ['range', ...LIES_TO_CHOOSE];

export function ConditionFields({ value, change, disabled, withoutLie }: Props) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const isYards = units === 'yards';
  const locked = disabled ?? false;
  const { lie, windMps, windFromDeg, temperatureC, altitudeM } = value;
  const [speed, height] = isYards ? [MPS_PER_MPH, M_PER_FOOT] : [1, 1];
  const sides = windFromDeg === undefined || SIDES.includes(windFromDeg) ? SIDES : [...SIDES, windFromDeg];
  return (
    <div class="bag-row condition-fields">
      {withoutLie !== true && (
        <Field
          name={words.shots.columns.lie}
          control={(id) => (
            <select
              id={id}
              value={lie ?? ''}
              disabled={locked}
              onChange={(event) => change({ lie: event.currentTarget.value || undefined })}
            >
              <option value="">{words.shots.conditions.lieNotSaid}</option>
              {(lie === undefined || LIES.includes(lie) ? LIES : [...LIES, lie]).map((known) => (
                <option key={known} value={known}>
                  {lieName(known, words)}
                </option>
              ))}
            </select>
          )}
        />
      )}
      <NumberField
        name={words.shots.conditions.wind}
        unit={isYards ? 'mph' : 'm/s'}
        value={windMps === undefined ? null : windMps / speed}
        least={0}
        most={isYards ? 170 : 80}
        decimals={1}
        placeholder={words.shots.conditions.still}
        disabled={locked}
        clear={() => change({ windMps: undefined, windFromDeg: undefined })}
        take={(typed) => change({ windMps: tidy(typed * speed) })}
      />
      <Field
        name={words.shots.conditions.windComes}
        control={(id) => (
          <select
            id={id}
            value={windFromDeg === undefined ? '' : String(windFromDeg)}
            disabled={locked || windMps === undefined}
            onChange={(event) => {
              const chosen = event.currentTarget.value;
              change({ windFromDeg: chosen === '' ? undefined : Number(chosen) });
            }}
          >
            <option value="">{words.shots.conditions.notSaid}</option>
            {sides.map((degrees) => (
              <option key={degrees} value={String(degrees)}>
                {SIDES.includes(degrees)
                  ? windSide(degrees, words)
                  : words.shots.conditions.at({ degrees: Math.round(degrees) })}
              </option>
            ))}
          </select>
        )}
      />
      <NumberField
        name={words.shots.conditions.temperature}
        unit={isYards ? '°F' : '°C'}
        value={temperatureC === undefined ? null : isYards ? fahrenheit(temperatureC) : temperatureC}
        least={isYards ? -76 : -60}
        most={isYards ? 158 : 70}
        decimals={0}
        placeholder={isYards ? '59' : '15'}
        disabled={locked}
        clear={() => change({ temperatureC: undefined })}
        take={(typed) => change({ temperatureC: tidy(isYards ? (typed - 32) / 1.8 : typed) })}
      />
      <NumberField
        name={words.shots.conditions.aboveSea}
        unit={isYards ? 'ft' : 'm'}
        value={altitudeM === undefined ? null : altitudeM / height}
        least={isYards ? -1600 : -500}
        most={isYards ? 29_000 : 9000}
        decimals={0}
        placeholder="0"
        disabled={locked}
        clear={() => change({ altitudeM: undefined })}
        take={(typed) => change({ altitudeM: tidy(typed * height) })}
      />
    </div>
  );
}

function tidy(value: number): number {
  return Math.round(value * 100) / 100;
}
