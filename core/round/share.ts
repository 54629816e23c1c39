/**
 * A plan to share: course, player and round in one round file. A stranger's file goes through the doors of all three
 * formats; what one of them refuses is told and stays out, and nothing in the file is run.
 */

import type { Course } from '../course/model.ts';
import { parseCourseText } from '../course/parse.ts';
import type { PlayerModel } from '../player/model.ts';
import { parsePlayerText } from '../player/parse.ts';
import { openDocumentText } from '../course/document.ts';
import { faultsIn, reportOn } from '../course/report.ts';
import { type Fault, refuse, type Result, succeed } from '../result.ts';
import { told, toldFault } from '../words/told.ts';
import { MOST_ROUND_CHARACTERS, type RoundDocument } from './format.ts';

/** The round with both files in it, as text. Refuses what could not be opened again. */
export function shareText(
  round: RoundDocument,
  courseText: string,
  playerText: string,
): Result<string, Fault> {
  const carried = { course: JSON.parse(courseText) as unknown, player: JSON.parse(playerText) as unknown };
  const text = `${JSON.stringify({ ...round, carried })}\n`;
  if (text.length <= MOST_ROUND_CHARACTERS) return succeed(text);
  return refuse(
    toldFault({
      severity: 'error',
      code: 'share-too-large',
      where: told(({ faults }) => faults.round.sharedPlan),
      message: told(({ faults }) => faults.round.shareTooLarge, {
        count: text.length,
        most: MOST_ROUND_CHARACTERS,
      }),
    }),
  );
}

/** One file carried along: its text and what it reads as, or why it cannot be read. */
export type Carried<T> = Result<{ readonly text: string; readonly value: T }, readonly Fault[]>;

export interface CarriedFiles {
  readonly course: Carried<Course> | null;
  readonly player: Carried<PlayerModel> | null;
}

/** What a round carries along; null for a round that carries nothing. */
export function carriedFiles({ carried }: RoundDocument): CarriedFiles | null {
  if (carried === undefined) return null;
  return {
    course: carried.course === undefined ? null : read(carried.course, parseCourseText),
    player: carried.player === undefined ? null : read(carried.player, parsePlayerText),
  };
}

function read<T>(json: unknown, parse: (text: string) => Result<T, readonly Fault[]>): Carried<T> {
  const text = `${JSON.stringify(json, null, 1)}\n`;
  const parsed = parse(text);
  return parsed.ok ? succeed({ text, value: parsed.value }) : parsed;
}

/** What the course check finds in a course that came along, as for any other course: errors first. */
export function carriedFindings(courseText: string): readonly Fault[] {
  const opened = openDocumentText(courseText);
  return opened.ok ? [...opened.value.repairs, ...faultsIn(reportOn(opened.value.document))] : opened.error;
}

/** The round alone, without what came along. */
export function withoutCarried(round: RoundDocument): RoundDocument {
  const alone = { ...round };
  delete alone.carried;
  return alone;
}
