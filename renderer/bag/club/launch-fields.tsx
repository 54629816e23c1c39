/** How a full swing leaves, as a launch monitor tells it: each figure by itself, and none is asked for. */

import { MPS_PER_MPH } from '../../../core/conditions/day-words.ts';
import { M_PER_FOOT } from '../../../core/words/lengths.ts';
import type { ClubLaunch } from '../../../core/player/model.ts';
import { useApp } from '../../state/use-app.ts';
import { useWords } from '../../state/use-words.ts';
import { NumberField } from '../number-field.tsx';

interface Props {
  readonly launch: ClubLaunch;
  readonly locked: boolean;
  readonly change: (launch: ClubLaunch) => void;
}

interface Figure {
  readonly key: keyof ClubLaunch;
  readonly name: string;
  readonly unit: string;
  /** Of the file's own unit in one of these. */
  readonly per: number;
  readonly least: number;
  readonly most: number;
  readonly decimals: number;
}

export function LaunchFields({ launch, locked, change }: Props) {
  const words = useWords().player.club.launch;
  const inYards = useApp((state) => state.settings.units === 'yards');
  const figures: readonly Figure[] = [
    { key: 'angleDeg', name: words.angle, unit: '°', per: 1, least: 1, most: 60, decimals: 1 },
    { key: 'spinRpm', name: words.spin, unit: 'rpm', per: 1, least: 100, most: 15_000, decimals: 0 },
    inYards
      ? {
          key: 'ballSpeedMps',
          name: words.ballSpeed,
          unit: 'mph',
          per: MPS_PER_MPH,
          least: 12,
          most: 220,
          decimals: 1,
        }
      : { key: 'ballSpeedMps', name: words.ballSpeed, unit: 'm/s', per: 1, least: 5, most: 100, decimals: 1 },
    inYards
      ? { key: 'apexM', name: words.apex, unit: 'ft', per: M_PER_FOOT, least: 2, most: 260, decimals: 0 }
      : { key: 'apexM', name: words.apex, unit: 'm', per: 1, least: 0.5, most: 80, decimals: 1 },
  ];
  return (
    <fieldset class="bag-checks">
      <legend>{words.legend}</legend>
      {figures.map(({ key, name, unit, per, least, most, decimals }) => {
        const value = launch[key];
        return (
          <NumberField
            key={key}
            name={name}
            unit={unit}
            value={value === undefined ? null : value / per}
            least={least}
            most={most}
            decimals={decimals}
            placeholder={words.byLoft}
            disabled={locked}
            clear={() => change({ ...launch, [key]: undefined })}
            take={(given) => change({ ...launch, [key]: Math.round(given * per * 1000) / 1000 })}
          />
        );
      })}
    </fieldset>
  );
}
