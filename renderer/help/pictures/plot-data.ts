/** What a picture of the help pages shows: lines and dots over two axes, from core's own functions. No words. */

export type Point = readonly [x: number, y: number];

export interface PlotLine<Label extends string = string> {
  readonly label: Label;
  readonly points: readonly Point[];
}

export interface PlotAxis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
}

export interface PlotData<Label extends string = string> {
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly lines: readonly PlotLine<Label>[];
  /** Published or measured points; without a line. */
  readonly dots?: { readonly label: Label; readonly points: readonly Point[] };
  /** One metre to the side is as long as one metre away. */
  readonly toScale?: true;
}

/** `count` + 1 points of a function, evenly from `from` to `to`. */
export function curve(from: number, to: number, count: number, of: (x: number) => number): readonly Point[] {
  return Array.from({ length: count + 1 }, (_, i): Point => {
    const x = from + ((to - from) * i) / count;
    return [x, of(x)];
  });
}
