/**
 * What a ball may meet from one spot, along rays one and a half degrees apart: stretches of canopy in order of distance, and trunks. A
 * solution plays thousands of shots from the same spot, so each ray is walked along once and every shot near it only compares
 * heights. A flight is taken along the nearest ray, at most three quarters of a degree aside: two metres at 150 m, less than most crowns.
 */

import { CANOPY_STOREYS, elevationAt, type HoleGround } from './hole-ground.ts';
import { Lie } from './lies.ts';
import { STEMS_PER_M } from './tree-kinds.ts';
import { type Trunk, trunksNear } from './trunks.ts';

const RAYS = 240;
const RAYS_PER_RADIAN = RAYS / (2 * Math.PI);
/** Step through canopies, metres: crowns are several metres wide. */
export const CANOPY_STEP_M = 2;
/** The ground under a stretch is looked at anew after so many metres. */
const LONGEST_STRETCH_M = 16;
/** Numbers of a stretch: begin, end, top, base, density of crown and of stems per metre. A trunk: distance, -1 - its index. */
export const STRETCH = 6;
/** A ray's entry is its first number's index times this, plus how many stretches it has. */
const COUNTS = 64;
/** A ray is walked along a little farther than was asked for, and at least so far, metres. */
const SHORTEST_LOOK_M = 40;
const LOOK_ON = 1.25;
/** Kept numbers, 8 MB, and spots: beyond, all is forgotten and made anew. */
const MOST_NUMBERS = 2_000_000;
const MOST_SPOTS = 3000;

/** A trunk with what a ball's middle has to keep from it. */
export interface MetTrunk extends Trunk {
  /** Half the width in which the middle of a ball meets it. */
  readonly meetsM: number;
  /** Above the datum of the hole's heights. */
  readonly topM: number;
}

/** Ray of a direction in radians clockwise from north. */
export function rayOf(bearing: number): number {
  // Bearings are within a few turns of north.
  const ray = ((bearing * RAYS_PER_RADIAN + (8 * RAYS + 0.5)) | 0) % RAYS;
  return ray < 0 ? ray + RAYS : ray;
}

/** A growing list of stretches, shared by the rays of many spots. */
class Stretches {
  /** Replaced by a longer one as it fills. */
  numbers = new Float32Array(1 << 16);
  used = 0;

  /** Where the last stretch ends. */
  end(end: number): void {
    this.numbers[this.used - STRETCH + 1] = end;
  }

  add(begin: number, end: number, top: number, base: number, density: number, stems: number): void {
    if (this.used + STRETCH > this.numbers.length) {
      const longer = new Float32Array(2 * this.numbers.length);
      longer.set(this.numbers);
      this.numbers = longer;
    }
    const { numbers, used } = this;
    numbers[used] = begin;
    numbers[used + 1] = end;
    numbers[used + 2] = top;
    numbers[used + 3] = base;
    numbers[used + 4] = density;
    numbers[used + 5] = stems;
    this.used += STRETCH;
  }
}

/** One sort of canopy; heights above its own ground. */
interface CanopyKind {
  readonly topM: number;
  readonly baseM: number;
  readonly densityPerM: number;
  readonly stemsPerM: number;
}

/** A cell's canopy in one word: which of the kinds (from 1; 0 for none), and metres that are surely clear of canopies. */
interface Woods {
  readonly words: Uint16Array;
  readonly kinds: readonly CanopyKind[];
}

const CLEAR_SHIFT = 8;
const CLEAR_BITS = 255;
const MOST_KINDS = 255;

