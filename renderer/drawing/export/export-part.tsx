/** The course as GeoJSON, the hole as a drawing to scale, written where the host puts it. */

import { faultText } from '../../../core/words/told.ts';
import { useState } from 'preact/hooks';
import { courseOf, serialise } from '../../../core/course/document.ts';
import { holeSvg } from '../../../core/course/export/hole-svg.ts';
import { giveOut } from '../../host/give-out.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { pngOf } from './svg-picture.ts';
import { useWords } from '../../state/use-words.ts';

type Form = 'geojson' | 'svg' | 'png';

export function ExportPart() {
  const words = useWords();
  const { host } = useTools();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const hole = useDrawing((state) => state.hole);
  const name = useDrawing(({ file }) => file?.entry.name.replace(/\.(geo)?json$/i, '') ?? 'course');
  const [busy, setBusy] = useState(false);

  const drawing = (): string | null => {
    const course = courseOf(desk.store.state().history.document);
    const svg = course.ok && hole !== null ? holeSvg(course.value, hole, { unit: units, words }) : null;
    if (svg?.ok === true) return svg.value;
    const why = svg === null ? words.drawing.export.unreadable : faultText(svg.error, words).message;
    desk.say(words.drawing.export.noDrawing({ why }), 'refusal');
    return null;
  };
  const contentOf = async (form: Form): Promise<string | Blob | null> => {
    if (form === 'geojson') return serialise(desk.store.state().history.document);
    const svg = drawing();
    if (svg === null || form === 'svg') return svg;
    const png = await pngOf(svg);
    if (png === null) desk.say(words.drawing.export.noPicture, 'refusal');
    return png;
  };
  const take = async (form: Form): Promise<void> => {
    setBusy(true);
    const content = await contentOf(form);
    if (content !== null) {
      const stem = form === 'geojson' ? name : words.drawing.export.fileName({ name, hole: hole ?? 0 });
      const said = await giveOut(host, stem, `.${form}`, content, words);
      if (said !== null) desk.say(said.words, said.tone);
    }
    setBusy(false);
  };

  return (
    <details class="panel-part">
      <summary>{words.drawing.export.title}</summary>
      <div class="act-buttons">
        <button type="button" class="small-button" disabled={busy} onClick={() => void take('geojson')}>
          {words.drawing.export.geojson}
        </button>
        {(['svg', 'png'] as const).map((form) => (
          <button
            key={form}
            type="button"
            class="small-button"
            disabled={busy || hole === null}
            onClick={() => void take(form)}
          >
            {words.drawing.export.hole({ hole: String(hole ?? ''), form: form.toUpperCase() })}
          </button>
        ))}
      </div>
    </details>
  );
}
