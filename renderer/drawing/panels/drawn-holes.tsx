/** The holes of the course: what each is, how long, how much it still lacks. */

import { type EditableDocument, geometryOf, propertiesOf } from '../../../core/course/document.ts';
import { polylineLengthM } from '../../../core/course/ellipsoid.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { lengthText, type Units } from '../../state/measures.ts';
import { remember } from '../../state/remember.ts';
import { useApp } from '../../state/use-app.ts';
import { holesShown, lineOfHole, settledDocument } from '../selectors.ts';
import { mayEdit } from '../drawing-state.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

interface HoleLine {
  readonly number: number;
  readonly par: string;
  readonly strokeIndex: string;
  readonly lengthM: number | null;
}

const linesOf = remember((document: EditableDocument, numbers: readonly number[]): readonly HoleLine[] =>
  numbers.map((number) => {
    const line = lineOfHole(document, number);
    const properties = line === undefined ? {} : propertiesOf(line);
    const geometry = line === undefined ? undefined : geometryOf(line);
    return {
      number,
      par: textOf(properties['par']),
      strokeIndex: textOf(properties['handicap']),
      lengthM:
        geometry?.type === 'LineString'
          ? polylineLengthM(geometry.coordinates.map(([lon, lat]): LonLat => [lon, lat]))
          : null,
    };
  }),
);

function textOf(value: unknown): string {
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
}

export function DrawnHoles() {
  const words = useWords();
  const desk = useDesk();
  const current = useDrawing(({ hole }) => hole);
  const lines = useDrawing(({ history, hole, file }) => {
    if (file === null) return NO_LINES;
    const document = settledDocument(history);
    return linesOf(document, holesShown(document, hole));
  });
  const editable = useDrawing(mayEdit);
  const units = useApp((state) => state.settings.units);
  const show = (hole: number): void => {
    desk.store.dispatch({ type: 'hole-chosen', hole });
    desk.store.dispatch({ type: 'panel-shown', panel: 'hole' });
    desk.stage.current?.fitHole(hole);
  };
  const total = lines.reduce((sum, { lengthM }) => sum + (lengthM ?? 0), 0);
  return (
    <div class="drawn-holes">
      {lines.length === 0 && <p class="empty-words">{words.drawing.noHoleYet}</p>}
      <ul class="plain-list">
        {lines.map((line) => (
          <li key={line.number}>
            <HoleRow line={line} isCurrent={line.number === current} units={units} show={show} />
          </li>
        ))}
      </ul>
      {lines.length > 0 && (
        <div class="list-foot">
          <button
            type="button"
            class="small-button"
            disabled={!editable}
            onClick={() => {
              let next = 1;
              while (lines.some(({ number, lengthM }) => number === next && lengthM !== null)) next++;
              desk.store.dispatch({ type: 'hole-chosen', hole: next });
              desk.store.dispatch({ type: 'panel-shown', panel: 'hole' });
              desk.store.dispatch({ type: 'mode-set', mode: { do: 'draw', kind: 'hole' } });
              desk.stage.current?.element.focus({ preventScroll: true });
            }}
          >
            {words.drawing.addHole}
          </button>
          <span class="faint">{words.drawing.inAll({ length: lengthText(total, units) })}</span>
        </div>
      )}
    </div>
  );
}
const NO_LINES: readonly HoleLine[] = [];

function HoleRow({
  line,
  isCurrent,
  units,
  show,
}: {
  readonly line: HoleLine;
  readonly isCurrent: boolean;
  readonly units: Units;
  readonly show: (hole: number) => void;
}) {
  const words = useWords();
  const missing = useDrawing(
    ({ report }) => report?.completeness.holes.find(({ hole }) => hole === line.number)?.missing.length ?? 0,
  );
  const stops = useDrawing(
    ({ report }) =>
      report?.completeness.holes
        .find(({ hole }) => hole === line.number)
        ?.missing.some(({ weight }) => weight === 'stops') === true,
  );
  const facts = [
    line.par === '' ? words.drawing.parUnknown : words.drawing.par({ par: line.par }),
    ...(line.strokeIndex === '' ? [] : [words.drawing.strokeIndex({ index: line.strokeIndex })]),
  ].join(' · ');
  return (
    <button
      type="button"
      class="drawn-hole"
      data-hole={line.number}
      aria-current={isCurrent ? 'true' : undefined}
      onClick={() => show(line.number)}
    >
      <span class="hole-number">
        <span class="unseen">{words.drawing.holeWord} </span>
        {line.number}
      </span>
      <span>{facts}</span>
      <span class="drawn-length">
        {line.lengthM === null ? words.drawing.noLine : lengthText(line.lengthM, units)}
      </span>
      <span class={stops ? 'missing-count stops' : 'missing-count'}>
        {missing === 0 ? '' : stops ? words.drawing.notReady : words.drawing.notes({ count: missing })}
      </span>
    </button>
  );
}
