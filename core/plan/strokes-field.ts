/**
 * Strokes to hole out over a hole: for each lie that a ball is played from, its own square grid of nodes. Between
 * nodes the value is interpolated within one lie only, so that the edge of a bunker or of rough stays sharp.
 */

import type { HoleGround } from '../ground/hole-ground.ts';
import { Lie, LIE_NAMES } from '../ground/lies.ts';
import { type GreenValues, greenValues } from '../putting/green-values.ts';
import type { PuttsAround } from '../putting/putts-around.ts';
import type { Convergence, Spot } from './model.ts';

/** The lies that have a layer of nodes. A tee shot is valued at its own marker; the green by putting. */
export const LAYER_LIES = [Lie.fairway, Lie.rough, Lie.longRough, Lie.bunker, Lie.woods] as const;

/** Layer of each lie code; -1: no layer. A path's free relief (Rules of Golf 16.1) is taken to end in rough. */
const LAYER_OF_LIE = new Int8Array(LIE_NAMES.length).fill(-1);
LAYER_OF_LIE[Lie.fairway] = 0;
LAYER_OF_LIE[Lie.tee] = 0;
LAYER_OF_LIE[Lie.rough] = 1;
LAYER_OF_LIE[Lie.path] = 1;
LAYER_OF_LIE[Lie.longRough] = 2;
LAYER_OF_LIE[Lie.bunker] = 3;
LAYER_OF_LIE[Lie.woods] = 4;

export function layerOfLie(lie: number): number {
  return LAYER_OF_LIE[lie]!;
}

/** Odds are kept for 1 .. 9 strokes and for 10 or more. */
export const SCORE_COLUMNS = 10;

/** What to do at a node: a spread's index, or one of these. */
export const NO_ACTION = -1;
export const RELIEF_ACTION = -2;
/** Stroke and distance from the tee: nothing else gets out of here for less. */
export const REPLAY_ACTION = -3;

/** Independent valuations of the same choices, whose scatter is the field's own chance error. */
export const REPLICAS = 8;

/** One layer of nodes. `value` is NaN where no ball of that lie can come to rest nearby. */
export interface FieldLayer {
  readonly value: Float32Array;
  readonly spreadIndex: Int16Array;
  /** The point that the action is played to (see `finish.ts`), metres in the hole's frame; the drop of a relief. */
  readonly aimX: Float32Array;
  readonly aimY: Float32Array;
  /** Share of each score, `SCORE_COLUMNS` entries a node; filled once the values have settled. */
  readonly odds: Float32Array;
}

export class StrokesField {
  readonly columns: number;
  readonly rows: number;
  readonly layers: readonly FieldLayer[];
  private readonly perM: number;
  private readonly lastU: number;
  private readonly lastV: number;
  /** Fields with the same choices, each valued on draws of its own; empty before the last spacing is done. */
  replicas: readonly StrokesField[] = [];
  /** The field whose odds these are, where a coarser one was asked for them. */
  oddsFrom: StrokesField | null;
  private readonly green: GreenValues;
  convergence: Convergence = { spacingsM: [], rmsChange: [], maxChange: [], sweeps: [] };

  /** `like`: choices and odds are its own, values start as its. */
  constructor(
    readonly ground: HoleGround,
    readonly pin: Spot,
    readonly putts: PuttsAround,
    readonly spacingM: number,
    withOdds = true,
    like?: StrokesField,
  ) {
    this.columns = Math.ceil((ground.columns * ground.cellM) / spacingM) + 1;
    this.rows = Math.ceil((ground.rows * ground.cellM) / spacingM) + 1;
    this.perM = 1 / spacingM;
    this.lastU = this.columns - 1.000001;
    this.lastV = this.rows - 1.000001;
    const nodes = this.columns * this.rows;
    this.layers =
      like?.layers.map((layer) => ({ ...layer, value: layer.value.slice() })) ??
      LAYER_LIES.map(() => ({
        value: new Float32Array(nodes).fill(NaN),
        spreadIndex: new Int16Array(nodes).fill(NO_ACTION),
        aimX: new Float32Array(nodes),
        aimY: new Float32Array(nodes),
        odds: new Float32Array(withOdds ? nodes * SCORE_COLUMNS : 0),
      }));
    this.green = greenValues(putts);
    this.oddsFrom = like?.oddsFrom ?? null;
  }

  /** The same choices and odds with values of its own, which start as these. */
  makeReplica(): StrokesField {
    return new StrokesField(this.ground, this.pin, this.putts, this.spacingM, false, this);
  }

  /** Adds to each node by how much `one` differs from `other` there, two fields of one spacing. */
  addDifference(one: StrokesField, other: StrokesField): void {
    this.layers.forEach(({ value }, layer) => {
      const lie = LAYER_LIES[layer]!;
      for (let node = 0; node < value.length; node++) {
        if (value[node] !== value[node]) continue;
        const x = this.nodeX(node);
        const y = this.nodeY(node);
        const change = one.valueAt(x, y, lie) - other.valueAt(x, y, lie);
        if (change === change) value[node] = value[node]! + change;
      }
    });
  }

  /** Each value becomes the mean of those around it in its layer, weighted 1 2 1 each way: fewer shots a node are enough. */
  smooth(): void {
    const { columns, rows } = this;
    for (const { value } of this.layers) {
      const before = value.slice();
      for (let node = 0; node < value.length; node++) {
        if (before[node] !== before[node]) continue;
        const column = node % columns;
        const row = (node - column) / columns;
        let sum = 0;
        let weights = 0;
        for (let dr = -1; dr <= 1; dr++) {
          if (row + dr < 0 || row + dr >= rows) continue;
          for (let dc = -1; dc <= 1; dc++) {
            if (column + dc < 0 || column + dc >= columns) continue;
            const near = before[node + dr * columns + dc]!;
            if (near !== near) continue;
            const weight = (2 - dr * dr) * (2 - dc * dc);
            sum += weight * near;
            weights += weight;
          }
        }
        value[node] = sum / weights;
      }
    }
  }

