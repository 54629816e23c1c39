/** The hole that is worked on: its card, its tees, what it still lacks. */

import {
  type DocumentFeature,
  type EditableDocument,
  featureById,
  type FeatureId,
  propertiesOf,
} from '../../../core/course/document.ts';
import { renumberHoles } from '../../../core/course/edits/renumber-holes.ts';
import { reorderHoles } from '../../../core/course/edits/reorder-holes.ts';
import { setProperties } from '../../../core/course/edits/set-properties.ts';
import { courseOf } from '../../../core/course/document.ts';
import { teeColourOf } from '../../../core/course/tee-colour.ts';
import { type TeeLength, teeLengths } from '../../../core/course/hole-lengths.ts';
import { lengthText, signedText, inUnits, unitShort } from '../../state/measures.ts';
import { remember } from '../../state/remember.ts';
import { useApp } from '../../state/use-app.ts';
import { mayEdit } from '../drawing-state.ts';
import { asTyped, typedValue } from '../fields.ts';
import { holesShown, lineOfHole, settledDocument } from '../selectors.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { MissingList } from './missing-list.tsx';
import { ValueField } from './value-field.tsx';
import { useWords } from '../../state/use-words.ts';

export function HolePanel() {
  const words = useWords();
  const hole = useDrawing((state) => (state.file === null ? null : state.hole));
  const line = useDrawing(({ history, hole: number }) =>
    number === null ? undefined : lineOfHole(history.document, number),
  );
  const completeness = useDrawing(
    ({ report }) => report?.completeness.holes.find((one) => one.hole === hole) ?? null,
  );
  if (hole === null) {
    return (
      <div class="panel-part">
        <h2>{words.drawing.hole.noneYet}</h2>
        <p>{words.drawing.hole.open}</p>
      </div>
    );
  }
  return (
    <>
      <div class="panel-part">
        <h2>{words.drawing.hole.title({ hole })}</h2>
        {line === undefined ? <p>{words.drawing.hole.drawFirst}</p> : <HoleCard hole={hole} line={line} />}
      </div>
      {line !== undefined && <Tees hole={hole} />}
      <div class="panel-part">
        <h3>{words.drawing.hole.missing}</h3>
        {completeness === null && line === undefined ? (
          <MissingList missing={[]} hole={hole} empty={words.drawing.hole.lineFirst} />
        ) : (
          <MissingList
            missing={completeness?.missing ?? []}
            hole={hole}
            empty={completeness === null ? words.drawing.looking : words.drawing.hole.complete}
          />
        )}
      </div>
      <CourseMissing />
    </>
  );
}

function HoleCard({ hole, line }: { readonly hole: number; readonly line: DocumentFeature }) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const numbers = useDrawing(({ history, hole: number }) => holesShown(history.document, number));
  const properties = propertiesOf(line);
  const shown = (key: string): string => {
    const value = properties[key];
    return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
  };
  const write =
    (key: 'name' | 'par' | 'handicap', numeric: boolean) =>
    (text: string): boolean =>
      desk.attempt((document) =>
        asTyped(
          setProperties(document, [line.id], {
            [key]: typedValue({ key, words: '', numeric }, text, 'metres'),
          }),
          { key },
          text,
          'metres',
        ),
      );
  const move = (by: number): void => {
    const index = numbers.indexOf(hole);
    const other = numbers[index + by];
    if (other === undefined) return;
    const order = numbers.with(index, other).with(index + by, hole);
    if (desk.attempt((document) => reorderHoles(document, order)))
      desk.store.dispatch({ type: 'hole-chosen', hole: other });
  };
  return (
    <>
      <ValueField
        name={words.drawing.name}
        value={shown('name')}
        disabled={!editable}
        take={write('name', false)}
      />
      <div class="field-row">
        <ValueField
          name={words.drawing.hole.par}
          value={shown('par')}
          numeric
          disabled={!editable}
          choices={['3', '4', '5']}
          take={write('par', true)}
        />
        <ValueField
          name={words.drawing.hole.strokeIndex}
          value={shown('handicap')}
          numeric
          disabled={!editable}
          take={write('handicap', true)}
        />
      </div>
      <div class="field-row">
        <ValueField
          name={words.drawing.hole.number}
          value={String(hole)}
          numeric
          disabled={!editable}
          take={(text) => {
            const to = Number(text);
            const done = desk.attempt((document) => renumberHoles(document, new Map([[hole, to]])));
            if (done) desk.store.dispatch({ type: 'hole-chosen', hole: to });
            return done;
          }}
        />
        <div class="act-buttons">
          <button
            type="button"
            class="small-button"
            disabled={!editable || numbers[0] === hole}
            onClick={() => move(-1)}
          >
            {words.drawing.hole.earlier}
          </button>
          <button
            type="button"
            class="small-button"
            disabled={!editable || numbers.at(-1) === hole}
            onClick={() => move(1)}
          >
            {words.drawing.hole.later}
          </button>
        </div>
      </div>
    </>
  );
}

