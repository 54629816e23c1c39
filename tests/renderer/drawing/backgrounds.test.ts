/** Where tiles and pictures lie. */

import { describe, expect, it } from 'vitest';
import { newDocument, openDocumentText, serialise } from '../../../core/course/document.ts';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import { placeOfPixel } from '../../../core/course/georeference.ts';
import { backgroundOf, setBackground } from '../../../renderer/drawing/background/background.ts';
import { fitOf } from '../../../renderer/drawing/background/picture-fit.ts';
import { cornerOfTile, inTiles, tilesOver, zoomFor } from '../../../renderer/drawing/background/tile-grid.ts';

describe('tiles', () => {
  // OGC Two Dimensional Tile Matrix Set 2.0 (17-083r4), annex D.1: WebMercatorQuad reaches 20037508.3427892 m to
  // each side, which is a latitude of 85.05112877980659 degrees (EPSG guidance note 7-2, method 1024, inverse).
  it('begin at the north-western corner of the world', () => {
    const [lon, lat] = cornerOfTile(0, 0, 0);
    expect(lon).toBe(-180);
    expect(lat).toBeCloseTo(85.05112877980659, 10);
    expect(cornerOfTile(3, 8, 8)[1]).toBeCloseTo(-85.05112877980659, 10);
    expect(cornerOfTile(1, 1, 1)).toEqual([0, 0]);
  });

  // the same table: scale denominator of zoom 0 is 559082264.028717, of 0.28 mm pixels: 156543.033928041 m
  it('of zoom 0 have pixels of 156543.03 m at the equator, each zoom half of it', () => {
    expect(zoomFor(156_543.033928041, 0, 0, 22)).toBe(0);
    expect(zoomFor(156_543.033928041 / 2 ** 17, 0, 0, 22)).toBe(17);
    expect(zoomFor(0.001, 0, 0, 19)).toBe(19);
  });

  it('hold the places that lie in them', () => {
    const [x, y] = inTiles([4.3, 52.1], 15);
    const [west, north] = cornerOfTile(15, Math.floor(x), Math.floor(y));
    const [east, south] = cornerOfTile(15, Math.floor(x) + 1, Math.floor(y) + 1);
    expect(4.3).toBeGreaterThan(west);
    expect(4.3).toBeLessThan(east);
    expect(52.1).toBeLessThan(north);
    expect(52.1).toBeGreaterThan(south);
    expect(cornerOfTile(15, x, y)[0]).toBeCloseTo(4.3, 10);
    expect(cornerOfTile(15, x, y)[1]).toBeCloseTo(52.1, 10);
  });

  it('over a view come from its middle outwards, and not by the thousand', () => {
    const view = [
      [4.29, 52.09],
      [4.31, 52.11],
    ] as const;
    const tiles = tilesOver(view, 15, 100);
    const xs = tiles.map(({ x }) => x);
    expect(tiles.length).toBe(new Set(tiles.map(({ x, y }) => `${x} ${y}`)).size);
    expect(Math.abs(tiles[0]!.x - (Math.min(...xs) + Math.max(...xs)) / 2)).toBeLessThanOrEqual(0.5);
    expect(tilesOver(view, 22, 100)).toEqual([]);
  });
});

describe('a picture', () => {
  const frame = makeLocalFrame([4.3, 52.1]);
  const pin = (pixelX: number, pixelY: number) => {
    const [lon, lat] = frame.toLonLat({ x: pixelX * 0.5 - 100, y: 80 - pixelY * 0.5 });
    return { pixelX, pixelY, lon, lat };
  };

  it('lies where its control points put it', () => {
    const fit = fitOf(
      { kind: 'picture', attachment: 'a.png', fit: 'stretch', pins: [pin(0, 0), pin(400, 100)] },
      frame,
    );
    if (!fit.ok) throw new Error(fit.error);
    const at = placeOfPixel(fit.value.transform, 200, 160);
    expect(at.x).toBeCloseTo(0, 5);
    expect(at.y).toBeCloseTo(0, 5);
  });

  it('is kept in the course and comes back with it', () => {
    const background = {
      kind: 'picture',
      attachment: 'a.png',
      fit: 'turn',
      pins: [pin(3, 4), pin(300, 4)],
    } as const;
    const laid = setBackground(
      newDocument('Larkfield'),
      { ...background, pins: [...background.pins] },
      'Lay',
    );
    if (!laid.ok) throw new Error(laid.error.message);
    const again = openDocumentText(serialise(laid.value.document));
    if (!again.ok) throw new Error('refused');
    expect(backgroundOf(again.value.document)).toEqual(background);
    const taken = setBackground(again.value.document, null, 'Take away');
    expect(taken.ok && backgroundOf(taken.value.document)).toBeNull();
  });

  it('of a file that says it in another way is left alone', () => {
    const odd = { ...newDocument('Odd'), holewright: { formatVersion: 1, background: { kind: 'globe' } } };
    expect(backgroundOf(odd)).toBeNull();
  });
});
