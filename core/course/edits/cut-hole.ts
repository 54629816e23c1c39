/** Takes ground out of an area: the bunker out of its fairway, an island out of its pond. */

import { type EditableDocument, type FeatureId, featureById } from '../document.ts';
import type { LonLat, Rings } from '../model.ts';
import { orderRings } from '../ring.ts';
import { findCrossing } from '../ring-crossing.ts';
import { areaM2 } from '../ellipsoid.ts';
import { differenceOf } from './area-algebra.ts';
import { type EditResult, makeEdit, noSuchFeature, refuseEdit } from './edit.ts';
import {
  checkGeometry,
  crossesItself,
  geometryOfPolygons,
  polygonsOfGeometry,
  requireGeometry,
} from './shape.ts';
import { featureTold, sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

/** What is taken out: another feature's area, which stays as it is, or an outline that was drawn (degrees). */
export type Cutter = { readonly feature: FeatureId } | { readonly outline: readonly LonLat[] };

/** Less than this taken out is rounding, square metres. */
const LEAST_CUT_M2 = 0.01;

/** Refuses where the two do not overlap and where nothing would be left. */
export function cutHole(document: EditableDocument, id: FeatureId, cutter: Cutter): EditResult {
  const target = featureById(document, id);
  if (target === undefined) return noSuchFeature(id);
  const required = requireGeometry(target, ['Polygon', 'MultiPolygon']);
  if (!required.ok) return required;
  const what = sentenceTold(target);
  if (crossesItself(required.value)) {
    return refuseEdit(
      'crosses-itself',
      told(({ courseEdits }) => courseEdits.crosses, { what }),
      id,
    );
  }
  let taken: readonly Rings[];
  if ('feature' in cutter) {
    const other = featureById(document, cutter.feature);
    if (other === undefined || cutter.feature === id) return noSuchFeature(cutter.feature);
    const area = requireGeometry(other, ['Polygon', 'MultiPolygon']);
    if (!area.ok) return area;
    taken = polygonsOfGeometry(area.value);
  } else {
    const drawn = checkGeometry(
      { type: 'Polygon', coordinates: [cutter.outline.map(([lon, lat]) => [lon, lat])] },
      told(({ courseEdits }) => courseEdits.theHole),
    );
    if (!drawn.ok) return drawn;
    taken = [orderRings([cutter.outline]).rings];
  }
  if (taken.some((rings) => findCrossing(rings) !== undefined)) {
    return refuseEdit(
      'crosses-itself',
      told(({ courseEdits }) => courseEdits.cutCrosses),
      id,
    );
  }
  const before = polygonsOfGeometry(required.value);
  const left = differenceOf(before, taken);
  if (left === undefined) {
    return refuseEdit(
      'crosses-itself',
      told(({ courseEdits }) => courseEdits.cannotCut),
      id,
    );
  }
  if (left.length === 0) {
    return refuseEdit(
      'nothing-left',
      told(({ courseEdits }) => courseEdits.nothingLeft, { what: featureTold(target) }),
      id,
    );
  }
  if (totalArea(before) - totalArea(left) < LEAST_CUT_M2) {
    return refuseEdit(
      'does-not-overlap',
      told(({ courseEdits }) => courseEdits.notCovered, { what }),
      id,
    );
  }
  const geometry = geometryOfPolygons(left);
  const checked = checkGeometry(geometry, what, id);
  if (!checked.ok) return checked;
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.cutHole, { what: featureTold(target) }),
    {
      changed: [{ ...target, geometry }],
    },
  );
}

function totalArea(polygons: readonly Rings[]): number {
  return polygons.reduce((sum, rings) => sum + areaM2(rings), 0);
}
