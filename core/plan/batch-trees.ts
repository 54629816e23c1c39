/** The shots of a batch against the trees that stand along the rays of their spot. */

import type { AimedShot } from '../flight/aimed-shot.ts';
import { sideOfWay } from '../flight/curved-way.ts';
import type { ShotLaw } from '../flight/shot-law.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import {
  CANOPY_STEP_M,
  countOf,
  firstOf,
  rayOf,
  SightBook,
  type SightLines,
  STRETCH,
} from '../ground/sight-lines.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import { type BatchShots, BY_TREE } from './batch-shots.ts';
import { POOR_LAUNCH, TreeWalk } from './tree-walk.ts';

/** For a distance at which nothing stops the ball. */
const NOT_STOPPED = -1;

const books = new WeakMap<HoleGround, SightBook>();

export class BatchTrees {
  private readonly trees: TreeWalk;
  private readonly sight: SightBook;
  private lines: SightLines;
  private hitWood = false;

  /** On a ground that has trees. */
  constructor(ground: HoleGround) {
    this.trees = new TreeWalk(ground);
    this.sight = sightBook(ground, this.trees);
    this.lines = this.sight.from(ground.west, ground.south);
  }

  /** Makes ready for flights from there. */
  stand(x: number, y: number): void {
    this.lines = this.sight.from(x, y);
  }

  /** Others may have filled the book since. */
  private look(): void {
    if (this.lines.isForgotten) this.lines = this.sight.from(this.lines.x, this.lines.y);
  }

  /** Is shot 0 stopped by half of the trees that its flight might get through? */
  isStopped(shots: BatchShots, law: ShotLaw, bearing: number, day: AimedShot): boolean {
    const sideAt = sideOfWay(law, shots.level[0]!);
    if (sideAt !== null) {
      this.standForCurves();
      return this.stopOnCurve(shots, 0, day, false, Math.LN2, sideAt) !== NOT_STOPPED;
    }
    this.look();
    const entry = this.lines.entry(rayOf(bearing), shots.carry[0]!);
    return countOf(entry) > 0 && this.stopOn(shots, entry, 0, day, false, Math.LN2) !== NOT_STOPPED;
  }

  /** Balls that a tree stops come to rest there. */
  meet(
    shots: BatchShots,
    law: ShotLaw,
    day: AimedShot,
    bearing: number,
    draws: ShotDraws,
    from: number,
    to: number,
  ): void {
    this.look();
    const { poorU, canopyDepth, rollZ } = draws;
    const { lines, trees } = this;
    const { ux, uy, level, poor, stopped, endX, endY } = shots;
    // The walk keeps one start for all who use it.
    if (law.curveShare === 0) trees.startAt(lines.x, lines.y, lines.startElevation);
    else this.standForCurves();
    for (let i = from, k = 0; i < to; i++, k++) {
      if (stopped[k] !== 0) continue;
      const isPoor = poor[k] === 1;
      const depth = canopyDepth[i]!;
      let at: number;
      let sideM = 0;
      const sideAt = sideOfWay(law, level[k]!);
      if (sideAt === null) {
        at = this.meetStraight(shots, k, bearing, day, isPoor, depth);
      } else {
        at = this.stopOnCurve(shots, k, day, isPoor, depth, sideAt);
        sideM = sideAt(at);
      }
      if (at === NOT_STOPPED) continue;
      const u = poorU[i]!;
      const keptU = isPoor ? u / law.poorShare : (u - law.poorShare) / (1 - law.poorShare);
      trees.drop(ux[k]!, uy[k]!, at, level[k]!, day, isPoor, keptU, rollZ[i]!, this.hitWood, sideM);
      stopped[k] = BY_TREE;
      endX[k] = trees.restX;
      endY[k] = trees.restY;
    }
  }

