/** What the file does not say itself: which property means which kind, what a track goes round, how close heights stand. */

import { useId, useState } from 'preact/hooks';
import type { FeatureKind } from '../../../core/course/feature-kind.ts';
import type { KindMapping } from '../../../core/course/import/geojson.ts';
import type { MappingSuggestions, SuggestedProperty } from '../../../core/course/import/suggest-mappings.ts';
import { KIND_RULES } from '../../../core/course/schema.ts';
import { KIND_CARDS } from '../kinds.ts';
import type { ImportWishes, LookedAt } from './import-worker.ts';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly looked: LookedAt;
  readonly wishes: ImportWishes;
  readonly change: (wishes: ImportWishes) => void;
}

export function WishesForm({ looked, wishes, change }: Props) {
  const words = useWords();
  switch (looked.kind) {
    case 'osm':
      return null;
    case 'gpx':
      return (
        <div class="value-field">
          <label for="import-tracks">{words.mapImport.wishes.tracks}</label>
          <select
            id="import-tracks"
            value={wishes.trackKind ?? ''}
            onChange={(event) => {
              const kind = kindOfValue(event.currentTarget.value);
              change({ ...wishes, trackKind: kind });
            }}
          >
            <option value="">{words.mapImport.wishes.byName}</option>
            {KIND_CARDS.filter(({ drawnAs }) => drawnAs !== 'point').map(({ kind }) => (
              <option key={kind} value={kind}>
                {words.drawing.kinds[kind]}
              </option>
            ))}
          </select>
        </div>
      );
    case 'heights':
      return <SpacingField wishes={wishes} change={change} />;
    case 'geojson':
      return looked.suggestions === null ? null : (
        <MappingForm suggestions={looked.suggestions} wishes={wishes} change={change} />
      );
  }
}

function SpacingField({ wishes, change }: Omit<Props, 'looked'>) {
  const words = useWords();
  const [text, setText] = useState(String(wishes.spacingM));
  return (
    <form
      class="act-line"
      onSubmit={(event) => {
        event.preventDefault();
        change({ ...wishes, spacingM: Number(text.replace(',', '.')) });
      }}
    >
      <label>
        {words.mapImport.wishes.levelEvery}{' '}
        <input
          type="text"
          inputMode="decimal"
          class="short-input"
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />{' '}
        m
      </label>
      <button type="submit" class="small-button">
        {words.mapImport.wishes.again}
      </button>
    </form>
  );
}

function MappingForm({
  suggestions,
  wishes,
  change,
}: {
  readonly suggestions: MappingSuggestions;
  readonly wishes: ImportWishes;
  readonly change: (wishes: ImportWishes) => void;
}) {
  const words = useWords();
  const id = useId();
  const { properties } = suggestions;
  const inUse = wishes.mappings[0]?.property ?? '';
  const [chosen, setChosen] = useState(inUse);
  const property = properties.find((one) => one.property === chosen);
  return (
    <>
      {suggestions.tagged > 0 && (
        <p class="faint">
          {words.mapImport.wishes.tagged({ tagged: suggestions.tagged, features: suggestions.features })}
        </p>
      )}
      <div class="value-field">
        <label for={`${id}-property`}>{words.mapImport.wishes.standsIn}</label>
        <select
          id={`${id}-property`}
          value={chosen}
          onChange={(event) => {
            const next = event.currentTarget.value;
            setChosen(next);
            const found = properties.find((one) => one.property === next);
            change({ ...wishes, mappings: found === undefined ? [] : suggestedFor(found) });
          }}
        >
          <option value="">{words.mapImport.wishes.knownTags}</option>
          {properties.map((one) => (
            <option key={one.property} value={one.property}>
              {one.property}
            </option>
          ))}
        </select>
      </div>
      <div class="value-field">
        <label for={`${id}-hole`}>{words.mapImport.wishes.holeIn}</label>
        <select
          id={`${id}-hole`}
          value={wishes.holeProperty ?? ''}
          onChange={(event) => {
            const next = event.currentTarget.value;
            change({ ...wishes, holeProperty: next === '' ? null : next });
          }}
        >
          <option value="">ref</option>
          {[
            ...new Set([
              ...(suggestions.holeProperty === undefined ? [] : [suggestions.holeProperty]),
              ...properties.map((one) => one.property),
            ]),
          ].map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </div>
      {property !== undefined && (
        <table class="tee-table mapping-table">
          <caption class="unseen">{words.mapImport.wishes.caption({ property: property.property })}</caption>
          <thead>
            <tr>
              <th scope="col">{words.mapImport.wishes.value}</th>
              <th scope="col" class="number">
                {words.mapImport.wishes.times}
              </th>
              <th scope="col">{words.mapImport.wishes.drawnAs}</th>
            </tr>
          </thead>
          <tbody>
            {property.values.map(({ value, count, geometryTypes }) => (
              <tr key={value}>
                <th scope="row">{value}</th>
                <td class="number">{count}</td>
                <td>
                  <select
                    aria-label={words.mapImport.wishes.isDrawnAs({ value })}
                    value={wishes.mappings.find((one) => one.value === value)?.kind ?? ''}
                    onChange={(event) => {
                      const kind = kindOfValue(event.currentTarget.value);
                      const others = wishes.mappings.filter((one) => one.value !== value);
                      const own = kind === null ? [] : [{ property: property.property, value, kind }];
                      change({ ...wishes, mappings: [...others, ...own] });
                    }}
                  >
                    <option value="">{words.mapImport.wishes.leftOut}</option>
                    {KIND_CARDS.filter(({ kind }) =>
                      geometryTypes.some((type) => KIND_RULES[kind].geometry.includes(type)),
                    ).map(({ kind }) => (
                      <option key={kind} value={kind}>
                        {words.drawing.kinds[kind]}
                      </option>
                    ))}
                  </select>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}

function suggestedFor({ property, values }: SuggestedProperty): KindMapping[] {
  return values.flatMap(({ value, kind }) => (kind === undefined ? [] : [{ property, value, kind }]));
}

function kindOfValue(value: string): FeatureKind | null {
  return KIND_CARDS.find(({ kind }) => kind === value)?.kind ?? null;
}
