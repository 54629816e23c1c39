/** What is chosen: its kind, its properties, its size, what can be done with it. */

import type { Words } from '../../../core/words/words.ts';
import { type DocumentFeature, kindOf, propertiesOf } from '../../../core/course/document.ts';
import { removeFeatures } from '../../../core/course/edits/remove-features.ts';
import { setKind } from '../../../core/course/edits/set-kind.ts';
import { setProperties } from '../../../core/course/edits/set-properties.ts';
import { featuresWords, featureWords } from '../../../core/course/edits/words.ts';
import { areaM2, polylineLengthM } from '../../../core/course/ellipsoid.ts';
import { polygonsOfGeometry } from '../../../core/course/edits/shape.ts';
import { geometryOf } from '../../../core/course/document.ts';
import type { FeatureKind } from '../../../core/course/feature-kind.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { KIND_RULES } from '../../../core/course/schema.ts';
import { lengthText, type Units } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { areaText } from '../drawn-measures.ts';
import { mayEdit } from '../drawing-state.ts';
import { asTyped, fieldsOf, shownValue, typedValue } from '../fields.ts';
import { KIND_CARDS } from '../kinds.ts';
import { chosenFeatures } from '../selectors.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { CornerFields } from './corner-fields.tsx';
import { ShapeActs } from './shape-acts.tsx';
import { TeeColourField } from './tee-colour-field.tsx';
import { ValueField } from './value-field.tsx';
import { useWords } from '../../state/use-words.ts';

export function ChosenPanel() {
  const words = useWords();
  const features = useDrawing(chosenFeatures);
  const [only] = features;
  if (only === undefined) {
    return (
      <div class="panel-part">
        <h2>{words.drawing.chosen.nothing}</h2>
        <p>{words.drawing.chosen.how}</p>
      </div>
    );
  }
  return (
    <>
      {features.length === 1 ? <OneChosen feature={only} /> : <SeveralChosen features={features} />}
      <ShapeActs features={features} />
      <Removing features={features} />
    </>
  );
}

function OneChosen({ feature }: { readonly feature: DocumentFeature }) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const units = useApp((state) => state.settings.units);
  const kind = kindOf(feature);
  const properties = propertiesOf(feature);
  return (
    <div class="panel-part">
      <h2 class="sentence">{featureWords(feature, words)}</h2>
      <p class="faint">{sizeText(feature, units, words)}</p>
      <KindField features={[feature]} kind={kind ?? null} />
      {kind !== undefined &&
        fieldsOf(kind, units, words).map((field) => (
          <ValueField
            key={`${feature.id}-${field.key}`}
            name={field.words}
            value={shownValue(field, properties[field.key], units)}
            numeric={field.numeric}
            disabled={!editable}
            {...(field.unit === undefined ? {} : { unit: field.unit })}
            {...(field.options === undefined ? {} : { options: field.options })}
            {...(field.standard === undefined
              ? {}
              : { placeholder: words.drawing.chosen.taken({ value: field.standard }) })}
            take={(text) =>
              desk.attempt((document) =>
                asTyped(
                  setProperties(document, [feature.id], { [field.key]: typedValue(field, text, units) }),
                  field,
                  text,
                  units,
                ),
              )
            }
          />
        ))}
      {kind === 'tee-marker' && <TeeColourField marker={feature} />}
      <CornerFields feature={feature} />
    </div>
  );
}

function SeveralChosen({ features }: { readonly features: readonly DocumentFeature[] }) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const kinds = new Set(features.map(kindOf));
  const [kind] = kinds;
  return (
    <div class="panel-part">
      <h2>{featuresWords(features, words)}</h2>
      <KindField features={features} kind={kinds.size === 1 ? (kind ?? null) : null} />
      <ValueField
        name={words.drawing.chosen.holeOfAll}
        value=""
        numeric
        disabled={!editable}
        placeholder={words.drawing.chosen.asTheyAre}
        take={(text) => {
          const ids = features.map(({ id }) => id);
          desk.attempt((document) => setProperties(document, ids, { ref: text.trim() }));
          return false;
        }}
      />
    </div>
  );
}

/** Only kinds that are drawn in the same way are on offer. */
function KindField({
  features,
  kind,
}: {
  readonly features: readonly DocumentFeature[];
  readonly kind: FeatureKind | null;
}) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const types = features.map((feature) => geometryOf(feature)?.type);
  const fitting = KIND_CARDS.filter((card) =>
    types.every((type) => type !== undefined && KIND_RULES[card.kind].geometry.includes(type)),
  );
  return (
    <div class="value-field">
      <label for="chosen-kind">{words.drawing.chosen.kind}</label>
      <select
        id="chosen-kind"
        value={kind ?? ''}
        disabled={!editable || fitting.length === 0}
        onChange={(event) => {
          const select = event.currentTarget;
          const wanted = fitting.find((card) => card.kind === select.value);
          const ids = features.map(({ id }) => id);
          if (wanted === undefined || !desk.attempt((document) => setKind(document, ids, wanted.kind)))
            select.value = kind ?? '';
        }}
      >
        {kind === null && (
          <option value="">
            {features.length > 1 ? words.drawing.chosen.several : words.drawing.chosen.notKnown}
          </option>
        )}
        {fitting.map((card) => (
          <option key={card.kind} value={card.kind}>
            {words.drawing.kinds[card.kind]}
          </option>
        ))}
      </select>
    </div>
  );
}

function Removing({ features }: { readonly features: readonly DocumentFeature[] }) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  return (
    <div class="panel-part">
      <button
        type="button"
        class="small-button"
        disabled={!editable}
        onClick={() => {
          const ids = features.map(({ id }) => id);
          if (desk.attempt((document) => removeFeatures(document, ids))) desk.stage.current?.element.focus();
        }}
      >
        {words.drawing.chosen.remove({
          which:
            features.length === 1
              ? words.drawing.chosen.it
              : words.drawing.chosen.all({ count: features.length }),
        })}
      </button>
    </div>
  );
}

function sizeText(feature: DocumentFeature, units: Units, words: Words): string {
  const geometry = geometryOf(feature);
  if (geometry === undefined) return words.drawing.chosen.unreadable;
  const way = (points: readonly (readonly [number, number, ...unknown[]])[]): number =>
    polylineLengthM(points.map(([lon, lat]): LonLat => [lon, lat]));
  switch (geometry.type) {
    case 'Point':
      return words.drawing.chosen.onePlace;
    case 'LineString':
      return words.drawing.chosen.lineSize({
        length: lengthText(way(geometry.coordinates), units),
        points: geometry.coordinates.length,
      });
    case 'Polygon':
    case 'MultiPolygon': {
      const polygons = polygonsOfGeometry(geometry);
      const area = polygons.reduce((sum, rings) => sum + areaM2(rings), 0);
      const round = polygons.reduce((sum, [outer]) => sum + (outer === undefined ? 0 : way(outer)), 0);
      const corners = polygons.flat().reduce((sum, ring) => sum + ring.length - 1, 0);
      return words.drawing.chosen.areaSize({
        area: areaText(area, units, words),
        round: lengthText(round, units),
        corners,
      });
    }
  }
}
