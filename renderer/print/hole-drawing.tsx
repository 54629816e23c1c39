/** A drawing of one hole for paper: SVG of our own, since a live map is clipped in print. Sizes are millimetres. */

import type { VNode } from 'preact';
import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { Area, Course, Hole } from '../../core/course/model.ts';
import { Lie, PAINTING_ORDER } from '../../core/ground/lies.ts';
import type { Option, Spot, SpreadEllipse } from '../../core/plan/model.ts';
import { type Carry, carriesAlong } from '../map/carries.ts';
import { edgeInk } from '../map/edge-ink.ts';
import { paletteOf } from '../map/palette.ts';
import { holeBearing, makeSheet, spotsOf } from '../map/sheet.ts';
import { lengthNumber, lengthText, type Units } from '../state/measures.ts';
import { ellipsePath, linePath, paperFrame, type PaperFrame, type PaperPoint } from './paper-frame.ts';
import { useWords } from '../state/use-words.ts';

interface Props {
  readonly course: Course;
  readonly hole: Hole;
  readonly frame: LocalFrame;
  readonly ball: Spot;
  readonly pin: Spot;
  readonly option: Option | null;
  readonly ellipses: readonly SpreadEllipse[];
  readonly units: Units;
}

/** Room on the sheet, as in the style sheet. */
const WIDTH_MM = 66;
const TALLEST_MM = 210;
const PALETTE = paletteOf('light');

export function HoleDrawing(props: Props): VNode {
  const words = useWords();
  const { course, hole, frame, ball, pin, option, ellipses } = props;
  const sheet = makeSheet(frame, holeBearing(frame, hole));
  const paper = paperFrame(sheet, [...spotsOf(frame, hole.line), ball, pin], WIDTH_MM, TALLEST_MM);
  const isShot = option?.kind === 'shot' && option.clubKind !== 'putter';
  return (
    <svg
      class="hole-drawing"
      viewBox={`0 0 ${paper.widthMm} ${paper.heightMm}`}
      role="img"
      aria-label={words.sheet.drawing({ number: hole.number })}
    >
      <Ground course={course} frame={frame} paper={paper} />
      {ellipses.map((ellipse) => (
        <path
          key={ellipse.share}
          d={ellipsePath(paper, ellipse)}
          fill="none"
          stroke={PALETTE.shotA}
          stroke-width={ellipse.share <= 0.5 ? 0.5 : 0.3}
        />
      ))}
      {isShot && <ShotLine {...props} option={option} paper={paper} />}
      <Flag at={paper.place(pin)} />
      <Dot at={paper.place(ball)} radius={1} />
    </svg>
  );
}

function Ground({
  course,
  frame,
  paper,
}: {
  readonly course: Course;
  readonly frame: LocalFrame;
  readonly paper: PaperFrame;
}) {
  const outline = (kind: Area['kind']): string =>
    course.areas
      .filter((area) => area.kind === kind)
      .flatMap((area) => area.rings)
      .map((ring) => `${linePath(paper, spotsOf(frame, ring))}Z`)
      .join('');
  return (
    <>
      <rect width={paper.widthMm} height={paper.heightMm} fill={PALETTE.ground[Lie.rough]} />
      {PAINTING_ORDER.map(([kind, lie]) => (
        <path
          key={kind}
          d={outline(kind)}
          fill={PALETTE.ground[lie]}
          stroke={edgeInk(lie)}
          stroke-width="0.3"
        />
      ))}
      {course.trees.map((tree) => {
        const [x, y] = paper.place(frame.toSpot(tree.at));
        const radius = tree.crownRadiusM * paper.mmPerM;
        return <circle key={tree.featureIndex} cx={x} cy={y} r={radius} fill={PALETTE.crownDark} />;
      })}
    </>
  );
}

/** Ground past the carry in which hazards are still told, metres. */
const BEYOND_CARRY_M = 45;

function ShotLine({
  course,
  frame,
  ball,
  pin,
  option,
  units,
  paper,
}: Props & { readonly option: Option; readonly paper: PaperFrame }) {
  const aim = frame.toSpot(option.aim.lonLat);
  const bearing = Math.atan2(aim.x - ball.x, aim.y - ball.y);
  const reach = Math.hypot(aim.x - ball.x, aim.y - ball.y) + BEYOND_CARRY_M;
  return (
    <>
      <path d={linePath(paper, [ball, aim])} stroke={PALETTE.shotCase} stroke-width="1.1" />
      <path d={linePath(paper, [ball, aim])} stroke={PALETTE.shotA} stroke-width="0.6" />
      <path
        d={linePath(paper, [aim, pin])}
        stroke={PALETTE.shotA}
        stroke-width="0.35"
        stroke-dasharray="0.8 1.2"
      />
      {apart(carriesAlong(course, frame, ball, bearing, reach), paper, aim).map((carry) => (
        <Mark
          key={`${carry.near.x} ${carry.near.y}`}
          at={paper.place(carry.near)}
          width={paper.widthMm}
          text={`${lengthNumber(carry.nearM, units)}–${lengthNumber(carry.farM, units)}`}
        />
      ))}
      <Mark at={paper.place(aim)} width={paper.widthMm} text={lengthText(option.carryM, units)} main />
    </>
  );
}

/** Carries whose texts have room below and above each other and the aim's. */
function apart(carries: readonly Carry[], paper: PaperFrame, aim: Spot): readonly Carry[] {
  const taken = [paper.place(aim)[1]];
  return carries.filter((carry) => {
    const y = paper.place(carry.near)[1];
    if (taken.some((other) => Math.abs(other - y) < TEXT_ROOM_MM)) return false;
    taken.push(y);
    return true;
  });
}
const TEXT_ROOM_MM = 3.2;

interface MarkProps {
  readonly at: PaperPoint;
  readonly text: string;
  /** Of the drawing: near its right edge the text stands on the left. */
  readonly width: number;
  readonly main?: boolean;
}

function Mark({ at, text, width, main }: MarkProps) {
  const [x, y] = at;
  const onLeft = x > 0.72 * width;
  return (
    <g>
      <Dot at={at} radius={main === true ? 1 : 0.5} />
      <text
        x={onLeft ? x - 1.8 : x + 1.8}
        y={y + 1}
        text-anchor={onLeft ? 'end' : 'start'}
        class={main === true ? 'drawing-text main' : 'drawing-text'}
      >
        {text}
      </text>
    </g>
  );
}

function Dot({ at: [x, y], radius }: { readonly at: PaperPoint; readonly radius: number }) {
  return <circle cx={x} cy={y} r={radius} fill="#ffffff" stroke="#111111" stroke-width="0.35" />;
}

function Flag({ at: [x, y] }: { readonly at: PaperPoint }) {
  return (
    <g>
      <path d={`M${x} ${y}v-4.4`} stroke="#111111" stroke-width="0.35" />
      <path d={`M${x} ${y - 4.4}l2.6 0.95l-2.6 0.95z`} fill="#b34700" />
    </g>
  );
}
