/** Keeps the background on the map in step with what the course names. */

import { useWords } from '../../state/use-words.ts';
import { useEffect, useState } from 'preact/hooks';
import type { Painter } from '../../map/canvas-layer.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import type { DrawingState } from '../drawing-state.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { type Background, backgroundOf, backgroundText } from './background.ts';
import { loadRaster } from './load-raster.ts';
import { fitOf } from './picture-fit.ts';
import type { Raster } from './raster.ts';
import { meshPainter, picturePainter, tilePainter } from './raster-painter.ts';

export interface ShownBackground {
  readonly attribution: string | null;
  /** Why it is not shown. */
  readonly trouble: string | null;
  /** The picture itself, for setting control points. */
  readonly bitmap: ImageBitmap | null;
}

const NOTHING: ShownBackground = { attribution: null, trouble: null, bitmap: null };
const NO_SOURCES: readonly never[] = [];

/** Share of the drawing's colour that covers the picture, from the person's slider. */
export function useBackground(cover: number): ShownBackground {
  const words = useWords();
  const { host } = useTools();
  const desk = useDesk();
  const sources = useApp((state) => state.settings.tileSources ?? NO_SOURCES);
  const token = useDrawing(({ file }) => file?.entry.token ?? null);
  const frame = useDrawing((state) => state.frame);
  const named = useDrawing(({ history }) => backgroundText(history.document));
  // control points move a picture; they do not load it anew
  const source = sourceKey(JSON.parse(named) as Background | null);
  const [raster, setRaster] = useState<Raster | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);

  useEffect(() => {
    let isCurrent = true;
    setRaster(null);
    setTrouble(null);
    const background = backgroundOf(desk.store.state().history.document);
    if (background === null || token === null) return undefined;
    void loadRaster({ host, token, sources, words }, background).then((loaded) => {
      if (!isCurrent) return;
      if (loaded.ok) setRaster(loaded.value);
      else setTrouble(loaded.error);
    });
    return () => {
      isCurrent = false;
    };
  }, [desk, host, token, source, sources, words]);

  useEffect(() => {
    const { current } = desk.stage;
    const background = JSON.parse(named) as Background | null;
    const painter = painterFor(raster, background, frame, () => desk.stage.current?.repaintBase());
    current?.showBase(painter, cover);
  }, [desk, raster, named, frame, cover]);

  if (raster === null) return trouble === null ? NOTHING : { ...NOTHING, trouble };
  return {
    trouble,
    attribution: raster.how === 'tiles' ? raster.attribution : null,
    bitmap: raster.how === 'picture' && raster.mesh === null ? raster.bitmap : null,
  };
}

function sourceKey(background: Background | null): string {
  if (background === null) return '';
  return background.kind === 'address'
    ? `address ${background.source}`
    : `${background.kind} ${background.attachment}`;
}

function painterFor(
  raster: Raster | null,
  background: Background | null,
  frame: DrawingState['frame'],
  arrived: () => void,
): Painter | null {
  if (raster === null || background === null) return null;
  if (raster.how === 'tiles') return tilePainter(raster, frame, arrived);
  if (raster.mesh !== null) return meshPainter(raster.bitmap, raster.mesh, frame);
  if (background.kind !== 'picture') return null;
  const fit = fitOf(background, frame);
  return fit.ok ? picturePainter(raster.bitmap, fit.value.transform) : null;
}
