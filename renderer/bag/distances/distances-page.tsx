/** Distances side by side: the ladder, gaps and overlaps, change of late, and what more shots would be worth. */

import { driftWords, type RecentDrift } from '../work/recent-drift.ts';
import { useEffect, useState } from 'preact/hooks';
import { gapWords } from '../../../core/player/gap-words.ts';

import type { PlayerDocument } from '../../../core/player/format.ts';
import { chanceText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { lengthEstimate } from '../words.ts';
import { LadderPicture } from './ladder-picture.tsx';
import { ShotWorth } from './shot-worth.tsx';
import { useWords } from '../../state/use-words.ts';

export function DistancesPage() {
  const words = useWords();
  const report = useBag((state) => state.file?.estimate.report ?? null);
  const units = useApp((state) => state.settings.units);
  if (report === null || report.rungs.length === 0)
    return <p class="faint">{words.player.distances.noLadderYet}</p>;
  const sentences = report.gaps.flatMap((gap) => gapWords(gap, units, words) ?? []);
  return (
    <div class="distances-page">
      <LadderPicture rungs={report.rungs} gaps={report.gaps} />
      <div class="short-page">
        <section class="bag-card" aria-label={words.player.distances.gaps}>
          <h2>{words.player.distances.gapsAndOverlaps}</h2>
          {sentences.length === 0 ? (
            <p>{words.player.distances.even}</p>
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
                <th scope="col">{words.player.distances.between}</th>
                <th scope="col">{words.player.distances.gap({ units: words.spread.unit[units] })}</th>
                <th scope="col">{words.player.distances.longerShorter}</th>
                <th scope="col">
                  <span class="unseen">{words.player.distances.remark}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {report.gaps.map((gap) => {
                const doubt = gap.doubt ?? { mean: gap.gapM, low: gap.gapM, high: gap.gapM };
                const shown = lengthEstimate({ ...doubt, mean: gap.gapM }, units, words);
                return (
                  <tr key={`${gap.longer.club}/${gap.shorter.club}`}>
                    <th scope="row">
                      {words.player.distances.pair({ longer: gap.longer.club, shorter: gap.shorter.club })}
                    </th>
                    <td class="number">
                      <strong>{shown.mean}</strong>
                      <small>{words.player.range({ low: shown.low, high: shown.high })}</small>
                    </td>
                    <td>{chanceText(gap.overlap)}</td>
                    <td>{gap.kind === 'even' ? '' : words.player.distances.kinds[gap.kind]}</td>
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
  const words = useWords();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const document = useBag((state) => state.file?.history.present ?? null);
  const [found, setFound] = useState<{
    readonly of: PlayerDocument;
    readonly drifts: readonly RecentDrift[];
  } | null>(null);
  useEffect(() => {
    if (document === null || found?.of === document) return;
    let isWanted = true;
    void desk.office.drifts(document).then((drifts) => {
      if (isWanted) setFound({ of: document, drifts });
    });
    return () => {
      isWanted = false;
    };
  }, [desk, document, found]);
  const sentences =
    found !== null && found.of === document
      ? found.drifts.flatMap((drift) => driftWords(drift, units, words) ?? [])
      : [];
  if (sentences.length === 0) return null;
  return (
    <ul class="gap-words" aria-label={words.player.distances.changes}>
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
