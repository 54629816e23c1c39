/** Makes one area of several that overlap or share a side. */

import { type EditableDocument, type FeatureId, kindOf } from '../document.ts';
import type { Rings } from '../model.ts';
import { isInside } from '../polygon.ts';
import { unionOf } from './area-algebra.ts';
import { type EditResult, makeEdit, pickFeatures, refuseEdit } from './edit.ts';
import { interiorPoint } from './interior-point.ts';
import {
  checkGeometry,
  crossesItself,
  geometryOfPolygons,
  polygonsOfGeometry,
  requireGeometry,
} from './shape.ts';
import { featuresTold, sentenceTold, kindTold } from './words.ts';
import { told } from '../../words/told.ts';

/**
 * The first feature keeps its id and properties and becomes the whole; the others are removed. Refuses areas of
 * different kinds and areas that do not touch, for a course must not hold shapes that only look like one.
 */
export function merge(document: EditableDocument, ids: readonly FeatureId[]): EditResult {
  const picked = pickFeatures(document, ids);
  if (!picked.ok) return picked;
  const [first, ...others] = picked.value;
  if (first === undefined || others.length === 0) {
    return refuseEdit(
      'nothing-chosen',
      told(({ courseEdits }) => courseEdits.chooseTwo),
    );
  }
  const kind = kindOf(first);
  const polygons: (readonly Rings[])[] = [];
  for (const feature of picked.value) {
    const required = requireGeometry(feature, ['Polygon', 'MultiPolygon']);
    if (!required.ok) return required;
    const other = kindOf(feature);
    if (other !== kind) {
      const words = [kind, other].map((each) =>
        each === undefined ? told(({ courseEdits }) => courseEdits.noKind) : kindTold(each),
      );
      return refuseEdit(
        'different-kinds',
        told(({ courseEdits }) => courseEdits.differ, { first: words[0]!, second: words[1]! }),
        feature.id,
      );
    }
    if (crossesItself(required.value)) {
      const message = told(({ courseEdits }) => courseEdits.crosses, { what: sentenceTold(feature) });
      return refuseEdit('crosses-itself', message, feature.id);
    }
    polygons.push(polygonsOfGeometry(required.value));
  }
  const joined = unionOf(polygons.flat());
  if (joined === undefined) {
    return refuseEdit(
      'crosses-itself',
      told(({ courseEdits }) => courseEdits.cannotMerge),
    );
  }
  if (!areConnected(polygons, joined)) {
    return refuseEdit(
      'not-touching',
      told(({ courseEdits }) => courseEdits.notTouching),
    );
  }
  const geometry = geometryOfPolygons(joined);
  const checked = checkGeometry(geometry, sentenceTold(first), first.id);
  if (!checked.ok) return checked;
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.merge, { what: featuresTold(picked.value) }),
    {
      changed: [{ ...first, geometry }],
      removed: others.map(({ id }) => id),
    },
  );
}

/** Whether one can go from each feature to every other over the joined polygons in which their parts came to lie. */
function areConnected(features: readonly (readonly Rings[])[], joined: readonly Rings[]): boolean {
  const groups = joined.map((whole) => {
    const members = features.flatMap((parts, index) =>
      parts.some((rings) => {
        const inner = interiorPoint(rings);
        return inner !== undefined && isInside(inner, { rings: whole });
      })
        ? [index]
        : [],
    );
    return new Set(members);
  });
  const reached = new Set([0]);
  for (let before = 0; before < reached.size; ) {
    before = reached.size;
    for (const group of groups)
      if ([...group].some((member) => reached.has(member))) for (const member of group) reached.add(member);
  }
  return reached.size === features.length;
}
