/** The holes of the round as far as they are worked out, and the target that is set for them. */

import type { Course, Hole } from '../../../core/course/model.ts';
import type { PlayerModel } from '../../../core/player/model.ts';
import type { TeePlanned } from '../../../core/round/figures.ts';
import { choicesOf, roundOutlook, type RoundOutlook } from '../../../core/round/figures.ts';
import { playingHandicap, ALLOWANCE, type TeeRating } from '../../../core/round/handicap.ts';
import type { HoleChoices } from '../../../core/round/play-to-target.ts';
import { scoreToMeet, type Target, targetWords } from '../../../core/round/target.ts';
import type { AppState, HoleResult } from '../../state/app-state.ts';
import { remember } from '../../state/remember.ts';
import { settledWorkKey } from '../../state/selectors.ts';
import type { Wishes } from './round-state.ts';
import type { Words } from '../../../core/words/words.ts';

export interface PlannedHole extends TeePlanned {
  readonly result: HoleResult;
}

export interface RoundHoles {
  readonly all: readonly Hole[];
  /** In the order of play; worked out for the present tees, positions and files. */
  readonly ready: readonly PlannedHole[];
  /** Holes that cannot be planned. */
  readonly failed: readonly number[];
}

const NO_HOLES: readonly Hole[] = [];
const build = remember((all: readonly Hole[], results: string, held: AppState['work']): RoundHoles => {
  const fresh = new Set(results.split(' ').map(Number));
  return {
    all,
    ready: all.flatMap((hole): PlannedHole[] => {
      const result = fresh.has(hole.number) ? (held[hole.number]?.result ?? null) : null;
      if (result === null || result.teePlan.options.every(({ kind }) => kind !== 'shot')) return [];
      const { number, par, strokeIndex } = hole;
      return [{ hole: number, par, strokeIndex: strokeIndex ?? null, plan: result.teePlan, result }];
    }),
    failed: all.flatMap(({ number }) => (held[number]?.status === 'failed' ? [number] : [])),
  };
});

let lastHeld: { readonly sign: string; readonly work: AppState['work'] } | null = null;

/** Identical for equal states: progress of other holes changes nothing. */
export function roundHoles(state: AppState): RoundHoles {
  const all = state.course?.value.holes ?? NO_HOLES;
  const fresh = all.filter((hole) => state.work[hole.number]?.result?.key === settledWorkKey(state, hole));
  const numbers = fresh.map(({ number }) => number).join(' ');
  const failed = all.filter(({ number }) => state.work[number]?.status === 'failed');
  const keys = fresh.map((hole) => state.work[hole.number]?.result?.key ?? '').join('|');
  const sign = `${keys}#${failed.map(({ number }) => number).join(' ')}`;
  if (lastHeld?.sign !== sign) lastHeld = { sign, work: state.work };
  return build(all, numbers, lastHeld.work);
}

export function parOf(holes: readonly { readonly par: number }[]): number {
  return holes.reduce((sum, { par }) => sum + par, 0);
}

/** For eighteen holes the next round number above what the handicap makes of par; else a bogey on each. */
export function firstScore(course: Course, player: PlayerModel | null): number {
  const par = parOf(course.holes);
  if (course.holes.length !== 18) return par + course.holes.length + 1;
  return 10 * Math.ceil((par + handicapOf(player) + 1) / 10);
}

/** The target wished for, with what is not said taken from course and player. */
export function targetOf(wishes: Wishes, course: Course, player: PlayerModel | null): Target {
  const score = wishes.score ?? firstScore(course, player);
  switch (wishes.targetKind) {
    case 'beat':
      return { kind: 'beat', score };
    case 'score':
      return { kind: 'score', score };
    case 'net-par':
      return { kind: 'net-par', playingHandicap: strokesFor(wishes, course, player) };
    case 'handicap': {
      const aim = wishes.aim ?? handicapOf(player);
      return { kind: 'handicap', aim, tees: ratingOf(wishes, course) };
    }
  }
}

/** Counted for a player without a handicap; the pages say so. */
const ASSUMED_HANDICAP = 18;

export function handicapOf(player: PlayerModel | null): number {
  return player?.handicap ?? ASSUMED_HANDICAP;
}

/** Rating of the tees played; without one the course counts as rated at its par. */
export function ratingOf(wishes: Wishes, course: Course): TeeRating {
  const par = parOf(course.holes);
  return {
    courseRating: wishes.courseRating ?? par,
    slopeRating: wishes.slopeRating ?? 113,
    par,
    holes: course.holes.length === 9 ? 9 : 18,
  };
}

/** Playing handicap in stroke play. */
export function strokesFor(wishes: Wishes, course: Course, player: PlayerModel | null): number {
  return playingHandicap(handicapOf(player), ratingOf(wishes, course), ALLOWANCE.strokePlay);
}

export interface Outlook extends RoundOutlook {
  readonly aim: Target;
  readonly words: string;
}

/** Odds over the holes that are worked out; `target` is for the whole course. */
export const outlookOf = remember(
  (
    holes: RoundHoles,
    wishes: Wishes,
    course: Course | null,
    player: PlayerModel | null,
    words: Words,
  ): Outlook | null => {
    if (course === null || holes.ready.length === 0) return null;
    const aim = targetOf(wishes, course, player);
    const target = scoreToMeet(aim, parOf(course.holes));
    return { ...roundOutlook(holes.ready, target, wishes.formSd), aim, words: targetWords(aim, words) };
  },
);

export const tryableChoices = remember((holes: RoundHoles): readonly HoleChoices[] => choicesOf(holes.ready));
