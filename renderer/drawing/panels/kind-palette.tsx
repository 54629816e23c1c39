/** The buttons that take up a kind of thing to draw. */

import type { FeatureKind } from '../../../core/course/feature-kind.ts';
import type { AreaKind } from '../../../core/course/model.ts';
import { PAINTING_ORDER } from '../../../core/ground/lies.ts';
import { type Palette, paletteOf } from '../../map/palette.ts';
import { usePageTheme } from '../../state/use-page-theme.ts';
import { CHOOSING, mayEdit, type Mode } from '../drawing-state.ts';
import { KIND_CARDS, type KindCard } from '../kinds.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

/** Longer words take a whole line. */
const WIDEST_WORDS = 14;

export function KindPalette() {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const drawn = useDrawing(({ mode }) => (mode.do === 'draw' ? mode.kind : null));
  const choosing = useDrawing(({ mode }) => mode.do === 'choose');
  const set = (mode: Mode): void => {
    desk.store.dispatch({ type: 'mode-set', mode });
    desk.stage.current?.element.focus({ preventScroll: true });
  };
  return (
    <div class="kind-palette" role="group" aria-label={words.drawing.palette.name}>
      <button
        type="button"
        class="kind-button kind-choose"
        aria-pressed={choosing}
        title={words.drawing.palette.chooseTitle}
        onClick={() => set(CHOOSING)}
      >
        <svg class="kind-swatch" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
          <path d="M4 2l9 7-4 .6L11.5 14l-2 1-2.3-4.4L4 13.5z" class="swatch-line" />
        </svg>
        {words.drawing.palette.choose}
      </button>
      {KIND_CARDS.map((card) => (
        <button
          key={card.kind}
          type="button"
          class={
            words.drawing.kinds[card.kind].length > WIDEST_WORDS ? 'kind-button kind-wide' : 'kind-button'
          }
          aria-pressed={drawn === card.kind}
          disabled={!editable}
          title={words.drawing.palette.draw({
            what: words.drawing.kinds[card.kind],
            key: card.key.toUpperCase(),
          })}
          onClick={() => set(drawn === card.kind ? CHOOSING : { do: 'draw', kind: card.kind })}
        >
          <Swatch card={card} />
          {words.drawing.kinds[card.kind]}
        </button>
      ))}
    </div>
  );
}

function Swatch({ card }: { readonly card: KindCard }) {
  const palette = paletteOf(usePageTheme());
  return (
    <svg class="kind-swatch" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      {swatchOf(card, palette)}
    </svg>
  );
}

function swatchOf({ kind, drawnAs }: KindCard, palette: Palette) {
  switch (kind) {
    case 'hole':
      return <path d="M2 14L6 7l8-4" class="swatch-line swatch-dashed" />;
    case 'tee-marker':
      return (
        <>
          <circle cx="4" cy="8" r="2.6" class="swatch-dot" />
          <circle cx="12" cy="8" r="2.6" class="swatch-dot" />
        </>
      );
    case 'hole-position':
      return <path d="M6 15V2l7 2.5L6 7" class="swatch-line" />;
    case 'ground-level':
      return <path d="M3 8h10M8 3v10" class="swatch-line" />;
    case 'slope-mark':
      return <path d="M3 3l9 9M12 6v6h-6" class="swatch-line" />;
    case 'tree':
      return <circle cx="8" cy="8" r="6" fill={palette.crownDark} class="swatch-edge" />;
    default:
      return (
        <rect
          x="1.5"
          y="2.5"
          width="13"
          height="11"
          rx={drawnAs === 'line' ? 0 : 3.5}
          fill={groundColour(kind, palette)}
          {...(edgeColour(kind, palette) === null
            ? { class: 'swatch-edge' }
            : { stroke: edgeColour(kind, palette) ?? '' })}
          stroke-width="1.6"
          {...(kind === 'penalty-yellow' ? { 'stroke-dasharray': '3 2' } : {})}
          {...(kind === 'boundary' || kind === 'out-of-bounds' ? { 'stroke-dasharray': '1.5 2' } : {})}
        />
      );
  }
}

function groundColour(kind: FeatureKind, palette: Palette): string {
  const lie = PAINTING_ORDER.find(([area]) => area === (kind as AreaKind))?.[1];
  return lie === undefined ? 'none' : palette.ground[lie];
}

/** Null for a plain edge that shows on the panel in either light. */
function edgeColour(kind: FeatureKind, palette: Palette): string | null {
  switch (kind) {
    case 'penalty-red':
      return palette.stakeRed;
    case 'penalty-yellow':
      return palette.stakeYellow;
    case 'green':
      return palette.greenEdge;
    case 'bunker':
      return palette.bunkerEdge;
    case 'boundary':
    case 'out-of-bounds':
      return palette.playLine;
    default:
      return null;
  }
}
