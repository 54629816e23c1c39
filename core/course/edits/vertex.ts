/** Finds the corner that an address names and puts a changed path back in its place. */

import { type Result, succeed } from '../../result.ts';
import { type DocumentFeature, type EditableDocument, featureById } from '../document.ts';
import type { Geometry } from '../schema.ts';
import { noSuchFeature, type Refusal, refuseEdit } from './edit.ts';
import {
  geometryFrom,
  type Path,
  pathsOf,
  requireGeometry,
  tidyGeometry,
  type VertexAddress,
} from './shape.ts';
import { sentenceTold } from './words.ts';
import { told } from '../../words/told.ts';

export interface FoundVertex {
  readonly feature: DocumentFeature;
  readonly geometry: Geometry;
  readonly path: Path;
  /** Index into `path.points`. */
  readonly vertex: number;
}

export function findVertex(document: EditableDocument, address: VertexAddress): Result<FoundVertex, Refusal> {
  const feature = featureById(document, address.feature);
  if (feature === undefined) return noSuchFeature(address.feature);
  const required = requireGeometry(feature, ['Point', 'LineString', 'Polygon', 'MultiPolygon']);
  if (!required.ok) return required;
  const geometry: Geometry = required.value;
  const path = pathsOf(geometry)[address.part ?? 0]?.[address.ring ?? 0];
  const count = path?.points.length ?? 0;
  const vertex = path?.closed === true && address.vertex === count ? 0 : address.vertex;
  if (path === undefined || !Number.isInteger(vertex) || vertex < 0 || vertex >= count) {
    return refuseEdit(
      'no-such-vertex',
      told(({ courseEdits }) => courseEdits.noCorner, { what: sentenceTold(feature) }),
      feature.id,
    );
  }
  return succeed({ feature, geometry, path, vertex });
}

/** The geometry with the addressed path replaced, rings closed and in order. */
export function withPath(geometry: Geometry, address: VertexAddress, points: Path['points']): Geometry {
  const parts = pathsOf(geometry).map((part, partIndex) =>
    part.map((path, ringIndex) =>
      partIndex === (address.part ?? 0) && ringIndex === (address.ring ?? 0) ? { ...path, points } : path,
    ),
  );
  return tidyGeometry(geometryFrom(geometry, parts));
}
