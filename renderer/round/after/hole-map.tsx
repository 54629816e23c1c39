/** A hole drawn on the screen, tee at the bottom, on which places are chosen by click or by arrow keys and Enter. */

import type { ComponentChildren } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { LocalFrame } from '../../../core/course/local-frame.ts';
import type { Course, Hole } from '../../../core/course/model.ts';
import { Lie, PAINTING_ORDER } from '../../../core/ground/lies.ts';
import type { Spot } from '../../../core/plan/model.ts';
import { edgeInk } from '../../map/edge-ink.ts';
import { paletteOf } from '../../map/palette.ts';
import { holeBearing, makeSheet, spotsOf } from '../../map/sheet.ts';
import { usePageTheme } from '../../state/use-page-theme.ts';
import { useWords } from '../../state/use-words.ts';

export type Place = (spot: Spot) => readonly [x: number, y: number];

interface Props {
  readonly course: Course;
  readonly hole: Hole;
  readonly frame: LocalFrame;
  /** Must be in sight besides the line of play. */
  readonly also: readonly Spot[];
  readonly label: string;
  readonly choose: (spot: Spot) => void;
  readonly children: (place: Place) => ComponentChildren;
}

const WIDTH = 380;
const TALLEST = 560;
const BESIDE_M = 45;
const BEYOND_M = 25;
const STEP_M = 5;

export function HoleMap({ course, hole, frame, also, label, choose, children }: Props) {
  const words = useWords();
  const theme = usePageTheme();
  const palette = paletteOf(theme);
  const view = useMemo(() => viewOf(hole, frame, also), [hole, frame, also]);
  const [cursor, setCursor] = useState<Spot | null>(null);
  const ground = useMemo(
    () =>
      PAINTING_ORDER.map(([kind, lie]) => ({
        lie,
        d: course.areas
          .filter((area) => area.kind === kind)
          .flatMap((area) => area.rings)
          .map((ring) => `${pathOf(spotsOf(frame, ring).map(view.place))}Z`)
          .join(''),
      })),
    [course, frame, view],
  );
  const step = (right: number, up: number): void => {
    const [x, y] = view.place(cursor ?? frame.toSpot(hole.line[0] ?? [0, 0]));
    setCursor(view.unplace(x + right * STEP_M * view.pxPerM, y - up * STEP_M * view.pxPerM));
  };
  return (
    <svg
      class="hole-map"
      viewBox={`0 0 ${WIDTH} ${view.height}`}
      width={WIDTH}
      height={view.height}
      tabindex={0}
      role="application"
      aria-label={words.round.map.choose({ label })}
      onClick={(event) => {
        const box = event.currentTarget.getBoundingClientRect();
        const x = ((event.clientX - box.left) * WIDTH) / box.width;
        const y = ((event.clientY - box.top) * view.height) / box.height;
        choose(view.unplace(x, y));
      }}
      onKeyDown={(event) => {
        const moves: Readonly<Record<string, readonly [number, number]>> = {
          ...{ ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] },
        };
        const move = moves[event.key];
        const size = event.shiftKey ? 5 : 1;
        if (move !== undefined) step(move[0] * size, move[1] * size);
        else if (event.key === 'Enter' && cursor !== null) choose(cursor);
        else return;
        event.preventDefault();
        event.stopPropagation();
      }}
    >
      <rect width={WIDTH} height={view.height} fill={palette.ground[Lie.rough]} />
      {ground.map(({ lie, d }, i) => (
        <path key={i} d={d} fill={palette.ground[lie]} stroke={edgeInk(lie)} stroke-width="1" />
      ))}
      {course.trees.map((tree) => {
        const [cx, cy] = view.place(frame.toSpot(tree.at));
        if (cx < -30 || cy < -30 || cx > WIDTH + 30 || cy > view.height + 30) return null;
        return (
          <circle
            key={tree.featureIndex}
            {...{ cx, cy }}
            r={tree.crownRadiusM * view.pxPerM}
            fill={palette.crownDark}
          />
        );
      })}
      {children(view.place)}
      {cursor !== null && <Cursor at={view.place(cursor)} />}
    </svg>
  );
}

function Cursor({ at: [x, y] }: { readonly at: readonly [number, number] }) {
  return <path class="map-cursor" d={`M${x - 9} ${y}H${x + 9}M${x} ${y - 9}V${y + 9}`} />;
}

interface MapView {
  readonly height: number;
  readonly pxPerM: number;
  readonly place: Place;
  readonly unplace: (x: number, y: number) => Spot;
}

function viewOf(hole: Hole, frame: LocalFrame, also: readonly Spot[]): MapView {
  const sheet = makeSheet(frame, holeBearing(frame, hole));
  const points = [...spotsOf(frame, hole.line), ...also].map((spot) => sheet.toMap(spot));
  const west = Math.min(...points.map(([, lng]) => lng)) - BESIDE_M;
  const east = Math.max(...points.map(([, lng]) => lng)) + BESIDE_M;
  const north = Math.max(...points.map(([lat]) => lat)) + BEYOND_M;
  const south = Math.min(...points.map(([lat]) => lat)) - BEYOND_M;
  const pxPerM = Math.min(WIDTH / (east - west), TALLEST / (north - south));
  const left = (west + east) / 2 - WIDTH / pxPerM / 2;
  return {
    height: Math.round((north - south) * pxPerM),
    pxPerM,
    place: (spot) => {
      const [lat, lng] = sheet.toMap(spot);
      return [tenth((lng - left) * pxPerM), tenth((north - lat) * pxPerM)];
    },
    unplace: (x, y) => sheet.fromMap({ lng: left + x / pxPerM, lat: north - y / pxPerM }),
  };
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

export function pathOf(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}