  private meetStraight(
    shots: BatchShots,
    k: number,
    bearing: number,
    day: AimedShot,
    isPoor: boolean,
    depth: number,
  ): number {
    const entry = this.lines.entry(rayOf(bearing + shots.turn[k]!), shots.carry[k]!);
    return countOf(entry) === 0 ? NOT_STOPPED : this.stopOn(shots, entry, k, day, isPoor, depth);
  }

  private standForCurves(): void {
    const { lines, trees } = this;
    trees.stand(lines.x, lines.y, lines.startElevation);
  }

  /** A curved flight leaves the rays: it is followed step by step. */
  private stopOnCurve(
    shots: BatchShots,
    k: number,
    day: AimedShot,
    isPoor: boolean,
    depth: number,
    sideAt: (alongM: number) => number,
  ): number {
    const { trees } = this;
    const [dx, dy] = [shots.ux[k]!, shots.uy[k]!];
    const at = trees.stopOnCurve(dx, dy, shots.level[k]!, shots.carry[k]!, day, isPoor, depth, sideAt);
    this.hitWood = trees.hitWood;
    return at;
  }

  /** Distance at which something on the ray stops shot `k`, or `NOT_STOPPED`. */
  private stopOn(
    shots: BatchShots,
    entry: number,
    k: number,
    { window }: AimedShot,
    isPoor: boolean,
    depth: number,
  ): number {
    const { numbers } = this.lines;
    const reach = shots.carry[k]!;
    const perCarry = 1 / shots.level[k]!;
    const { skew } = window;
    const launch = isPoor ? window.tanLaunch * POOR_LAUNCH : window.tanLaunch;
    let passed = 0;
    let at = firstOf(entry);
    for (const end = at + STRETCH * countOf(entry); at < end; at += STRETCH) {
      const begin = numbers[at]!;
      if (begin >= reach) break;
      const last = numbers[at + 1]!;
      if (last < 0) {
        const hit = this.trunkHit(shots, -1 - last, k, launch, skew, reach);
        if (hit < 0) continue;
        this.hitWood = true;
        return hit;
      }
      const until = last < reach ? last : reach;
      const top = numbers[at + 2]!;
      const f0 = begin * perCarry;
      const f1 = until * perCarry;
      // A flight is concave: above the top at both ends, above it between them.
      if (
        begin * launch * (1 - f0) * (1 + skew * f0) >= top &&
        until * launch * (1 - f1) * (1 + skew * f1) >= top
      )
        continue;
      const base = numbers[at + 3]!;
      const density = numbers[at + 4]!;
      const stems = numbers[at + 5]!;
      for (let r = begin + CANOPY_STEP_M / 2; r < until; r += CANOPY_STEP_M) {
        const f = r * perCarry;
        const height = r * launch * (1 - f) * (1 + skew * f);
        if (height >= top) continue;
        const inCrown = height > base;
        passed += (inCrown ? density : stems) * CANOPY_STEP_M;
        if (passed > depth) {
          this.hitWood = !inCrown;
          return r;
        }
      }
    }
    return NOT_STOPPED;
  }

  private trunkHit(
    shots: BatchShots,
    index: number,
    k: number,
    launch: number,
    skew: number,
    reach: number,
  ): number {
    const { lines } = this;
    const trunk = lines.trunks[index]!;
    const tx = trunk.x - lines.x;
    const ty = trunk.y - lines.y;
    const along = tx * shots.ux[k]! + ty * shots.uy[k]!;
    const aside = tx * shots.uy[k]! - ty * shots.ux[k]!;
    if (along <= 0 || along >= reach || aside > trunk.meetsM || aside < -trunk.meetsM) return NOT_STOPPED;
    const f = along / shots.level[k]!;
    const height = lines.startElevation + along * launch * (1 - f) * (1 + skew * f);
    return height < trunk.topM ? along : NOT_STOPPED;
  }
}

/** All that play on a ground share what was seen on it. */
function sightBook(ground: HoleGround, trees: TreeWalk): SightBook {
  let book = books.get(ground);
  if (book === undefined) {
    book = new SightBook(ground, trees.allTrunks);
    books.set(ground, book);
  }
  return book;
}
