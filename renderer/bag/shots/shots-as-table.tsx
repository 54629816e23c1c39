/** The shots as a CSV table to take out: no text of it is taken for a formula by a spreadsheet. */

import { useState } from 'preact/hooks';
import { shotsToCsv } from '../../../core/player/csv/export.ts';
import type { RecordedShot } from '../../../core/player/format.ts';
import { giveOut, type GivenOut } from '../../host/give-out.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { useBag } from '../state/use-bag.ts';
import { useWords } from '../../state/use-words.ts';

export function ShotsAsTable({ shots }: { readonly shots: readonly RecordedShot[] }) {
  const { host } = useTools();
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const name = useBag((state) => state.file?.history.present.name ?? 'player');
  const [given, setGiven] = useState<GivenOut | null>(null);
  return (
    <>
      <button
        type="button"
        class="small-button"
        disabled={shots.length === 0}
        onClick={() =>
          void giveOut(
            host,
            words.shots.kept.fileName({ name }),
            '.csv',
            shotsToCsv(shots, units),
            words,
          ).then(setGiven)
        }
      >
        {words.shots.kept.asTable}
      </button>
      {given !== null && (
        <span class={given.tone === 'news' ? 'faint' : 'warning'} role="status">
          {given.words}
        </span>
      )}
    </>
  );
}
