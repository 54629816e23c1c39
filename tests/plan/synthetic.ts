/**
 * Small invented holes and players for tests of the engine. A hole lies flat in its own frame: the pin at (0, 0), the
 * tee `lengthM` south of it, play goes north. Everything is given in metres of that frame.
 */

import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import type { Area, AreaKind, Canopy, Course, LonLat, Tree } from '../../core/course/model.ts';
import { bagFlights } from '../../core/flight/bag-flights.ts';
import type { HoleGround } from '../../core/ground/hole-ground.ts';
import type { LieName } from '../../core/ground/lies.ts';
import { rasteriseHole } from '../../core/ground/rasterise.ts';
import type {
  Club,
  ClubKind,
  LieEffect,
  PlayerModel,
  PoorStrike,
  PuttingSkill,
  ShotSpread,
  Swing,
} from '../../core/player/model.ts';
import { derivePart } from '../../core/player/part-swing.ts';
import { LawBook } from '../../core/plan/choices.ts';
import type { Spot } from '../../core/plan/model.ts';
import { prepareHole, type PreparedHole } from '../../core/plan/prepare.ts';
import { DEFAULT_SETTINGS, type SolveSettings } from '../../core/plan/solve.ts';
import { LAYER_LIES, StrokesField } from '../../core/plan/strokes-field.ts';
import { makePuttingTable } from '../../core/putting/putting.ts';
import { levelPutts } from '../../core/putting/putts-around.ts';
import type { ShotDraws } from '../../core/random/shot-draws.ts';

/** Where the pin of every synthetic hole lies: a place that no course occupies. */
const PIN_AT: LonLat = [4, 52];

/** Corners in metres, not closed. */
export type Outline = readonly Spot[];

export interface Patch {
  readonly kind: AreaKind;
  readonly outline: Outline;
  readonly hole?: number;
  readonly canopy?: Canopy;
  readonly lipM?: number;
}

export interface FlatHole {
  /** From the tee to the pin. */
  readonly lengthM: number;
  readonly par?: number;
  readonly number?: number;
  /** A disc around the pin, 12 m across by default from the middle. */
  readonly greenRadiusM?: number;
  /** Fairway, rough, water, woods … around them all the ground is rough. */
  readonly patches?: readonly Patch[];
  readonly trees?: readonly {
    readonly x: number;
    readonly y: number;
    readonly radiusM: number;
    readonly canopy: Canopy;
  }[];
  readonly levels?: readonly { readonly x: number; readonly y: number; readonly elevationM: number }[];
}

export function box(kind: AreaKind, west: number, south: number, east: number, north: number): Patch {
  return {
    kind,
    outline: [
      { x: west, y: south },
      { x: east, y: south },
      { x: east, y: north },
      { x: west, y: north },
    ],
  };
}

/** A regular polygon of 64 corners whose area is that of the disc. */
export function disc(kind: AreaKind, x: number, y: number, radiusM: number): Patch {
  const corners = 64;
  const step = (2 * Math.PI) / corners;
  const reach = radiusM * Math.sqrt(step / Math.sin(step));
  return {
    kind,
    outline: Array.from({ length: corners }, (_, k) => ({
      x: x + reach * Math.cos(k * step),
      y: y + reach * Math.sin(k * step),
    })),
  };
}

export function wood(west: number, south: number, east: number, north: number, canopy: Canopy): Patch {
  return { ...box('woods', west, south, east, north), canopy };
}

