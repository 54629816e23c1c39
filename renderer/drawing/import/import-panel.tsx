/** Brings a map file in: choose it, say what is what where it does not say so itself, look, take it in or leave it. */

import { faultText, told, toldFault } from '../../../core/words/told.ts';
import { useEffect, useRef, useState } from 'preact/hooks';
import { applyProposal } from '../../../core/course/import/apply-proposal.ts';
import { MOST_FILE_BYTES } from '../../../core/course/import/elevation-model.ts';
import { DEFAULT_SPACING_M } from '../../../core/course/import/heights.ts';
import type { ImportProposal } from '../../../core/course/import/proposal.ts';
import type { Fault } from '../../../core/result.ts';
import { mayEdit } from '../drawing-state.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import type { ImportWishes, LookedAt } from './import-worker.ts';
import { type MapReader, startMapReader } from './map-reader.ts';
import { previewOf } from './preview.ts';
import { ProposalReport } from './proposal-report.tsx';
import { WishesForm } from './wishes-form.tsx';
import { useWords } from '../../state/use-words.ts';

type Step =
  | { readonly at: 'start' }
  | { readonly at: 'reading'; readonly file: string }
  | { readonly at: 'refused'; readonly file: string; readonly faults: readonly Fault[] }
  | {
      readonly at: 'looking';
      readonly file: string;
      readonly looked: LookedAt;
      readonly wishes: ImportWishes;
      readonly proposal: ImportProposal | null;
      readonly faults: readonly Fault[];
    }
  | { readonly at: 'done'; readonly file: string; readonly proposal: ImportProposal };

export function ImportPanel() {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const [step, setStep] = useState<Step>({ at: 'start' });
  const reader = useRef<MapReader | null>(null);
  const picker = useRef<HTMLInputElement>(null);
  const round = useRef(0);
  const stop = (): void => {
    round.current++;
    reader.current?.end();
    reader.current = null;
    desk.stage.current?.showPreview([]);
  };
  useEffect(() => stop, []);

  const propose = async (file: string, looked: LookedAt, wishes: ImportWishes): Promise<void> => {
    const { current } = reader;
    const mine = ++round.current;
    if (current === null) return;
    setStep({ at: 'looking', file, looked, wishes, proposal: null, faults: [] });
    const answer = await current.propose(desk.store.state().history.document, looked.kind, wishes);
    if (mine !== round.current) return;
    const proposal = answer.ok ? answer.value : null;
    setStep({ at: 'looking', file, looked, wishes, proposal, faults: answer.ok ? [] : answer.error });
    if (proposal !== null) previewOf(desk, proposal);
  };

  const read = async (file: File): Promise<void> => {
    stop();
    const mine = round.current;
    setStep({ at: 'reading', file: file.name });
    if (file.size > MOST_FILE_BYTES) {
      setStep({ at: 'refused', file: file.name, faults: [tooLarge()] });
      return;
    }
    const started = startMapReader();
    reader.current = started;
    const looked = await started.look(await file.arrayBuffer());
    if (mine !== round.current) return;
    if (!looked.ok) {
      setStep({ at: 'refused', file: file.name, faults: looked.error });
      return;
    }
    await propose(file.name, looked.value, firstWishes(looked.value));
  };

  const takeIn = (file: string, proposal: ImportProposal): void => {
    if (!desk.attempt((document) => applyProposal(document, proposal))) return;
    stop();
    desk.stage.current?.fit();
    setStep({ at: 'done', file, proposal });
  };

  return (
    <details class="panel-part" open={step.at !== 'start'}>
      <summary>{words.mapImport.title}</summary>
      <input
        ref={picker}
        type="file"
        class="unseen"
        aria-label={words.mapImport.file}
        tabIndex={-1}
        accept=".osm,.xml,.json,.geojson,.gpx,.tif,.tiff"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (file !== undefined) void read(file);
        }}
      />
      {step.at === 'start' && <p class="faint">{words.mapImport.explain}</p>}
      {step.at === 'reading' && <p role="status">{words.mapImport.reading({ file: step.file })}</p>}
      {step.at === 'refused' && <FaultLines file={step.file} faults={step.faults} />}
      {step.at === 'looking' && (
        <>
          <WishesForm
            looked={step.looked}
            wishes={step.wishes}
            change={(wishes) => void propose(step.file, step.looked, wishes)}
          />
          {step.faults.length > 0 && <FaultLines file={step.file} faults={step.faults} />}
          {step.proposal === null && step.faults.length === 0 && (
            <p role="status">{words.mapImport.workingOut}</p>
          )}
          {step.proposal !== null && (
            <ProposalReport file={step.file} proposal={step.proposal} isDone={false} />
          )}
        </>
      )}
      {step.at === 'done' && <ProposalReport file={step.file} proposal={step.proposal} isDone />}
      <div class="act-buttons import-acts">
        {step.at === 'looking' && step.proposal !== null && step.proposal.features.length > 0 && (
          <button
            type="button"
            class="main-button"
            disabled={!editable}
            onClick={() => {
              if (step.proposal !== null) takeIn(step.file, step.proposal);
            }}
          >
            {words.mapImport.takeIn}
          </button>
        )}
        {(step.at === 'looking' || step.at === 'reading') && (
          <button
            type="button"
            class="small-button"
            onClick={() => {
              stop();
              setStep({ at: 'start' });
            }}
          >
            {step.at === 'reading' ? words.underlay.stop : words.mapImport.leave}
          </button>
        )}
        {step.at !== 'looking' && step.at !== 'reading' && (
          <button
            type="button"
            class="small-button"
            disabled={!editable}
            onClick={() => picker.current?.click()}
          >
            {words.mapImport.choose}
          </button>
        )}
      </div>
    </details>
  );
}

function FaultLines({ file, faults }: { readonly file: string; readonly faults: readonly Fault[] }) {
  const words = useWords();
  return (
    <div class="field-trouble" role="alert">
      <p>{words.mapImport.cannot({ file })}</p>
      <ul>
        {faults
          .slice(0, 8)
          .map((fault) => faultText(fault, words))
          .map(({ where, message }, i) => (
            <li key={i}>
              {where}: {message}
            </li>
          ))}
      </ul>
    </div>
  );
}

/** Words are only gone by where the file has no tags that are known. */
function firstWishes({ suggestions }: LookedAt): ImportWishes {
  const guess = suggestions !== null && suggestions.tagged === 0 ? suggestions : null;
  return {
    mappings: guess?.mappings ?? [],
    holeProperty: guess?.holeProperty ?? null,
    trackKind: null,
    spacingM: DEFAULT_SPACING_M,
  };
}

function tooLarge(): Fault {
  const message = told(({ mapImport }) => mapImport.faults.tooLarge, { most: MOST_FILE_BYTES / 1024 / 1024 });
  return toldFault({ severity: 'error', code: 'too-large', where: 'file', message });
}
