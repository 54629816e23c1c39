/** Random edits for property tests: every verb, on features and corners that are there and that are not. */

import fc from 'fast-check';
import { type EditableDocument, type FeatureId } from '../../../core/course/document.ts';
import { addFeature } from '../../../core/course/edits/add-feature.ts';
import { copyToHole } from '../../../core/course/edits/copy-to-hole.ts';
import { cutHole } from '../../../core/course/edits/cut-hole.ts';
import { cutInTwo } from '../../../core/course/edits/cut-in-two.ts';
import type { EditResult } from '../../../core/course/edits/edit.ts';
import { fillHole } from '../../../core/course/edits/fill-hole.ts';
import { insertVertex } from '../../../core/course/edits/insert-vertex.ts';
import { merge } from '../../../core/course/edits/merge.ts';
import { moveFeatures } from '../../../core/course/edits/move-features.ts';
import { moveVertex } from '../../../core/course/edits/move-vertex.ts';
import { orderAllRings } from '../../../core/course/edits/order-rings.ts';
import { removeFeatures } from '../../../core/course/edits/remove-features.ts';
import { removeVertex } from '../../../core/course/edits/remove-vertex.ts';
import { renumberHoles } from '../../../core/course/edits/renumber-holes.ts';
import { reorderHoles } from '../../../core/course/edits/reorder-holes.ts';
import { setCourse } from '../../../core/course/edits/set-course.ts';
import { setKind } from '../../../core/course/edits/set-kind.ts';
import { setPosition } from '../../../core/course/edits/set-position.ts';
import { setProperties } from '../../../core/course/edits/set-properties.ts';
import { simplify } from '../../../core/course/edits/simplify.ts';
import { smooth } from '../../../core/course/edits/smooth.ts';
import { splitParts } from '../../../core/course/edits/split-parts.ts';
import type { FeatureKind } from '../../../core/course/feature-kind.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { at, PLACE } from '../builders.ts';

/** Chooses a feature of whatever document it meets. */
type Choice = number;
export type RandomEdit = (document: EditableDocument) => EditResult;

const choice = fc.nat(40);
// up to about 300 m around the place, with digits beyond what the file keeps
const place: fc.Arbitrary<LonLat> = fc
  .tuple(
    fc.double({ min: -0.004, max: 0.004, noNaN: true }),
    fc.double({ min: -0.003, max: 0.003, noNaN: true }),
  )
  .map(([east, north]): LonLat => [PLACE[0] + east, PLACE[1] + north]);
const address = fc.record({ part: fc.nat(1), ring: fc.nat(1), vertex: fc.nat(6) });
const kinds: FeatureKind[] = [
  'green',
  'bunker',
  'woods',
  'path',
  'tree',
  'penalty-red',
  'tee-marker',
  'boundary',
];
const value = fc.oneof(
  fc.constantFrom(null, '', 4, '5', 12.5, -1, 'twelve', '7', true, [1, { a: 2 }]),
  fc.string({ maxLength: 8 }),
);

function idOf(document: EditableDocument, pick: Choice): FeatureId {
  return document.features[pick % Math.max(1, document.features.length + 1)]?.id ?? 'not there';
}

/** Edits that fit the small course as long as nothing else has touched what they are about. */
const fittingEdit: fc.Arbitrary<RandomEdit> = fc.constantFrom<RandomEdit[]>(
  (document) => merge(document, ['fairway', 'neighbour']),
  (document) => cutInTwo(document, 'fairway', [at(-60, 140), at(0, 155), at(60, 140)]),
  (document) => cutInTwo(document, 'pond', [at(150, 150), at(250, 151)]),
  (document) => cutHole(document, 'fairway', { feature: 'bunker' }),
  (document) => cutHole(document, 'neighbour', { outline: [at(70, 140), at(90, 140), at(80, 170)] }),
  (document) => fillHole(document, 'pond', 1),
  (document) => splitParts(document, 'double'),
  (document) => smooth(document, ['pond', 'path'], 1),
  (document) => simplify(document, ['path'], 12),
  (document) => reorderHoles(document, [2, 1]),
  (document) => renumberHoles(document, new Map([[1, 7]])),
  (document) => setKind(document, ['bunker'], 'green'),
  (document) => setProperties(document, ['double'], { height: 17.5, natural_age: [1, { a: 2 }] }),
  (document) => setProperties(document, ['marker'], { name: null, card_length_m: 355 }),
  (document) => copyToHole(document, ['bunker', 'marker'], 2, { eastM: 20, northM: -3 }),
  (document) => removeVertex(document, { feature: 'path', vertex: 1 }),
  (document) => removeFeatures(document, ['strange']),
);