/** The course that holds this one hole. */
export function flatCourse(spec: FlatHole): Course {
  const frame = makeLocalFrame(PIN_AT);
  const number = spec.number ?? 1;
  const toArea = (patch: Patch, featureIndex: number): Area => ({
    kind: patch.kind,
    rings: [[...patch.outline, patch.outline[0]!].map((corner) => frame.toLonLat(corner))],
    ...(patch.hole === undefined ? {} : { hole: patch.hole }),
    ...(patch.canopy === undefined ? {} : { canopy: patch.canopy }),
    ...(patch.lipM === undefined ? {} : { lipM: patch.lipM }),
    featureIndex,
  });
  const green: Patch = { ...disc('green', 0, 0, spec.greenRadiusM ?? 12), hole: number };
  const teeing: Patch = { ...box('tee', -4, -spec.lengthM - 4, 4, -spec.lengthM + 4), hole: number };
  const tee = frame.toLonLat({ x: 0, y: -spec.lengthM });
  return {
    name: 'Invented test course',
    formatVersion: 1,
    invented: true,
    holes: [
      {
        number,
        par: spec.par ?? 4,
        // The frame of a prepared hole starts from the middle point of its line: two points make that the pin.
        line: [tee, PIN_AT],
        tees: [{ name: 'tee', at: tee }],
        positions: [{ name: 'middle', at: PIN_AT }],
        featureIndex: 0,
      },
    ],
    areas: [green, teeing, ...(spec.patches ?? [])].map(toArea),
    trees: (spec.trees ?? []).map(
      (tree, i): Tree => ({
        at: frame.toLonLat(tree),
        crownRadiusM: tree.radiusM,
        canopy: tree.canopy,
        featureIndex: 1000 + i,
      }),
    ),
    levels: (spec.levels ?? []).map((level) => ({ at: frame.toLonLat(level), elevationM: level.elevationM })),
    warnings: [],
  };
}

/** That hole's raster, for tests that need no player. */
export function flatGround(spec: FlatHole, cellM?: number): HoleGround {
  const course = flatCourse(spec);
  return rasteriseHole(course, course.holes[0]!, makeLocalFrame(PIN_AT), cellM);
}

export interface StatedSpread {
  readonly club: string;
  readonly kind?: ClubKind;
  readonly loftDeg?: number;
  readonly swing?: Swing;
  readonly carryM: number;
  readonly carrySd: number;
  readonly directionSd: number;
  readonly directionMean?: number;
  readonly correlation?: number;
  readonly poorShare?: number;
  readonly poor?: PoorStrike;
}

const POOR: PoorStrike = { carryShareMean: 0.6, carryShareSd: 0.2, directionSd: 0.16 };

export function stated(spread: StatedSpread): ShotSpread {
  const swing = spread.swing ?? 'full';
  const club: Club = {
    name: spread.club,
    kind: spread.kind ?? 'iron',
    loftDeg: spread.loftDeg ?? 30,
    swings: [swing],
  };
  return {
    club,
    swing,
    carryMean: spread.carryM,
    carrySd: spread.carrySd,
    directionMean: spread.directionMean ?? 0,
    directionSd: spread.directionSd,
    correlation: spread.correlation ?? 0,
    poorShare: spread.poorShare ?? 0,
    poor: spread.poor ?? POOR,
    source: { from: 'stated' },
  };
}

const PUTTING: PuttingSkill = { directionSd: 0.025, distanceSdShare: 0.12 };
const PUTTING_TABLE = makePuttingTable(PUTTING);

const NO_EFFECT: LieEffect = {
  playable: true,
  carryFactor: 1,
  carrySdFactor: 1,
  directionSdFactor: 1,
  poorShareAdded: 0,
};

/** Every lie plays like the tee. */
export const EVEN_LIES: Readonly<Partial<Record<LieName, LieEffect>>> = {};

/** Lies that cost something, in round figures of our own. */
export const ROUGH_LIES: Readonly<Partial<Record<LieName, LieEffect>>> = {
  rough: { ...NO_EFFECT, carryFactor: 0.95, carrySdFactor: 1.3, directionSdFactor: 1.2 },
  longRough: {
    ...NO_EFFECT,
    carryFactor: 0.75,
    carrySdFactor: 1.8,
    directionSdFactor: 1.5,
    poorShareAdded: 0.1,
  },
  bunker: {
    ...NO_EFFECT,
    carryFactor: 0.85,
    carrySdFactor: 1.8,
    directionSdFactor: 1.4,
    poorShareAdded: 0.1,
  },
  woods: { ...NO_EFFECT, carryFactor: 0.8, carrySdFactor: 1.6, directionSdFactor: 1.5, poorShareAdded: 0.1 },
};

