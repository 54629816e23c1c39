/** The place of a point, or of the chosen corner, in numbers. */

import { type DocumentFeature, geometryOf } from '../../../core/course/document.ts';
import { setPosition } from '../../../core/course/edits/set-position.ts';
import type { VertexAddress } from '../../../core/course/edits/shape.ts';
import { mayEdit } from '../drawing-state.ts';
import { placeOfCorner } from '../map/map-keys.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { ValueField } from './value-field.tsx';
import { useWords } from '../../state/use-words.ts';

export function CornerFields({ feature }: { readonly feature: DocumentFeature }) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const chosen = useDrawing((state) => state.corner);
  const document = useDrawing(({ history }) => history.document);
  const isPoint = geometryOf(feature)?.type === 'Point';
  const corner: VertexAddress | null = isPoint
    ? { feature: feature.id, vertex: 0 }
    : chosen?.feature === feature.id
      ? chosen
      : null;
  const place = placeOfCorner(document, corner);
  if (corner === null || place === null) return null;
  const [lon, lat] = place;
  const take = (which: 'lon' | 'lat', text: string): boolean => {
    const degrees = Number(text.trim().replace(',', '.'));
    if (text.trim() === '' || !Number.isFinite(degrees)) {
      desk.say(words.drawing.chosen.writeDegrees, 'refusal');
      return false;
    }
    return desk.attempt((now) =>
      setPosition(now, corner, which === 'lon' ? degrees : lon, which === 'lat' ? degrees : lat),
    );
  };
  return (
    <fieldset class="corner-fields">
      <legend>
        {isPoint ? words.drawing.chosen.place : words.drawing.chosen.corner({ number: corner.vertex + 1 })}
      </legend>
      <ValueField
        name={words.drawing.chosen.latitude}
        value={lat.toFixed(8)}
        numeric
        unit="°"
        disabled={!editable}
        take={(text) => take('lat', text)}
      />
      <ValueField
        name={words.drawing.chosen.longitude}
        value={lon.toFixed(8)}
        numeric
        unit="°"
        disabled={!editable}
        take={(text) => take('lon', text)}
      />
    </fieldset>
  );
}
