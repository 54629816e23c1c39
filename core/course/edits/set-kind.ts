/** Makes features of another kind: a bunker that is a green after all. */

import {
  type DocumentFeature,
  type EditableDocument,
  type FeatureId,
  geometryOf,
  propertiesOf,
} from '../document.ts';
import { type FeatureKind } from '../feature-kind.ts';
import { KIND_RULES } from '../schema.ts';
import { acceptProperties } from './accept-properties.ts';
import { type EditResult, makeEdit, pickFeatures, refuseEdit } from './edit.ts';
import { KIND_MEMBERS, tagsOfKind } from './kind-tags.ts';
import {} from './shape.ts';
import { featuresTold, sentenceTold, kindTold, shapesTold, shapeTold } from './words.ts';
import { told } from '../../words/told.ts';

/** Other properties are kept. Refuses a kind that is drawn in another way, or that needs a property which is missing. */
export function setKind(
  document: EditableDocument,
  ids: readonly FeatureId[],
  kind: FeatureKind,
): EditResult {
  const picked = pickFeatures(document, ids);
  if (!picked.ok) return picked;
  const changed: DocumentFeature[] = [];
  for (const feature of picked.value) {
    const geometry = geometryOf(feature);
    const allowed = KIND_RULES[kind].geometry;
    if (geometry === undefined || !allowed.includes(geometry.type)) {
      const drawn =
        geometry === undefined
          ? told(({ courseEdits }) => courseEdits.notDrawn)
          : told(({ courseEdits }) => courseEdits.drawnAs, { shape: shapeTold(geometry.type) });
      return refuseEdit(
        'wrong-geometry',
        told(({ courseEdits }) => courseEdits.kindMustBe, {
          what: sentenceTold(feature),
          drawn,
          kind: kindTold(kind),
          allowed: shapesTold(allowed),
        }),
        feature.id,
      );
    }
    const rest = Object.entries(propertiesOf(feature)).filter(
      ([key]) => !(KIND_MEMBERS as readonly string[]).includes(key),
    );
    const properties = { ...tagsOfKind(kind), ...Object.fromEntries(rest) };
    const accepted = acceptProperties(feature, kind, properties);
    if (!accepted.ok) return accepted;
    if (!sameTags(propertiesOf(feature), properties)) changed.push({ ...feature, properties });
  }
  return makeEdit(
    document,
    told(({ courseEdits }) => courseEdits.names.turn, {
      what: featuresTold(picked.value),
      kind: kindTold(kind),
    }),
    { changed },
  );
}

function sameTags(old: Readonly<Record<string, unknown>>, next: Readonly<Record<string, unknown>>): boolean {
  return KIND_MEMBERS.every((key) => old[key] === next[key]);
}