const teesOf = remember((document: EditableDocument, hole: number): readonly TeeLength[] => {
  const course = courseOf(document);
  const found = course.ok ? course.value.holes.find(({ number }) => number === hole) : undefined;
  return found === undefined ? [] : teeLengths(document, found);
});

function Tees({ hole }: { readonly hole: number }) {
  const words = useWords();
  const desk = useDesk();
  const document = useDrawing(({ history }) => settledDocument(history));
  const units = useApp((state) => state.settings.units);
  const editable = useDrawing(mayEdit);
  const tees = teesOf(document, hole);
  return (
    <div class="panel-part">
      <h3>{words.drawing.tees.title}</h3>
      <table class="tee-table">
        <thead>
          <tr>
            <th scope="col">{words.drawing.tees.tee}</th>
            <th scope="col" class="number">
              {words.drawing.tees.onMap}
            </th>
            <th scope="col" class="number">
              {words.drawing.tees.onCard}
            </th>
            <th scope="col" class="number">
              {words.drawing.tees.differs}
            </th>
          </tr>
        </thead>
        <tbody>
          {tees.map(({ tee, feature, lengthM, cardLengthM, differenceM }) => (
            <tr key={feature ?? tee}>
              <th scope="row">
                {feature === undefined ? (
                  <span class="faint">{words.drawing.tees.startOfLine}</span>
                ) : (
                  <button
                    type="button"
                    class="link-button"
                    onClick={() => desk.store.dispatch({ type: 'selected', ids: [feature], show: 'chosen' })}
                  >
                    <TeeDot document={document} marker={feature} />
                    {tee}
                  </button>
                )}
              </th>
              <td class="number">{lengthText(lengthM, units)}</td>
              <td class="number">{cardLengthM === undefined ? '–' : lengthText(cardLengthM, units)}</td>
              <td class="number">
                {differenceM === undefined
                  ? ''
                  : `${signedText(inUnits(differenceM, units), words, 0)} ${unitShort(units)}`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <button
        type="button"
        class="small-button"
        disabled={!editable}
        onClick={() => {
          desk.store.dispatch({ type: 'mode-set', mode: { do: 'draw', kind: 'tee-marker' } });
          desk.stage.current?.element.focus({ preventScroll: true });
        }}
      >
        {words.drawing.tees.add}
      </button>
    </div>
  );
}

/** A dot of the tee's own colour before its name. */
function TeeDot({ document, marker }: { readonly document: EditableDocument; readonly marker: FeatureId }) {
  const feature = featureById(document, marker);
  const colour = feature === undefined ? undefined : teeColourOf(propertiesOf(feature));
  if (colour === undefined) return null;
  return (
    <svg class="tee-dot" viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
      <circle cx="6" cy="6" r="5" fill={colour} />
    </svg>
  );
}

function CourseMissing() {
  const words = useWords();
  const missing = useDrawing(({ report }) => report?.completeness.course ?? NOTHING);
  if (missing.length === 0) return null;
  return (
    <div class="panel-part">
      <h3>{words.drawing.hole.wholeCourse}</h3>
      <MissingList missing={missing} hole={null} empty="" />
    </div>
  );
}
const NOTHING: readonly never[] = [];
