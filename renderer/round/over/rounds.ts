/** Every round of the workspace in short, oldest first, for trends. */

import { firstFault } from '../../../core/words/told.ts';
import { meanOf, varianceOf } from '../../../core/round/distribution.ts';
import type { RoundDocument } from '../../../core/round/format.ts';
import { parseRoundText, totalsOf } from '../../../core/round/record.ts';
import { plannedHole, reviewRound } from '../../../core/round/review.ts';
import { holeScores } from '../../../core/round/score-distribution.ts';
import type { Host } from '../../../electron/contract/host.ts';
import type { Words } from '../../../core/words/words.ts';

export interface RoundInShort {
  readonly token: string;
  readonly name: string;
  readonly playedAt: string;
  readonly player: string;
  readonly course: string;
  readonly holes: number;
  readonly score: number;
  readonly par: number;
  /** Null without a plan for every hole played. */
  readonly expected: number | null;
  readonly gained: number | null;
  readonly putts: number | null;
  readonly penalties: number | null;
  readonly followed: { readonly count: number; readonly of: number };
  /** Variance that the holes' own luck gives the score; null where the plan is missing. */
  readonly holeVariance: number | null;
}

export interface RoundsRead {
  readonly rounds: readonly RoundInShort[];
  /** Files that could not be read, with the reason. */
  readonly left: readonly { readonly name: string; readonly why: string }[];
}

/** Files beyond this many, the oldest first, are not read. */
const MOST_ROUNDS = 200;

export async function readRounds(host: Host, words: Words): Promise<RoundsRead> {
  const listed = await host.list();
  if (!listed.ok) return { rounds: [], left: [{ name: words.round.over.workspace, why: listed.message }] };
  const files = listed.value
    .filter(({ kind }) => kind === 'round')
    .sort((a, b) => b.modifiedAt - a.modifiedAt)
    .slice(0, MOST_ROUNDS);
  const rounds: RoundInShort[] = [];
  const left: { name: string; why: string }[] = [];
  const seen = new Set<string>();
  for (const { token, name } of files) {
    const opened = await host.open(token);
    if (!opened.ok) {
      left.push({ name, why: opened.message });
      continue;
    }
    const parsed = parseRoundText(opened.value.text);
    if (!parsed.ok)
      left.push({ name, why: firstFault(parsed.error, words) ?? words.round.over.cannotBeRead });
    else if (parsed.value.round.played.length > 0) {
      const { playedAt, player, course, played } = parsed.value.round;
      // A copy made to be shared lies beside the round itself: it counts once.
      const same = JSON.stringify([playedAt, player.name, course.name, played]);
      if (!seen.has(same)) rounds.push(inShort(token, parsed.value.round));
      seen.add(same);
    }
  }
  rounds.sort((a, b) => (a.playedAt < b.playedAt ? -1 : a.playedAt > b.playedAt ? 1 : 0));
  return { rounds, left };
}

export function inShort(token: string, round: RoundDocument): RoundInShort {
  const review = reviewRound(round);
  const totals = totalsOf(round);
  const scores = round.played.map(({ hole }) => {
    const planned = plannedHole(round, hole);
    const chosen = planned?.options.find(({ id }) => id === planned.chosen);
    return chosen === undefined ? null : holeScores(chosen);
  });
  const known = scores.filter((hole) => hole !== null);
  const isPlanned = known.length === scores.length;
  return {
    ...{ token, name: round.name, playedAt: round.playedAt ?? '', player: round.player.name },
    ...{ course: round.course.name, holes: totals.holes, score: totals.score, par: totals.par },
    expected: isPlanned ? known.reduce((sum, hole) => sum + meanOf(hole), 0) : null,
    gained: isPlanned ? review.gained : null,
    putts: totals.putts,
    penalties: totals.penalties,
    followed: review.followed,
    holeVariance: isPlanned ? known.reduce((sum, hole) => sum + varianceOf(hole), 0) : null,
  };
}
