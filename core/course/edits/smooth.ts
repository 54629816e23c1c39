/** Rounds off corners: Chaikin's corner cutting (Chaikin 1974, "An algorithm for high-speed curve generation"). */

import { type DocumentFeature, type EditableDocument, type FeatureId } from '../document.ts';
import type { Position } from '../positions.ts';
import type { Geometry } from '../schema.ts';
import { type EditResult, makeEdit, pickFeatures, refuseEdit } from './edit.ts';
import {
  checkGeometry,
  crossesItself,
  geometryFrom,
  type Path,
  pathsOf,
  requireGeometry,
  tidyGeometry,
} from './shape.ts';
import { featuresTold, sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

/** Each round cuts every corner at a quarter and three quarters of its sides, and doubles the points. */
export const MOST_ROUNDS = 4;

/**
 * Ends of lines stay. An area keeps inside its old outline where that bulges and reaches over it where that is
 * hollow. Refuses where the smoothed outline would cross itself, as at spikes that touch.
 */
export function smooth(document: EditableDocument, ids: readonly FeatureId[], rounds = 2): EditResult {
  const picked = pickFeatures(document, ids);
  if (!picked.ok) return picked;
  if (!Number.isInteger(rounds) || rounds < 1 || rounds > MOST_ROUNDS) {
    return refuseEdit(
      'value-not-accepted',
      told(({ courseEdits }) => courseEdits.rounds, { most: MOST_ROUNDS, rounds }),
    );
  }
  const changed: DocumentFeature[] = [];
  for (const feature of picked.value) {
    const required = requireGeometry(feature, ['LineString', 'Polygon', 'MultiPolygon']);
    if (!required.ok) return required;
    const what = sentenceTold(feature);
    let geometry: Geometry = required.value;
    if (crossesItself(geometry)) {
      return refuseEdit(
        'crosses-itself',
        told(({ courseEdits }) => courseEdits.crosses, { what }),
        feature.id,
      );
    }
    for (let round = 0; round < rounds; round++) {
      const parts = pathsOf(geometry).map((part) => part.map(cutCorners));
      const checked = checkGeometry(tidyGeometry(geometryFrom(geometry, parts)), what, feature.id);
      if (!checked.ok) return checked;
      geometry = checked.value;
    }
    if (crossesItself(geometry)) {
      const message = told(({ courseEdits }) => courseEdits.wouldCrossSmooth, { what });
      return refuseEdit('would-cross-itself', message, feature.id);
    }
    changed.push({ ...feature, geometry });
  }
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.smooth, { what: featuresTold(picked.value) }),
    { changed },
  );
}

function cutCorners({ points, closed }: Path): Path {
  const cut: Position[] = [];
  const sides = closed ? points.length : points.length - 1;
  for (let i = 0; i < sides; i++) {
    const a = points[i]!;
    const b = points[(i + 1) % points.length]!;
    cut.push(between(a, b, 0.25), between(a, b, 0.75));
  }
  if (closed) return { points: cut, closed };
  // a line keeps its two ends
  return { points: [points[0]!, ...cut.slice(1, -1), points.at(-1)!], closed };
}

function between(a: Position, b: Position, share: number): Position {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
}
