/** What a map file brings, what of it belongs to which hole, and what is left out and why. */

import { sayIn, tell } from '../../../core/words/told.ts';
import { type ImportProposal, originSaid } from '../../../core/course/import/proposal.ts';
import { useWords } from '../../state/use-words.ts';

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
  const words = useWords();
  const { features, counts, assigned, unassigned, leftOut, toldNotes, sources, replaces } = proposal;
  const nearby = assigned.filter(({ by }) => by === 'nearness').length;
  return (
    <section class="import-report" aria-label={words.mapImport.report.name}>
      <h3>
        {isDone
          ? words.mapImport.report.takenIn({ file })
          : features.length === 0
            ? words.mapImport.report.nothing({ file })
            : words.mapImport.report.brings({ file })}
      </h3>
      {counts.length > 0 && (
        <ul>
          {counts.map(({ kind, count }) => (
            <li key={kind}>{words.features.counts[kind]({ count })}</li>
          ))}
        </ul>
      )}
      {replaces.length > 0 && (
        <p>
          {words.mapImport.report.makeRoom({
            features: words.mapImport.report.features({ count: replaces.length }),
          })}
        </p>
      )}
      {assigned.length > 0 && (
        <p>{words.mapImport.report.putToHoles({ byNumber: assigned.length - nearby, byNearness: nearby })}</p>
      )}
      <Lines
        title={words.mapImport.report.noHole}
        lines={unassigned.map(({ feature, told }) => {
          const one = features[feature]!;
          return `${words.features.kinds[one.kind]} (${sayIn(originSaid(one), words)}): ${sayIn(told, words)}`;
        })}
      />
      <Lines
        title={words.mapImport.report.leftOut}
        lines={leftOut.map(
          ({ told: { what, why, examples }, count }) =>
            `${count} × ${sayIn(what, words)}: ${sayIn(why, words)} (${examples.map((example) => sayIn(example, words)).join(', ')}${count > examples.length ? ', …' : ''})`,
        )}
      />
      <Lines title={words.mapImport.report.toKnow} lines={toldNotes.map((note) => tell(note, words))} />
      <Lines title={words.mapImport.report.sources} lines={sources} />
    </section>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  const words = useWords();
  if (lines.length === 0) return null;
  return (
    <>
      <h4>{title}</h4>
      <ul>
        {lines.slice(0, MOST_LINES).map((line, i) => (
          <li key={i}>{line}</li>
        ))}
        {lines.length > MOST_LINES && (
          <li>{words.mapImport.report.more({ count: lines.length - MOST_LINES })}</li>
        )}
      </ul>
    </>
  );
}
