/** Nearer, farther, all of it. */

import { Picture } from '../panels/pictograms.tsx';
import { useWords } from '../state/use-words.ts';

interface Props {
  readonly zoom: (steps: number) => void;
  readonly fit: () => void;
  /** Keys that do the same, told with each button. */
  readonly keys?: { readonly nearer: string; readonly farther: string; readonly whole: string };
}

const STEP = 0.5;

export function ZoomButtons({ zoom, fit, keys }: Props) {
  const words = useWords();
  return (
    <div class="map-zoom" role="group" aria-label={words.map.zoom}>
      <ZoomButton name={words.map.zoomIn} hotkey={keys?.nearer} picture="plus" act={() => zoom(STEP)} />
      <ZoomButton name={words.map.zoomOut} hotkey={keys?.farther} picture="minus" act={() => zoom(-STEP)} />
      <ZoomButton name={words.map.showWhole} hotkey={keys?.whole} picture="fit" act={fit} />
    </div>
  );
}

interface ButtonProps {
  readonly name: string;
  readonly hotkey: string | undefined;
  readonly picture: 'plus' | 'minus' | 'fit';
  readonly act: () => void;
}

function ZoomButton({ name, hotkey, picture, act }: ButtonProps) {
  return (
    <button
      type="button"
      class="icon-button"
      aria-label={name}
      title={hotkey === undefined ? name : `${name} (${hotkey})`}
      onClick={act}
    >
      <Picture of={picture} />
    </button>
  );
}
