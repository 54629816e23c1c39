/** An elevation model in a GeoTIFF file (OGC GeoTIFF 1.1, 19-008r4): its grid, and heights at places between its cells. */

import { told, type Told, toldFault } from '../../words/told.ts';
import { type Fault, type Result, refuse, succeed } from '../../result.ts';
import type { LonLat } from '../model.ts';
import { boundedPool, READABLE_COMPRESSIONS, TooLarge } from './bounded-decoders.ts';
import { type GeoKeys, gridOf } from './grids.ts';
import type { CourseExtent } from './proposal.ts';
import { bilinear, coveredBy, placementOf, toCell, windowAround } from './raster-placement.ts';
import { directoryFault } from './tiff-directory.ts';

export const MOST_FILE_BYTES = 512 * 1024 * 1024;
const MOST_SIDE = 200_000;
/** Cells that are looked at for one course: 4 km square at 1 m. */
const MOST_CELLS = 16_000_000;
const MOST_BLOCK_BYTES = 128 * 1024 * 1024;
const MOST_BLOCKS = 20_000;

export interface ElevationModel {
  readonly gridName: Told;
  /** South-west and north-east of what the whole file covers, degrees. */
  readonly covers: readonly [LonLat, LonLat];
  /** What one unit of the file is in metres. */
  readonly unitM: number;
  /** True where the file says nothing of the unit of its heights. */
  readonly unitAssumed: boolean;
  /** Metres, bilinear between cell centres; undefined outside the file and next to cells without data. */
  readonly heightAt: (place: LonLat) => number | undefined;
}

/** Reads the part of the file around a course. Refuses grids that are not known, by name, and files that mean harm. */
export async function readElevationModel(
  buffer: ArrayBuffer,
  around: CourseExtent,
): Promise<Result<ElevationModel, readonly Fault[]>> {
  if (buffer.byteLength > MOST_FILE_BYTES) {
    return refused(
      'file-too-large',
      told(({ courseImport }) => courseImport.faults.largeTiff, { most: MOST_FILE_BYTES / 1024 / 1024 }),
    );
  }
  const broken = directoryFault(buffer);
  if (broken !== undefined)
    return refused(
      'not-a-tiff',
      told(({ courseImport }) => courseImport.faults.notTiff, { why: broken }),
    );
  try {
    return await readModel(buffer, around);
  } catch (error) {
    if (error instanceof TooLarge) {
      return refused(
        'unpacks-too-large',
        told(({ courseImport }) => courseImport.faults.unpacks),
      );
    }
    // whatever else the library stumbles over is the file's doing: nothing of ours throws in there
    const why =
      error instanceof Error
        ? error.message.slice(0, 120)
        : told(({ courseImport }) => courseImport.faults.damaged);
    return refused(
      'tiff-unreadable',
      told(({ courseImport }) => courseImport.faults.brokenTiff, { why }),
    );
  }
}

