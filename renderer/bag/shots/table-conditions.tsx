/** What held for every shot of a table on its way in, where none of its columns says so. */

import { withConditions } from '../../../core/player/csv/change-mapping.ts';
import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
import { ConditionFields } from './condition-fields.tsx';

interface Props {
  readonly mapping: ShotMapping;
  readonly change: (mapping: ShotMapping) => void;
}

export function TableConditions({ mapping, change }: Props) {
  return (
    <details class="all-shots" open={mapping.conditions !== undefined}>
      <summary>Where and in what weather they were hit</summary>
      <p class="faint small-print">
        For all shots of the table, where no column says otherwise. They then count as what the same strikes
        do from a good lie in still air at 15 °C at sea level.
      </p>
      <ConditionFields
        value={mapping.conditions ?? {}}
        change={(next) => change(withConditions(mapping, next))}
      />
    </details>
  );
}
