/** A drawing of one hole for paper: SVG of our own, since a live map is clipped in print. */

import type { VNode } from 'preact';
import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { Area, Course, Hole } from '../../core/course/model.ts';
import { type LieCode, Lie, PAINTING_ORDER } from '../../core/ground/lies.ts';
import type { Option, Spot, SpreadEllipse } from '../../core/plan/model.ts';
import { carriesAlong } from '../map/carries.ts';
import { paletteOf } from '../map/palette.ts';
import { holeBearing, makeSheet, type Sheet, spotsOf } from '../map/sheet.ts';
import { lengthNumber, lengthText, type Units } from '../state/measures.ts';

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

const AROUND_M = 32;
const BEYOND_CARRY_M = 45;

export function HoleDrawing({ course, hole, frame, ball, pin, option, ellipses, units }: Props): VNode {
  const sheet = makeSheet(frame, holeBearing(frame, hole));
  const palette = paletteOf('light');
  const inSight = [...spotsOf(frame, hole.line), ball, pin].map((spot) => paper(sheet, spot));
  const left = Math.min(...inSight.map(([x]) => x)) - AROUND_M;
  const right = Math.max(...inSight.map(([x]) => x)) + AROUND_M;
  const top = Math.min(...inSight.map(([, y]) => y)) - AROUND_M / 2;
  const bottom = Math.max(...inSight.map(([, y]) => y)) + AROUND_M / 2;
  const aim = option === null || option.kind !== 'shot' ? null : frame.toSpot(option.aim.lonLat);
  return (
    <svg
      class="hole-drawing"
      viewBox={`${left} ${top} ${right - left} ${bottom - top}`}
      role="img"
      aria-label={`Drawing of hole ${hole.number}`}
    >
      <rect x={left} y={top} width={right - left} height={bottom - top} fill={palette.ground[Lie.rough]} />
      {PAINTING_ORDER.map(([kind, lie]) => (
        <path
          key={kind}
          d={outlines(course.areas, kind, sheet)}
          fill={palette.ground[lie]}
          stroke={edge(lie)}
          stroke-width="0.7"
          fill-rule="nonzero"
        />
      ))}
      {course.trees.map((tree) => {
        const [x, y] = paper(sheet, frame.toSpot(tree.at));
        return (
          <circle key={tree.featureIndex} cx={x} cy={y} r={tree.crownRadiusM} fill={palette.crownDark} />
        );
      })}
      {ellipses.map((ellipse) => (
        <path
          key={ellipse.share}
          d={ellipsePath(ellipse, sheet)}
          fill="none"
          stroke={palette.shotA}
          stroke-width={ellipse.share <= 0.5 ? 1.4 : 0.9}
        />
      ))}
      {aim !== null && (
        <>
          <path d={linePath([ball, aim], sheet)} stroke={palette.shotCase} stroke-width="3.4" />
          <path d={linePath([ball, aim], sheet)} stroke={palette.shotA} stroke-width="1.8" />
          <path
            d={linePath([aim, pin], sheet)}
            stroke={palette.shotA}
            stroke-width="0.9"
            stroke-dasharray="2 4"
          />
          <Mark at={paper(sheet, aim)} text={option === null ? '' : lengthText(option.carryM, units)} />
          {carriesAlong(course, frame, ball, bearingOf(ball, aim), distance(ball, aim) + BEYOND_CARRY_M).map(
            (carry, i) => (
              <Mark
                key={i}
                at={paper(sheet, carry.near)}
                text={`${lengthNumber(carry.nearM, units)}–${lengthNumber(carry.farM, units)}`}
                small
              />
            ),
          )}
        </>
      )}
      <Flag at={paper(sheet, pin)} />
      <circle
        cx={paper(sheet, ball)[0]}
        cy={paper(sheet, ball)[1]}
        r="2.6"
        fill="#fff"
        stroke="#111"
        stroke-width="1"
      />
    </svg>
  );
}

/** Paper runs down, the map up. */
function paper(sheet: Sheet, spot: Spot): readonly [number, number] {
  const [lat, lng] = sheet.toMap(spot);
  return [round(lng), round(-lat)];
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

function outlines(areas: readonly Area[], kind: Area['kind'], sheet: Sheet): string {
  return areas
    .filter((area) => area.kind === kind)
    .flatMap((area) => area.rings)
    .map((ring) => `${linePath(spotsOf(sheet.frame, ring), sheet)}Z`)
    .join('');
}

function linePath(spots: readonly Spot[], sheet: Sheet): string {
  return spots.map((spot, i) => `${i === 0 ? 'M' : 'L'}${paper(sheet, spot).join(' ')}`).join('');
}

function ellipsePath({ centre, semiMajorM, semiMinorM, majorBearing }: SpreadEllipse, sheet: Sheet): string {
  const spots = Array.from({ length: 48 }, (_, k): Spot => {
    const along = semiMajorM * Math.cos((k * Math.PI) / 24);
    const across = semiMinorM * Math.sin((k * Math.PI) / 24);
    return {
      x: centre.x + along * Math.sin(majorBearing) + across * Math.cos(majorBearing),
      y: centre.y + along * Math.cos(majorBearing) - across * Math.sin(majorBearing),
    };
  });
  return `${linePath(spots, sheet)}Z`;
}

function edge(lie: LieCode): string {
  switch (lie) {
    case Lie.green:
      return '#4d7a38';
    case Lie.bunker:
      return '#9a8248';
    case Lie.penaltyYellow:
      return '#b89500';
    case Lie.penaltyRed:
      return '#b3261a';
    case Lie.outOfBounds:
      return '#555';
    case Lie.rough:
    case Lie.fairway:
    case Lie.tee:
    case Lie.longRough:
    case Lie.woods:
    case Lie.path:
      return 'none';
  }
}

function Mark({
  at: [x, y],
  text,
  small,
}: {
  readonly at: readonly [number, number];
  readonly text: string;
  readonly small?: boolean;
}) {
  return (
    <g>
      <circle cx={x} cy={y} r={small === true ? 1.2 : 2.6} fill="#fff" stroke="#111" stroke-width="0.8" />
      <text x={x + 5} y={y + 2.6} class={small === true ? 'drawing-text small' : 'drawing-text'}>
        {text}
      </text>
    </g>
  );
}

function Flag({ at: [x, y] }: { readonly at: readonly [number, number] }) {
  return (
    <g>
      <path d={`M${x} ${y}v-12`} stroke="#111" stroke-width="1" />
      <path d={`M${x} ${y - 12}l7 2.6l-7 2.6z`} fill="#b34700" />
    </g>
  );
}

function distance(a: Spot, b: Spot): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function bearingOf(from: Spot, to: Spot): number {
  return Math.atan2(to.x - from.x, to.y - from.y);
}
