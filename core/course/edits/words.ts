/** Features in words, for the names of edits and for refusals. */

import { english } from '../../words/english/english.ts';
import { told, type Told } from '../../words/told.ts';
import { capital, type Words } from '../../words/words.ts';
import { type DocumentFeature, holeOf, kindOf, propertiesOf } from '../document.ts';
import type { FeatureKind } from '../feature-kind.ts';
import type { GeometryType } from '../schema.ts';

/** `fairway of hole 3`, `bunker "Deep one"`, `woods`, `feature "Shed"`, `feature`. */
export function featureWords(feature: DocumentFeature, { features }: Words = english): string {
  const kind = kindOf(feature);
  const hole = holeOf(feature);
  const { name } = propertiesOf(feature);
  if (kind === 'hole')
    return hole === undefined ? features.holeLine : features.lineOf({ hole: String(hole) });
  const what = kind === undefined ? features.feature : features.kinds[kind];
  if (hole !== undefined) return features.ofHole({ what, hole: String(hole) });
  return typeof name === 'string' && name !== '' ? features.named({ what, name: shorten(name) }) : what;
}

/** One feature as `featureWords`; several as `3 bunkers` where all are of one kind, else `3 features`. */
export function featuresWords(chosen: readonly DocumentFeature[], words: Words = english): string {
  const { features } = words;
  const [first] = chosen;
  if (first === undefined) return features.nothing;
  if (chosen.length === 1) return featureWords(first, words);
  const kind = kindOf(first);
  const alike = kind !== undefined && chosen.every((feature) => kindOf(feature) === kind);
  return alike ? countWords(chosen.length, kind, words) : features.some({ count: chosen.length });
}

/** `3 bunkers`, `1 hole line`. */
export function countWords(count: number, kind: FeatureKind, { features }: Words = english): string {
  return features.counts[kind]({ count });
}

/** The feature at the start of a sentence. */
export function sentenceWords(feature: DocumentFeature, words: Words = english): string {
  return capital(words.features.sentence({ what: featureWords(feature, words) }));
}

/** The same to be told later, in the language of whoever reads it. */
export function featureTold(feature: DocumentFeature): Told {
  const kind = kindOf(feature);
  const hole = holeOf(feature);
  const { name } = propertiesOf(feature);
  if (kind === 'hole')
    return hole === undefined
      ? told(({ features }) => features.holeLine)
      : told(({ features }) => features.lineOf, { hole: String(hole) });
  const what = kind === undefined ? told(({ features }) => features.feature) : kindTold(kind);
  if (hole !== undefined) return told(({ features }) => features.ofHole, { what, hole: String(hole) });
  return typeof name === 'string' && name !== ''
    ? told(({ features }) => features.named, { what, name: shorten(name) })
    : what;
}

export function featuresTold(chosen: readonly DocumentFeature[]): Told {
  const [first] = chosen;
  if (first === undefined) return told(({ features }) => features.nothing);
  if (chosen.length === 1) return featureTold(first);
  const kind = kindOf(first);
  const alike = kind !== undefined && chosen.every((feature) => kindOf(feature) === kind);
  return alike
    ? countTold(chosen.length, kind)
    : told(({ features }) => features.some, { count: chosen.length });
}

export function countTold(count: number, kind: FeatureKind): Told {
  return told(({ features }) => features.counts[kind], { count });
}

export function sentenceTold(feature: DocumentFeature): Told {
  return told(({ features }) => features.sentence, { what: featureTold(feature) });
}

export function kindTold(kind: FeatureKind): Told {
  return told(({ features }) => features.kinds[kind]);
}

/** `an area`. */
export function shapeTold(type: GeometryType): Told {
  return told(({ courseEdits }) => courseEdits.shapes[type]);
}

/** `a point or an area`. */
export function shapesTold(types: readonly GeometryType[]): Told {
  return types
    .map(shapeTold)
    .reduce((first, second) => told(({ courseEdits }) => courseEdits.or, { first, second }));
}

function shorten(text: string): string {
  return text.length <= 40 ? text : `${text.slice(0, 39)}…`;
}
