/**
 * Relief under penalty (Rules of Golf 2023: 17.1d penalty areas, 19.2 and 19.3 unplayable): where a ball may be
 * dropped, and which of those places costs the fewest strokes. Stroke and distance is the caller's business,
 * for it needs the spot of the last stroke.
 */

import { cellIndexAt, isOnRaster, isPenaltyArea, lieAt, type HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import { ownFairwayCells } from '../ground/own-fairway.ts';
import type { Spot } from './model.ts';
import type { StrokesField } from './strokes-field.ts';

/** Two club-lengths with the longest club most bags hold, a driver of 1.14 m (the Rules: any club but the putter). */
const TWO_CLUB_LENGTHS_M = 2.28;
/** Places tried around the reference point. */
const LATERAL_DIRECTIONS = 12;
/** Places tried on the line behind the reference point: step and farthest, metres. */
const LINE_STEP_M = 3;
const LINE_REACH_M = 120;

/** The best place to drop, the penalty for it, and its cost in strokes; `total` is Infinity where there is none. */
export interface ReliefSpot {
  x: number;
  y: number;
  lie: number;
  penalty: number;
  total: number;
}

export function noRelief(): ReliefSpot {
  return { x: 0, y: 0, lie: Lie.rough, penalty: 0, total: Infinity };
}

function mayDropIn(lie: number): boolean {
  return !isPenaltyArea(lie) && lie !== Lie.outOfBounds;
}

/** Lateral relief: within two club-lengths of the reference point, not nearer the hole. Improves `best` where cheaper. */
export function improveByLateral(
  field: StrokesField,
  reference: Spot,
  penalty: number,
  best: ReliefSpot,
  onlyLie?: number,
): void {
  const { ground, pin } = field;
  const nearest = Math.hypot(reference.x - pin.x, reference.y - pin.y);
  for (let k = 0; k < LATERAL_DIRECTIONS; k++) {
    const angle = (2 * Math.PI * k) / LATERAL_DIRECTIONS;
    const x = reference.x + TWO_CLUB_LENGTHS_M * Math.sin(angle);
    const y = reference.y + TWO_CLUB_LENGTHS_M * Math.cos(angle);
    if (Math.hypot(x - pin.x, y - pin.y) < nearest) continue;
    consider(field, ground, x, y, penalty, best, onlyLie);
  }
}

/** Back-on-the-line relief: on the line from the hole through the reference point, behind it. Improves `best`. */
export function improveByBackOnLine(
  field: StrokesField,
  reference: Spot,
  penalty: number,
  best: ReliefSpot,
  onlyLie?: number,
  notLie?: number,
): void {
  const { ground, pin } = field;
  const distance = Math.hypot(reference.x - pin.x, reference.y - pin.y);
  if (distance === 0) return;
  const ux = (reference.x - pin.x) / distance;
  const uy = (reference.y - pin.y) / distance;
  for (let back = 1; back <= LINE_REACH_M; back += LINE_STEP_M) {
    const x = reference.x + ux * back;
    const y = reference.y + uy * back;
    if (!isOnRaster(ground, x, y)) return;
    if (lieAt(ground, x, y) === notLie) continue;
    consider(field, ground, x, y, penalty, best, onlyLie);
  }
}

function consider(
  field: StrokesField,
  ground: HoleGround,
  x: number,
  y: number,
  penalty: number,
  best: ReliefSpot,
  onlyLie: number | undefined,
): void {
  if (!isOnRaster(ground, x, y)) return;
  const lie = lieAt(ground, x, y);
  if (!mayDropIn(lie) || (onlyLie !== undefined && lie !== onlyLie)) return;
  const total = penalty + field.valueAt(x, y, lie);
  // A NaN (no node there yet) compares false and is passed over.
  if (total < best.total) {
    best.x = x;
    best.y = y;
    best.lie = lie;
    best.penalty = penalty;
    best.total = total;
  }
}

/**
 * The cheapest drop for an unplayable ball at `spot`: one stroke; in a bunker both reliefs stay in it for one
 * stroke, and back on the line outside costs two (19.3).
 */
export function unplayableRelief(
  field: StrokesField,
  spot: Spot,
  lie: number,
  kinds: 'lateral' | 'line' | 'outside' | 'all' = 'all',
): ReliefSpot {
  const best = noRelief();
  const inside = lie === Lie.bunker ? Lie.bunker : undefined;
  if (kinds === 'lateral' || kinds === 'all') improveByLateral(field, spot, 1, best, inside);
  if (kinds === 'line' || kinds === 'all') improveByBackOnLine(field, spot, 1, best, inside);
  if (lie === Lie.bunker && (kinds === 'outside' || kinds === 'all'))
    improveByBackOnLine(field, spot, 2, best, undefined, Lie.bunker);
  return best;
}

/**
 * Relief from penalty areas, remembered per cell where the ball crossed the edge. `forget` after the field changes.
 */
export class PenaltyRelief {
  private readonly known = new Map<number, ReliefSpot>();
  private readonly knownFairways = new Map<number, ReliefSpot>();

  constructor(private readonly field: StrokesField) {}

  forget(): void {
    this.known.clear();
    this.knownFairways.clear();
  }

  /**
   * Cheapest relief for one stroke for a ball that went from `from` towards `end` in a penalty area. The reference point
   * is where its way last crossed the area's edge.
   */
  forBall(fromX: number, fromY: number, endX: number, endY: number, lie: number): ReliefSpot {
    const { ground } = this.field;
    const { x, y } = edgeCrossing(ground, fromX, fromY, endX, endY);
    const cell = cellIndexAt(ground, x, y);
    const slot = 2 * cell + (lie === Lie.penaltyRed ? 1 : 0);
    const known = this.known.get(slot);
    if (known !== undefined) return known;
    const best = noRelief();
    const reference = {
      x: ground.west + ((cell % ground.columns) + 0.5) * ground.cellM,
      y: ground.south + (Math.floor(cell / ground.columns) + 0.5) * ground.cellM,
    };
    improveByBackOnLine(this.field, reference, 1, best);
    if (lie === Lie.penaltyRed) improveByLateral(this.field, reference, 1, best);
    this.known.set(slot, best);
    return best;
  }

  /**
   * Instead of stroke and distance, for a ball lost or out of bounds, where Model Local Rule E-5 is in force: two strokes, and a
   * drop in the fairway level with where the ball crossed the edge, not nearer the hole. Of the relief area only the fairway's
   * nearest place is looked at, which few players would leave for the rest of it.
   */
  forLostBall(fromX: number, fromY: number, endX: number, endY: number): ReliefSpot {
    const { ground, pin } = this.field;
    const { x, y } = edgeCrossing(ground, fromX, fromY, endX, endY, isOut);
    const cell = cellIndexAt(ground, x, y);
    const known = this.knownFairways.get(cell);
    if (known !== undefined) return known;
    const best = noRelief();
    const fairway = nearestFairway(ground, cell, Math.hypot(x - pin.x, y - pin.y), pin);
    if (fairway !== null) consider(this.field, ground, fairway.x, fairway.y, 2, best, Lie.fairway);
    this.knownFairways.set(cell, best);
    return best;
  }
}

function isOut(lie: number): boolean {
  return lie === Lie.outOfBounds;
}

/** How far E-5 looks for fairway, metres. */
const FAIRWAY_REACH_M = 150;

/** The cell of the hole's own fairway nearest to `cell` that is not nearer the hole than `leastM`; null where there is none within reach. */
function nearestFairway(ground: HoleGround, cell: number, leastM: number, pin: Spot): Spot | null {
  const column = cell % ground.columns;
  const row = Math.floor(cell / ground.columns);
  const reach = Math.ceil(FAIRWAY_REACH_M * ground.cellsPerM);
  const own = ownFairwayCells(ground);
  let nearest: Spot | null = null;
  let nearestSquare = reach * reach;
  for (let r = Math.max(0, row - reach); r <= Math.min(ground.rows - 1, row + reach); r++) {
    for (let c = Math.max(0, column - reach); c <= Math.min(ground.columns - 1, column + reach); c++) {
      const square = (r - row) ** 2 + (c - column) ** 2;
      const at = r * ground.columns + c;
      if (square >= nearestSquare || ground.lie[at] !== Lie.fairway || own[at] === 0) continue;
      const x = ground.west + (c + 0.5) * ground.cellM;
      const y = ground.south + (r + 0.5) * ground.cellM;
      if (Math.hypot(x - pin.x, y - pin.y) < leastM) continue;
      nearest = { x, y };
      nearestSquare = square;
    }
  }
  return nearest;
}

/** Strokes that an unplayable ball costs by the lies before and after the drop: two for leaving a bunker (19.3b). */
export function unplayablePenalty(from: number, to: number): 1 | 2 {
  return from === Lie.bunker && to !== Lie.bunker ? 2 : 1;
}

/** Where the straight way from `from` to a ball in a penalty area (or what `isInside` says) last crossed its edge, to half a cell outside it. */
export function edgeCrossing(
  ground: HoleGround,
  fromX: number,
  fromY: number,
  endX: number,
  endY: number,
  isInside: (lie: number) => boolean = isPenaltyArea,
): Spot {
  const length = Math.hypot(endX - fromX, endY - fromY);
  const ux = (fromX - endX) / (length || 1);
  const uy = (fromY - endY) / (length || 1);
  let x = endX;
  let y = endY;
  for (let back = 0; back < length && isInside(lieAt(ground, x, y)); back += ground.cellM / 2) {
    x = endX + ux * back;
    y = endY + uy * back;
  }
  return { x, y };
}
