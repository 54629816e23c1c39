/** After the round: the card typed in, held against the plan, learned from. */

import { useState } from 'preact/hooks';
import type { RoundDocument } from '../../../core/round/format.ts';
import { withDate } from '../../../core/round/record.ts';
import { Field } from '../../panels/field.tsx';
import { useApp, useTools } from '../../state/use-app.ts';
import { positionOf, teeOf } from '../../state/selectors.ts';
import { plannedHole } from '../../../core/round/review.ts';
import { useOutlook, useRound } from '../state/use-round.ts';
import { EntryTable } from './entry-table.tsx';
import { ExportLine } from './export-line.tsx';
import { FeedPanel } from './feed-panel.tsx';
import { FileBar } from './file-bar.tsx';
import { roundToEnter } from './new-round.ts';
import { PlacesPanel } from './places-panel.tsx';
import { ReviewPanel } from './review-panel.tsx';
import { RoundDay } from './round-day.tsx';
import type { OpenRound } from './round-file.ts';
import { useReview } from './use-review.ts';
import { roundFileDesk, useRoundFiles } from './use-round-file.ts';
import { useWords } from '../../state/use-words.ts';

export function AfterPage() {
  const words = useWords();
  const open = useRoundFiles((state) => state.open);
  return (
    <>
      <h2>{words.round.pages.after}</h2>
      {open === null ? <BeginRound /> : <RoundAtHand open={open} />}
    </>
  );
}

function BeginRound() {
  const words = useWords();
  const tools = useTools();
  const wishes = useRound((state) => state.wishes);
  const outlook = useOutlook();
  const isBusy = useRoundFiles((state) => state.isBusy);
  const refused = useRoundFiles((state) => state.refused);
  const { keeper } = roundFileDesk(tools);
  const begin = (): void => {
    const document = roundToEnter(tools.store.state(), wishes, outlook, today());
    void keeper.begin(document, document.name);
  };
  return (
    <>
      <p>{words.round.after.begin}</p>
      {refused !== null && (
        <div class="fault-box" role="alert">
          <strong>{words.round.after.notOpened({ name: refused.name })}</strong>
          <ul>
            {refused.faults.map(({ where, message }, i) => (
              <li key={i}>
                {where}: {message}
              </li>
            ))}
          </ul>
        </div>
      )}
      <div class="form-line print-line">
        <button type="button" class="main-button" disabled={isBusy} onClick={begin}>
          {words.round.after.enterToday}
        </button>
        <button type="button" class="text-button" onClick={() => void keeper.importFile()}>
          {words.round.after.bringIn}
        </button>
      </div>
      <FileBar />
    </>
  );
}

/** The day where the person is, as `2026-04-11`. */
function today(): string {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function RoundAtHand({ open }: { readonly open: OpenRound }) {
  const words = useWords();
  const tools = useTools();
  const { store } = roundFileDesk(tools);
  const course = useApp((app) => app.course?.value ?? null);
  const player = useApp((app) => app.player?.value ?? null);
  const revision = useApp((app) => app.player?.revision);
  const [marked, setMarked] = useState<number | null>(null);
  const { document: round } = open;
  const work = useReview(round);
  const { review } = work;
  const isFixed = open.readOnlyWhy !== null;
  const change = (label: string, next: RoundDocument, field?: string): void =>
    store.dispatch({ type: 'changed', label, document: next, ...(field === undefined ? {} : { field }) });
  if (course === null) return null;
  const isSame = course.name === round.course.name;
  const isOtherPlan = round.player.sha256 !== revision;
  const hole = course.holes.find(({ number }) => number === marked);
  const planned = marked === null ? undefined : plannedHole(round, marked);
  return (
    <>
      <FileBar />
      {!isSame && (
        <p class="warning">
          {words.round.after.otherCourse({ played: round.course.name, open: course.name })}
        </p>
      )}
      <div class="form-line date-line">
        <Field
          name={words.round.entry.date}
          control={(id) => (
            <input
              id={id}
              class="number-input date-input"
              type="date"
              value={(round.playedAt ?? '').slice(0, 10)}
              disabled={isFixed}
              onChange={(event) => {
                const { value } = event.currentTarget;
                if (/^\d{4}-\d{2}-\d{2}$/u.test(value))
                  change(words.round.entry.dateStep, withDate(round, value));
              }}
            />
          )}
        />
      </div>
      {isSame && (
        <EntryTable
          {...{ course, player, round, isFixed, marked, change }}
          mark={(number) => setMarked(number === marked ? null : number)}
        />
      )}
      {isSame && hole !== undefined && (
        <PlacesPanel
          key={hole.number}
          {...{ course, hole, player, round, change }}
          tee={teeOf(hole, planned?.tee ?? null).at}
          pin={positionOf(hole, planned?.holePosition ?? null).at}
          close={() => setMarked(null)}
        />
      )}
      <RoundDay {...{ round, isFixed, change, work }} />
      {review !== null && <ReviewPanel review={review} isOtherPlan={isOtherPlan} />}
      <FeedPanel {...{ round, isFixed, change }} />
      <ExportLine round={round} entry={open.entry} />
    </>
  );
}
