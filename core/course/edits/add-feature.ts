/** Adds a feature that was drawn. */

import { type DocumentFeature, type EditableDocument, freeIds } from '../document.ts';
import { type FeatureKind, KIND_WORDS } from '../feature-kind.ts';
import { type Geometry, KIND_RULES } from '../schema.ts';
import { acceptProperties } from './accept-properties.ts';
import { type EditResult, makeEdit, refuseEdit } from './edit.ts';
import { tagsOfKind } from './kind-tags.ts';
import { checkGeometry, crossesItself, GEOMETRY_WORDS, tidyGeometry } from './shape.ts';
import { featureWords } from './words.ts';

export interface NewFeature {
  readonly kind: FeatureKind;
  /** Rings may be open and run either way round. */
  readonly geometry: Geometry;
  /** Number of the hole that it belongs to. */
  readonly hole?: number;
  /** Further properties: name, par, height and so on. */
  readonly properties?: Readonly<Record<string, unknown>>;
}

/** The new feature is the last of the document and the only one touched. Refuses an outline that crosses itself. */
export function addFeature(document: EditableDocument, drawn: NewFeature): EditResult {
  const what = `The ${KIND_WORDS[drawn.kind]}`;
  const allowed = KIND_RULES[drawn.kind].geometry;
  if (!allowed.includes(drawn.geometry.type)) {
    return refuseEdit(
      'wrong-geometry',
      `${what} must be ${allowed.map((type) => GEOMETRY_WORDS[type]).join(' or ')}, not ${GEOMETRY_WORDS[drawn.geometry.type]}.`,
    );
  }
  // checked before the rings are put in order: a ring of two points has no order
  const checked = checkGeometry(drawn.geometry, what);
  if (!checked.ok) return checked;
  const geometry = tidyGeometry(drawn.geometry);
  const rounded = checkGeometry(geometry, what);
  if (!rounded.ok) return rounded;
  if (crossesItself(geometry)) {
    return refuseEdit(
      'crosses-itself',
      `${what} crosses its own outline. Draw the corners in order round the area.`,
    );
  }
  const properties = {
    ...tagsOfKind(drawn.kind),
    ...(drawn.hole === undefined ? {} : { ref: String(drawn.hole) }),
    ...drawn.properties,
  };
  const [id] = freeIds(document, 1);
  const feature = { type: 'Feature', id: id!, properties, geometry } satisfies DocumentFeature;
  const accepted = acceptProperties(feature, drawn.kind, properties);
  if (!accepted.ok) return accepted;
  return makeEdit(document, `Add ${featureWords(feature)}`, { added: [{ feature }] });
}
