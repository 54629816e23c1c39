/** Coordinate systems that an elevation model may be laid out in: WGS 84 degrees, Web Mercator, UTM on WGS 84. */

import { type Result, refuse, succeed } from '../../result.ts';
import { type Said, told, type Told } from '../../words/told.ts';
import { RADIANS_PER_DEGREE, SEMI_MAJOR_M } from '../wgs84.ts';
import { type Projection, utm } from './transverse-mercator.ts';

export interface Grid extends Projection {
  readonly name: Told;
  /** True where grid coordinates are degrees. */
  readonly inDegrees: boolean;
}

/** Longitude and latitude as they are (EPSG:4326, 4979). */
const GEOGRAPHIC: Grid = {
  name: told(({ courseImport }) => courseImport.grids.degrees),
  inDegrees: true,
  toGrid: (place) => place,
  toLonLat: ([lon, lat]) => [lon, lat],
};

/**
 * Popular Visualisation Pseudo Mercator (EPSG:3857): IOGP Geomatics Guidance Note 7-2 (373-07-2), method 1024. The
 * latitude of the ellipsoid is put into the formula of the sphere.
 */
export const WEB_MERCATOR: Grid = {
  name: told(({ courseImport }) => courseImport.grids.webMercator),
  inDegrees: false,
  toGrid: ([lon, lat]) => [
    SEMI_MAJOR_M * lon * RADIANS_PER_DEGREE,
    SEMI_MAJOR_M * Math.log(Math.tan(Math.PI / 4 + (lat * RADIANS_PER_DEGREE) / 2)),
  ],
  toLonLat: ([x, y]) => [
    x / SEMI_MAJOR_M / RADIANS_PER_DEGREE,
    (2 * Math.atan(Math.exp(y / SEMI_MAJOR_M)) - Math.PI / 2) / RADIANS_PER_DEGREE,
  ],
};

/** What a GeoTIFF says of its coordinates (OGC GeoTIFF 1.1, 19-008r4), as far as it is read here. */
export interface GeoKeys {
  readonly modelType?: number;
  readonly geographicType?: number;
  readonly projectedType?: number;
  /** In words, for messages. */
  readonly citation?: string;
}

const PROJECTED = 1;
const GEOGRAPHIC_MODEL = 2;
const USER_DEFINED = 32767;

/** The grid that the keys name, or what they name instead. */
export function gridOf({ modelType, geographicType, projectedType, citation }: GeoKeys): Result<Grid, Said> {
  if (modelType === PROJECTED && projectedType !== undefined) {
    if (projectedType === 3857) return succeed(WEB_MERCATOR);
    const zone = projectedType % 100;
    const series = Math.floor(projectedType / 100);
    if ((series === 326 || series === 327) && zone >= 1 && zone <= 60) {
      const south = series === 327;
      return succeed({
        ...utm(zone, south),
        name: told(({ courseImport }) => courseImport.grids.utm, { zone: `${zone}${south ? 'S' : 'N'}` }),
        inDegrees: false,
      });
    }
    return refuse(nameOf(projectedType, citation));
  }
  if (modelType === GEOGRAPHIC_MODEL && geographicType !== undefined) {
    if (geographicType === 4326 || geographicType === 4979) return succeed(GEOGRAPHIC);
    return refuse(nameOf(geographicType, citation));
  }
  return refuse(
    citation === undefined
      ? told(({ courseImport }) => courseImport.grids.none)
      : `"${citation.slice(0, 80)}"`,
  );
}

function nameOf(code: number, citation: string | undefined): Said {
  const words = citation === undefined ? '' : ` ("${citation.slice(0, 80)}")`;
  return code === USER_DEFINED
    ? told(({ courseImport }) => courseImport.grids.own, { citation: words })
    : `EPSG:${code}${words}`;
}
