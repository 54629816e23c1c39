/** Nearer, farther, all of it. */

import { Picture } from '../panels/pictograms.tsx';

interface Props {
  readonly zoom: (steps: number) => void;
  readonly fit: () => void;
  /** Keys that do the same, told with each button. */
  readonly keys?: { readonly nearer: string; readonly farther: string; readonly whole: string };
}

const STEP = 0.5;

export function ZoomButtons({ zoom, fit, keys }: Props) {
  return (
    <div class="map-zoom" role="group" aria-label="Zoom">
      <ZoomButton words="Zoom in" hotkey={keys?.nearer} picture="plus" act={() => zoom(STEP)} />
      <ZoomButton words="Zoom out" hotkey={keys?.farther} picture="minus" act={() => zoom(-STEP)} />
      <ZoomButton words="Show it whole" hotkey={keys?.whole} picture="fit" act={fit} />
    </div>
  );
}

interface ButtonProps {
  readonly words: string;
  readonly hotkey: string | undefined;
  readonly picture: 'plus' | 'minus' | 'fit';
  readonly act: () => void;
}

function ZoomButton({ words, hotkey, picture, act }: ButtonProps) {
  return (
    <button
      type="button"
      class="icon-button"
      aria-label={words}
      title={hotkey === undefined ? words : `${words} (${hotkey})`}
      onClick={act}
    >
      <Picture of={picture} />
    </button>
  );
}
