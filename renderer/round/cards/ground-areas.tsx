/** Areas of the ground as vectors: tint, hatching, edge. */

import { useId } from 'preact/hooks';
import type { DrawnArea, DrawnKind } from '../../../core/card/model.ts';
import type { PictureFrame } from './picture-frame.ts';
import { type Hatch, TINTS } from './tints.ts';

type Points = readonly (readonly [number, number])[];

interface Props {
  readonly areas: readonly DrawnArea[];
  readonly frame: PictureFrame;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly hasFills: boolean;
  readonly print: number;
}

export function GroundAreas({ areas, frame, widthMm, heightMm, hasFills, print }: Props) {
  const id = useId();
  return (
    <>
      {areas.map(({ kind, rings }, i) => {
        const outlines = rings.map((ring) => thinned(ring.map(frame.place)));
        return (
          <PaintedArea
            key={i}
            {...{ kind, outlines, widthMm, heightMm, hasFills, print }}
            clipId={`${id}-${i}`}
          />
        );
      })}
    </>
  );
}

interface AreaProps {
  readonly kind: DrawnKind;
  readonly outlines: readonly Points[];
  readonly widthMm: number;
  readonly heightMm: number;
  readonly hasFills: boolean;
  readonly print: number;
  readonly clipId: string;
}

export function PaintedArea(props: AreaProps) {
  const { kind, outlines, widthMm, heightMm, hasFills, print, clipId } = props;
  const tint = TINTS[kind];
  const d = outlines.map((outline) => `${pathOf(outline)}Z`).join('');
  // Without tints what lies under an area must still not show through.
  const fill = hasFills ? (tint.fill ?? 'none') : kind === 'rough' ? 'none' : '#ffffff';
  return (
    <>
      <path d={d} fill={fill} fill-rule="evenodd" />
      {tint.hatch !== null && (
        <>
          <clipPath id={clipId}>
            <path d={d} clip-rule="evenodd" />
          </clipPath>
          <path
            clip-path={`url(#${clipId})`}
            d={hatchPath(outlines[0] ?? [], widthMm, heightMm, tint.hatch, print)}
            fill="none"
            stroke={tint.hatch.colour}
            stroke-width={tint.hatch.width}
            {...(tint.hatch.dash === undefined ? {} : { 'stroke-dasharray': tint.hatch.dash })}
          />
        </>
      )}
      {tint.edgeWidth > 0 && <path d={d} fill="none" stroke={tint.edge} stroke-width={tint.edgeWidth} />}
    </>
  );
}

/** Lines over the part of the outline that is in the picture; they keep to a fixed grid, so that neighbours join up. */
function hatchPath(
  outline: Points,
  widthMm: number,
  heightMm: number,
  { angle, spacing }: Hatch,
  print: number,
): string {
  const xs = outline.map(([x]) => Math.min(widthMm, Math.max(0, x)));
  const ys = outline.map(([, y]) => Math.min(heightMm, Math.max(0, y)));
  const [west, east, north, south] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const x0 = (west + east) / 2;
  const y0 = (north + south) / 2;
  const reach = Math.hypot(east - west, south - north) / 2;
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const step = spacing * Math.sqrt(print);
  const offset = (-x0 * uy + y0 * ux) % step;
  let d = '';
  for (let across = -reach - offset; across <= reach; across += step) {
    const x = x0 - uy * across;
    const y = y0 + ux * across;
    d += `M${mm(x - ux * reach)} ${mm(y - uy * reach)}L${mm(x + ux * reach)} ${mm(y + uy * reach)}`;
  }
  return d;
}

function mm(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** Corners nearer than this to the one before are no corners on paper. */
const LEAST_STEP_MM = 0.12;

function thinned(points: Points): Points {
  const kept: (readonly [number, number])[] = [];
  for (const point of points) {
    const last = kept.at(-1);
    if (last === undefined || Math.hypot(point[0] - last[0], point[1] - last[1]) >= LEAST_STEP_MM)
      kept.push(point);
  }
  return kept;
}

export function pathOf(points: Points): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}