async function readModel(
  buffer: ArrayBuffer,
  around: CourseExtent,
): Promise<Result<ElevationModel, readonly Fault[]>> {
  // loaded when first needed: it is large, and most sittings import no heights
  const geotiff = await import('geotiff');
  const image = await (await geotiff.fromArrayBuffer(buffer)).getImage(0);
  const tags = image.fileDirectory;
  const keys = image.getGeoKeys() as Readonly<Record<string, unknown>> | null;
  const grid = gridOf(keysOf(keys ?? {}));
  if (!grid.ok) {
    return refused(
      'unknown-grid',
      told(({ courseImport }) => courseImport.faults.otherGrid, { grid: grid.error }),
    );
  }
  const width = image.getWidth();
  const height = image.getHeight();
  const [blockWidth, blockHeight] = [image.getTileWidth(), image.getTileHeight()];
  const sizes = [width, height, blockWidth, blockHeight];
  if (!sizes.every((size) => Number.isInteger(size) && size >= 1 && size <= MOST_SIDE)) {
    return refused(
      'tiff-unreadable',
      told(({ courseImport }) => courseImport.faults.badSize, { sizes: sizes.join(' × ') }),
    );
  }
  const compression: unknown = tags.getValue('Compression') ?? 1;
  if (typeof compression !== 'number' || !READABLE_COMPRESSIONS.includes(compression)) {
    const message = told(({ courseImport }) => courseImport.faults.compression, {
      method: String(compression),
    });
    return refused('unknown-compression', message);
  }
  const unit = unitOf(keys?.['VerticalUnitsGeoKey']);
  if (unit === undefined) {
    return refused(
      'unknown-unit',
      told(({ courseImport }) => courseImport.faults.unit),
    );
  }
  const placed = placementOf(tags, keys?.['GTRasterTypeGeoKey'] === 2);
  if (placed === undefined) {
    return refused(
      'not-placed',
      told(({ courseImport }) => courseImport.faults.notPlaced),
    );
  }
  const covers = coveredBy(placed, grid.value, width, height);
  const window = windowAround(around, placed, grid.value, width, height);
  if (window === undefined) {
    const [[west, south], [east, north]] = covers;
    return refused(
      'elsewhere',
      told(({ courseImport }) => courseImport.faults.elsewhere, {
        west: west.toFixed(4),
        east: east.toFixed(4),
        south: south.toFixed(4),
        north: north.toFixed(4),
      }),
    );
  }
  const [left, top, right, bottom] = window;
  const columns = right - left;
  const rows = bottom - top;
  const blocks = (Math.ceil(columns / blockWidth) + 1) * (Math.ceil(rows / blockHeight) + 1);
  const isPlanar = tags.getValue('PlanarConfiguration') === 2;
  const bytesPerCell = isPlanar ? image.getSampleByteSize(0) : image.getBytesPerPixel();
  const blockBytes = blockWidth * blockHeight * bytesPerCell;
  if (columns * rows > MOST_CELLS || blocks > MOST_BLOCKS || !(blockBytes <= MOST_BLOCK_BYTES)) {
    return refused(
      'model-too-fine',
      told(({ courseImport }) => courseImport.faults.tooFine),
    );
  }
  const rasters = await image.readRasters({
    window: [left, top, right, bottom],
    samples: [0],
    // a block may be padded to whole bytes and rows, no more
    pool: boundedPool(geotiff, blockBytes + 1024) as never,
  });
  const cells = (rasters as unknown as ArrayLike<number>[])[0]!;
  const noData = image.getGDALNoData();
  const cellAt = (column: number, row: number): number | undefined => {
    if (column < left || column >= right || row < top || row >= bottom) return undefined;
    const value = cells[(row - top) * columns + (column - left)]!;
    // nodata is written as text, and read back with a float's digits
    const isNone =
      !Number.isFinite(value) || (noData !== null && Math.abs(value - noData) <= 1e-6 * Math.abs(noData));
    return isNone ? undefined : value * unit.metres;
  };
  return succeed({
    gridName: grid.value.name,
    covers,
    unitM: unit.metres,
    unitAssumed: unit.assumed,
    heightAt: (place) => {
      const [x, y] = toCell(placed, grid.value.toGrid(place));
      return bilinear(cellAt, x, y);
    },
  });
}

function refused(code: string, message: Told): Result<never, readonly Fault[]> {
  return refuse([toldFault({ severity: 'error', code, where: 'file', message })]);
}

function keysOf(keys: Readonly<Record<string, unknown>>): GeoKeys {
  const number = (key: string) => (typeof keys[key] === 'number' ? keys[key] : undefined);
  const text = (key: string) => (typeof keys[key] === 'string' && keys[key] !== '' ? keys[key] : undefined);
  const modelType = number('GTModelTypeGeoKey');
  const geographicType = number('GeographicTypeGeoKey');
  const projectedType = number('ProjectedCSTypeGeoKey');
  const citation = text('PCSCitationGeoKey') ?? text('GTCitationGeoKey') ?? text('GeogCitationGeoKey');
  return {
    ...(modelType === undefined ? {} : { modelType }),
    ...(geographicType === undefined ? {} : { geographicType }),
    ...(projectedType === undefined ? {} : { projectedType }),
    ...(citation === undefined ? {} : { citation }),
  };
}

/** Metre, foot and US survey foot (EPSG 9001, 9002, 9003); metres where none is named. */
function unitOf(key: unknown): { readonly metres: number; readonly assumed: boolean } | undefined {
  if (key === undefined) return { metres: 1, assumed: true };
  const metres = { 9001: 1, 9002: 0.3048, 9003: 1200 / 3937 }[key as number];
  return metres === undefined ? undefined : { metres, assumed: false };
}
