/** What a map file brings, what of it belongs to which hole, and what is left out and why. */

import { countWords } from '../../../core/course/edits/words.ts';
import type { ImportProposal } from '../../../core/course/import/proposal.ts';
import { KIND_WORDS } from '../../../core/course/feature-kind.ts';
import { countText } from '../../state/measures.ts';

/** Lines of one sort beyond which the rest is only counted. */
const MOST_LINES = 12;

export function ProposalReport({
  file,
  proposal,
  isDone,
}: {
  readonly file: string;
  readonly proposal: ImportProposal;
  readonly isDone: boolean;
}) {
  const { features, counts, assigned, unassigned, leftOut, notes, sources, replaces } = proposal;
  const nearby = assigned.filter(({ by }) => by === 'nearness').length;
  return (
    <section class="import-report" aria-label="What the file brings">
      <h3>
        {isDone
          ? `Taken in from ${file}`
          : features.length === 0
            ? `${file} brings nothing`
            : `${file} brings`}
      </h3>
      {counts.length > 0 && (
        <ul>
          {counts.map(({ kind, count }) => (
            <li key={kind}>{countWords(count, kind)}</li>
          ))}
        </ul>
      )}
      {replaces.length > 0 && (
        <p>{countText(replaces.length, 'feature', 'features')} of an earlier import make room for them.</p>
      )}
      {assigned.length > 0 && (
        <p>
          Put to holes: {assigned.length - nearby} by their number, {nearby} by nearness.
        </p>
      )}
      <Lines
        title="Put to no hole"
        lines={unassigned.map(({ feature, why }) => {
          const { kind, origin } = features[feature]!;
          return `${KIND_WORDS[kind]} (${origin}): ${why}`;
        })}
      />
      <Lines
        title="Left out"
        lines={leftOut.map(
          ({ what, why, count, examples }) =>
            `${count} × ${what}: ${why} (${examples.join(', ')}${count > examples.length ? ', …' : ''})`,
        )}
      />
      <Lines title="To know" lines={notes} />
      <Lines title="To be named as sources" lines={sources} />
    </section>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h4>{title}</h4>
      <ul>
        {lines.slice(0, MOST_LINES).map((line, i) => (
          <li key={i}>{line}</li>
        ))}
        {lines.length > MOST_LINES && <li>and {lines.length - MOST_LINES} more</li>}
      </ul>
    </>
  );
}
