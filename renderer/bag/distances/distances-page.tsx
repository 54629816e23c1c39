/** Distances side by side: the ladder, gaps and overlaps, change of late, and what more shots would be worth. */

import { useEffect, useState } from 'preact/hooks';
import { gapWords } from '../../../core/player/gap-words.ts';
import type { Gap } from '../../../core/player/gaps.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import { chanceText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { lengthEstimate } from '../words.ts';
import { LadderPicture } from './ladder-picture.tsx';
import { ShotWorth } from './shot-worth.tsx';

const KIND_WORDS: Readonly<Record<Gap['kind'], string>> = {
  even: 'even',
  wide: 'wide gap',
  narrow: 'overlap',
  turned: 'turned round',
};

export function DistancesPage() {
  const report = useBag((state) => state.file?.estimate.report ?? null);
  const units = useApp((state) => state.settings.units);
  if (report === null || report.rungs.length === 0)
    return <p class="faint">The ladder appears when the estimates are worked out.</p>;
  const sentences = report.gaps.flatMap((gap) => gapWords(gap, units) ?? []);
  return (
    <div class="distances-page">
      <LadderPicture rungs={report.rungs} gaps={report.gaps} />
      <div class="short-page">
        <section class="bag-card" aria-label="Gaps">
          <h2>Gaps and overlaps</h2>
          {sentences.length === 0 ? (
            <p>No gap is wide and none is narrow: the ladder is even.</p>
          ) : (
            <ul class="gap-words">
              {sentences.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          )}
          <DriftNote />
          <table class="bag-table">
            <thead>
              <tr>
                <th scope="col">Between</th>
                <th scope="col">Gap, {units}</th>
                <th scope="col">Longer comes down shorter</th>
                <th scope="col">
                  <span class="unseen">Remark</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {report.gaps.map((gap) => {
                const doubt = gap.doubt ?? { mean: gap.gapM, low: gap.gapM, high: gap.gapM };
                const shown = lengthEstimate({ ...doubt, mean: gap.gapM }, units);
                return (
                  <tr key={`${gap.longer.club}/${gap.shorter.club}`}>
                    <th scope="row">
                      {gap.longer.club} and {gap.shorter.club}
                    </th>
                    <td class="number">
                      <strong>{shown.mean}</strong>
                      <small>
                        {shown.low} to {shown.high}
                      </small>
                    </td>
                    <td>{chanceText(gap.overlap)}</td>
                    <td>{gap.kind === 'even' ? '' : KIND_WORDS[gap.kind]}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </section>
        <ShotWorth />
      </div>
    </div>
  );
}

/** Clubs that changed of late, asked for when this page is shown. */
function DriftNote() {
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const document = useBag((state) => state.file?.history.present ?? null);
  const [found, setFound] = useState<{
    readonly of: PlayerDocument;
    readonly sentences: Readonly<Record<'yards' | 'metres', readonly string[]>>;
  } | null>(null);
  useEffect(() => {
    if (document === null || found?.of === document) return;
    let isWanted = true;
    void desk.office.drifts(document).then((sentences) => {
      if (isWanted) setFound({ of: document, sentences });
    });
    return () => {
      isWanted = false;
    };
  }, [desk, document, found]);
  const sentences = found !== null && found.of === document ? found.sentences[units] : undefined;
  if (sentences === undefined || sentences.length === 0) return null;
  return (
    <ul class="gap-words" aria-label="Changes of late">
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
