/** What can be done with the shape of what is chosen: cut, merge, smooth, simplify, copy. */

import { nameIn } from '../../../core/words/told.ts';
import { useState } from 'preact/hooks';
import { type DocumentFeature, geometryOf, holeOf, kindOf } from '../../../core/course/document.ts';
import { copyToHole } from '../../../core/course/edits/copy-to-hole.ts';
import { cutHole } from '../../../core/course/edits/cut-hole.ts';
import type { EditResult } from '../../../core/course/edits/edit.ts';
import { fillHole } from '../../../core/course/edits/fill-hole.ts';
import { merge } from '../../../core/course/edits/merge.ts';
import { polygonsOfGeometry } from '../../../core/course/edits/shape.ts';
import { simplify } from '../../../core/course/edits/simplify.ts';
import { smooth } from '../../../core/course/edits/smooth.ts';
import { featureWords } from '../../../core/course/edits/words.ts';
import { areaM2 } from '../../../core/course/ellipsoid.ts';
import type { EditableDocument } from '../../../core/course/document.ts';
import type { DrawingDesk } from '../desk.ts';
import { mayEdit, type Mode } from '../drawing-state.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

/** Copies lie this far beside what they are made of, so that they are seen, metres. */
const COPY_SHIFT = { eastM: 10, northM: -10 };

export function ShapeActs({ features }: { readonly features: readonly DocumentFeature[] }) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const [tolerance, setTolerance] = useState('0.5');
  const ids = features.map(({ id }) => id);
  const types = features.map((feature) => geometryOf(feature)?.type);
  const areas = types.every((type) => type === 'Polygon' || type === 'MultiPolygon');
  const shaped = types.every((type) => type !== undefined && type !== 'Point');
  const [only] = features;
  const act = (make: (document: EditableDocument) => EditResult): void => {
    if (desk.attempt(make, 'touched')) sayDone(desk);
  };
  const draw = (mode: Mode): void => {
    desk.store.dispatch({ type: 'mode-set', mode });
    desk.stage.current?.element.focus({ preventScroll: true });
  };
  return (
    <div class="panel-part">
      <h3>{words.drawing.shape.title}</h3>
      <div class="act-buttons">
        {features.length === 1 && areas && only !== undefined && (
          <>
            <Act
              words={words.drawing.shape.cut}
              on={editable && types[0] === 'Polygon'}
              act={() => draw({ do: 'cut', feature: only.id })}
            />
            <Act
              words={words.drawing.shape.leaveOut}
              on={editable}
              act={() => draw({ do: 'hollow', feature: only.id })}
            />
            {holesIn(only).map(({ part, ring }, i) => (
              <Act
                key={`${part}-${ring}`}
                words={words.drawing.shape.fill({ number: i + 1 })}
                on={editable}
                act={() => act((document) => fillHole(document, only.id, ring, part))}
              />
            ))}
          </>
        )}
        {features.length > 1 && areas && (
          <Act
            words={words.drawing.shape.merge}
            on={editable}
            act={() => act((document) => merge(document, ids))}
          />
        )}
        {features.length === 2 && areas && <TakeOut features={features} on={editable} act={act} />}
        {shaped && (
          <Act
            words={words.drawing.shape.smooth}
            on={editable}
            act={() => act((document) => smooth(document, ids, 1))}
          />
        )}
      </div>
      {shaped && (
        <div class="act-line">
          <button
            type="button"
            class="small-button"
            disabled={!editable}
            onClick={() => {
              const metres = Number(tolerance.replace(',', '.'));
              act((document) => simplify(document, ids, metres));
            }}
          >
            {words.drawing.shape.simplify}
          </button>
          <label>
            {words.drawing.shape.offBy}{' '}
            <input
              type="text"
              inputMode="decimal"
              class="short-input"
              value={tolerance}
              onInput={(event) => setTolerance(event.currentTarget.value)}
            />{' '}
            m
          </label>
        </div>
      )}
      <CopyLine features={features} on={editable} />
    </div>
  );
}

function Act({
  words: phrase,
  on,
  act,
}: {
  readonly words: string;
  readonly on: boolean;
  readonly act: () => void;
}) {
  return (
    <button type="button" class="small-button" disabled={!on} onClick={act}>
      {phrase}
    </button>
  );
}

/** Takes the one out of the other. Two that are called the same are told apart by their size. */
function TakeOut({
  features,
  on,
  act,
}: {
  readonly features: readonly DocumentFeature[];
  readonly on: boolean;
  readonly act: (make: (document: EditableDocument) => EditResult) => void;
}) {
  const words = useWords();
  const [a, b] = features;
  if (a === undefined || b === undefined) return null;
  const [smaller] = areaOf(a) <= areaOf(b) ? [a] : [b];
  const wordsFor = (feature: DocumentFeature): string =>
    featureWords(a, words) !== featureWords(b, words)
      ? featureWords(feature, words)
      : feature === smaller
        ? words.drawing.shape.smaller
        : words.drawing.shape.larger;
  return (
    <>
      {[
        [a, b],
        [b, a],
      ].map(([from, taken]) => (
        <Act
          key={from!.id}
          words={words.drawing.shape.takeOut({ taken: wordsFor(taken!), from: wordsFor(from!) })}
          on={on}
          act={() => act((document) => cutHole(document, from!.id, { feature: taken!.id }))}
        />
      ))}
    </>
  );
}

/** The change is small at times, and who does not see the map hears of it. */
function sayDone(desk: DrawingDesk): void {
  const words = desk.words();
  const last = desk.store.state().history.past.at(-1);
  if (last !== undefined) desk.say(words.drawing.done({ step: nameIn(last, words) }));
}

function areaOf(feature: DocumentFeature): number {
  const geometry = geometryOf(feature);
  if (geometry === undefined) return 0;
  return polygonsOfGeometry(geometry).reduce((sum, rings) => sum + areaM2(rings), 0);
}

function holesIn(feature: DocumentFeature): { readonly part: number; readonly ring: number }[] {
  const geometry = geometryOf(feature);
  if (geometry === undefined) return [];
  return polygonsOfGeometry(geometry).flatMap((rings, part) =>
    rings.slice(1).map((_, index) => ({ part, ring: index + 1 })),
  );
}

function CopyLine({ features, on }: { readonly features: readonly DocumentFeature[]; readonly on: boolean }) {
  const words = useWords();
  const desk = useDesk();
  const worked = useDrawing(({ hole }) => hole);
  const own = features[0] === undefined ? undefined : holeOf(features[0]);
  const [hole, setHole] = useState<string | null>(null);
  if (features.some((feature) => kindOf(feature) === 'hole')) return null;
  const wanted = hole ?? String(own ?? worked ?? 1);
  return (
    <div class="act-line">
      <button
        type="button"
        class="small-button"
        disabled={!on}
        onClick={() => {
          const ids = features.map(({ id }) => id);
          if (desk.attempt((document) => copyToHole(document, ids, Number(wanted), COPY_SHIFT), 'touched'))
            sayDone(desk);
        }}
      >
        {words.drawing.shape.copy}
      </button>
      <label>
        {words.drawing.shape.toHole}{' '}
        <input
          type="text"
          inputMode="numeric"
          class="short-input"
          value={wanted}
          onInput={(event) => setHole(event.currentTarget.value)}
        />
      </label>
    </div>
  );
}
