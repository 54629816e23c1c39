/** Buttons on the map: zoom, fit, which way is up, what is painted. */

import type { Layer } from '../state/actions.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { ZoomButtons } from './zoom-buttons.tsx';
import { useWords } from '../state/use-words.ts';

interface Props {
  readonly zoom: (steps: number) => void;
  readonly fit: () => void;
}

export function MapControls({ zoom, fit }: Props) {
  const words = useWords();
  const onHole = useApp((state) => state.view.hole !== null);
  return (
    <div class="map-controls">
      <ZoomButtons zoom={zoom} fit={fit} />
      {onHole && (
        <div class="map-switches" role="group" aria-label={words.map.whatItShows}>
          <LayerSwitch layer="showSurface" name={words.map.surface} />
          <LayerSwitch layer="showBalls" name={words.map.balls} />
          <LayerSwitch layer="showCarries" name={words.map.carries} />
          <UpSwitch />
        </div>
      )}
    </div>
  );
}

function LayerSwitch({ layer, name }: { readonly layer: Layer; readonly name: string }) {
  const on = useApp((state) => state.view[layer]);
  const dispatch = useDispatch();
  return (
    <label class="switch">
      <input
        type="checkbox"
        checked={on}
        onChange={(event) => dispatch({ type: 'layer-set', layer, on: event.currentTarget.checked })}
      />
      {name}
    </label>
  );
}

function UpSwitch() {
  const words = useWords();
  const on = useApp((state) => state.view.holeUp);
  const dispatch = useDispatch();
  return (
    <label class="switch">
      <input
        type="checkbox"
        checked={on}
        onChange={(event) => dispatch({ type: 'hole-up-set', on: event.currentTarget.checked })}
      />
      {words.map.teeAtBottom}
    </label>
  );
}
