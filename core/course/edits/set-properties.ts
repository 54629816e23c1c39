/** Writes properties of features: name, ref, par, stroke index, heights, or any other. */

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
import { featuresWords } from './words.ts';

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
    return refuseEdit('value-not-accepted', `${tag} says what kind the feature is. Change its kind instead.`);
  }
  if (keys.length === 0 || keys.includes('__proto__')) {
    return refuseEdit('nothing-to-do', 'No property was named. Name one, such as par or height.');
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
  const what = keys.length === 1 ? `${NAMES[key!] ?? key!} of ` : '';
  return makeEdit(document, `Change ${what}${featuresWords(picked.value)}`, { changed });
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

/** What a property is called in the list of what can be undone. */
const NAMES: Readonly<Record<string, string>> = {
  ref: 'hole number',
  name: 'name',
  par: 'par',
  handicap: 'stroke index',
  height: 'height',
  diameter_crown: 'crown',
  canopy_base_m: 'canopy base',
  canopy_density_per_m: 'canopy density',
  leaf_type: 'leaves',
  leaf_cycle: 'leaf cycle',
  ele: 'elevation',
  lip_m: 'lip',
  slope_percent: 'slope',
  downhill_deg: 'downhill direction',
  card_length_m: 'card length',
};
