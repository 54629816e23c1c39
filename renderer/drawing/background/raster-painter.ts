/** Paints a background in the map's frame, each piece with the affine map through three of its corners. */

import type { LocalFrame } from '../../../core/course/local-frame.ts';
import { placeOfPixel, type PictureTransform } from '../../../core/course/georeference.ts';
import type { LonLat } from '../../../core/course/model.ts';
import type { Spot } from '../../../core/plan/model.ts';
import type { Brush, Painter } from '../../map/canvas-layer.ts';
import type { MeshCell, Raster } from './raster.ts';
import { cornerOfTile, type TileAddress, tilesOver, zoomFor } from './tile-grid.ts';

const MOST_TILES = 120;
const MOST_KEPT = 400;

export function picturePainter(bitmap: ImageBitmap, transform: PictureTransform): Painter {
  const at = (u: number, v: number): Spot => placeOfPixel(transform, u, v);
  const { width, height } = bitmap;
  return (brush) => {
    drawPiece(brush, bitmap, [0, 0, width, height], at(0, 0), at(width, 0), at(0, height));
  };
}

export function meshPainter(bitmap: ImageBitmap, mesh: readonly MeshCell[], frame: LocalFrame): Painter {
  const pieces = mesh.map(({ u, v, width, height, upperLeft, upperRight, lowerLeft }) => ({
    source: [u, v, width, height] as const,
    corners: [upperLeft, upperRight, lowerLeft].map((place) => frame.toSpot(place)),
  }));
  return (brush) => {
    for (const { source, corners } of pieces) {
      drawPiece(brush, bitmap, source, corners[0]!, corners[1]!, corners[2]!);
    }
  };
}

type Piece = readonly [number, number, number, number];

function drawPiece(
  brush: Brush,
  image: CanvasImageSource,
  [u, v, width, height]: Piece,
  upperLeft: Spot,
  upperRight: Spot,
  lowerLeft: Spot,
): void {
  brush.metres((context) => {
    context.transform(
      (upperRight.x - upperLeft.x) / width,
      (upperRight.y - upperLeft.y) / width,
      (lowerLeft.x - upperLeft.x) / height,
      (lowerLeft.y - upperLeft.y) / height,
      upperLeft.x,
      upperLeft.y,
    );
    context.imageSmoothingQuality = 'high';
    // half a pixel over, so that no seam shows between neighbours
    context.drawImage(image, u, v, width, height, 0, 0, width + 0.5, height + 0.5);
  });
}

/** Tiles as they come; `arrived` asks for another painting. */
export function tilePainter(
  raster: Extract<Raster, { how: 'tiles' }>,
  frame: LocalFrame,
  arrived: () => void,
): Painter {
  const kept = new Map<string, CanvasImageSource | 'asked' | 'none'>();
  const ask = (address: TileAddress, key: string): void => {
    kept.set(key, 'asked');
    for (const oldest of kept.keys()) {
      if (kept.size <= MOST_KEPT) break;
      kept.delete(oldest);
    }
    void raster
      .tile(address)
      .catch(() => null)
      .then((image) => {
        kept.set(key, image ?? 'none');
        if (image !== null) arrived();
      });
  };
  return (brush) => {
    const { width, height, scale } = brush;
    const corners = (
      [
        [0, 0],
        [width, 0],
        [0, height],
        [width, height],
      ] as const
    ).map(
      ([x, y]): LonLat => frame.toLonLat({ x: (x - brush.originX) / scale, y: (brush.originY - y) / scale }),
    );
    const zoom = zoomFor(1 / scale, frame.origin[1], raster.leastZoom, raster.mostZoom);
    for (const address of tilesOver(corners, zoom, MOST_TILES)) {
      const key = `${zoom}/${address.x}/${address.y}`;
      const tile = kept.get(key);
      if (tile === undefined) ask(address, key);
      if (tile === undefined || tile === 'asked' || tile === 'none') continue;
      const at = (x: number, y: number): Spot =>
        frame.toSpot(cornerOfTile(zoom, address.x + x, address.y + y));
      const [w, h] = sizeOf(tile);
      drawPiece(brush, tile, [0, 0, w, h], at(0, 0), at(1, 0), at(0, 1));
    }
  };
}

function sizeOf(image: CanvasImageSource): readonly [number, number] {
  if (image instanceof HTMLImageElement) return [image.naturalWidth, image.naturalHeight];
  if (image instanceof ImageBitmap) return [image.width, image.height];
  return [256, 256];
}
