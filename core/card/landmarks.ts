/** Things of the map that a player on the tee can see and aim at, with the bearings between which they stand. */

import type { Words } from '../words/words.ts';
import type { Course } from '../course/model.ts';
import { lieAt } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import type { Spot } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import { alongRing, bearingOf, distanceOf, turnOf } from './frame.ts';
import { type CardUnits, lengthWords } from './lengths.ts';
import { canSee } from './sight.ts';

export interface Landmark {
  readonly kind: 'flag' | 'bunker' | 'tree' | 'woods' | 'green' | 'water';
  /** `the flag`, `the far bunker`, `the single tree at 180 yd`. */
  readonly words: string;
  /** Turn from the aim in radians to its visible left and right edge and its middle; positive is right of the aim. */
  readonly left: number;
  readonly right: number;
  readonly middle: number;
  readonly distanceM: number;
}

const NEAREST_M = 50;
const EDGE_STEP_M = 4;
/** Things farther than this from the aim are no help, radians. */
const WIDEST_TURN = (22 * Math.PI) / 180;
/** A flagstick is at least 7 feet high (equipment rule recommendation, from memory). */
const FLAG_HEIGHT_M = 2.13;

type Seen = Omit<Landmark, 'words'>;

/** Landmarks around `bearing` as seen from `from`, nearest first. */
export function landmarksFrom(
  course: Course,
  prepared: PreparedHole,
  from: Spot,
  bearing: number,
  units: CardUnits,
  words: Words,
): readonly Landmark[] {
  const seen: Seen[] = [];
  const add = (kind: Landmark['kind'], points: Iterable<Spot>, heightM: number, aroundM: number) => {
    const found = edgesOf(prepared, from, bearing, points, heightM, aroundM);
    if (found !== null) seen.push({ kind, ...found });
  };
  const { frame, pin } = prepared;
  add('flag', [pin], FLAG_HEIGHT_M, 4);
  for (const area of course.areas) {
    const outer = (area.rings[0] ?? []).map((place) => frame.toSpot(place));
    switch (area.kind) {
      case 'bunker':
        add('bunker', alongRing(outer, EDGE_STEP_M), 0.3, 4);
        break;
      case 'penalty-red':
      case 'penalty-yellow':
        add('water', alongRing(outer, EDGE_STEP_M), 0.3, 4);
        break;
      case 'woods':
        add('woods', alongRing(outer, EDGE_STEP_M), 0.7 * (area.canopy?.topM ?? 10), 12);
        break;
      case 'green':
        if (area.hole === undefined || area.hole === prepared.hole.number)
          add('green', alongRing(outer, EDGE_STEP_M), 0.3, 4);
        break;
      default:
        break;
    }
  }
  for (const tree of course.trees) {
    const spot = frame.toSpot(tree.at);
    if (standsAlone(course, prepared, spot, tree.featureIndex))
      add('tree', [spot], 0.7 * tree.canopy.topM, tree.crownRadiusM + 4);
  }
  return named(seen, units, words).sort((a, b) => a.distanceM - b.distanceM);
}

/** Bearings of the visible points; null where too few of them are seen or they are too far aside. */
function edgesOf(
  prepared: PreparedHole,
  from: Spot,
  bearing: number,
  points: Iterable<Spot>,
  heightM: number,
  aroundM: number,
): Pick<Landmark, 'left' | 'right' | 'middle' | 'distanceM'> | null {
  let left = Infinity;
  let right = -Infinity;
  let nearest = Infinity;
  let hidden = 0;
  let shown = 0;
  for (const point of points) {
    const turn = turnOf(bearing, bearingOf(from, point));
    const distance = distanceOf(from, point);
    if (Math.abs(turn) > 2 * WIDEST_TURN || distance < NEAREST_M) continue;
    if (!canSee(prepared.ground, from, point, heightM, aroundM)) {
      hidden++;
      continue;
    }
    shown++;
    left = Math.min(left, turn);
    right = Math.max(right, turn);
    nearest = Math.min(nearest, distance);
  }
  if (shown === 0 || hidden > 3 * shown || left > WIDEST_TURN || right < -WIDEST_TURN) return null;
  return { left, right, middle: (left + right) / 2, distanceM: nearest };
}

const ALONE_M = 18;

function standsAlone(
  course: Course,
  { frame, ground }: PreparedHole,
  spot: Spot,
  featureIndex: number,
): boolean {
  if (lieAt(ground, spot.x, spot.y) === Lie.woods) return false;
  return course.trees.every(
    (tree) => tree.featureIndex === featureIndex || distanceOf(frame.toSpot(tree.at), spot) > ALONE_M,
  );
}

/** One of a kind needs no more; of two there is a near and a far one; of more the distance tells which. */
function named(seen: readonly Seen[], units: CardUnits, { cards }: Words): Landmark[] {
  const told = cards.landmarks;
  return seen.map((landmark): Landmark => {
    const { kind, distanceM } = landmark;
    if (kind === 'flag' || kind === 'green') return { ...landmark, words: told[kind] };
    const alike = seen.filter((other) => other.kind === kind).sort((a, b) => a.distanceM - b.distanceM);
    const place = alike.findIndex((other) => other.distanceM === distanceM);
    const clear = alike.length === 2 && alike[1]!.distanceM > 1.15 * alike[0]!.distanceM;
    const name = told[kind];
    if (alike.length === 1) return { ...landmark, words: name.one };
    if (clear) return { ...landmark, words: place === 0 ? name.near : name.far };
    return { ...landmark, words: name.at({ length: lengthWords(distanceM, units) }) };
  });
}
