/** The round as CSV: to a file, and as text to copy. JSON is the round's own file. */

import { useRef, useState } from 'preact/hooks';
import { holesCsv, shotsCsv } from '../../../core/round/csv.ts';
import type { RoundDocument } from '../../../core/round/format.ts';
import type { FileEntry } from '../../../electron/contract/host.ts';
import { giveOut } from '../../host/give-out.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly round: RoundDocument;
  readonly entry: FileEntry;
}

export function ExportLine({ round, entry }: Props) {
  const words = useWords();
  const { host } = useTools();
  const info = useApp((app) => app.host);
  const [said, setSaid] = useState<string | null>(null);
  const [text, setText] = useState<string | null>(null);
  const area = useRef<HTMLTextAreaElement>(null);
  const give = (what: 'holes' | 'shots'): void => {
    const csv = what === 'holes' ? holesCsv(round) : shotsCsv(round);
    setText(csv);
    void giveOut(host, `${round.name} ${what}`, '.csv', csv, words).then((given) =>
      setSaid(given?.words ?? null),
    );
  };
  return (
    <section class="table-box" aria-label={words.round.export.asTable}>
      <h3>{words.round.export.table}</h3>
      <div class="form-line print-line">
        <button type="button" class="small-button" onClick={() => give('holes')}>
          {words.round.export.holes}
        </button>
        <button type="button" class="small-button" onClick={() => give('shots')}>
          {words.round.export.shots}
        </button>
        <span class="faint">
          {words.round.export.asJson({ name: entry.name, workspace: info?.workspaceName ?? '' })}
        </span>
      </div>
      {said !== null && <p role="status">{said}</p>}
      {text !== null && (
        <>
          <textarea class="csv-text" readOnly aria-label={words.round.export.text} value={text} ref={area} />
          <button
            type="button"
            class="small-button"
            onClick={() => {
              area.current?.select();
              // Where copying is not allowed the text stands selected.
              void navigator.clipboard.writeText(text).catch(() => undefined);
            }}
          >
            {words.round.export.copy}
          </button>
        </>
      )}
    </section>
  );
}