function woodsOf(ground: HoleGround): Woods {
  const { lie, canopyTop, canopyBase, canopyDensity, clearOfTrees } = ground;
  const kinds: CanopyKind[] = [];
  const indices = new Map<string, number>();
  const words = new Uint16Array(lie.length);
  for (let i = 0; i < words.length; i++) {
    const topM = canopyTop[i]!;
    let kind = 0;
    if (topM > 0) {
      const stemsPerM = lie[i] === Lie.woods ? STEMS_PER_M : 0;
      const key = `${topM} ${canopyBase[i]!} ${canopyDensity[i]!} ${stemsPerM}`;
      kind = indices.get(key) ?? 0;
      if (kind === 0) {
        // So many sorts are not on one hole; any more count as the last.
        if (kinds.length < MOST_KINDS)
          kinds.push({ topM, baseM: canopyBase[i]!, densityPerM: canopyDensity[i]!, stemsPerM });
        kind = kinds.length;
        indices.set(key, kind);
      }
    }
    words[i] = (kind << CLEAR_SHIFT) | clearOfTrees[i * CANOPY_STOREYS]!;
  }
  return { words, kinds };
}

/** What is known of the rays of all spots: one table for all, for a small one per spot costs more than it holds. */
interface RayTable {
  /** Counts how often all was forgotten. */
  generation: number;
  /** By spot and ray: where its stretches are in `numbers` and how many; only where it was walked along. */
  readonly entries: Int32Array;
  /** How far each ray was walked along, metres. */
  readonly walkedM: Uint16Array;
  readonly stretches: Stretches;
}

function rayTable(): RayTable {
  return {
    generation: 0,
    entries: new Int32Array(MOST_SPOTS * RAYS),
    walkedM: new Uint16Array(MOST_SPOTS * RAYS),
    stretches: new Stretches(),
  };
}

/** The rays from one spot. Heights are above the ground at the spot. */
export class SightLines {
  private readonly first: number;
  private readonly generation: number;

  constructor(
    private readonly ground: HoleGround,
    private readonly woods: Woods,
    private readonly table: RayTable,
    slot: number,
    readonly x: number,
    readonly y: number,
    readonly startElevation: number,
    /** Near the spot, out of all the hole's. */
    readonly trunks: readonly MetTrunk[],
  ) {
    this.first = slot * RAYS;
    this.generation = table.generation;
  }

  /** The book has forgotten these: its place in the table is another spot's now. */
  get isForgotten(): boolean {
    return this.generation !== this.table.generation;
  }

  /** Of all stretches; to be asked for after `entry`. */
  get numbers(): Float32Array {
    return this.table.stretches.numbers;
  }

  /** What stands within `reachM`: index of the first number of the ray's first stretch times `COUNTS`, plus the count. */
  entry(ray: number, reachM: number): number {
    const at = this.first + ray;
    return this.table.walkedM[at]! >= reachM ? this.table.entries[at]! : this.lookAlong(ray, reachM);
  }

  private lookAlong(ray: number, reachM: number): number {
    // A part swing asks for little; the next longer shot seldom for much more.
    const far = Math.ceil(Math.max(SHORTEST_LOOK_M, LOOK_ON * reachM));
    const entry = this.walk(ray, far);
    this.table.entries[this.first + ray] = entry;
    this.table.walkedM[this.first + ray] = far;
    return entry;
  }

  /** Walks `far` metres along one ray, or to the raster's rim, and keeps what stands there. */
  private walk(ray: number, far: number): number {
    const { ground } = this;
    const { stretches } = this.table;
    const { words, kinds } = this.woods;
    const { columns, rows, cellsPerM, elevation } = ground;
    const first = stretches.used;
    const bearing = ray / RAYS_PER_RADIAN;
    const dx = Math.sin(bearing);
    const dy = Math.cos(bearing);
    const trunks = this.trunks.length === 0 ? NO_TRUNKS : trunksOnRay(this, dx, dy);
    const fromColumn = (this.x - ground.west) * cellsPerM;
    const fromRow = (this.y - ground.south) * cellsPerM;
    const stepColumn = dx * cellsPerM;
    const stepRow = dy * cellsPerM;
    let met = 0;
    let count = 0;
    let kind = 0;
    let begin = 0;
    let r = CANOPY_STEP_M / 2;
    while (r < far && count < COUNTS - 2) {
      const column = fromColumn + stepColumn * r;
      const row = fromRow + stepRow * r;
      if (!(column >= 0 && column < columns && row >= 0 && row < rows)) break;
      const cell = (row | 0) * columns + (column | 0);
      const word = words[cell]!;
      const here = word >> CLEAR_SHIFT;
      if (here !== kind || (kind > 0 && r - begin > LONGEST_STRETCH_M)) {
        if (kind > 0) stretches.end(r - CANOPY_STEP_M / 2);
        kind = here;
        if (here > 0) {
          while (met < trunks.length && trunks[met]!.along < r && count < COUNTS - 3) {
            addTrunk(stretches, trunks[met++]!);
            count++;
          }
          const lift = elevation === null ? 0 : elevation[cell]! - this.startElevation;
          const { topM, baseM, densityPerM, stemsPerM } = kinds[here - 1]!;
          begin = r - CANOPY_STEP_M / 2;
          stretches.add(begin, r + CANOPY_STEP_M / 2, topM + lift, baseM + lift, densityPerM, stemsPerM);
          count++;
        }
      }
      const clear = here > 0 ? 0 : word & CLEAR_BITS;
      r += clear > CANOPY_STEP_M ? clear : CANOPY_STEP_M;
    }
    if (kind > 0) stretches.end(r - CANOPY_STEP_M / 2);
    for (; met < trunks.length && count < COUNTS - 1; met++, count++) addTrunk(stretches, trunks[met]!);
    return first * COUNTS + count;
  }
}

