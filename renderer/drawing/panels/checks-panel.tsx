/** What is wrong with the course; each line leads to its place, and mends it where that is safe. */

import { featureById } from '../../../core/course/document.ts';
import { featureWords } from '../../../core/course/edits/words.ts';
import { countText } from '../../state/measures.ts';
import { mendingOf } from '../checks/mend.ts';
import type { CourseFault } from '../../../core/course/report.ts';
import { mayEdit } from '../drawing-state.ts';
import { shapeOf } from '../shapes.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';

export function ChecksPanel() {
  const report = useDrawing((state) => state.report);
  const hasFile = useDrawing(({ file }) => file !== null);
  if (!hasFile) return <p class="panel-part">Open a course: it is checked as you draw.</p>;
  if (report === null) return <p class="panel-part">Looking …</p>;
  const { faults, completeness } = report;
  const unready = completeness.holes.filter(({ missing }) =>
    missing.some(({ weight }) => weight === 'stops'),
  );
  return (
    <>
      <div class="panel-part">
        <h2>{faults.length === 0 ? 'No fault found' : countText(faults.length, 'fault', 'faults')}</h2>
        <p class="faint">
          {faults.length === 0
            ? 'Outlines, numbers and places are looked through at every change.'
            : 'A line leads to its place on the map.'}
        </p>
        <ul class="plain-list fault-list">
          {faults.map((fault, i) => (
            <FaultLine key={`${fault.code}-${fault.feature ?? ''}-${i}`} fault={fault} />
          ))}
        </ul>
      </div>
      <div class="panel-part">
        <h3>Ready to plan</h3>
        <p>
          {completeness.holes.length - unready.length} of {completeness.holes.length} holes can be planned
          {unready.length === 0 ? '.' : `; not yet: ${unready.map(({ hole }) => hole).join(', ')}.`}
        </p>
        <ReadyList />
      </div>
    </>
  );
}

function FaultLine({ fault }: { readonly fault: CourseFault }) {
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const feature = useDrawing(({ history }) =>
    fault.feature === null ? undefined : featureById(history.document, fault.feature),
  );
  const mend = mendingOf(fault);
  const where = feature === undefined ? fault.where : featureWords(feature);
  const show = (): void => {
    if (feature === undefined) return;
    desk.store.dispatch({ type: 'mode-set', mode: { do: 'choose' } });
    desk.store.dispatch({ type: 'selected', ids: [feature.id] });
    desk.stage.current?.pointOut(shapeOf(feature, desk.store.state().frame));
  };
  return (
    <li data-fault={fault.code}>
      <button type="button" class="fault-place" disabled={feature === undefined} onClick={show}>
        {where}
        {fault.severity === 'warning' && <span class="tag">can be lived with</span>}
      </button>
      <p>{fault.message}</p>
      {mend !== null && (
        <button
          type="button"
          class="small-button"
          disabled={!editable}
          onClick={() => desk.attempt((document) => mend.make(document))}
        >
          {mend.words}
        </button>
      )}
    </li>
  );
}

function ReadyList() {
  const desk = useDesk();
  const holes = useDrawing(({ report }) => report?.completeness.holes ?? NONE);
  const lacking = holes.filter(({ missing }) => missing.length > 0);
  return (
    <ul class="plain-list ready-list">
      {lacking.map(({ hole, missing }) => (
        <li key={hole}>
          <button
            type="button"
            class="link-button"
            onClick={() => {
              desk.store.dispatch({ type: 'hole-chosen', hole });
              desk.store.dispatch({ type: 'panel-shown', panel: 'hole' });
              desk.stage.current?.fitHole(hole);
            }}
          >
            Hole {hole}
          </button>{' '}
          {countText(missing.length, 'thing is', 'things are')} missing
        </li>
      ))}
    </ul>
  );
}
const NONE: readonly never[] = [];
