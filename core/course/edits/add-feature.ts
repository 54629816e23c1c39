/** Adds a feature that was drawn. */

import { type DocumentFeature, type EditableDocument, freeIds } from '../document.ts';
import { type FeatureKind } from '../feature-kind.ts';
import { type Geometry, KIND_RULES } from '../schema.ts';
import { acceptProperties } from './accept-properties.ts';
import { type EditResult, makeEdit, refuseEdit } from './edit.ts';
import { tagsOfKind } from './kind-tags.ts';
import { checkGeometry, crossesItself, tidyGeometry } from './shape.ts';
import { featureTold, kindTold, shapesTold, shapeTold } from './words.ts';
import { told } from '../../words/told.ts';

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
  const what = told(({ features }) => features.sentence, { what: kindTold(drawn.kind) });
  const allowed = KIND_RULES[drawn.kind].geometry;
  if (!allowed.includes(drawn.geometry.type)) {
    return refuseEdit(
      'wrong-geometry',
      told(({ courseEdits }) => courseEdits.mustBe, {
        what,
        allowed: shapesTold(allowed),
        drawn: shapeTold(drawn.geometry.type),
      }),
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
      told(({ courseEdits }) => courseEdits.crossesDrawn, { what }),
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
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.add, { what: featureTold(feature) }),
    { added: [{ feature }] },
  );
}
