/**
 * The colour of a tee, as the course chooses it: `colour` on a tee marker, a hex triplet as in OpenStreetMap's key of
 * that name, or one of the sixteen basic names of the web (W3C CSS Color Module Level 3, 4.1).
 */

import {
  type DocumentFeature,
  type EditableDocument,
  type FeatureId,
  kindOf,
  propertiesOf,
} from './document.ts';

export const TEE_COLOUR_MEMBER = 'colour';

const BASIC: Readonly<Record<string, string>> = {
  black: '#000000',
  silver: '#c0c0c0',
  gray: '#808080',
  white: '#ffffff',
  maroon: '#800000',
  red: '#ff0000',
  purple: '#800080',
  fuchsia: '#ff00ff',
  green: '#008000',
  lime: '#00ff00',
  olive: '#808000',
  yellow: '#ffff00',
  navy: '#000080',
  blue: '#0000ff',
  teal: '#008080',
  aqua: '#00ffff',
};

/** `#rrggbb` in small letters; undefined where the properties have none that can be read. */
export function teeColourOf(properties: Readonly<Record<string, unknown>>): string | undefined {
  const value = properties[TEE_COLOUR_MEMBER];
  if (typeof value !== 'string') return undefined;
  const text = value.trim().toLowerCase();
  if (/^#[0-9a-f]{6}$/u.test(text)) return text;
  return Object.hasOwn(BASIC, text) ? BASIC[text] : undefined;
}

/** The markers of all holes that bear the name of this one: a tee has one colour all over the course. */
export function markersOfTee(document: EditableDocument, marker: DocumentFeature): readonly FeatureId[] {
  const { name } = propertiesOf(marker);
  if (typeof name !== 'string' || name.trim() === '') return [marker.id];
  return document.features
    .filter((feature) => kindOf(feature) === 'tee-marker' && propertiesOf(feature)['name'] === name)
    .map(({ id }) => id);
}
