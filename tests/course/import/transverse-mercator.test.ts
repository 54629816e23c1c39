/** The projections against published worked examples and against an independent library. */

import fc from 'fast-check';
import proj4 from 'proj4';
import { describe, expect, it } from 'vitest';
import { sayIn } from '../../../core/words/told.ts';
import { gridOf, WEB_MERCATOR } from '../../../core/course/import/grids.ts';
import { transverseMercator, utm } from '../../../core/course/import/transverse-mercator.ts';
import type { LonLat } from '../../../core/course/model.ts';

const dms = (degrees: number, minutes: number, seconds: number) => degrees + minutes / 60 + seconds / 3600;

describe('worked examples of IOGP Geomatics Guidance Note 7-2 (373-07-2)', () => {
  it('transverse Mercator, method 9807: OSGB 1936 / British National Grid', () => {
    const grid = transverseMercator({
      semiMajorM: 6377563.396,
      flattening: 1 / 299.32496,
      centralMeridian: -2,
      originLatitude: 49,
      scale: 0.9996012717,
      falseEastingM: 400_000,
      falseNorthingM: -100_000,
    });
    const [easting, northing] = grid.toGrid([0.5, 50.5]);
    // published to the centimetre, from constants of ten digits
    expect(Math.abs(easting - 577274.99)).toBeLessThan(0.01);
    expect(Math.abs(northing - 69740.5)).toBeLessThan(0.01);
    const [lon, lat] = grid.toLonLat([577274.99, 69740.5]);
    expect(lon).toBeCloseTo(0.5, 6);
    expect(lat).toBeCloseTo(50.5, 6);
  });

  it('popular visualisation pseudo Mercator, method 1024', () => {
    const [x, y] = WEB_MERCATOR.toGrid([-dms(100, 20, 0), dms(24, 22, 54.433)]);
    expect(Math.abs(x + 11169055.58)).toBeLessThan(0.01);
    // a thousandth of a second of latitude is 3 cm
    expect(Math.abs(y - 2800000)).toBeLessThan(0.03);
    const [lon, lat] = WEB_MERCATOR.toLonLat([-11169055.58, 2810000]);
    // published to a thousandth of a second
    expect(lon).toBeCloseTo(-dms(100, 20, 0), 6.5);
    expect(lat).toBeCloseTo(dms(24, 27, 48.889), 6.5);
  });
});

describe('an independent library (proj4 2.22)', () => {
  it('gives the same UTM coordinates in every zone, to a micrometre', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.boolean(),
        fc.double({ min: -4, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 84, noNaN: true }),
        (zone, south, east, north) => {
          const lon = 6 * zone - 183 + east;
          const place: LonLat = [
            lon < -180 ? lon + 360 : lon > 180 ? lon - 360 : lon,
            south ? -north : north,
          ];
          const theirs = proj4(
            `+proj=utm +zone=${zone} ${south ? '+south ' : ''}+datum=WGS84 +units=m`,
          ).forward([...place]);
          const ours = utm(zone, south).toGrid(place);
          expect(Math.abs(ours[0] - theirs[0]!)).toBeLessThan(1e-6);
          expect(Math.abs(ours[1] - theirs[1]!)).toBeLessThan(1e-6);
          const [backLon, backLat] = utm(zone, south).toLonLat(ours);
          expect(Math.abs(backLat - place[1])).toBeLessThan(1e-11);
          // at the date line 180 and -180 are the same
          expect(Math.abs(((backLon - place[0] + 540) % 360) - 180)).toBeLessThan(1e-10);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('gives the same Web Mercator coordinates', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: -85, max: 85, noNaN: true }),
        (lon, lat) => {
          const theirs = proj4('EPSG:3857').forward([lon, lat]);
          const ours = WEB_MERCATOR.toGrid([lon, lat]);
          expect(Math.abs(ours[0] - theirs[0]!)).toBeLessThan(1e-6);
          expect(Math.abs(ours[1] - theirs[1]!)).toBeLessThan(1e-6);
          expect(WEB_MERCATOR.toLonLat(ours)[1]).toBeCloseTo(lat, 11);
        },
      ),
    );
  });
});

describe('which grid a file is in', () => {
  const nameOf = (keys: Parameters<typeof gridOf>[0]) => {
    const grid = gridOf(keys);
    return grid.ok ? sayIn(grid.value.name) : `not ${sayIn(grid.error)}`;
  };

  it.each([
    [{ modelType: 2, geographicType: 4326 }, 'WGS 84 longitude and latitude'],
    [{ modelType: 2, geographicType: 4979 }, 'WGS 84 longitude and latitude'],
    [{ modelType: 1, projectedType: 3857 }, 'Web Mercator'],
    [{ modelType: 1, projectedType: 32601 }, 'UTM zone 1N on WGS 84'],
    [{ modelType: 1, projectedType: 32760 }, 'UTM zone 60S on WGS 84'],
    [{ modelType: 1, projectedType: 32661, citation: 'UPS North' }, 'not EPSG:32661 ("UPS North")'],
    [
      { modelType: 1, projectedType: 25832, citation: 'ETRS89 / UTM 32N' },
      'not EPSG:25832 ("ETRS89 / UTM 32N")',
    ],
    [{ modelType: 1, projectedType: 32767, citation: 'Local' }, 'not a system of its own ("Local")'],
    [{ modelType: 2, geographicType: 4269 }, 'not EPSG:4269'],
    [{ modelType: 3 }, 'not no coordinate system that it names'],
    [{}, 'not no coordinate system that it names'],
  ])('%j is %s', (keys, name) => {
    expect(nameOf(keys)).toBe(name);
  });
});
