/** A played round against its plan: totals, how usual such a round is, and what it is put down to. */

import type { Words } from '../words/words.ts';
import { chanceOfAtMost } from './distribution.ts';
import type { PlannedHoleRecord, RoundDocument } from './format.ts';
import type { HolePlay, ShotClass } from './play-hole.ts';
import { type GainParts, type HoleReview, reviewHole } from './review-hole.ts';
import { FORM_SD_STROKES, holeScores, roundDistribution } from './score-distribution.ts';

export interface RoundReview {
  readonly name: string;
  readonly playedAt: string | null;
  readonly holes: readonly HoleReview[];
  readonly score: number;
  readonly par: number;
  /** Over the holes that have a plan; null where none has. */
  readonly expected: number | null;
  readonly gained: number | null;
  readonly parts: GainParts | null;
  /** Strokes gained per kind of stroke, over the strokes whose places are known; penalties stay with their stroke. */
  readonly byClass: Readonly<Partial<Record<ShotClass, number>>>;
  /** Share of rounds by this plan that score as low or lower on the holes played; null where a hole lacks its plan. */
  readonly shareAsLow: number | null;
  /** Tee shots with the club on the card, of those of which it is known. */
  readonly followed: { readonly count: number; readonly of: number };
}

/** `playOf` gives the solved hole, null where it is not at hand: then totals only are compared there. */
export function reviewRound(
  round: RoundDocument,
  playOf: (hole: number) => HolePlay | null = () => null,
  formSd = FORM_SD_STROKES,
): RoundReview {
  return reviewOf(
    round,
    round.played.map((played) =>
      reviewHole(played, plannedHole(round, played.hole), playOf(played.hole), round.plan?.seed),
    ),
    formSd,
  );
}

/** What the card said of a hole. */
export function plannedHole(round: RoundDocument, number: number): PlannedHoleRecord | undefined {
  return round.plan?.holes.find(({ hole }) => hole === number);
}

/** The round's review from its holes', in the order in which they were played: for holes that are looked at elsewhere. */
export function reviewOf(
  round: RoundDocument,
  holes: readonly HoleReview[],
  formSd = FORM_SD_STROKES,
): RoundReview {
  const known = holes.filter((hole) => hole.expected !== null);
  const judged = holes.filter(({ followedPlan }) => followedPlan !== null);
  return {
    name: round.name,
    playedAt: round.playedAt ?? null,
    holes,
    score: sumOf(holes.map(({ score }) => score)),
    par: sumOf(holes.map(({ par }) => par)),
    expected: known.length === 0 ? null : sumOf(known.map(({ expected }) => expected!)),
    gained: known.length === 0 ? null : sumOf(known.map(({ gained }) => gained!)),
    parts:
      known.length === 0 ? null : sumOfParts(known.flatMap(({ parts }) => (parts === null ? [] : [parts]))),
    byClass: byClassOf(holes),
    shareAsLow: shareAsLow(round, formSd),
    followed: { count: judged.filter(({ followedPlan }) => followedPlan).length, of: judged.length },
  };
}

function shareAsLow(round: RoundDocument, formSd: number): number | null {
  const scores = round.played.map(({ hole }) => {
    const planned = round.plan?.holes.find((candidate) => candidate.hole === hole);
    const chosen = planned?.options.find(({ id }) => id === planned.chosen);
    return chosen === undefined ? null : holeScores(chosen);
  });
  const known = scores.filter((hole) => hole !== null);
  if (known.length === 0 || known.length < scores.length) return null;
  const score = sumOf(round.played.map((hole) => hole.score));
  return chanceOfAtMost(roundDistribution(known, formSd), score);
}

function byClassOf(holes: readonly HoleReview[]): Partial<Record<ShotClass, number>> {
  const sums: Partial<Record<ShotClass, number>> = {};
  for (const { strokes } of holes)
    for (const { shotClass, gained } of strokes) sums[shotClass] = (sums[shotClass] ?? 0) + gained;
  return sums;
}

function sumOfParts(parts: readonly GainParts[]): GainParts {
  const sum = (of: keyof GainParts): number => sumOf(parts.map((part) => part[of]));
  return {
    choice: sum('choice'),
    execution: sum('execution'),
    luck: sum('luck'),
    putting: sum('putting'),
    unexplained: sum('unexplained'),
  };
}

function sumOf(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** What a person reads after a round, most telling first. */
export function reviewWords(review: RoundReview, words: Words): readonly string[] {
  const told = words.round.review;
  const { gained, expected, parts, shareAsLow: share, followed } = review;
  if (gained === null || expected === null) return [told.noPlan];
  const tenth = (value: number): string => words.figures.fixed(Math.abs(value), 1);
  const against = { score: review.score, expected: tenth(expected), strokes: tenth(gained) };
  const said = [gained >= 0 ? told.scoreGained(against) : told.scoreLost(against)];
  if (share !== null) {
    const per10 = Math.round(10 * share);
    said.push(told.asLow({ count: per10 === 0 ? told.fewerThanOne : String(per10) }));
  }
  if (followed.of > 0) said.push(told.followed(followed));
  if (parts !== null)
    for (const part of ['choice', 'execution', 'luck', 'putting', 'unexplained'] as const) {
      const line = { strokes: tenth(parts[part]), what: told.parts[part] };
      if (Math.abs(parts[part]) >= 0.05)
        said.push(parts[part] >= 0 ? told.gainedBy(line) : told.lostBy(line));
    }
  return said;
}
