/** What held for every shot of a table on its way in, where none of its columns says so. */

import { withConditions } from '../../../core/player/csv/change-mapping.ts';
import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
import { ConditionFields } from './condition-fields.tsx';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly mapping: ShotMapping;
  readonly change: (mapping: ShotMapping) => void;
}

export function TableConditions({ mapping, change }: Props) {
  const words = useWords();
  return (
    <details class="all-shots" open={mapping.conditions !== undefined}>
      <summary>{words.shots.conditions.tableTitle}</summary>
      <p class="faint small-print">{words.shots.conditions.tableNote}</p>
      <ConditionFields
        value={mapping.conditions ?? {}}
        change={(next) => change(withConditions(mapping, next))}
      />
    </details>
  );
}
