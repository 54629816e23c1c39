/** Lie, wind, temperature and altitude of shots; what is left open is as on an ordinary day: good lie, still, 15 °C, sea level. */

import { fahrenheit, M_PER_FOOT, MPS_PER_MPH } from '../../../core/conditions/day-words.ts';
import { sideSaid } from '../../../core/player/count-shot.ts';
import type { TableConditions } from '../../../core/player/csv/mapping.ts';
import { Field } from '../../panels/field.tsx';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { LIE_WORDS } from '../words.ts';

export type ConditionChange = { readonly [K in keyof TableConditions]?: TableConditions[K] | undefined };

interface Props {
  readonly value: ConditionChange;
  readonly change: (change: ConditionChange) => void;
  readonly disabled?: boolean;
  /** For shots that have a column of lies of their own. */
  readonly withoutLie?: boolean;
}

const SIDES = [0, 45, 90, 135, 180, 225, 270, 315];
const LIE_NAMES = new Map<string, string>([['range', 'range'], ...Object.entries(LIE_WORDS)]);
const LIES = [...LIE_NAMES.keys()];

export function ConditionFields({ value, change, disabled, withoutLie }: Props) {
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
          name="Lie"
          control={(id) => (
            <select
              id={id}
              value={lie ?? ''}
              disabled={locked}
              onChange={(event) => change({ lie: event.currentTarget.value || undefined })}
            >
              <option value="">not said: a good one</option>
              {(lie === undefined || LIES.includes(lie) ? LIES : [...LIES, lie]).map((known) => (
                <option key={known} value={known}>
                  {LIE_NAMES.get(known) ?? known}
                </option>
              ))}
            </select>
          )}
        />
      )}
      <NumberField
        name="Wind"
        unit={isYards ? 'mph' : 'm/s'}
        value={windMps === undefined ? null : windMps / speed}
        least={0}
        most={isYards ? 170 : 80}
        decimals={1}
        placeholder="still"
        disabled={locked}
        clear={() => change({ windMps: undefined, windFromDeg: undefined })}
        take={(typed) => change({ windMps: tidy(typed * speed) })}
      />
      <Field
        name="Wind comes"
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
            <option value="">not said</option>
            {sides.map((degrees) => (
              <option key={degrees} value={String(degrees)}>
                {SIDES.includes(degrees) ? sideSaid(degrees).trim() : `at ${Math.round(degrees)}°`}
              </option>
            ))}
          </select>
        )}
      />
      <NumberField
        name="Temperature"
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
        name="Above the sea"
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
