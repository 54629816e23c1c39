/** Along the lower edge of the map: what to do next, what was done, and how long and large the sketch is. */

import type { Words } from '../../../core/words/words.ts';
import { geometryOf, kindOf } from '../../../core/course/document.ts';
import { measureDrawing } from '../../../core/course/edits/measure.ts';
import { lengthText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { areaText, bearingText } from '../drawn-measures.ts';
import type { DrawingState } from '../drawing-state.ts';
import { cardOf } from '../kinds.ts';
import { holeForNew, sketchedAs } from '../sketching.ts';
import { chosenFeatures } from '../selectors.ts';
import { useDrawing } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

export function DrawingLine() {
  const words = useWords();
  const hint = useDrawing((state) => hintFor(state, words));
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

function hintFor(state: DrawingState, words: Words): string {
  const { mode, sketch } = state;
  switch (mode.do) {
    case 'point':
      return mode.words;
    case 'cut':
      return sketch.length === 0 ? words.drawing.hint.cut : words.drawing.hint.cutOn;
    case 'hollow':
      return sketch.length < 3 ? words.drawing.hint.hollow : words.drawing.hint.hollowOn;
    case 'draw': {
      const { drawnAs } = cardOf(mode.kind);
      const phrase = words.drawing.kinds[mode.kind];
      const hole = holeForNew(state, mode.kind);
      const what = hole === null ? phrase : words.drawing.hint.onHole({ what: phrase, hole });
      if (drawnAs === 'point') return words.drawing.hint.point({ what });
      if (drawnAs === 'arrow')
        return sketch.length === 0
          ? words.drawing.hint.arrow({ what })
          : words.drawing.hint.arrowOn({ what });
      if (drawnAs === 'line') {
        const from = mode.kind === 'hole' ? words.drawing.hint.fromTee : words.drawing.hint.along;
        return sketch.length < 2
          ? words.drawing.hint.line({ what, from })
          : words.drawing.hint.lineOn({ what });
      }
      return sketch.length < 3 ? words.drawing.hint.area({ what }) : words.drawing.hint.areaOn({ what });
    }
    case 'choose': {
      const chosen = chosenFeatures(state);
      if (chosen.length === 0) return '';
      if (chosen.length > 1) return words.drawing.hint.several({ count: chosen.length });
      const kind = kindOf(chosen[0]!);
      const what = kind === undefined ? words.drawing.hint.chosenIt : words.drawing.kinds[kind];
      if (geometryOf(chosen[0]!)?.type === 'Point') return words.drawing.hint.place({ what });
      return state.corner === null ? words.drawing.hint.shape({ what }) : words.drawing.hint.corner({ what });
    }
  }
}

function SketchMeasures() {
  const words = useWords();
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
        {words.drawing.measures.side} <strong>{lengthText(lastSideM, units)}</strong>
        {lastBearing !== null && ` ${bearingText(lastBearing)}`}
      </span>
      <span>
        {drawnAs === 'area' ? words.drawing.measures.round : words.drawing.measures.inAll}{' '}
        <strong>{lengthText(lengthM, units)}</strong>
      </span>
      {drawnAs === 'area' && (
        <span>
          {words.drawing.measures.area} <strong>{areaText(areaM2, units, words)}</strong>
        </span>
      )}
    </p>
  );
}
