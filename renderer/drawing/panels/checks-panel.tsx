/** What is wrong with the course; each line leads to its place, and mends it where that is safe. */

import { faultText } from '../../../core/words/told.ts';
import { featureById } from '../../../core/course/document.ts';
import { featureWords } from '../../../core/course/edits/words.ts';
import { mendingOf } from '../checks/mend.ts';
import type { CourseFault } from '../../../core/course/report.ts';
import { mayEdit } from '../drawing-state.ts';
import { shapeOf } from '../shapes.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

export function ChecksPanel() {
  const words = useWords();
  const report = useDrawing((state) => state.report);
  const hasFile = useDrawing(({ file }) => file !== null);
  if (!hasFile) return <p class="panel-part">{words.drawing.checks.open}</p>;
  if (report === null) return <p class="panel-part">{words.drawing.looking}</p>;
  const { faults, completeness } = report;
  const unready = completeness.holes.filter(({ missing }) =>
    missing.some(({ weight }) => weight === 'stops'),
  );
  return (
    <>
      <div class="panel-part">
        <h2>
          {faults.length === 0
            ? words.drawing.checks.none
            : words.drawing.checks.faults({ count: faults.length })}
        </h2>
        <p class="faint">{faults.length === 0 ? words.drawing.checks.how : words.drawing.checks.lines}</p>
        <ul class="plain-list fault-list">
          {faults.map((fault, i) => (
            <FaultLine key={`${fault.code}-${fault.feature ?? ''}-${i}`} fault={fault} />
          ))}
        </ul>
      </div>
      <div class="panel-part">
        <h3>{words.drawing.checks.ready}</h3>
        <p>
          {words.drawing.checks.readyCount({
            ready: completeness.holes.length - unready.length,
            total: completeness.holes.length,
            rest:
              unready.length === 0
                ? '.'
                : words.drawing.checks.notYet({ holes: unready.map(({ hole }) => hole).join(', ') }),
          })}
        </p>
        <ReadyList />
      </div>
    </>
  );
}

function FaultLine({ fault }: { readonly fault: CourseFault }) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const feature = useDrawing(({ history }) =>
    fault.feature === null ? undefined : featureById(history.document, fault.feature),
  );
  const mend = mendingOf(fault, words);
  const told = faultText(fault, words);
  const where = feature === undefined ? told.where : featureWords(feature, words);
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
        {fault.severity === 'warning' && <span class="tag">{words.drawing.checks.bearable}</span>}
      </button>
      <p>{told.message}</p>
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
  const words = useWords();
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
            {words.drawing.hole.title({ hole })}
          </button>{' '}
          {words.drawing.checks.missing({
            things: words.drawing.checks.thingsMissing({ count: missing.length }),
          })}
        </li>
      ))}
    </ul>
  );
}
const NONE: readonly never[] = [];
