/** The green at 1:480 or smaller, as the Rules ask of a picture that is carried (Rule 4.3a). */

import type { CardUnits } from '../../../core/card/lengths.ts';
import type { GreenDrawing } from '../../../core/card/model.ts';
import { GroundAreas } from './ground-areas.tsx';
import { Flag } from './hole-picture.tsx';
import { greenFrame } from './picture-frame.ts';
import { ScaleBar } from './scale-bar.tsx';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly hole: number;
  readonly drawing: GreenDrawing;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly units: CardUnits;
  readonly hasFills: boolean;
  readonly print: number;
}

export function GreenPicture({ hole, drawing, widthMm, heightMm, units, hasFills, print }: Props) {
  const words = useWords();
  const foot = 3 * print;
  const tall = heightMm - foot;
  const frame = greenFrame(drawing.box, widthMm, tall);
  if (frame === null) return null;
  return (
    <svg
      class="card-picture"
      width={`${widthMm}mm`}
      height={`${heightMm}mm`}
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      role="img"
      aria-label={words.cards.greenAt({ hole, scale: frame.scale })}
      data-scale={frame.scale}
    >
      <svg x="0" y="0" width={widthMm} height={tall} overflow="hidden">
        <GroundAreas areas={drawing.areas} heightMm={tall} {...{ frame, widthMm, hasFills, print }} />
        <Flag at={frame.place(drawing.pin)} print={print} />
        <rect width={widthMm} height={tall} fill="none" stroke="#8a8a8a" stroke-width="0.3" />
      </svg>
      <ScaleBar
        x={0.7}
        y={heightMm - foot * 0.45}
        scale={frame.scale}
        units={units}
        print={print}
        longest={14}
      />
    </svg>
  );
}
