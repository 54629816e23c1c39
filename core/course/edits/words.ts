/** Features in words, for the names of edits and for refusals. */

import { type DocumentFeature, holeOf, kindOf, propertiesOf } from '../document.ts';
import { type FeatureKind, KIND_WORDS } from '../feature-kind.ts';

/** `fairway of hole 3`, `bunker "Deep one"`, `woods`, `feature "Shed"`, `feature`. */
export function featureWords(feature: DocumentFeature): string {
  const kind = kindOf(feature);
  const hole = holeOf(feature);
  const { name } = propertiesOf(feature);
  if (kind === 'hole') return hole === undefined ? 'hole line' : `line of hole ${hole}`;
  const what = kind === undefined ? 'feature' : KIND_WORDS[kind];
  if (hole !== undefined) return `${what} of hole ${hole}`;
  return typeof name === 'string' && name !== '' ? `${what} "${shorten(name)}"` : what;
}

/** One feature as `featureWords`; several as `3 bunkers` where all are of one kind, else `3 features`. */
export function featuresWords(features: readonly DocumentFeature[]): string {
  const [first] = features;
  if (first === undefined) return 'nothing';
  if (features.length === 1) return featureWords(first);
  const kind = kindOf(first);
  const alike = kind !== undefined && features.every((feature) => kindOf(feature) === kind);
  return `${features.length} ${alike ? PLURALS[kind] : 'features'}`;
}

/** `3 bunkers`, `1 hole line`. */
export function countWords(count: number, kind: FeatureKind): string {
  return `${count} ${count === 1 ? KIND_WORDS[kind] : PLURALS[kind]}`;
}

/** The feature at the start of a sentence. */
export function sentenceWords(feature: DocumentFeature): string {
  return `The ${featureWords(feature)}`;
}

const PLURALS: Readonly<Record<FeatureKind, string>> = {
  tee: 'tee areas',
  fairway: 'fairways',
  green: 'greens',
  bunker: 'bunkers',
  rough: 'areas of rough',
  'long-rough': 'areas of long rough',
  'penalty-yellow': 'yellow penalty areas',
  'penalty-red': 'red penalty areas',
  'out-of-bounds': 'areas out of bounds',
  path: 'paths',
  woods: 'areas of woods',
  boundary: 'boundaries',
  hole: 'hole lines',
  tree: 'trees',
  'tee-marker': 'tee markers',
  'hole-position': 'hole positions',
  'ground-level': 'ground levels',
  'slope-mark': 'slope arrows',
};

function shorten(text: string): string {
  return text.length <= 40 ? text : `${text.slice(0, 39)}…`;
}
