/** Drops corners that hardly matter: Douglas and Peucker's line simplification, by turf, in metres. */

import { simplify as simplifyLine } from '@turf/turf';
import { type DocumentFeature, type EditableDocument, type FeatureId } from '../document.ts';
import { makeLocalFrame } from '../local-frame.ts';
import type { Position } from '../positions.ts';
import { type EditResult, makeEdit, pickFeatures, refuseEdit } from './edit.ts';
import {
  checkGeometry,
  crossesItself,
  fewestPoints,
  geometryFrom,
  type Path,
  pathsOf,
  requireGeometry,
  tidyGeometry,
} from './shape.ts';
import { featuresTold, sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

/**
 * What is left are corners of the old outline, which nowhere lies farther than `toleranceM` from the new one. A ring
 * that would vanish keeps its shape. Refuses where the simpler outline would cross itself.
 */
export function simplify(
  document: EditableDocument,
  ids: readonly FeatureId[],
  toleranceM: number,
): EditResult {
  const picked = pickFeatures(document, ids);
  if (!picked.ok) return picked;
  if (!(toleranceM > 0 && toleranceM <= 1000)) {
    return refuseEdit(
      'value-not-accepted',
      told(({ courseEdits }) => courseEdits.tolerance, { metres: toleranceM }),
    );
  }
  const changed: DocumentFeature[] = [];
  for (const feature of picked.value) {
    const required = requireGeometry(feature, ['LineString', 'Polygon', 'MultiPolygon']);
    if (!required.ok) return required;
    const what = sentenceTold(feature);
    const parts = pathsOf(required.value).map((part) => part.map((path) => thinned(path, toleranceM)));
    const geometry = tidyGeometry(geometryFrom(required.value, parts));
    const checked = checkGeometry(geometry, what, feature.id);
    if (!checked.ok) return checked;
    if (crossesItself(geometry) && !crossesItself(required.value)) {
      const message = told(({ courseEdits }) => courseEdits.wouldCross, { what, metres: toleranceM });
      return refuseEdit('would-cross-itself', message, feature.id);
    }
    changed.push({ ...feature, geometry });
  }
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.simplify, { what: featuresTold(picked.value) }),
    { changed },
  );
}

function thinned(path: Path, toleranceM: number): Path {
  const [first] = path.points;
  if (first === undefined) return path;
  const frame = makeLocalFrame([first[0], first[1]]);
  const byPlace = new Map<string, Position>();
  const planar = path.points.map((point) => {
    const { x, y } = frame.toSpot([point[0], point[1]]);
    byPlace.set(`${x} ${y}`, point);
    return [x, y];
  });
  const coordinates = path.closed ? [...planar, planar[0]!] : planar;
  const simpler = simplifyLine(
    { type: 'LineString', coordinates },
    { tolerance: toleranceM, highQuality: true },
  );
  const points = simpler.coordinates.map(([x, y]) => byPlace.get(`${x} ${y}`)!);
  const open = path.closed ? points.slice(0, -1) : points;
  return open.length < fewestPoints(path) ? path : { ...path, points: open };
}
