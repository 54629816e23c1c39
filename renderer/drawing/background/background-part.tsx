/** Chooses what lies under the drawing: an attachment beside the course, a tile address, or nothing. */

import { useEffect, useRef, useState } from 'preact/hooks';
import type { Attachment } from '../../../electron/contract/host.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { mayEdit } from '../drawing-state.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { type Background, backgroundText, setBackground } from './background.ts';
import { TileAddressForm } from './tile-address-form.tsx';
import { useWords } from '../../state/use-words.ts';

const FORMATS: Readonly<Record<Exclude<Attachment['kind'], 'picture'>, string>> = {
  geotiff: 'GeoTIFF',
  pmtiles: 'PMTiles',
  mbtiles: 'MBTiles',
};

const NO_SOURCES: readonly never[] = [];

export function BackgroundPart({ token }: { readonly token: string }) {
  const words = useWords();
  const { host } = useTools();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const background = useDrawing(({ history }) => backgroundText(history.document));
  const sources = useApp((state) => state.settings.tileSources ?? NO_SOURCES);
  const [attachments, setAttachments] = useState<readonly Attachment[]>([]);
  const [copying, setCopying] = useState<{ readonly done: number; readonly total: number } | null>(null);
  const stopping = useRef<AbortController | null>(null);
  const look = async (): Promise<void> => {
    const answer = await host.listAttachments(token);
    if (answer.ok) setAttachments(answer.value);
  };
  useEffect(() => {
    void look();
  }, [token]);
  const chosen = JSON.parse(background) as Background | null;

  const lay = (next: Background | null, phrase: string): void => {
    desk.attempt((document) => setBackground(document, next, phrase, words));
  };
  const bringIn = async (): Promise<void> => {
    const controller = new AbortController();
    stopping.current = controller;
    setCopying({ done: 0, total: 0 });
    const answer = await host.attach(token, {
      signal: controller.signal,
      progress: (done, total) => setCopying({ done, total }),
    });
    setCopying(null);
    stopping.current = null;
    if (!answer.ok) {
      if (answer.failure !== 'cancelled') desk.say(answer.message, 'refusal');
      return;
    }
    await look();
    lay(backgroundFor(answer.value), words.underlay.layStep({ name: answer.value.name }));
  };
  return (
    <details class="panel-part">
      <summary>{words.underlay.title}</summary>
      <ul class="plain-list background-list">
        <Row
          words={words.underlay.nothing}
          on={chosen === null}
          editable={editable}
          choose={() => lay(null, words.underlay.takeAwayStep)}
        />
        {attachments.map((attachment) => (
          <Row
            key={attachment.token}
            words={`${attachment.name} (${attachment.kind === 'picture' ? words.underlay.kinds.picture : FORMATS[attachment.kind]})`}
            on={chosen !== null && 'attachment' in chosen && chosen.attachment === attachment.name}
            editable={editable}
            choose={() => lay(backgroundFor(attachment), words.underlay.layStep({ name: attachment.name }))}
          />
        ))}
        {sources.map((source) => (
          <Row
            key={source.name}
            words={words.underlay.tileAddress({ name: source.name })}
            on={chosen?.kind === 'address' && chosen.source === source.name}
            editable={editable}
            choose={() =>
              lay({ kind: 'address', source: source.name }, words.underlay.layStep({ name: source.name }))
            }
          />
        ))}
      </ul>
      {copying === null ? (
        <button type="button" class="small-button" disabled={!editable} onClick={() => void bringIn()}>
          {words.underlay.bringIn}
        </button>
      ) : (
        <div class="act-line" role="status">
          <progress
            class="fine-progress"
            max={copying.total || 1}
            value={copying.done}
            aria-label={words.underlay.copying}
          />
          <button type="button" class="small-button" onClick={() => stopping.current?.abort()}>
            {words.underlay.stop}
          </button>
        </div>
      )}
      <p class="faint">{words.underlay.kindsOfFile}</p>
      <TileAddressForm />
    </details>
  );
}

function backgroundFor({ kind, name }: Attachment): Background {
  return kind === 'picture' ? { kind, attachment: name, fit: 'turn', pins: [] } : { kind, attachment: name };
}

function Row({
  words: phrase,
  on,
  editable,
  choose,
}: {
  readonly words: string;
  readonly on: boolean;
  readonly editable: boolean;
  readonly choose: () => void;
}) {
  return (
    <li>
      <label class="switch">
        <input type="radio" name="background" checked={on} disabled={!editable} onChange={choose} />
        {phrase}
      </label>
    </li>
  );
}
