/** One hole of a round as one piece of work, in a worker or in the command's own thread. */

import type { CardUnits } from '../../core/card/lengths.ts';
import type { Conditions } from '../../core/conditions/conditions.ts';
import type { Course } from '../../core/course/model.ts';
import { prepareHole } from '../../core/plan/prepare.ts';
import { DEFAULT_SETTINGS, solveNow, type SolveSettings } from '../../core/plan/solve.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import type { PlayerLevel } from '../../core/player/presets.ts';
import { type Fault, type Result, succeed } from '../../core/result.ts';
import type { Language } from '../../core/words/language.ts';
import { wordsIn } from '../../core/words/words.ts';
import { peerOf } from '../../core/round/peer.ts';
import { expectationOf, type RoundHole, roundHole } from '../../core/round/round-hole.ts';

/** Plain data, so that it can be posted to a worker. */
export interface RoundTask {
  readonly hole: number;
  readonly tee?: string;
  readonly holePosition?: string;
  readonly seed: string;
  /** Plays for the ledger; 0: none. */
  readonly plays: number;
  /** Null: no peer. */
  readonly peer: PlayerLevel | null;
  /** Null: no card. */
  readonly card: { readonly units: CardUnits; readonly language: Language } | null;
  readonly conditions: Conditions;
}

/** Enough for averages over whole rounds; a plan of one's own is solved more finely. */
const PEER_SETTINGS: SolveSettings = { ...DEFAULT_SETTINGS, spacingsM: [20, 10], draws: 32 };

export function roundTask(course: Course, player: PlayerModel, task: RoundTask): Result<RoundHole, Fault> {
  const problem = {
    course,
    holeNumber: task.hole,
    seed: task.seed,
    conditions: task.conditions,
    ...(task.tee === undefined ? {} : { teeName: task.tee }),
    ...(task.holePosition === undefined ? {} : { holePosition: task.holePosition }),
  };
  const prepared = prepareHole({ ...problem, player });
  if (!prepared.ok) return prepared;
  let peer = null;
  if (task.peer !== null) {
    const theirs = prepareHole({ ...problem, player: peerOf(player, task.peer) });
    if (!theirs.ok) return theirs;
    peer = expectationOf(theirs.value, solveNow(theirs.value, PEER_SETTINGS));
  }
  return succeed(
    roundHole(course, prepared.value, solveNow(prepared.value), {
      plays: task.plays,
      ...(peer === null ? {} : { peer }),
      ...(task.card === null ? {} : { card: { units: task.card.units, words: wordsIn(task.card.language) } }),
    }),
  );
}
