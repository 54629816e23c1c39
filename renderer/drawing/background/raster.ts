/** A background ready to be painted: one picture with its mesh, or tiles that come as they are needed. */

import type { LonLat } from '../../../core/course/model.ts';
import type { TileAddress } from './tile-grid.ts';

/** Pixels `u`, `v`, `width`, `height` of the picture lie between three corners on earth, flat in between. */
export interface MeshCell {
  readonly u: number;
  readonly v: number;
  readonly width: number;
  readonly height: number;
  readonly upperLeft: LonLat;
  readonly upperRight: LonLat;
  readonly lowerLeft: LonLat;
}

export type Raster =
  | {
      readonly how: 'picture';
      readonly bitmap: ImageBitmap;
      /** Null for a picture whose place comes from control points. */
      readonly mesh: readonly MeshCell[] | null;
    }
  | {
      readonly how: 'tiles';
      readonly leastZoom: number;
      readonly mostZoom: number;
      /** Null where there is no such tile. */
      readonly tile: (address: TileAddress) => Promise<CanvasImageSource | null>;
      readonly attribution: string | null;
    };
