/** The picture by itself, to be clicked on; closer and farther by buttons, the pixel by arrow keys as well. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { Picture } from '../../panels/pictograms.tsx';
import type { PicturePin } from './background.ts';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly bitmap: ImageBitmap;
  readonly pins: readonly PicturePin[];
  readonly pick: (pixelX: number, pixelY: number) => void;
  readonly close: () => void;
}

const ZOOM = 1.6;
/** Larger canvases are refused by browsers. */
const MOST_SIDE_PX = 12_000;

export function PixelPicker({ bitmap, pins, pick, close }: Props) {
  const words = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const sheet = useRef<HTMLCanvasElement>(null);
  const [scale, setScale] = useState(() => Math.min(1, 1100 / bitmap.width, 600 / bitmap.height));
  const [cross, setCross] = useState({ x: bitmap.width / 2, y: bitmap.height / 2 });
  useEffect(() => dialog.current?.showModal(), []);
  useEffect(() => {
    const canvas = sheet.current;
    const context = canvas?.getContext('2d');
    if (canvas === null || context === null || context === undefined) return;
    canvas.width = Math.max(1, Math.round(bitmap.width * scale));
    canvas.height = Math.max(1, Math.round(bitmap.height * scale));
    context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
    pins.forEach(({ pixelX, pixelY }, i) => mark(context, pixelX * scale, pixelY * scale, String(i + 1)));
    mark(context, cross.x * scale, cross.y * scale, '');
  }, [bitmap, scale, pins, cross]);
  const zoom = (factor: number): void => {
    const most = MOST_SIDE_PX / Math.max(bitmap.width, bitmap.height);
    setScale((now) => Math.min(most, Math.max(0.05, now * factor)));
  };
  return (
    <dialog
      class="key-sheet pixel-picker"
      ref={dialog}
      aria-label={words.underlay.chooseSpot}
      onClose={close}
    >
      <div class="key-sheet-head">
        <h2>{words.underlay.clickKnown}</h2>
        <button
          type="button"
          class="icon-button"
          aria-label={words.drawing.closer}
          title={words.drawing.closer}
          onClick={() => zoom(ZOOM)}
        >
          <Picture of="plus" />
        </button>
        <button
          type="button"
          class="icon-button"
          aria-label={words.drawing.farther}
          title={words.drawing.farther}
          onClick={() => zoom(1 / ZOOM)}
        >
          <Picture of="minus" />
        </button>
        <button
          type="button"
          class="icon-button"
          aria-label={words.drawing.close}
          title={words.drawing.closeEscape}
          onClick={() => dialog.current?.close()}
        >
          <Picture of="close" />
        </button>
      </div>
      <div class="pixel-sheet">
        <canvas
          ref={sheet}
          tabIndex={0}
          role="application"
          aria-label={words.underlay.picture}
          onClick={(event) => pick(event.offsetX / scale, event.offsetY / scale)}
          onKeyDown={(event) => {
            const step = (event.shiftKey ? 1 : 12) / scale;
            const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[
              event.key
            ];
            if (event.key === 'Enter') pick(cross.x, cross.y);
            if (by === undefined) return;
            event.preventDefault();
            const clamp = (value: number, most: number): number => Math.min(most, Math.max(0, value));
            setCross(({ x, y }) => ({
              x: clamp(x + by[0]! * step, bitmap.width),
              y: clamp(y + by[1]! * step, bitmap.height),
            }));
          }}
        />
      </div>
    </dialog>
  );
}

function mark(context: CanvasRenderingContext2D, x: number, y: number, phrase: string): void {
  for (const [style, width] of [
    ['#ffffff', 5],
    ['#0b4bb3', 2],
  ] as const) {
    context.strokeStyle = style;
    context.lineWidth = width;
    context.beginPath();
    context.moveTo(x - 11, y);
    context.lineTo(x + 11, y);
    context.moveTo(x, y - 11);
    context.lineTo(x, y + 11);
    context.stroke();
  }
  context.font = '600 14px Arial, sans-serif';
  context.lineWidth = 4;
  context.strokeStyle = '#ffffff';
  context.strokeText(phrase, x + 8, y - 8);
  context.fillStyle = '#0b4bb3';
  context.fillText(phrase, x + 8, y - 8);
}