export interface StatedPlayer {
  readonly spreads: readonly ShotSpread[];
  readonly lies?: Readonly<Partial<Record<LieName, LieEffect>>>;
  readonly putting?: PuttingSkill;
  readonly marginStrokes?: number;
}

export function statedPlayer(spec: StatedPlayer): PlayerModel {
  const lies = spec.lies ?? EVEN_LIES;
  return {
    name: 'Invented Player',
    invented: true,
    hand: 'right',
    spreads: [...spec.spreads].sort((a, b) => b.carryMean - a.carryMean),
    putting: spec.putting ?? PUTTING,
    lieEffect: (_club, _swing, lie) => lies[lie] ?? NO_EFFECT,
    units: 'metres',
    marginStrokes: spec.marginStrokes ?? 0.05,
    warnings: [],
  };
}

/**
 * Four clubs that reach every length up to two hundred metres: a wood, an iron, a wedge and the wedge's part swings.
 * `width` multiplies the spreads of carry and direction.
 */
export function fourClubs(width = 1): ShotSpread[] {
  const wedge = stated({
    club: 'Wedge',
    kind: 'wedge',
    loftDeg: 52,
    carryM: 90,
    carrySd: 5 * width,
    directionSd: 0.05 * width,
    poorShare: 0.04,
  });
  return [
    stated({
      club: 'Wood',
      kind: 'wood',
      loftDeg: 15,
      carryM: 190,
      carrySd: 10 * width,
      directionSd: 0.07 * width,
      poorShare: 0.06,
    }),
    stated({
      club: 'Iron',
      loftDeg: 30,
      carryM: 140,
      carrySd: 8 * width,
      directionSd: 0.06 * width,
      poorShare: 0.05,
    }),
    wedge,
    derivePart(wedge),
  ];
}

export function mustPrepare(spec: FlatHole, player: PlayerModel, seed = 'test'): PreparedHole {
  return prepared(prepareHole({ course: flatCourse(spec), holeNumber: spec.number ?? 1, player, seed }));
}

function prepared(result: ReturnType<typeof prepareHole>): PreparedHole {
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

/** Spacings for tests in which a tenth of a stroke does not matter. */
export const COARSE: SolveSettings = { ...DEFAULT_SETTINGS, spacingsM: [20, 10] };

/** One shot's draws; what is left out is the middle of its law, a solid strike, and canopy that stops nothing. */
export interface HandDraw {
  readonly distanceZ?: number;
  readonly directionZ?: number;
  readonly rollZ?: number;
  readonly gustZ?: number;
  readonly poorU?: number;
  readonly canopyDepth?: number;
}

/** Draws made by hand instead of by chance. */
export function handDraws(...shots: readonly HandDraw[]): ShotDraws {
  const column = (of: (shot: HandDraw) => number): Float64Array => Float64Array.from(shots, of);
  return {
    count: shots.length,
    distanceZ: column((shot) => shot.distanceZ ?? 0),
    directionZ: column((shot) => shot.directionZ ?? 0),
    rollZ: column((shot) => shot.rollZ ?? 0),
    gustZ: column((shot) => shot.gustZ ?? 0),
    poorU: column((shot) => shot.poorU ?? 0.999),
    canopyDepth: column((shot) => shot.canopyDepth ?? Infinity),
  };
}

/** A field whose values are given instead of solved, on nodes 5 m apart; `lie` is the layer's. */
export function givenField(
  ground: HoleGround,
  valueOf: (spot: Spot, lie: number) => number,
  spacingM = 5,
): StrokesField {
  const field = new StrokesField(ground, { x: 0, y: 0 }, levelPutts(PUTTING_TABLE), spacingM);
  field.layers.forEach((layer, index) => {
    for (const node of field.neededNodes(index)) {
      layer.value[node] = valueOf({ x: field.nodeX(node), y: field.nodeY(node) }, LAYER_LIES[index]!);
    }
  });
  return field;
}

/** The laws of a player's shots on an ordinary day. */
export function ordinaryBook(player: PlayerModel): LawBook {
  return new LawBook(player, bagFlights(player.spreads, DEFAULT_CONDITIONS));
}
