/** A tile address of the person's own: what it is called, whom to name, and that its terms are accepted. */

import type { Words } from '../../../core/words/words.ts';
import { useState } from 'preact/hooks';
import { MOST_TILE_SOURCES, tileOrigin } from '../../../electron/contract/tile-source.ts';
import type { TileSource } from '../../../electron/contract/host.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { writeSettings } from '../../state/effects/keep-settings.ts';
import { useDesk } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

const NO_SOURCES: readonly TileSource[] = [];

export function TileAddressForm() {
  const words = useWords();
  const { host, store } = useTools();
  const desk = useDesk();
  const sources = useApp((state) => state.settings.tileSources ?? NO_SOURCES);
  const [name, setName] = useState('');
  const [address, setAddress] = useState('');
  const [attribution, setAttribution] = useState('');
  const [accepted, setAccepted] = useState(false);
  const [told, setTold] = useState<{ readonly words: string; readonly isNew: boolean } | null>(null);
  const keep = (tileSources: readonly TileSource[]): void => {
    const { settings } = store.state();
    store.dispatch({ type: 'settings-read', settings: { ...settings, tileSources } });
  };
  /** The new window is told by the settings on disk whom it may ask. */
  const loadAnew = async (): Promise<void> => {
    const [, kept] = await Promise.all([desk.files.save(), writeSettings(store, host)]);
    if (kept.ok) window.location.reload();
    else setTold({ words: words.underlay.address.notKept({ message: kept.message }), isNew: true });
  };
  const add = (): void => {
    const refused = faultOf({ name, address, attribution, accepted }, sources, words);
    if (refused !== null) {
      setTold({ words: refused, isNew: false });
      return;
    }
    const today = new Date().toISOString().slice(0, 10);
    keep([
      ...sources,
      { name: name.trim(), address: address.trim(), attribution: attribution.trim(), termsAcceptedOn: today },
    ]);
    setName('');
    setAddress('');
    setAttribution('');
    setAccepted(false);
    setTold({ words: words.underlay.address.kept, isNew: true });
  };
  return (
    <details class="tile-addresses">
      <summary>{words.underlay.address.title}</summary>
      {sources.map((source) => (
        <p key={source.name} class="copy-line">
          <span title={source.address}>
            {source.name}
            {source.termsAcceptedOn === null ? words.underlay.address.notAccepted : ''}
          </span>
          <button
            type="button"
            class="small-button"
            onClick={() => keep(sources.filter((other) => other !== source))}
          >
            {words.underlay.address.forget}
          </button>
        </p>
      ))}
      <form
        class="stacked-form"
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <label>
          {words.drawing.name}
          <input
            type="text"
            value={name}
            maxLength={80}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </label>
        <label>
          {words.underlay.address.address}
          <input
            type="text"
            value={address}
            placeholder="https://tiles.example/{z}/{x}/{y}.png"
            onInput={(event) => setAddress(event.currentTarget.value)}
          />
        </label>
        <label>
          {words.underlay.address.attribution}
          <input
            type="text"
            value={attribution}
            maxLength={300}
            onInput={(event) => setAttribution(event.currentTarget.value)}
          />
        </label>
        <label class="switch terms-switch">
          <input
            type="checkbox"
            checked={accepted}
            onChange={(event) => setAccepted(event.currentTarget.checked)}
          />
          {words.underlay.address.accept}
        </label>
        {told !== null && (
          <p class={told.isNew ? 'faint' : 'field-trouble'} role="status">
            {told.words}
          </p>
        )}
        <div class="act-buttons">
          <button type="submit" class="small-button">
            {words.underlay.address.keep}
          </button>
          {told?.isNew === true && (
            <button type="button" class="small-button" onClick={() => void loadAnew()}>
              {words.underlay.address.loadAnew}
            </button>
          )}
        </div>
      </form>
    </details>
  );
}

function faultOf(
  typed: {
    readonly name: string;
    readonly address: string;
    readonly attribution: string;
    readonly accepted: boolean;
  },
  sources: readonly TileSource[],
  words: Words,
): string | null {
  if (typed.name.trim() === '') return words.underlay.address.giveName;
  if (sources.some(({ name }) => name === typed.name.trim())) return words.underlay.address.taken;
  if (sources.length >= MOST_TILE_SOURCES) return words.underlay.address.tooMany({ most: MOST_TILE_SOURCES });
  if (tileOrigin(typed.address.trim()) === null) {
    return words.underlay.address.writeAddress;
  }
  if (typed.attribution.trim() === '') return words.underlay.address.writeWhom;
  return typed.accepted ? null : words.underlay.address.mustAccept;
}
