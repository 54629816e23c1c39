/** Buttons on the map: zoom, fit, which way is up, what is painted. */

import type { Layer } from '../state/actions.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { ZoomButtons } from './zoom-buttons.tsx';

interface Props {
  readonly zoom: (steps: number) => void;
  readonly fit: () => void;
}

export function MapControls({ zoom, fit }: Props) {
  const onHole = useApp((state) => state.view.hole !== null);
  return (
    <div class="map-controls">
      <ZoomButtons zoom={zoom} fit={fit} />
      {onHole && (
        <div class="map-switches" role="group" aria-label="What the map shows">
          <LayerSwitch layer="showSurface" words="Strokes surface" />
          <LayerSwitch layer="showBalls" words="Balls" />
          <LayerSwitch layer="showCarries" words="Carries" />
          <UpSwitch />
        </div>
      )}
    </div>
  );
}

function LayerSwitch({ layer, words }: { readonly layer: Layer; readonly words: string }) {
  const on = useApp((state) => state.view[layer]);
  const dispatch = useDispatch();
  return (
    <label class="switch">
      <input
        type="checkbox"
        checked={on}
        onChange={(event) => dispatch({ type: 'layer-set', layer, on: event.currentTarget.checked })}
      />
      {words}
    </label>
  );
}

function UpSwitch() {
  const on = useApp((state) => state.view.holeUp);
  const dispatch = useDispatch();
  return (
    <label class="switch">
      <input
        type="checkbox"
        checked={on}
        onChange={(event) => dispatch({ type: 'hole-up-set', on: event.currentTarget.checked })}
      />
      Tee at the bottom
    </label>
  );
}
