/** The map of the course room with what lies on it: zoom, measures, what to do next, what stands in the way. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { Notices } from '../../panels/notices.tsx';
import type { Notice } from '../../state/app-state.ts';
import { ScaleBar } from '../../map/scale-bar.tsx';
import { useApp } from '../../state/use-app.ts';
import { usePageTheme } from '../../state/use-page-theme.ts';
import { BackgroundOnMap } from '../background/background-on-map.tsx';
import { Banners } from '../panels/banners.tsx';
import { DrawingLine } from '../panels/drawing-line.tsx';
import { EmptyCourse } from '../panels/empty-course.tsx';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { DrawingStage } from './drawing-stage.ts';
import { ZoomButtons } from '../../map/zoom-buttons.tsx';
import { useWords } from '../../state/use-words.ts';

const M_PER_YARD = 0.9144;

export function DrawingMap({ showKeys }: { readonly showKeys: () => void }) {
  const words = useWords();
  const desk = useDesk();
  const theme = usePageTheme();
  const { figures } = words;
  const looks = useRef({ theme, figures });
  looks.current = { theme, figures };
  const place = useRef<HTMLDivElement>(null);
  const [metresPerPixel, setMetresPerPixel] = useState(1);
  const token = useDrawing(({ file }) => file?.entry.token ?? null);
  const hasFile = token !== null;
  // a banner tells of the course's own file, with more to choose from
  const isInBanner = (notice: Notice): boolean =>
    (notice.kind === 'changed-on-disk' || notice.kind === 'gone') && notice.entry.token === token;
  const catching = useDrawing((state) => state.catching);
  const stage = (): DrawingStage | null => desk.stage.current;
  useEffect(() => {
    if (place.current === null) return undefined;
    const shown = new DrawingStage(
      place.current,
      desk,
      () => looks.current.theme,
      () => looks.current.figures,
      {
        zoomed: setMetresPerPixel,
      },
    );
    desk.stage.current = shown;
    return () => {
      desk.stage.current = null;
      shown.destroy();
    };
  }, [desk]);
  useEffect(() => desk.stage.current?.repaint(), [desk, theme, figures]);
  return (
    <div class="map-area">
      <div
        class="map drawing-map"
        ref={place}
        tabIndex={0}
        role="application"
        aria-label={words.drawing.map.name}
      />
      <div class="map-controls">
        <ZoomButtons
          zoom={(steps) => stage()?.zoomBy(steps)}
          fit={() => stage()?.fit()}
          keys={{ nearer: '+', farther: '−', whole: '0' }}
        />
        <div class="map-switches" role="group" aria-label={words.drawing.map.how}>
          <label class="switch" title={words.drawing.map.catchTitle}>
            <input
              type="checkbox"
              checked={catching}
              onChange={(event) =>
                desk.store.dispatch({ type: 'catching-set', on: event.currentTarget.checked })
              }
            />
            {words.drawing.map.catch}
          </label>
          <GridSwitch />
          <button type="button" class="link-button" onClick={showKeys}>
            {words.drawing.map.keys}
          </button>
        </div>
      </div>
      <DrawingLine />
      <BackgroundOnMap />
      <div class="map-measures">
        <ScaleBar metresPerPixel={metresPerPixel} />
      </div>
      <div class="banners">
        <Banners />
        <Notices elsewhere={isInBanner} />
      </div>
      {!hasFile && <EmptyCourse />}
    </div>
  );
}

function GridSwitch() {
  const words = useWords();
  const desk = useDesk();
  const on = useDrawing(({ gridM }) => gridM !== null);
  const units = useApp((state) => state.settings.units);
  return (
    <label class="switch">
      <input
        type="checkbox"
        checked={on}
        onChange={(event) => {
          const gridM = !event.currentTarget.checked ? null : units === 'yards' ? M_PER_YARD : 1;
          desk.store.dispatch({ type: 'grid-set', gridM });
        }}
      />
      {words.drawing.map.grid}
    </label>
  );
}
