/** Reads a GeoTIFF picture beside the page: its colours, made small enough to paint, and where it lies. */

import { told, type Told } from '../../../core/words/told.ts';
import { expose, transfer } from 'comlink';
import { BaseDecoder, fromArrayBuffer, getDecoder } from 'geotiff';
import { boundedPool } from '../../../core/course/import/bounded-decoders.ts';
import { gridOf, type GeoKeys } from '../../../core/course/import/grids.ts';
import { coveredBy, type Placement, placementOf } from '../../../core/course/import/raster-placement.ts';
import { directoryFault } from '../../../core/course/import/tiff-directory.ts';
import { refuse, type Result, succeed } from '../../../core/result.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { MOST_PICTURE_PIXELS } from './picture-size.ts';
import type { MeshCell } from './raster.ts';

/** Longest side of the painted picture, pixels. */
const MOST_SIDE_PX = 6000;
/** Largest piece that is unpacked at once. */
const MOST_BLOCK_BYTES = 4 * MOST_PICTURE_PIXELS;
/** Pieces along each side: within one the grid is taken as straight. */
const PIECES = 8;

export interface GeotiffPicture {
  readonly bitmap: ImageBitmap;
  readonly mesh: readonly MeshCell[];
}

export interface GeotiffApi {
  read(bytes: ArrayBuffer): Promise<Result<GeotiffPicture, Told>>;
}

async function read(bytes: ArrayBuffer): Promise<Result<GeotiffPicture, Told>> {
  const broken = directoryFault(bytes);
  if (broken !== undefined)
    return refuse(told(({ underlay }) => underlay.geotiff.unreadable, { why: broken }));
  const file = await fromArrayBuffer(bytes);
  const image = await file.getImage(0);
  const keys = (image.getGeoKeys() ?? {}) as Readonly<Record<string, unknown>>;
  const grid = gridOf(keysOf(keys));
  if (!grid.ok) {
    return refuse(told(({ underlay }) => underlay.geotiff.coordinates, { grid: grid.error }));
  }
  const placed = placementOf(image.fileDirectory, keys['GTRasterTypeGeoKey'] === 2);
  if (placed === undefined) {
    return refuse(told(({ underlay }) => underlay.geotiff.noPlace));
  }
  const [fullWidth, fullHeight] = [image.getWidth(), image.getHeight()];
  const share = Math.min(1, MOST_SIDE_PX / Math.max(fullWidth, fullHeight));
  const width = Math.max(1, Math.round(fullWidth * share));
  const height = Math.max(1, Math.round(fullHeight * share));
  // overviews stand behind the full picture: the smallest that is fine enough costs least
  let source = image;
  for (let i = 1; i < (await file.getImageCount()); i++) {
    const overview = await file.getImage(i);
    if (overview.getWidth() >= width && overview.getWidth() < source.getWidth()) source = overview;
  }
  const block = source.getTileWidth() * source.getTileHeight() * source.getBytesPerPixel();
  if (source.getWidth() * source.getHeight() > MOST_PICTURE_PIXELS || !(block <= MOST_BLOCK_BYTES)) {
    return refuse(
      told(({ underlay }) => underlay.geotiff.tooLarge, { width: fullWidth, height: fullHeight }),
    );
  }
  const rgb = (await source.readRGB({
    interleave: true,
    ...{ width, height },
    // A block may be padded to whole bytes and rows, no more.
    pool: boundedPool({ BaseDecoder, getDecoder }, block + 1024) as never,
  })) as unknown as ArrayLike<number>;
  const pixels = new Uint8ClampedArray(4 * width * height);
  for (let i = 0; i < width * height; i++) {
    pixels[4 * i] = rgb[3 * i]!;
    pixels[4 * i + 1] = rgb[3 * i + 1]!;
    pixels[4 * i + 2] = rgb[3 * i + 2]!;
    pixels[4 * i + 3] = 255;
  }
  const bitmap = await createImageBitmap(new ImageData(pixels, width, height));
  const toLonLat = (column: number, row: number): LonLat =>
    grid.value.toLonLat([
      placed.x + (column - 0.5) * placed.perColumn,
      placed.y + (row - 0.5) * placed.perRow,
    ]);
  if (!coversAPlace(placed, fullWidth, fullHeight, grid.value))
    return refuse(told(({ underlay }) => underlay.geotiff.nowhere));
  return succeed({ bitmap, mesh: meshOver(width, height, fullWidth / width, fullHeight / height, toLonLat) });
}

function coversAPlace(
  placed: Placement,
  width: number,
  height: number,
  grid: Parameters<typeof coveredBy>[1],
): boolean {
  return coveredBy(placed, grid, width, height)
    .flat()
    .every((degrees) => Math.abs(degrees) <= 360);
}

function meshOver(
  width: number,
  height: number,
  columnsPerPixel: number,
  rowsPerPixel: number,
  toLonLat: (column: number, row: number) => LonLat,
): MeshCell[] {
  const cells: MeshCell[] = [];
  const edge = (i: number, size: number): number => Math.round((i * size) / PIECES);
  for (let row = 0; row < PIECES; row++) {
    for (let column = 0; column < PIECES; column++) {
      const u = edge(column, width);
      const v = edge(row, height);
      const right = edge(column + 1, width);
      const bottom = edge(row + 1, height);
      if (right === u || bottom === v) continue;
      const at = (x: number, y: number): LonLat => toLonLat(x * columnsPerPixel, y * rowsPerPixel);
      cells.push({
        u,
        v,
        width: right - u,
        height: bottom - v,
        upperLeft: at(u, v),
        upperRight: at(right, v),
        lowerLeft: at(u, bottom),
      });
    }
  }
  return cells;
}

function keysOf(keys: Readonly<Record<string, unknown>>): GeoKeys {
  const number = (key: string): number | undefined => {
    const value = keys[key];
    return typeof value === 'number' ? value : undefined;
  };
  const modelType = number('GTModelTypeGeoKey');
  const geographicType = number('GeographicTypeGeoKey');
  const projectedType = number('ProjectedCSTypeGeoKey');
  return {
    ...(modelType === undefined ? {} : { modelType }),
    ...(geographicType === undefined ? {} : { geographicType }),
    ...(projectedType === undefined ? {} : { projectedType }),
  };
}

expose({
  read: async (bytes: ArrayBuffer) => {
    try {
      const answer = await read(bytes);
      return answer.ok ? transfer(answer, [answer.value.bitmap]) : answer;
    } catch (error) {
      const why =
        error instanceof Error
          ? error.message.slice(0, 120)
          : told(({ underlay }) => underlay.geotiff.damaged);
      return refuse(told(({ underlay }) => underlay.geotiff.unreadable, { why }));
    }
  },
} satisfies GeotiffApi);