function addTrunk(stretches: Stretches, { along, index }: TrunkOnRay): void {
  stretches.add(along, -1 - index, 0, 0, 0, 0);
}

/** One table for all holes: they are played one after another, and many of them are kept in memory for long. */
let sharedTable: RayTable | null = null;
/** The spots that it knows now. */
let spotsInTable = new Map<number, SightLines>();

/** The rays of the spots that were played from last on one hole. */
export class SightBook {
  private readonly known = new Map<number, SightLines>();
  /** Places of the table that were given away. */
  private spots = 0;
  private readonly woods: Woods;

  constructor(
    private readonly ground: HoleGround,
    private readonly trunks: readonly MetTrunk[],
  ) {
    this.woods = woodsOf(ground);
  }

  from(x: number, y: number): SightLines {
    const { west, south } = this.ground;
    const key = Math.round((x - west) * 8) * 65536 + Math.round((y - south) * 8);
    const entry = this.known.get(key);
    if (entry !== undefined && entry.x === x && entry.y === y) return entry;
    const table = this.tableWithRoom();
    const near = trunksNear(this.trunks, x, y);
    const lines = new SightLines(
      this.ground,
      this.woods,
      table,
      this.spots++,
      x,
      y,
      elevationAt(this.ground, x, y),
      near,
    );
    this.known.set(key, lines);
    return lines;
  }

  /** Takes the table over from another hole, and forgets all where it is full. */
  private tableWithRoom(): RayTable {
    const table = (sharedTable ??= rayTable());
    const isFull = this.spots >= MOST_SPOTS || table.stretches.used > MOST_NUMBERS;
    if (spotsInTable === this.known && !isFull) return table;
    spotsInTable.clear();
    spotsInTable = this.known;
    this.spots = 0;
    table.generation++;
    table.walkedM.fill(0);
    table.stretches.used = 0;
    return table;
  }
}

export function firstOf(entry: number): number {
  return (entry / COUNTS) | 0;
}

export function countOf(entry: number): number {
  return entry % COUNTS;
}

const NO_TRUNKS: readonly TrunkOnRay[] = [];

interface TrunkOnRay {
  readonly along: number;
  readonly index: number;
}

/** Trunks that a ball along the ray, or half a ray's width aside, may meet; nearest first. */
function trunksOnRay(lines: SightLines, dx: number, dy: number): TrunkOnRay[] {
  const found: TrunkOnRay[] = [];
  lines.trunks.forEach((trunk, index) => {
    const tx = trunk.x - lines.x;
    const ty = trunk.y - lines.y;
    const along = tx * dx + ty * dy;
    const aside = Math.abs(tx * dy - ty * dx);
    if (along > 0 && aside < trunk.meetsM + along * Math.tan(0.51 / RAYS_PER_RADIAN))
      found.push({ along, index });
  });
  return found.sort((a, b) => a.along - b.along);
}
