/** The pictures of a card as shapes in metres, turned so that play goes up the page. No colours, no paper. */

import { greenOf } from '../course/hole-features.ts';
import type { Area, Course } from '../course/model.ts';
import { PAINTING_ORDER } from '../ground/lies.ts';
import type { Choice, Spot } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import { spreadEllipses } from '../plan/sample.ts';
import { bearingOf, distanceOf, makeView, pointAlong, type View } from './frame.ts';
import { approachBearing } from './green-place.ts';
import { type CardUnits, lengthNumber } from './lengths.ts';
import type {
  CardDistance,
  DrawnArea,
  DrawnBox,
  DrawnKind,
  GreenDrawing,
  HoleDrawing,
  RunOut,
} from './model.ts';

/** Ground shown beside and beyond what matters, metres. */
const ASIDE_M = 28;
const BEYOND_M = 18;
const ELLIPSE_SHARES = [0.5, 0.9];
const ELLIPSE_CORNERS = 48;

/** `choice`: the tee shot to draw; null draws the hole alone. */
export function holeDrawing(
  course: Course,
  prepared: PreparedHole,
  choice: Choice | null,
  carries: readonly CardDistance[],
  runOut: RunOut | null,
  units: CardUnits,
): HoleDrawing {
  const { tee, pin, playLine } = prepared;
  const view = makeView(tee, bearingOf(tee, pin));
  const aim = choice === null ? null : pointAlong(tee, choice.bearing, choice.carryM);
  const ellipses =
    choice === null
      ? []
      : spreadEllipses(prepared, tee, choice, ELLIPSE_SHARES).map(
          ({ share, centre, semiMajorM, semiMinorM, majorBearing }) => ({
            share,
            outline: Array.from({ length: ELLIPSE_CORNERS }, (_, k) => {
              const along = semiMajorM * Math.cos((2 * Math.PI * k) / ELLIPSE_CORNERS);
              const across = semiMinorM * Math.sin((2 * Math.PI * k) / ELLIPSE_CORNERS);
              return view.toPage(
                pointAlong(pointAlong(centre, majorBearing, along), majorBearing + Math.PI / 2, across),
              );
            }),
          }),
        );
  const line = playLine.map((spot) => view.toPage(spot));
  const shown = [
    ...line,
    ...(aim === null ? [] : [view.toPage(aim)]),
    ...ellipses.flatMap(({ outline }) => outline),
  ];
  const box = around(shown, ASIDE_M, BEYOND_M);
  return {
    box,
    areas: areasIn(course, prepared, view, box),
    trees: course.trees.flatMap((tree) => {
      const at = view.toPage(prepared.frame.toSpot(tree.at));
      return isNear(at, box, tree.crownRadiusM) ? [{ at, radiusM: tree.crownRadiusM }] : [];
    }),
    tee: view.toPage(tee),
    pin: view.toPage(pin),
    line,
    aim: aim === null ? null : view.toPage(aim),
    ellipses,
    marks: [
      ...carries.map((carry) => ({
        at: view.toPage(carry.near),
        text: carryText(carry, units),
      })),
      ...(runOut === null
        ? []
        : [{ at: view.toPage(runOut.at), text: `${lengthNumber(runOut.atM, units)}` }]),
    ],
  };
}

function carryText({ nearM, farM }: CardDistance, units: CardUnits): string {
  const near = lengthNumber(nearM, units);
  const far = lengthNumber(farM, units);
  return near === far ? `${near}` : `${near}–${far}`;
}

/** Room around the green, metres. */
const GREEN_MARGIN_M = 6;

/** Null where the green is not drawn. */
export function greenDrawing(course: Course, prepared: PreparedHole): GreenDrawing | null {
  const green = greenOf(course, prepared.hole);
  if (green === undefined) return null;
  const bearing = approachBearing(prepared);
  const flat = makeView({ x: 0, y: 0 }, bearing);
  const turned = (green.rings[0] ?? []).map((place) => flat.toPage(prepared.frame.toSpot(place)));
  const bounds = around(turned, 0, 0);
  const middle = { x: (bounds.left + bounds.right) / 2, y: (bounds.bottom + bounds.top) / 2 };
  const shift = ({ x, y }: Spot): Spot => ({ x: x - middle.x, y: y - middle.y });
  const view: View = { up: bearing, toPage: (spot) => shift(flat.toPage(spot)) };
  const box = around(turned.map(shift), GREEN_MARGIN_M, GREEN_MARGIN_M);
  return { box, areas: areasIn(course, prepared, view, box), pin: view.toPage(prepared.pin) };
}

function areasIn(course: Course, { frame }: PreparedHole, view: View, box: DrawnBox): DrawnArea[] {
  const drawn: DrawnArea[] = [];
  for (const [kind] of PAINTING_ORDER) {
    for (const area of course.areas) {
      if (area.kind !== kind || !isDrawn(area)) continue;
      const rings = area.rings.map((ring) => ring.map((place) => view.toPage(frame.toSpot(place))));
      if (rings[0] !== undefined && overlaps(rings[0], box)) drawn.push({ kind: area.kind, rings });
    }
  }
  return drawn;
}

function isDrawn(area: Area): area is Area & { readonly kind: DrawnKind } {
  return area.kind !== 'boundary';
}

function around(spots: readonly Spot[], asideM: number, beyondM: number): DrawnBox {
  return {
    left: Math.min(...spots.map(({ x }) => x)) - asideM,
    right: Math.max(...spots.map(({ x }) => x)) + asideM,
    bottom: Math.min(...spots.map(({ y }) => y)) - beyondM,
    top: Math.max(...spots.map(({ y }) => y)) + beyondM,
  };
}

function isNear({ x, y }: Spot, { left, right, bottom, top }: DrawnBox, reach: number): boolean {
  return x > left - reach && x < right + reach && y > bottom - reach && y < top + reach;
}

function overlaps(ring: readonly Spot[], box: DrawnBox): boolean {
  const own = around(ring, 0, 0);
  return own.left < box.right && own.right > box.left && own.bottom < box.top && own.top > box.bottom;
}

/** Metres from tee to hole in the drawing, for checks of a printed scale. */
export function drawnLength({ tee, pin }: HoleDrawing): number {
  return distanceOf(tee, pin);
}