const wildEdit: fc.Arbitrary<RandomEdit> = fc.oneof(
  fc
    .tuple(
      fc.constantFrom(...kinds),
      fc.array(place, { maxLength: 6 }),
      fc.option(fc.nat(3), { nil: undefined }),
    )
    .map(
      ([kind, points, hole]): RandomEdit =>
        (document) => {
          const ring = points.map(([lon, lat]): [number, number] => [lon, lat]);
          const geometry =
            kind === 'tree' || kind === 'tee-marker'
              ? { type: 'Point' as const, coordinates: ring[0] ?? ([4, 52] as [number, number]) }
              : kind === 'path'
                ? { type: 'LineString' as const, coordinates: ring }
                : { type: 'Polygon' as const, coordinates: [ring] };
          if (geometry.type !== 'Point' && ring.length === 0) return removeFeatures(document, []);
          return addFeature(document, { kind, geometry, ...(hole === undefined ? {} : { hole }) });
        },
    ),
  fc.array(choice, { maxLength: 4 }).map(
    (picks): RandomEdit =>
      (document) =>
        removeFeatures(
          document,
          picks.map((pick) => idOf(document, pick)),
        ),
  ),
  fc
    .tuple(
      choice,
      fc.dictionary(fc.constantFrom('name', 'par', 'ref', 'height', 'note', 'ele', 'golf'), value),
    )
    .map(
      ([pick, values]): RandomEdit =>
        (document) =>
          setProperties(document, [idOf(document, pick)], values),
    ),
  fc.tuple(choice, fc.constantFrom(...kinds)).map(
    ([pick, kind]): RandomEdit =>
      (document) =>
        setKind(document, [idOf(document, pick)], kind),
  ),
  fc.tuple(choice, choice, place, place).map(
    ([one, two, from, to]): RandomEdit =>
      (document) =>
        moveFeatures(document, [idOf(document, one), idOf(document, two)], { from, to }),
  ),
  fc.tuple(choice, address, place).map(
    ([pick, where, to]): RandomEdit =>
      (document) =>
        moveVertex(document, { feature: idOf(document, pick), ...where }, to),
  ),
  fc.tuple(choice, address, place).map(
    ([pick, where, to]): RandomEdit =>
      (document) =>
        insertVertex(document, { feature: idOf(document, pick), ...where }, to),
  ),
  fc.tuple(choice, address).map(
    ([pick, where]): RandomEdit =>
      (document) =>
        removeVertex(document, { feature: idOf(document, pick), ...where }),
  ),
  fc.tuple(choice, address, fc.double(), fc.double({ min: -100, max: 100 })).map(
    ([pick, where, lon, lat]): RandomEdit =>
      (document) =>
        setPosition(document, { feature: idOf(document, pick), ...where }, lon, lat),
  ),
  fc.tuple(choice, fc.array(place, { maxLength: 4 })).map(
    ([pick, cut]): RandomEdit =>
      (document) =>
        cutInTwo(document, idOf(document, pick), cut),
  ),
  fc.array(choice, { maxLength: 3 }).map(
    (picks): RandomEdit =>
      (document) =>
        merge(
          document,
          picks.map((pick) => idOf(document, pick)),
        ),
  ),
  fc.tuple(choice, choice).map(
    ([one, two]): RandomEdit =>
      (document) =>
        cutHole(document, idOf(document, one), { feature: idOf(document, two) }),
  ),
  fc.tuple(choice, fc.array(place, { minLength: 3, maxLength: 4 })).map(
    ([pick, outline]): RandomEdit =>
      (document) =>
        cutHole(document, idOf(document, pick), { outline }),
  ),
  fc.tuple(choice, fc.nat(2)).map(
    ([pick, ring]): RandomEdit =>
      (document) =>
        fillHole(document, idOf(document, pick), ring),
  ),
  choice.map(
    (pick): RandomEdit =>
      (document) =>
        splitParts(document, idOf(document, pick)),
  ),
  fc.tuple(choice, fc.integer({ min: 0, max: 2 })).map(
    ([pick, rounds]): RandomEdit =>
      (document) =>
        smooth(document, [idOf(document, pick)], rounds),
  ),
  fc.tuple(choice, fc.double({ min: -1, max: 20 })).map(
    ([pick, toleranceM]): RandomEdit =>
      (document) =>
        simplify(document, [idOf(document, pick)], toleranceM),
  ),
  fc.tuple(choice, fc.nat(4), fc.integer({ min: -100, max: 100 })).map(
    ([pick, hole, eastM]): RandomEdit =>
      (document) =>
        copyToHole(document, [idOf(document, pick)], hole, { eastM, northM: 5 }),
  ),
  fc.tuple(fc.nat(4), fc.nat(4)).map(
    ([from, to]): RandomEdit =>
      (document) =>
        renumberHoles(document, new Map([[from, to]])),
  ),
  fc.array(fc.nat(4), { maxLength: 4 }).map(
    (order): RandomEdit =>
      (document) =>
        reorderHoles(document, order),
  ),
  fc.string({ maxLength: 5 }).map(
    (courseName): RandomEdit =>
      (document) =>
        setCourse(document, { courseName }),
  ),
  fc.constant<RandomEdit>((document) => orderAllRings(document)),
);

export const randomEdit: fc.Arbitrary<RandomEdit> = fc.oneof(
  { weight: 1, arbitrary: fittingEdit },
  { weight: 2, arbitrary: wildEdit },
);
