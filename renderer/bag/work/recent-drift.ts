/** Which clubs changed of late: the last six weeks with dated shots held against the year before them. */

import { readEvidence } from '../../../core/player/build.ts';
import { drift, driftSentence } from '../../../core/player/drift.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import type { StillAir } from '../../../core/player/still-air.ts';

const RECENT_DAYS = 42;
const BEFORE_DAYS = 365;
const DAY_MS = 86_400_000;

export type DriftSentences = Readonly<Record<'yards' | 'metres', readonly string[]>>;

/** One step per club and swing. */
export function* recentDriftsInSteps(
  document: PlayerDocument,
  air: StillAir,
): Generator<void, DriftSentences, void> {
  const read = readEvidence(document, { air });
  const yards: string[] = [];
  const metres: string[] = [];
  if (!read.ok) return { yards, metres };
  const days = read.value.evidence.flatMap(({ shots }) => shots.flatMap(({ day }) => day ?? []));
  if (days.length === 0) return { yards, metres };
  const newest = days.reduce((latest, day) => Math.max(latest, day), -Infinity);
  const at = (day: number): string => new Date(Math.floor(day) * DAY_MS).toISOString().slice(0, 10);
  const split = at(newest - RECENT_DAYS);
  const before = {
    name: `the year before ${split}`,
    from: at(newest - RECENT_DAYS - BEFORE_DAYS),
    until: split,
  };
  const after = { name: 'the last six weeks', from: split, until: at(newest + 1) };
  for (const evidence of read.value.evidence) {
    yield;
    const found = drift(evidence, before, after);
    if (!found.ok) continue;
    for (const [units, list] of [
      ['yards', yards],
      ['metres', metres],
    ] as const) {
      const sentence = driftSentence(found.value, units);
      if (sentence !== null) list.push(sentence);
    }
  }
  return { yards, metres };
}
