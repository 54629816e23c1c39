/** The course as GeoJSON, the hole as a drawing to scale, saved where the person likes. */

import { courseOf, serialise } from '../../../core/course/document.ts';
import { holeSvg } from '../../../core/course/export/hole-svg.ts';
import { useApp } from '../../state/use-app.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { pngOf, saveFile } from './save-file.ts';

export function ExportPart() {
  const desk = useDesk();
  const shell = useApp((state) => state.host?.shell ?? null);
  const units = useApp((state) => state.settings.units);
  const hole = useDrawing((state) => state.hole);
  const name = useDrawing(({ file }) => file?.entry.name.replace(/\.(geo)?json$/i, '') ?? 'course');
  const drawing = (): string | null => {
    const course = courseOf(desk.store.state().history.document);
    const svg = course.ok && hole !== null ? holeSvg(course.value, hole, { unit: units }) : null;
    if (svg?.ok === true) return svg.value;
    const words = svg === null ? 'The course cannot be read.' : svg.error.message;
    desk.say(`The hole cannot be drawn: ${words}`, 'refusal');
    return null;
  };
  const asPicture = async (): Promise<void> => {
    const svg = drawing();
    if (svg === null) return;
    const png = await pngOf(svg);
    if (png === null) desk.say('This browser could not make the picture. Take the SVG drawing.', 'refusal');
    else saveFile(`${name}-hole-${hole ?? ''}.png`, png);
  };
  return (
    <details class="panel-part">
      <summary>Take it out</summary>
      {shell === 'electron' ? (
        <p class="faint">
          The course is the GeoJSON file {name}.geojson in your folder, as any program reads it. Drawings are
          saved from the browser window, which “npm start” opens where no other is there.
        </p>
      ) : (
        <div class="act-buttons">
          <button
            type="button"
            class="small-button"
            onClick={() => {
              const text = serialise(desk.store.state().history.document);
              saveFile(`${name}.geojson`, new Blob([text], { type: 'application/geo+json' }));
            }}
          >
            Course as GeoJSON
          </button>
          <button
            type="button"
            class="small-button"
            disabled={hole === null}
            onClick={() => {
              const svg = drawing();
              if (svg !== null)
                saveFile(`${name}-hole-${hole ?? ''}.svg`, new Blob([svg], { type: 'image/svg+xml' }));
            }}
          >
            Hole {hole ?? ''} as SVG
          </button>
          <button
            type="button"
            class="small-button"
            disabled={hole === null}
            onClick={() => void asPicture()}
          >
            Hole {hole ?? ''} as PNG
          </button>
        </div>
      )}
    </details>
  );
}
