/** What a click takes hold of. */

import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../core/course/document.ts';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import { featureAt, handleAt, isInsidePaths } from '../../../renderer/drawing/hit.ts';
import { boxAround, shapesOf } from '../../../renderer/drawing/shapes.ts';
import { area, at, collection, line, PLACE, point, square } from '../../course/builders.ts';

const frame = makeLocalFrame(PLACE);
const spot = (east: number, north: number) => frame.toSpot(at(east, north));

function shapesFor(...features: unknown[]) {
  const opened = openDocument(collection(...features));
  if (!opened.ok) throw new Error(opened.error[0]?.message);
  return shapesOf(opened.value.document, frame);
}

const shapes = shapesFor(
  area({ golf: 'fairway', ref: '1' }, square(0, 0, 60)),
  area({ golf: 'bunker' }, square(10, 10, 6)),
  area({ natural: 'wood' }, square(100, 0, 30), square(100, 0, 10)),
  line({ golf: 'hole', ref: '1', par: '4' }, at(-40, -40), at(40, -40)),
  point({ natural: 'tree', diameter_crown: 10 }, at(-20, 20)),
  area({ holewright_kind: 'boundary' }, square(0, 0, 400)),
);
const kindAt = (east: number, north: number) => featureAt(shapes, spot(east, north), 2)?.kind;

describe('a click', () => {
  it('means the bunker in the fairway, not the fairway around it', () => {
    expect(kindAt(10, 10)).toBe('bunker');
    expect(kindAt(30, 30)).toBe('fairway');
  });

  it('means the line that crosses an area, and the tree that stands on it', () => {
    expect(kindAt(0, -40)).toBe('hole');
    expect(kindAt(-20, 20)).toBe('tree');
    // the crown counts as the tree
    expect(kindAt(-20, 23)).toBe('tree');
  });

  it('falls through the hollow of an area, and inside the course edge on nothing', () => {
    expect(kindAt(120, 0)).toBe('woods');
    expect(kindAt(100, 0)).toBeUndefined();
    expect(kindAt(300, 300)).toBeUndefined();
    expect(kindAt(400, 300)).toBe('boundary');
  });
});

describe('a handle', () => {
  const bunker = shapes.filter(({ kind }) => kind === 'bunker');
  it('is the nearest corner within reach, else the middle of a side', () => {
    const corner = handleAt(bunker, spot(16, 16), 1);
    expect(corner).toMatchObject({ on: 'corner', address: { feature: bunker[0]!.feature.id } });
    expect(handleAt(bunker, spot(10, 4), 1)).toMatchObject({ on: 'side', address: { vertex: 0 } });
    expect(handleAt(bunker, spot(13, 4), 1)).toBeNull();
  });
});

describe('a shape', () => {
  it('has its area in square metres, hollows left out', () => {
    const woods = shapes.find(({ kind }) => kind === 'woods')!;
    const outer = shapesFor(area({ natural: 'wood' }, square(100, 0, 30)))[0]!;
    const inner = shapesFor(area({ natural: 'wood' }, square(100, 0, 10)))[0]!;
    expect(woods.areaM2).toBeCloseTo(outer.areaM2 - inner.areaM2, 3);
    expect(isInsidePaths(woods.paths, spot(100, 0))).toBe(false);
  });

  it('is laid out once for as long as its feature stays the same', () => {
    const opened = openDocument(collection(area({ golf: 'green' }, square(0, 0, 5))));
    if (!opened.ok) throw new Error('refused');
    const { document } = opened.value;
    expect(shapesOf(document, frame)[0]).toBe(shapesOf(document, frame)[0]);
  });

  it('lies in a box with the others', () => {
    expect(boxAround([])).toBeNull();
    const box = boxAround(shapes)!;
    expect(box.west).toBeCloseTo(spot(-400, 0).x, 0);
    expect(box.north).toBeCloseTo(spot(0, 400).y, 0);
  });
});
