/** Which clubs changed of late: the last six weeks with dated shots held against the year before them. */

import type { Words } from '../../../core/words/words.ts';
import type { Units } from '../../state/measures.ts';
import { readEvidence } from '../../../core/player/build.ts';
import { drift, type Drift, driftSentence } from '../../../core/player/drift.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import type { StillAir } from '../../../core/player/still-air.ts';

const RECENT_DAYS = 42;
const BEFORE_DAYS = 365;
const DAY_MS = 86_400_000;

/** The change of a club, and the day that parts the two periods. */
export interface RecentDrift {
  readonly found: Drift;
  readonly splitDay: string;
}

/** One step per club and swing. */
export function* recentDriftsInSteps(
  document: PlayerDocument,
  air: StillAir,
): Generator<void, readonly RecentDrift[], void> {
  const read = readEvidence(document, { air });
  if (!read.ok) return [];
  const days = read.value.evidence.flatMap(({ shots }) => shots.flatMap(({ day }) => day ?? []));
  if (days.length === 0) return [];
  const newest = days.reduce((latest, day) => Math.max(latest, day), -Infinity);
  const at = (day: number): string => new Date(Math.floor(day) * DAY_MS).toISOString().slice(0, 10);
  const split = at(newest - RECENT_DAYS);
  const before = {
    name: 'before',
    from: at(newest - RECENT_DAYS - BEFORE_DAYS),
    until: split,
  };
  const after = { name: 'of late', from: split, until: at(newest + 1) };
  const drifts: RecentDrift[] = [];
  for (const evidence of read.value.evidence) {
    yield;
    const found = drift(evidence, before, after);
    if (found.ok) drifts.push({ found: found.value, splitDay: split });
  }
  return drifts;
}

/** Null where a club may as well be the same. */
export function driftWords({ found, splitDay }: RecentDrift, units: Units, words: Words): string | null {
  const day = words.figures.date(splitDay);
  return driftSentence(found, words.spread.drift.yearBefore({ day }), units, words);
}
