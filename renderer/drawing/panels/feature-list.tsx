/** Everything that is drawn, kind by kind: to be found, chosen, shown and hidden. */

import type { Words } from '../../../core/words/words.ts';
import { useState } from 'preact/hooks';
import {
  type DocumentFeature,
  type EditableDocument,
  kindOf,
  propertiesOf,
} from '../../../core/course/document.ts';
import { featureWords } from '../../../core/course/edits/words.ts';
import type { FeatureKind } from '../../../core/course/feature-kind.ts';
import { remember } from '../../state/remember.ts';
import { KIND_CARDS } from '../kinds.ts';
import { settledDocument } from '../selectors.ts';
import { shapeOf } from '../shapes.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

interface Group {
  readonly kind: FeatureKind | null;
  readonly words: string;
  readonly features: readonly DocumentFeature[];
}

/** More would only be scrolled past. */
const MOST_SHOWN = 100;

const groupsOf = remember((document: EditableDocument, search: string, words: Words): readonly Group[] => {
  const wanted = search.trim().toLowerCase();
  const byKind = new Map<FeatureKind | null, DocumentFeature[]>();
  for (const feature of document.features) {
    if (wanted !== '' && !wordsFor(feature, words).toLowerCase().includes(wanted)) continue;
    const kind = kindOf(feature) ?? null;
    const list = byKind.get(kind);
    if (list === undefined) byKind.set(kind, [feature]);
    else list.push(feature);
  }
  const order = [
    ...KIND_CARDS.map(({ kind }) => ({ kind, words: words.drawing.kinds[kind] })),
    { kind: null, words: words.drawing.list.unknown },
  ];
  return order
    .map(({ kind, words: phrase }) => ({ kind, words: phrase, features: byKind.get(kind) ?? [] }))
    .filter(({ features }) => features.length > 0);
});

/** `fairway of hole 3 "Upper"`: kind, hole and name, for the list and its search. */
function wordsFor(feature: DocumentFeature, words: Words): string {
  const phrase = featureWords(feature, words);
  const { name } = propertiesOf(feature);
  return typeof name === 'string' && name !== '' && !phrase.includes(name) ? `${phrase}, ${name}` : phrase;
}

export function FeatureList() {
  const words = useWords();
  const desk = useDesk();
  const [search, setSearch] = useState('');
  const document = useDrawing(({ history }) => settledDocument(history));
  const groups = groupsOf(document, search, words);
  return (
    <div class="feature-list">
      <label class="unseen" for="feature-search">
        {words.drawing.list.find}
      </label>
      <input
        id="feature-search"
        class="search-field"
        type="search"
        placeholder={words.drawing.list.placeholder}
        value={search}
        onInput={(event) => setSearch(event.currentTarget.value)}
      />
      {groups.length === 0 && (
        <p class="empty-words">
          {search === '' ? words.drawing.list.nothing : words.drawing.list.noneCalled}
        </p>
      )}
      {groups.map((group) => (
        <GroupView
          key={group.kind ?? 'unknown'}
          group={group}
          isOpen={search !== ''}
          choose={(feature, adds) => {
            const { selection, frame } = desk.store.state();
            const ids = adds ? [...new Set([...selection, feature.id])] : [feature.id];
            desk.store.dispatch({ type: 'selected', ids, show: 'chosen' });
            const shape = shapeOf(feature, frame);
            if (shape !== null) desk.stage.current?.fitBox(shape.box);
          }}
        />
      ))}
    </div>
  );
}

function GroupView({
  group: { kind, words: phrase, features },
  isOpen,
  choose,
}: {
  readonly group: Group;
  readonly isOpen: boolean;
  readonly choose: (feature: DocumentFeature, adds: boolean) => void;
}) {
  const words = useWords();
  const desk = useDesk();
  const hidden = useDrawing(({ hiddenKinds }) => kind !== null && hiddenKinds.has(kind));
  const hiddenFeatures = useDrawing((state) => state.hiddenFeatures);
  const selection = useDrawing((state) => state.selection);
  const [opened, setOpened] = useState(false);
  const shown = isOpen || opened;
  return (
    <section class="feature-group">
      <div class="group-head">
        {kind !== null && (
          <input
            type="checkbox"
            checked={!hidden}
            aria-label={words.drawing.list.show({ what: phrase })}
            title={words.drawing.list.show({ what: phrase })}
            onChange={(event) =>
              desk.store.dispatch({ type: 'kind-shown', kind, on: event.currentTarget.checked })
            }
          />
        )}
        <button type="button" class="group-name" aria-expanded={shown} onClick={() => setOpened(!opened)}>
          {phrase} <span class="faint">{features.length}</span>
        </button>
      </div>
      {shown && (
        <ul class="plain-list">
          {features.slice(0, MOST_SHOWN).map((feature) => (
            <li key={feature.id} class="feature-item">
              <input
                type="checkbox"
                checked={!hiddenFeatures.has(feature.id)}
                aria-label={words.drawing.list.show({ what: wordsFor(feature, words) })}
                onChange={(event) =>
                  desk.store.dispatch({
                    type: 'feature-shown',
                    id: feature.id,
                    on: event.currentTarget.checked,
                  })
                }
              />
              <button
                type="button"
                class="feature-row"
                aria-current={selection.includes(feature.id) ? 'true' : undefined}
                onClick={(event) => choose(feature, event.shiftKey)}
              >
                {wordsFor(feature, words)}
              </button>
            </li>
          ))}
          {features.length > MOST_SHOWN && (
            <li class="empty-words">{words.drawing.list.more({ count: features.length - MOST_SHOWN })}</li>
          )}
        </ul>
      )}
    </section>
  );
}
