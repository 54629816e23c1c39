/** Along the lower edge of the map: what to do next, what was done, and how long and large the sketch is. */

import { geometryOf, kindOf } from '../../../core/course/document.ts';
import { KIND_WORDS } from '../../../core/course/feature-kind.ts';
import { measureDrawing } from '../../../core/course/edits/measure.ts';
import { lengthText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { areaText, bearingText } from '../drawn-measures.ts';
import type { DrawingState } from '../drawing-state.ts';
import { cardOf } from '../kinds.ts';
import { holeForNew, sketchedAs } from '../sketching.ts';
import { chosenFeatures } from '../selectors.ts';
import { useDrawing } from '../use-drawing.ts';

export function DrawingLine() {
  const hint = useDrawing(hintFor);
  const said = useDrawing((state) => state.said);
  return (
    <div class="drawing-line">
      <SketchMeasures />
      {hint !== '' && <p class="drawing-hint">{hint}</p>}
      <p class={said?.tone === 'refusal' ? 'drawing-said refusal' : 'drawing-said'} role="status">
        {said?.words ?? ''}
      </p>
    </div>
  );
}

function hintFor(state: DrawingState): string {
  const { mode, sketch } = state;
  switch (mode.do) {
    case 'point':
      return mode.words;
    case 'cut':
      return sketch.length === 0
        ? 'Click a line right across the area, from outside to outside.'
        : 'Click on; Enter or a double click cuts.';
    case 'hollow':
      return sketch.length < 3
        ? 'Click round what is to be left out.'
        : 'Enter, or a click on the first corner, cuts it out.';
    case 'draw': {
      const { drawnAs, words } = cardOf(mode.kind);
      const hole = holeForNew(state, mode.kind);
      const what = hole === null ? words : `${words}, hole ${hole}`;
      if (drawnAs === 'point') return `${what}: click where it is.`;
      if (drawnAs === 'arrow')
        return sketch.length === 0
          ? `${what}: click on the green where you saw it fall.`
          : `${what}: click downhill of it, then type how much it falls.`;
      if (drawnAs === 'line') {
        const from = mode.kind === 'hole' ? 'from the rearmost tee to the middle of the green' : 'along it';
        return sketch.length < 2
          ? `${what}: click ${from}.`
          : `${what}: click on; Enter or a double click ends it.`;
      }
      return sketch.length < 3
        ? `${what}: click round its edge.`
        : `${what}: click on; Enter or a click on the first corner closes it.`;
    }
    case 'choose': {
      const chosen = chosenFeatures(state);
      if (chosen.length === 0) return '';
      if (chosen.length > 1)
        return `${chosen.length} things are chosen: drag to move them, Delete removes them.`;
      const kind = kindOf(chosen[0]!);
      const what = kind === undefined ? 'It' : KIND_WORDS[kind];
      if (geometryOf(chosen[0]!)?.type === 'Point') return `${what}: drag it, or move it with the arrows.`;
      return state.corner === null
        ? `${what}: drag corners or all of it; a click on a side’s dot makes a new corner.`
        : `${what}: arrows move the chosen corner, Delete removes it.`;
    }
  }
}

function SketchMeasures() {
  const sketch = useDrawing((state) => state.sketch);
  const cursor = useDrawing((state) => state.cursor);
  const mode = useDrawing((state) => state.mode);
  const units = useApp((state) => state.settings.units);
  const drawnAs = sketchedAs(mode);
  if (drawnAs === null || drawnAs === 'point' || sketch.length === 0) return null;
  const places = cursor === null ? sketch : [...sketch, cursor.at];
  const { lengthM, lastSideM, lastBearing, areaM2 } = measureDrawing(
    places,
    drawnAs === 'area' ? 'area' : 'line',
  );
  return (
    <p class="sketch-measures">
      <span>
        side <strong>{lengthText(lastSideM, units)}</strong>
        {lastBearing !== null && ` ${bearingText(lastBearing)}`}
      </span>
      <span>
        {drawnAs === 'area' ? 'round it' : 'in all'} <strong>{lengthText(lengthM, units)}</strong>
      </span>
      {drawnAs === 'area' && (
        <span>
          area <strong>{areaText(areaM2, units)}</strong>
        </span>
      )}
    </p>
  );
}
