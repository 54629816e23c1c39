/** `npm run --silent round`: the odds of a score of N or fewer, hole budgets, and where strokes go. */

import { dayWords, isOrdinaryDay } from '../../core/conditions/day-words.ts';
import { DEFAULT_SEED } from '../../core/plan/prepare.ts';
import { roundFigures } from '../../core/round/figures.ts';
import { FORM_SD_STROKES } from '../../core/round/score-distribution.ts';
import { levelName, type PlayerLevel } from '../../core/player/presets.ts';
import { faultLine } from '../../core/result.ts';
import {
  EXIT,
  optionalText,
  readArguments,
  requiredText,
  Stop,
  stopForUsage,
  wholeNumber,
} from './command.ts';
import { DAY_OPTIONS, DAY_USAGE, readDay } from './day-options.ts';
import { readCourse, readPlayer } from './inputs.ts';
import { roundDocument, roundReport } from './round-report.ts';
import { solveRound } from './round-pool.ts';
import type { RoundTask } from './round-task.ts';
import { PROGRAM_VERSION } from './version.ts';
import { english } from '../../core/words/english/english.ts';

const USAGE = `usage: npm run --silent round -- --course FILE --player FILE --target N [--tee NAME] [--hole-position NAME]
       [--peer HANDICAP|none] [--peer-group men|women] [--form STROKES] [--seed S] [--json]
${DAY_USAGE}`;

/** Plays of each hole for the ledger: means of a round are good to about 0.1 strokes. */
const PLAYS = 1500;

export async function round(args: readonly string[]): Promise<void> {
  const text = { type: 'string' } as const;
  const values = readArguments(
    args,
    {
      ...{ course: text, player: text, target: text, tee: text, 'hole-position': text, seed: text },
      ...{ peer: text, 'peer-group': text, form: text, json: { type: 'boolean' } },
      ...DAY_OPTIONS,
    },
    USAGE,
  );
  const courseFile = requiredText(values, 'course', USAGE);
  const playerFile = requiredText(values, 'player', USAGE);
  const target = wholeNumber(values, 'target', { lowest: 1, highest: 400 }, USAGE);
  const formSd = strokesOf(optionalText(values, 'form'));
  const seed = optionalText(values, 'seed') ?? DEFAULT_SEED;
  const tee = optionalText(values, 'tee');
  const holePosition = optionalText(values, 'hole-position');
  const conditions = await readDay(values, USAGE);
  const course = await readCourse(courseFile);
  const player = await readPlayer(playerFile);
  const peer = peerLevel(
    optionalText(values, 'peer'),
    optionalText(values, 'peer-group'),
    player.value.handicap,
  );
  for (const warning of player.value.warnings) process.stderr.write(`${playerFile}: ${faultLine(warning)}\n`);
  const numbers = course.value.holes.map((hole) => hole.number);
  if (numbers.length === 0)
    throw new Stop(EXIT.badInput, [`${courseFile}: error: the course has no holes. Draw a hole line first.`]);
  const tasks = numbers.map(
    (hole): RoundTask => ({
      ...{ hole, seed, plays: PLAYS, peer, card: null, conditions },
      ...(tee === undefined ? {} : { tee }),
      ...(holePosition === undefined ? {} : { holePosition }),
    }),
  );
  const holes = await solveRound(course, player, tasks);
  const figures = roundFigures(holes, target, formSd);
  if (values.json === true) {
    const inputs = { program: PROGRAM_VERSION, course: course.version, player: player.version };
    const document = roundDocument(holes, figures, {
      peer: peer === null ? null : levelName(peer),
      conditions,
      seed,
      inputs,
    });
    process.stdout.write(`${JSON.stringify(document, null, 1)}\n`);
    return;
  }
  const day = isOrdinaryDay(conditions) ? '' : `, ${dayWords(conditions, player.value.units, english)}`;
  const title = `${course.value.name}, tee ${tee ?? holes[0]!.tee}${day}`;
  const against = peer === null ? null : `a peer (${levelName(peer)})`;
  process.stdout.write(`${roundReport(holes, figures, player.value.units, title, against)}\n`);
}

/** The peer asked for; by default one of the player's own handicap, where the file has it. */
function peerLevel(
  handicap: string | undefined,
  group: string | undefined,
  own: number | undefined,
): PlayerLevel | null {
  if (group !== undefined && group !== 'men' && group !== 'women')
    throw stopForUsage(`--peer-group takes men or women, not “${group}”.`, USAGE);
  if (handicap === 'none') return null;
  const value = handicap === undefined ? own : Number(handicap);
  if (value === undefined) return null;
  if (!(value >= -10 && value <= 54))
    throw stopForUsage(
      `--peer takes a handicap from -10 (plus 10) to 54, or “none”, not “${handicap ?? ''}”.`,
      USAGE,
    );
  return { handicap: value, group: group ?? 'men' };
}

function strokesOf(text: string | undefined): number {
  if (text === undefined) return FORM_SD_STROKES;
  const value = text.trim() === '' ? NaN : Number(text);
  if (!(value >= 0 && value <= 10))
    throw stopForUsage(`--form takes strokes from 0 to 10, not “${text}”.`, USAGE);
  return value;
}
