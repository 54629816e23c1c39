/** Writes properties of features: name, ref, par, stroke index, heights, or any other. */

import { english } from '../../words/english/english.ts';
import {
  type DocumentFeature,
  type EditableDocument,
  type FeatureId,
  kindOf,
  propertiesOf,
} from '../document.ts';
import { acceptProperties } from './accept-properties.ts';
import { type EditResult, makeEdit, pickFeatures } from './edit.ts';
import { KIND_MEMBERS } from './kind-tags.ts';
import { refuseEdit } from './edit.ts';
import { featuresTold } from './words.ts';
import { told } from '../../words/told.ts';

/**
 * Gives all these features the values; null, undefined and an empty text take a property away. Values of known
 * properties are checked as reading checks them, and nothing is changed where one feature would refuse.
 */
export function setProperties(
  document: EditableDocument,
  ids: readonly FeatureId[],
  values: Readonly<Record<string, unknown>>,
): EditResult {
  const picked = pickFeatures(document, ids);
  if (!picked.ok) return picked;
  const keys = Object.keys(values);
  const tag = keys.find((key) => (KIND_MEMBERS as readonly string[]).includes(key));
  if (tag !== undefined) {
    return refuseEdit(
      'value-not-accepted',
      told(({ courseEdits }) => courseEdits.saysKind, { tag }),
    );
  }
  if (keys.length === 0 || keys.includes('__proto__')) {
    return refuseEdit(
      'nothing-to-do',
      told(({ courseEdits }) => courseEdits.noProperty),
    );
  }
  const changed: DocumentFeature[] = [];
  for (const feature of picked.value) {
    const properties = withValues(propertiesOf(feature), values);
    if (properties === undefined) continue;
    const accepted = acceptProperties(feature, kindOf(feature), properties);
    if (!accepted.ok) return accepted;
    changed.push({ ...feature, properties });
  }
  const [key] = keys;
  const what = featuresTold(picked.value);
  const named = keys.length === 1 && key !== undefined && Object.hasOwn(english.courseEdits.properties, key);
  const name = named
    ? told(({ courseEdits }) => courseEdits.names.changeProperty, {
        property: told(({ courseEdits }) => courseEdits.properties[key as PropertyName]),
        what,
      })
    : keys.length === 1
      ? told(({ courseEdits }) => courseEdits.names.changeProperty, { property: key!, what })
      : told(({ courseEdits }) => courseEdits.names.change, { what });
  return makeEdit(document, name, { changed });
}

/** Undefined where nothing changes. Keys that stay keep their place, so that undoing brings back the very same text. */
function withValues(
  old: Readonly<Record<string, unknown>>,
  values: Readonly<Record<string, unknown>>,
): Record<string, unknown> | undefined {
  const next: Record<string, unknown> = { ...old };
  let differs = false;
  for (const [key, value] of Object.entries(values)) {
    if (value === null || value === undefined || value === '') {
      if (!Object.hasOwn(next, key)) continue;
      // eslint-disable-next-line @typescript-eslint/no-dynamic-delete -- a fresh object of our own
      delete next[key];
    } else {
      if (Object.is(next[key], value)) continue;
      next[key] = value;
    }
    differs = true;
  }
  return differs ? next : undefined;
}

type PropertyName = keyof typeof english.courseEdits.properties;
