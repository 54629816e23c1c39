/** Puts a picture in its place: the same spot shown in the picture and on the map, twice or more; how well they fit. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { pixelSizeM, placeOfPixel } from '../../../core/course/georeference.ts';
import type { LocalFrame } from '../../../core/course/local-frame.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { shifted } from '../../../core/course/edits/rigid-move.ts';
import { distanceM, bearingRad } from '../../../core/course/ellipsoid.ts';
import { Picture } from '../../panels/pictograms.tsx';
import { mayEdit } from '../drawing-state.ts';
import { placeText } from '../drawn-measures.ts';
import { readPlace } from '../files/new-course.ts';
import type { Box } from '../shapes.ts';
import { askForPoint } from '../point-asked.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { backgroundText, type PictureBackground, type PicturePin, setBackground } from './background.ts';
import { fitOf } from './picture-fit.ts';
import { PixelPicker } from './pixel-picker.tsx';
import { useWords } from '../../state/use-words.ts';

export function PicturePlacer({ bitmap }: { readonly bitmap: ImageBitmap }) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const named = useDrawing(({ history }) => backgroundText(history.document));
  const frame = useDrawing((state) => state.frame);
  const [isOpen, setOpen] = useState(false);
  const [picking, setPicking] = useState(false);
  const background = JSON.parse(named) as PictureBackground | null;
  const pins = background?.pins.length ?? 0;
  const offered = useRef(false);
  useEffect(() => {
    // a picture without a place is of no use: say at once how it gets one
    if (pins < 2 && !offered.current && editable) setOpen(true);
    offered.current = true;
  }, [pins, editable]);
  if (background?.kind !== 'picture') return null;
  const change = (next: Partial<PictureBackground>, name: string): boolean =>
    desk.attempt((document) => setBackground(document, { ...background, ...next }, name, words));
  const fit = fitOf(background, frame);

  const addPin = (pixelX: number, pixelY: number): void => {
    setPicking(false);
    const number = background.pins.length + 1;
    const take = ([lon, lat]: LonLat): void => {
      const next = { ...background, pins: [...background.pins, { pixelX, pixelY, lon, lat }] };
      if (!change(next, words.underlay.addPointStep({ number }))) return;
      setOpen(true);
      const box = number === 2 ? boxOfPicture(next, bitmap, frame) : null;
      if (box !== null) desk.stage.current?.fitBox(box);
    };
    // the map has nothing to click on yet: its middle stands in, to be written over
    const isBlank = desk.store.state().history.document.features.length === 0 && number <= 2;
    if (isBlank) take(firstPlaceFor(background, pixelX, pixelY, frame.origin));
    else askForPoint(desk, words.underlay.clickPoint({ number }), take);
  };

  return (
    <>
      <button type="button" class="small-button" onClick={() => setOpen(!isOpen)} aria-expanded={isOpen}>
        {words.underlay.place}
      </button>
      {isOpen && (
        <section class="picture-placer" aria-label={words.underlay.place}>
          <div class="key-sheet-head">
            <h2>{words.underlay.place}</h2>
            <button
              type="button"
              class="icon-button"
              aria-label={words.drawing.close}
              title={words.drawing.close}
              onClick={() => setOpen(false)}
            >
              <Picture of="close" />
            </button>
          </div>
          <p class="faint">
            {fit.ok
              ? words.underlay.pixelIs({
                  metres: words.figures.fixed(pixelSizeM(fit.value.transform), 2),
                  fit:
                    fit.value.standardErrorM === null
                      ? words.underlay.oneMore
                      : words.underlay.fitsTo({ metres: words.figures.fixed(fit.value.standardErrorM, 1) }),
                })
              : words.underlay.fit[fit.error]}
          </p>
          {background.pins.length > 0 && (
            <table class="tee-table">
              <thead>
                <tr>
                  <th scope="col">{words.underlay.point}</th>
                  <th scope="col">{words.underlay.latLon}</th>
                  <th scope="col" class="number">
                    {words.underlay.offBy}
                  </th>
                  <th scope="col">
                    <span class="unseen">{words.underlay.remove}</span>
                  </th>
                </tr>
              </thead>
              <tbody>
                {background.pins.map((pin, i) => (
                  <PinRow
                    key={`${pin.pixelX} ${pin.pixelY}`}
                    pin={pin}
                    number={i + 1}
                    residualM={
                      fit.ok && fit.value.standardErrorM !== null ? (fit.value.residualsM[i] ?? null) : null
                    }
                    editable={editable}
                    place={([lon, lat]) =>
                      change(
                        { pins: background.pins.with(i, { ...pin, lon, lat }) },
                        words.underlay.movePointStep({ number: i + 1 }),
                      )
                    }
                    remove={() =>
                      change(
                        { pins: background.pins.filter((_, other) => other !== i) },
                        words.underlay.removePoint({ number: i + 1 }),
                      )
                    }
                  />
                ))}
              </tbody>
            </table>
          )}
          {background.pins.length === 2 && (
            <KnownLength
              pins={background.pins}
              editable={editable}
              take={(pin) => change({ pins: background.pins.with(1, pin) }, words.underlay.lengthStep)}
            />
          )}
          <div class="act-buttons">
            <button type="button" class="main-button" disabled={!editable} onClick={() => setPicking(true)}>
              {words.underlay.addPoint}
            </button>
            {background.pins.length >= 3 && (
              <label class="switch">
                <input
                  type="checkbox"
                  checked={background.fit === 'stretch'}
                  disabled={!editable}
                  onChange={(event) =>
                    change({ fit: event.currentTarget.checked ? 'stretch' : 'turn' }, words.underlay.fitStep)
                  }
                />
                {words.underlay.stretch}
              </label>
            )}
          </div>
        </section>
      )}
      {picking && (
        <PixelPicker bitmap={bitmap} pins={background.pins} pick={addPin} close={() => setPicking(false)} />
      )}
    </>
  );
}

function boxOfPicture(background: PictureBackground, bitmap: ImageBitmap, frame: LocalFrame): Box | null {
  const fit = fitOf(background, frame);
  if (!fit.ok) return null;
  const corners = [0, bitmap.width].flatMap((u) =>
    [0, bitmap.height].map((v) => placeOfPixel(fit.value.transform, u, v)),
  );
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  return { west: Math.min(...xs), south: Math.min(...ys), east: Math.max(...xs), north: Math.max(...ys) };
}

function PinRow({
  pin,
  number,
  residualM,
  editable,
  place,
  remove,
}: {
  readonly pin: PicturePin;
  readonly number: number;
  readonly residualM: number | null;
  readonly editable: boolean;
  readonly place: (at: LonLat) => boolean;
  readonly remove: () => void;
}) {
  const words = useWords();
  const desk = useDesk();
  const shown = placeText([pin.lon, pin.lat]);
  const [text, setText] = useState(shown);
  useEffect(() => setText(shown), [shown]);
  const takeIn = (): void => {
    if (text === shown) return;
    const read = readPlace(text, words);
    if (!read.ok) desk.say(read.error, 'refusal');
    if (!read.ok || read.value === null || !place(read.value)) setText(shown);
  };
  return (
    <tr>
      <th scope="row">{number}</th>
      <td>
        <input
          type="text"
          aria-label={words.underlay.latLonOf({ number })}
          value={text}
          disabled={!editable}
          onInput={(event) => setText(event.currentTarget.value)}
          onBlur={takeIn}
          onKeyDown={(event) => {
            if (event.key === 'Enter') takeIn();
          }}
        />
      </td>
      <td class="number">{residualM === null ? '–' : `${words.figures.fixed(residualM, 1)} m`}</td>
      <td>
        <button
          type="button"
          class="icon-button"
          aria-label={words.underlay.removePoint({ number })}
          title={words.underlay.removePoint({ number })}
          disabled={!editable}
          onClick={remove}
        >
          <Picture of="close" />
        </button>
      </td>
    </tr>
  );
}

/** Where a length in the picture is known, such as a tee's length on the card, the scale follows from it. */
function KnownLength({
  pins,
  editable,
  take,
}: {
  readonly pins: readonly PicturePin[];
  readonly editable: boolean;
  readonly take: (second: PicturePin) => boolean;
}) {
  const words = useWords();
  const desk = useDesk();
  const [a, b] = pins;
  const [text, setText] = useState('');
  if (a === undefined || b === undefined) return null;
  const from: LonLat = [a.lon, a.lat];
  const to: LonLat = [b.lon, b.lat];
  return (
    <form
      class="act-line"
      onSubmit={(event) => {
        event.preventDefault();
        const lengthM = Number(text.replace(',', '.'));
        if (!(lengthM >= 1 && lengthM <= 20_000)) {
          desk.say(words.underlay.writeLength, 'refusal');
          return;
        }
        const bearing = bearingRad(from, to);
        const [lon, lat] = shifted(from, {
          eastM: lengthM * Math.sin(bearing),
          northM: lengthM * Math.cos(bearing),
        });
        take({ ...b, lon, lat });
      }}
    >
      <label>
        {words.underlay.fromTo({ metres: words.figures.fixed(distanceM(from, to), 1) })}{' '}
        <input
          type="text"
          inputMode="decimal"
          class="short-input"
          value={text}
          disabled={!editable}
          onInput={(event) => setText(event.currentTarget.value)}
        />{' '}
        m
      </label>
      <button type="submit" class="small-button" disabled={!editable}>
        {words.underlay.set}
      </button>
    </form>
  );
}

/** North up and half a metre to the pixel, until something better is known. */
const GUESSED_PIXEL_M = 0.5;

function firstPlaceFor(
  background: PictureBackground,
  pixelX: number,
  pixelY: number,
  origin: LonLat,
): LonLat {
  const [first] = background.pins;
  if (first === undefined) return origin;
  return shifted([first.lon, first.lat], {
    eastM: (pixelX - first.pixelX) * GUESSED_PIXEL_M,
    northM: (first.pixelY - pixelY) * GUESSED_PIXEL_M,
  });
}
