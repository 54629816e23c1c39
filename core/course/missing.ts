/** What a thing that a course lacks is told as, and what would mend it. */

import type { FeatureId } from './document.ts';
import type { NewFeature } from './edits/add-feature.ts';
import type { Told } from '../words/told.ts';
import type { FeatureKind } from './feature-kind.ts';

export type MissingCode =
  | 'no-holes'
  | 'no-line'
  | 'no-green'
  | 'no-par'
  | 'no-stroke-index'
  | 'no-tee-area'
  | 'no-tee-marker'
  | 'no-hole-position'
  | 'no-canopy-height'
  | 'no-heights'
  | 'card-length-differs';

export interface Missing {
  readonly code: MissingCode;
  /** `stops` keeps the hole from being planned; `assumed` is planned with what the message says. */
  readonly weight: 'stops' | 'assumed';
  /** What is missing and what is taken instead. */
  readonly message: Told;
  /** The features that it is about. */
  readonly features: readonly FeatureId[];
  readonly fix: Fix | null;
}

/** What would mend it. `write` and `add` are done by `applyFix`; `draw` and `ask` need the person. */
export type Fix =
  | { readonly how: 'draw'; readonly label: Told; readonly kind: FeatureKind; readonly hole?: number }
  | {
      readonly how: 'ask';
      readonly label: Told;
      readonly features: readonly FeatureId[];
      readonly property: string;
      /** Values that make sense and are free. */
      readonly choices?: readonly number[];
    }
  | {
      readonly how: 'write';
      readonly label: Told;
      readonly features: readonly FeatureId[];
      readonly values: Readonly<Record<string, unknown>>;
    }
  | { readonly how: 'add'; readonly label: Told; readonly feature: NewFeature };
