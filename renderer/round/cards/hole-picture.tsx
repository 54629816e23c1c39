/** The hole to scale on paper: ground, line of play, pattern, aim, distances. */

import type { CardUnits } from '../../../core/card/lengths.ts';
import type { HoleDrawing } from '../../../core/card/model.ts';
import { GroundAreas, pathOf } from './ground-areas.tsx';
import { holeFrame, type PictureFrame } from './picture-frame.ts';
import { ScaleBar } from './scale-bar.tsx';
import { INK } from '../../../core/card/inks.ts';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly hole: number;
  readonly drawing: HoleDrawing;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly units: CardUnits;
  readonly hasFills: boolean;
  readonly print: number;
  /** Greens may be shown on this page; otherwise the flag alone says where the hole is. */
  readonly hasGreens: boolean;
}

/** Width by which the line of play is found in a printed file. */
export const PLAY_LINE_MM = 0.131;

export function HolePicture(props: Props) {
  const words = useWords();
  const { hole, drawing, widthMm, heightMm, units, hasFills, print, hasGreens } = props;
  const foot = 3.4 * print;
  const tall = heightMm - foot;
  const frame = holeFrame(drawing, widthMm, tall, 1.8 * print);
  if (frame === null) return <p class="card-note">{words.cards.tooLong}</p>;
  const { place } = frame;
  const areas = hasGreens ? drawing.areas : drawing.areas.filter(({ kind }) => kind !== 'green');
  const tee = place(drawing.tee);
  const half = 0.65 * print;
  return (
    <svg
      class="card-picture"
      width={`${widthMm}mm`}
      height={`${heightMm}mm`}
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      role="img"
      aria-label={words.cards.holeAtScale({ hole, scale: frame.scale })}
      data-scale={frame.scale}
    >
      <svg x="0" y="0" width={widthMm} height={tall} overflow="hidden">
        <GroundAreas areas={areas} heightMm={tall} {...{ frame, widthMm, hasFills, print }} />
        {drawing.trees.map(({ at, radiusM }, i) => {
          const [cx, cy] = place(at);
          const r = Math.max(0.35, radiusM * frame.mmPerM);
          return (
            <circle
              key={i}
              {...{ cx, cy, r }}
              fill={hasFills ? '#c3d0b8' : 'none'}
              stroke="#55694a"
              stroke-width="0.1"
            />
          );
        })}
        <path
          class="play-line"
          d={pathOf(drawing.line.map(place))}
          fill="none"
          stroke="#6b6b6b"
          stroke-width={PLAY_LINE_MM}
          stroke-dasharray="0.7 0.85"
        />
        {drawing.ellipses.map(({ share, outline }) => (
          <path
            key={share}
            d={`${pathOf(outline.map(place))}Z`}
            fill="none"
            stroke={INK}
            stroke-width={share <= 0.5 ? 0.35 : 0.21}
            {...(share > 0.5 ? { 'stroke-dasharray': '1.05 0.55' } : {})}
          />
        ))}
        {drawing.aim !== null && <Aim tee={tee} at={place(drawing.aim)} print={print} />}
        <rect
          x={tee[0] - half}
          y={tee[1] - half}
          width={2 * half}
          height={2 * half}
          fill="#ffffff"
          stroke={INK}
          stroke-width="0.2"
        />
        <Flag at={place(drawing.pin)} print={print} />
        <Marks drawing={drawing} frame={frame} widthMm={widthMm} print={print} />
        <rect width={widthMm} height={tall} fill="none" stroke="#8a8a8a" stroke-width="0.3" />
      </svg>
      <ScaleBar x={0.7} y={heightMm - foot * 0.42} scale={frame.scale} units={units} print={print} />
    </svg>
  );
}

interface AimProps {
  readonly tee: readonly [number, number];
  readonly at: readonly [number, number];
  readonly print: number;
}

function Aim({ tee, at: [x, y], print }: AimProps) {
  const arm = 1.13 * print;
  return (
    <>
      <path d={pathOf([tee, [x, y]])} stroke={INK} stroke-width="0.39" />
      <circle cx={x} cy={y} r={arm * 0.62} fill="#ffffff" stroke={INK} stroke-width="0.32" />
      <path d={`M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}`} stroke={INK} stroke-width="0.21" />
    </>
  );
}

export function Flag({
  at: [x, y],
  print,
}: {
  readonly at: readonly [number, number];
  readonly print: number;
}) {
  const tall = 2.8 * print;
  return (
    <>
      <path d={`M${x} ${y}v${-tall}`} stroke={INK} stroke-width="0.25" />
      <path
        d={`M${x} ${y - tall}l${1.76 * print} ${0.67 * print}l${-1.76 * print} ${0.67 * print}z`}
        fill={INK}
      />
      <circle cx={x} cy={y} r={0.32 * print} fill={INK} />
    </>
  );
}

interface Label {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Distances beside their places, pushed apart where they would cover each other. */
function Marks({
  drawing,
  frame,
  widthMm,
  print,
}: {
  readonly drawing: HoleDrawing;
  readonly frame: PictureFrame;
  readonly widthMm: number;
  readonly print: number;
}) {
  const size = 1.95 * print;
  const taken: Label[] = drawing.aim === null ? [] : [boxAround(frame.place(drawing.aim), 1.3 * print)];
  return (
    <>
      {drawing.marks.map(({ at, text }, i) => {
        const [x, y] = frame.place(at);
        const width = text.length * size * 0.56 + 0.6;
        const height = size + 0.3;
        const toRight = x + 1 + width < widthMm;
        let label: Label = { x: toRight ? x + 0.9 : x - 0.9 - width, y: y - height / 2, width, height };
        for (let tries = 0; tries < 6 && taken.some((other) => overlaps(other, label)); tries++)
          label = { ...label, y: label.y - height * 0.6 };
        taken.push(label);
        return (
          <g key={i}>
            <circle cx={x} cy={y} r={0.39 * print} fill="#ffffff" stroke={INK} stroke-width="0.18" />
            <rect {...label} fill="#ffffff" fill-opacity="0.82" />
            <text x={label.x + 0.3} y={label.y + size * 0.88} font-size={size} font-weight="700" fill={INK}>
              {text}
            </text>
          </g>
        );
      })}
    </>
  );
}

function boxAround([x, y]: readonly [number, number], reach: number): Label {
  return { x: x - reach, y: y - reach, width: 2 * reach, height: 2 * reach };
}

function overlaps(a: Label, b: Label): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
