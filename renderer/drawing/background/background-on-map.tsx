/** On the map: whose pictures lie under it, why one does not show, and the window in which a picture is put in place. */

import { useState } from 'preact/hooks';
import { useDrawing } from '../use-drawing.ts';
import { backgroundText } from './background.ts';
import { PicturePlacer } from './picture-placer.tsx';
import { useBackground } from './use-background.ts';
import { useWords } from '../../state/use-words.ts';

/** How much the drawing covers the picture at first. */
const FIRST_COVER = 0.35;

export function BackgroundOnMap() {
  const words = useWords();
  const [cover, setCover] = useState(FIRST_COVER);
  const { attribution, trouble, bitmap } = useBackground(cover);
  const hasBackground = useDrawing(({ history }) => backgroundText(history.document) !== 'null');
  if (!hasBackground) return null;
  return (
    <div class="background-foot">
      {trouble !== null && (
        <p class="drawing-said refusal" role="alert">
          {trouble}
        </p>
      )}
      <label class="cover-slider">
        {words.underlay.over}
        <input
          type="range"
          min="0"
          max="1"
          step="0.05"
          value={cover}
          onInput={(event) => setCover(Number(event.currentTarget.value))}
        />
      </label>
      {bitmap !== null && <PicturePlacer bitmap={bitmap} />}
      {attribution !== null && <p class="attribution">{attribution}</p>}
    </div>
  );
}
