/**
 * Did a club change from one period to another? Both periods are estimated together, as the same club with a change of
 * its own for each period, so that a handful of shots does not raise an alarm; the change comes with its interval.
 */

import { type Result, refuse, succeed } from '../result.ts';
import { LEAST_SHOTS } from './measured-shot.ts';
import type { Club, Swing } from './model.ts';
import {
  estimateBag,
  INTERVAL_SHARE,
  SPREAD_NUMBERS,
  SPREAD_WIDTH,
  type SpreadEvidence,
} from './posterior.ts';
import { type Estimate, tailInterval } from './posterior/intervals.ts';
import { dayOf } from './recency.ts';
import { clubInSentence } from './gap-words.ts';
import type { Words } from '../words/words.ts';

/** Dates (ISO 8601): `from` belongs to the period, `until` no longer does. */
export interface Period {
  /** As it stands in a sentence: `spring`. */
  readonly name: string;
  readonly from: string;
  readonly until: string;
}

const CHANGES = ['carryMean', 'carrySd', 'directionMean', 'directionSd', 'poorShare'] as const;
export type ChangedNumber = (typeof CHANGES)[number];

export interface Drift {
  readonly club: Club;
  readonly swing: Swing;
  readonly before: Period;
  readonly after: Period;
  readonly shotsBefore: number;
  readonly shotsAfter: number;
  /** After less before, metres and radians, with 90 % intervals. */
  readonly changes: Readonly<Record<ChangedNumber, Estimate>>;
}

/** The change of one club and swing. Refuses periods that are no dates, and fewer than five shots in either. */
export function drift(evidence: SpreadEvidence, before: Period, after: Period): Result<Drift, string> {
  const early = within(evidence, before);
  const late = within(evidence, after);
  if (early === undefined || late === undefined) {
    return refuse('A period needs two dates such as 2026-03-01, the first before the second.');
  }
  for (const [shots, period] of [
    [early, before],
    [late, after],
  ] as const) {
    if (shots.length < LEAST_SHOTS) {
      return refuse(
        `${evidence.club.name} has ${shots.length} dated shots in ${period.name}; at least ${LEAST_SHOTS} are needed to speak of a change.`,
      );
    }
  }
  const { entries } = estimateBag([
    { ...evidence, shots: early, period: 1 },
    { ...evidence, shots: late, period: 2 },
  ]);
  const [first, second] = [entries[0]!, entries[1]!];
  const differences = second.draws.map((value, i) => value - first.draws[i]!);
  const changes = CHANGES.map((name): [ChangedNumber, Estimate] => [
    name,
    tailInterval(differences, SPREAD_NUMBERS.indexOf(name), SPREAD_WIDTH, INTERVAL_SHARE),
  ]);
  return succeed({
    club: evidence.club,
    swing: evidence.swing,
    before,
    after,
    shotsBefore: first.shots,
    shotsAfter: second.shots,
    changes: Object.fromEntries(changes) as Record<ChangedNumber, Estimate>,
  });
}

function within(evidence: SpreadEvidence, period: Period): SpreadEvidence['shots'] | undefined {
  const [from, until] = [dayOf(period.from), dayOf(period.until)];
  if (from === undefined || until === undefined || from >= until) return undefined;
  return evidence.shots.filter(({ day }) => day !== undefined && day >= from && day < until);
}

const YARD_M = 0.9144;

/** "7-iron carries 6 m less than in spring (90 % interval 3 to 9 m)." Null where the carry may as well be the same. */
export function driftSentence(
  found: Drift,
  period: string,
  units: 'yards' | 'metres',
  words: Words,
): string | null {
  const { mean, low, high } = found.changes.carryMean;
  if (low <= 0 && high >= 0) return null;
  const [unit, word] = units === 'yards' ? [YARD_M, 'yd'] : [1, 'm'];
  const ends = [Math.abs(low), Math.abs(high)].sort((a, b) => a - b).map((end) => Math.round(end / unit));
  const values = {
    club: clubInSentence(found, words),
    by: `${Math.round(Math.abs(mean) / unit)} ${word}`,
    period,
    low: String(ends[0]!),
    high: `${ends[1]!} ${word}`,
  };
  return mean < 0 ? words.spread.drift.less(values) : words.spread.drift.more(values);
}