  nodeX(node: number): number {
    return this.ground.west + (node % this.columns) * this.spacingM;
  }

  nodeY(node: number): number {
    return this.ground.south + Math.floor(node / this.columns) * this.spacingM;
  }

  /** Nodes that surround a cell of the layer's lie, as `node` indices. */
  neededNodes(layer: number): Int32Array {
    const { ground, spacingM, columns } = this;
    const needed = new Uint8Array(columns * this.rows);
    for (let row = 0; row < ground.rows; row++) {
      const nodeRow = Math.floor(((row + 0.5) * ground.cellM) / spacingM) * columns;
      for (let column = 0; column < ground.columns; column++) {
        if (LAYER_OF_LIE[ground.lie[row * ground.columns + column]!] !== layer) continue;
        const node = nodeRow + Math.floor(((column + 0.5) * ground.cellM) / spacingM);
        needed[node] = needed[node + 1] = needed[node + columns] = needed[node + columns + 1] = 1;
      }
    }
    const list: number[] = [];
    for (let node = 0; node < needed.length; node++) if (needed[node] === 1) list.push(node);
    return Int32Array.from(list);
  }

  /** Expected strokes to hole out with a ball at rest at (x, y) in `lie`; NaN where it cannot be played from. */
  valueAt(x: number, y: number, lie: number): number {
    if (lie === Lie.green) return this.green.at(x - this.pin.x, y - this.pin.y);
    const layer = LAYER_OF_LIE[lie]!;
    if (layer < 0) return NaN;
    const { value } = this.layers[layer]!;
    let u = (x - this.ground.west) * this.perM;
    let v = (y - this.ground.south) * this.perM;
    if (u < 0) u = 0;
    else if (u > this.lastU) u = this.lastU;
    if (v < 0) v = 0;
    else if (v > this.lastV) v = this.lastV;
    const column = u | 0;
    const row = v | 0;
    const fu = u - column;
    const fv = v - row;
    const node = row * this.columns + column;
    const v00 = value[node]!;
    const v10 = value[node + 1]!;
    const v01 = value[node + this.columns]!;
    const v11 = value[node + this.columns + 1]!;
    const all = (v00 * (1 - fu) + v10 * fu) * (1 - fv) + (v01 * (1 - fu) + v11 * fu) * fv;
    // A NaN corner spreads to the sum: then take the mean of the corners that exist.
    if (all === all) return all;
    return meanOfKnown(v00, v10, v01, v11, fu, fv);
  }

  /** Adds `weight` times the odds at (x, y, lie) into `into`, `strokes` strokes later. */
  addOdds(x: number, y: number, lie: number, weight: number, strokes: number, into: Float64Array): void {
    if (this.oddsFrom !== null && lie !== Lie.green) {
      this.oddsFrom.addOdds(x, y, lie, weight, strokes, into);
      return;
    }
    const last = SCORE_COLUMNS - 1;
    if (lie === Lie.green) {
      const odds = this.putts.oddsAt(x - this.pin.x, y - this.pin.y);
      for (let k = 0; k < odds.length; k++) {
        const column = Math.min(last, strokes + k);
        into[column] = into[column]! + weight * odds[k]!;
      }
      return;
    }
    const { odds, value } = this.layers[LAYER_OF_LIE[lie]!]!;
    const u = Math.min(this.columns - 1.000001, Math.max(0, (x - this.ground.west) / this.spacingM));
    const v = Math.min(this.rows - 1.000001, Math.max(0, (y - this.ground.south) / this.spacingM));
    const fu = u - Math.floor(u);
    const fv = v - Math.floor(v);
    const node = Math.floor(v) * this.columns + Math.floor(u);
    let known = 0;
    for (let corner = 0; corner < 4; corner++) {
      if (!Number.isNaN(value[node + (corner & 1) + (corner >> 1) * this.columns]!))
        known += cornerWeight(corner, fu, fv);
    }
    const whole = last - strokes;
    for (let corner = 0; corner < 4; corner++) {
      const at = node + (corner & 1) + (corner >> 1) * this.columns;
      if (Number.isNaN(value[at]!)) continue;
      const share = (weight * cornerWeight(corner, fu, fv)) / known;
      const first = at * SCORE_COLUMNS;
      for (let k = 0; k < whole; k++) into[strokes + k] = into[strokes + k]! + share * odds[first + k]!;
      for (let k = Math.max(0, whole); k < SCORE_COLUMNS; k++)
        into[last] = into[last]! + share * odds[first + k]!;
    }
  }
}

/** A floor keeps a lone known corner usable even where the point sits on an unknown one. */
function cornerWeight(corner: number, fu: number, fv: number): number {
  return (corner & 1 ? fu : 1 - fu) * (corner >> 1 ? fv : 1 - fv) + 1e-6;
}

function meanOfKnown(v00: number, v10: number, v01: number, v11: number, fu: number, fv: number): number {
  let sum = 0;
  let weights = 0;
  const corners = [v00, v10, v01, v11];
  for (let corner = 0; corner < 4; corner++) {
    const value = corners[corner]!;
    if (Number.isNaN(value)) continue;
    const weight = cornerWeight(corner, fu, fv);
    sum += weight * value;
    weights += weight;
  }
  return weights === 0 ? NaN : sum / weights;
}
