/** The map with the little that lies on it: view switches, legend, key, scale, distances under the pointer. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { WindSign } from '../conditions/wind-sign.tsx';
import { Notices } from '../panels/notices.tsx';
import { currentHole, ballPlace, holeSituation, positionOf } from '../state/selectors.ts';
import { useApp, useTools } from '../state/use-app.ts';
import { usePageTheme } from '../state/use-page-theme.ts';
import { lengthText } from '../state/measures.ts';
import { Legend } from './legend.tsx';
import { MapControls } from './map-controls.tsx';
import { MapStage, type StageNews } from './map-stage.ts';
import { ScaleBar } from './scale-bar.tsx';
import { SurfaceKey } from './surface-key.tsx';
import { useWords } from '../state/use-words.ts';

type Pointed = Parameters<StageNews['pointed']>[0];

export function MapView() {
  const words = useWords();
  const { store } = useTools();
  const theme = usePageTheme();
  const themeNow = useRef(theme);
  themeNow.current = theme;
  const place = useRef<HTMLDivElement>(null);
  const stage = useRef<MapStage | null>(null);
  const [metresPerPixel, setMetresPerPixel] = useState(1);
  const [pointed, setPointed] = useState<Pointed>(null);
  const hole = useApp(currentHole);
  const hasCourse = useApp((state) => state.course !== null);
  useEffect(() => {
    if (place.current === null) return undefined;
    const news = { zoomed: setMetresPerPixel, pointed: setPointed };
    stage.current = new MapStage(place.current, store, () => themeNow.current, news);
    return () => stage.current?.destroy();
  }, [store]);
  useEffect(() => stage.current?.repaint(), [theme, words]);
  const name = hole === null ? words.map.ofCourse : words.map.ofHole({ number: hole.number });
  return (
    <div class="map-area">
      <div class="map" ref={place} aria-label={name} role="region" />
      {hasCourse && (
        <>
          <MapControls zoom={(steps) => stage.current?.zoomBy(steps)} fit={() => stage.current?.fit()} />
          <WindSign />
          <div class="map-foot">
            <Legend theme={theme} />
            <SurfaceKey />
          </div>
          <div class="map-measures">
            <PointedLine pointed={pointed} />
            <ScaleBar metresPerPixel={metresPerPixel} />
          </div>
        </>
      )}
      <Notices />
    </div>
  );
}

/** Distances of the pointer's place; for a check against what is seen on the ground. */
function PointedLine({ pointed }: { readonly pointed: Pointed }) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const canTell = useApp((state) => {
    const hole = currentHole(state);
    return (
      hole !== null &&
      ballPlace(state) !== null &&
      positionOf(hole, holeSituation(state, hole.number).position).name !== ''
    );
  });
  if (pointed === null || !canTell) return null;
  return (
    <p class="pointed" aria-hidden="true">
      {words.map.pointed({
        fromBall: lengthText(pointed.ballM, units),
        toHole: lengthText(pointed.holeM, units),
      })}
    </p>
  );
}
