/** Brings a map file in: choose it, say what is what where it does not say so itself, look, take it in or leave it. */

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
      <summary>Bring in a map file</summary>
      <input
        ref={picker}
        type="file"
        class="unseen"
        aria-label="Map file to bring in"
        tabIndex={-1}
        accept=".osm,.xml,.json,.geojson,.gpx,.tif,.tiff"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (file !== undefined) void read(file);
        }}
      />
      {step.at === 'start' && (
        <p class="faint">
          OpenStreetMap data saved to a file, GeoJSON of any program, GPX points and tracks walked on the
          course, ground heights as GeoTIFF. You see what it brings before anything is changed.
        </p>
      )}
      {step.at === 'reading' && <p role="status">Reading {step.file} …</p>}
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
            <p role="status">Working out what it brings …</p>
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
            Take it in
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
            {step.at === 'reading' ? 'Stop' : 'Leave it'}
          </button>
        )}
        {step.at !== 'looking' && step.at !== 'reading' && (
          <button
            type="button"
            class="small-button"
            disabled={!editable}
            onClick={() => picker.current?.click()}
          >
            Choose a file …
          </button>
        )}
      </div>
    </details>
  );
}

function FaultLines({ file, faults }: { readonly file: string; readonly faults: readonly Fault[] }) {
  return (
    <div class="field-trouble" role="alert">
      <p>{file} cannot be brought in:</p>
      <ul>
        {faults.slice(0, 8).map(({ where, message }, i) => (
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
  const message = `It is larger than ${MOST_FILE_BYTES / 1024 / 1024} MiB. Cut it down to the course.`;
  return { severity: 'error', code: 'too-large', where: 'file', message };
}
