/**
 * Penalties of recorded shots under the Rules of Golf (The R&A and USGA, 2023): relief from a penalty area (Rule 17.1d), stroke
 * and distance for a ball lost or out of bounds (Rule 18.2), an unplayable ball (Rule 19.2), one penalty stroke each; and where
 * play goes on after them.
 */

import type { LieName } from '../ground/lies.ts';
import type { PenaltyKind, PlayedHoleRecord, RecordedStroke } from './format.ts';

/** Penalty strokes of each kind; Rules 17.1d, 18.2b and 19.2. */
const STROKES: Readonly<Record<PenaltyKind, number>> = {
  penaltyArea: 1,
  strokeAndDistance: 1,
  unplayable: 1,
};

/** What usually follows a ball that ended there; in a penalty area it may also be played as it lies. */
export function likelyPenalty(lie: LieName): PenaltyKind | null {
  if (lie === 'outOfBounds') return 'strokeAndDistance';
  return lie === 'penaltyRed' || lie === 'penaltyYellow' ? 'penaltyArea' : null;
}

/** The shot with this penalty, or with none; a place of a drop goes with the penalty it was for. */
export function withPenalty(shot: RecordedStroke, kind: PenaltyKind | null): RecordedStroke {
  const next = { ...shot };
  delete next.penalty;
  delete next.penaltyKind;
  if (kind === null || kind === 'strokeAndDistance') {
    delete next.drop;
    delete next.dropLie;
  }
  return kind === null ? next : { ...next, penalty: STROKES[kind], penaltyKind: kind };
}

/** Where the stroke after this one is played from, and its lie; null where the record does not say. */
export function startAfter(
  shot: RecordedStroke,
): { readonly at: readonly [number, number]; readonly lie: LieName | undefined } | null {
  const { from, fromLie, to, toLie, drop, dropLie, penaltyKind, penalty = 0 } = shot;
  if (penaltyKind === 'strokeAndDistance') return from === undefined ? null : { at: from, lie: fromLie };
  if (drop !== undefined) return { at: drop, lie: dropLie };
  return penalty > 0 || to === undefined ? null : { at: to, lie: toLie };
}

/** True where the ball was dropped at a place that the record does not give yet. */
export function needsDrop({ penaltyKind, drop }: RecordedStroke): boolean {
  return (penaltyKind === 'penaltyArea' || penaltyKind === 'unplayable') && drop === undefined;
}

/** After a change of shot `index`: the one that follows begins where that shot now lets play go on. The rest stays as recorded. */
export function joinedAfter(shots: readonly RecordedStroke[], index: number): readonly RecordedStroke[] {
  const [before, after] = [shots[index], shots[index + 1]];
  if (before === undefined || after === undefined) return shots;
  const start = startAfter(before);
  const next = { ...after };
  delete next.from;
  delete next.fromLie;
  const joined: RecordedStroke =
    start === null
      ? next
      : {
          ...next,
          from: [start.at[0], start.at[1]],
          ...(start.lie === undefined ? {} : { fromLie: start.lie }),
        };
  return shots.map((shot, i) => (i === index + 1 ? joined : shot));
}

export function penaltiesOf(shots: readonly RecordedStroke[] = []): number {
  return shots.reduce((sum, { penalty = 0 }) => sum + penalty, 0);
}

/**
 * The hole with these shots. Its penalties follow theirs: what was typed stands for penalties of the shots until they are more,
 * and goes down with them.
 */
export function withShots(played: PlayedHoleRecord, shots: readonly RecordedStroke[]): PlayedHoleRecord {
  const [before, after] = [penaltiesOf(played.shots), penaltiesOf(shots)];
  const typed = played.penalties ?? 0;
  const penalties = after >= before ? Math.max(typed, after) : Math.max(after, typed - (before - after));
  const next = {
    ...played,
    ...(played.penalties === undefined && penalties === 0 ? {} : { penalties }),
    shots: [...shots],
  };
  if (shots.length > 0) return next;
  const bare: PlayedHoleRecord = next;
  delete bare.shots;
  return bare;
}

export interface HoleSum {
  /** Strokes that were recorded one by one, putts left to be counted, and penalties. */
  readonly shots: number;
  readonly putts: number;
  readonly penalties: number;
  readonly total: number;
  /** Score less total: strokes that the record does not show; negative where it shows too many. */
  readonly missing: number;
}

/** What the strokes, putts and penalties of a hole add up to. */
export function sumOfHole({ score, putts, penalties, shots = [] }: PlayedHoleRecord): HoleSum {
  const recordedPutts = shots.filter(({ club }) => club === 'Putter').length;
  const counted = {
    shots: shots.length - recordedPutts,
    putts: Math.max(putts ?? 0, recordedPutts),
    penalties: Math.max(penalties ?? 0, penaltiesOf(shots)),
  };
  const total = counted.shots + counted.putts + counted.penalties;
  return { ...counted, total, missing: score - total };
}
