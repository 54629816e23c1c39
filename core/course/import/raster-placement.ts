/** Where the cells of a raster lie in its grid, which of them a course needs, and values between them. */

import type { LonLat } from '../model.ts';
import type { Grid } from './grids.ts';
import type { CourseExtent } from './proposal.ts';

/** Grid coordinates of the centre of cell (0, 0), and what one cell is worth. */
export interface Placement {
  readonly x: number;
  readonly y: number;
  readonly perColumn: number;
  readonly perRow: number;
}

/** The tags of a GeoTIFF that place it (OGC GeoTIFF 1.1, 19-008r4, annex B.6). */
interface Tags {
  getValue(tag: 'ModelTiepoint' | 'ModelPixelScale' | 'ModelTransformation'): unknown;
}

/** Undefined where the tags say nothing, or the cells stand at a slant. Cells are areas unless the file calls them points. */
export function placementOf(tags: Tags, cellsArePoints: boolean): Placement | undefined {
  const list = (tag: Parameters<Tags['getValue']>[0]) => {
    const value = tags.getValue(tag);
    return value === undefined || value === null ? [] : Array.from(value as ArrayLike<number>);
  };
  const [scaleX, scaleY] = list('ModelPixelScale');
  const [i, j, , x, y] = list('ModelTiepoint');
  const matrix = list('ModelTransformation');
  let corner: Placement | undefined;
  if (scaleX !== undefined && scaleY !== undefined && i !== undefined && j !== undefined && y !== undefined) {
    corner = { x: x! - i * scaleX, y: y + j * scaleY, perColumn: scaleX, perRow: -scaleY };
  } else if (matrix.length === 16 && matrix[1] === 0 && matrix[4] === 0) {
    corner = { x: matrix[3]!, y: matrix[7]!, perColumn: matrix[0]!, perRow: matrix[5]! };
  }
  if (corner === undefined || !Object.values(corner).every(Number.isFinite)) return undefined;
  if (corner.perColumn === 0 || corner.perRow === 0) return undefined;
  if (cellsArePoints) return corner;
  return { ...corner, x: corner.x + corner.perColumn / 2, y: corner.y + corner.perRow / 2 };
}

export function toCell(
  { x, y, perColumn, perRow }: Placement,
  [gridX, gridY]: readonly [number, number],
): [number, number] {
  return [(gridX - x) / perColumn, (gridY - y) / perRow];
}

export function coveredBy(
  placed: Placement,
  grid: Grid,
  width: number,
  height: number,
): readonly [LonLat, LonLat] {
  const corners = [0, width - 1].flatMap((column) =>
    [0, height - 1].map((row) =>
      grid.toLonLat([placed.x + column * placed.perColumn, placed.y + row * placed.perRow]),
    ),
  );
  const lons = corners.map(([lon]) => lon);
  const lats = corners.map(([, lat]) => lat);
  return [
    [Math.min(...lons), Math.min(...lats)],
    [Math.max(...lons), Math.max(...lats)],
  ];
}

/** Columns and rows around the course, with a margin for interpolation; undefined where the file lies elsewhere. */
export function windowAround(
  { west, south, east, north }: CourseExtent,
  placed: Placement,
  grid: Grid,
  width: number,
  height: number,
): readonly [number, number, number, number] | undefined {
  const middle = (a: number, b: number) => (a + b) / 2;
  // sides of the extent bend in the grid: their middles count too
  const places: LonLat[] = [west, middle(west, east), east].flatMap((lon) =>
    [south, middle(south, north), north].map((lat): LonLat => [lon, lat]),
  );
  const cells = places.map((place) => toCell(placed, grid.toGrid(place)));
  const columns = cells.map(([column]) => column);
  const rows = cells.map(([, row]) => row);
  const left = Math.max(0, Math.floor(Math.min(...columns)) - 2);
  const right = Math.min(width, Math.ceil(Math.max(...columns)) + 3);
  const top = Math.max(0, Math.floor(Math.min(...rows)) - 2);
  const bottom = Math.min(height, Math.ceil(Math.max(...rows)) + 3);
  return left < right && top < bottom ? [left, top, right, bottom] : undefined;
}

/** Between four cells; undefined where one that counts has no data. */
export function bilinear(
  cellAt: (column: number, row: number) => number | undefined,
  x: number,
  y: number,
): number | undefined {
  const column = Math.floor(x);
  const row = Math.floor(y);
  const [fx, fy] = [x - column, y - row];
  let sum = 0;
  for (const [dx, dy, weight] of [
    [0, 0, (1 - fx) * (1 - fy)],
    [1, 0, fx * (1 - fy)],
    [0, 1, (1 - fx) * fy],
    [1, 1, fx * fy],
  ] as const) {
    // rounding may put a place on a cell a hair beyond it
    if (weight < 1e-9) continue;
    const value = cellAt(column + dx, row + dy);
    if (value === undefined) return undefined;
    sum += weight * value;
  }
  return sum;
}
