/**
 * What would help most: the odds again for a player who does one thing better, the plan made anew for that player.
 * Solving is the caller's: it decides how finely, on how many workers, and which of the improvements are worth the time.
 * With the same seed both are solved with the same luck, so that small differences are not drowned in it.
 */

import { english } from '../words/english/english.ts';
import type { Course } from '../course/model.ts';
import type { ClubKind, PlayerModel, ShotSpread } from '../player/model.ts';
import { chanceOfAtMost, meanOf, type ScoreDistribution } from './distribution.ts';
import { FORM_SD_STROKES, roundDistribution } from './score-distribution.ts';

export interface Setup {
  readonly player: PlayerModel;
  readonly course: Course;
}

export type ImprovementId =
  | 'tighter-driver'
  | 'longer-driver'
  | 'tighter-irons'
  | 'tighter-wedges'
  | 'fewer-poor-strikes'
  | 'better-pace'
  | 'straighter-putts'
  | 'no-penalty-balls';

export interface Improvement {
  readonly id: ImprovementId;
  readonly words: string;
  readonly change: (setup: Setup) => Setup;
}

/** In English: another language has `round.help.wishes` of its words. */
const WISHES: Readonly<Record<ImprovementId, string>> = english.round.help.wishes;

export const IMPROVEMENTS: readonly Improvement[] = [
  {
    id: 'tighter-driver',
    words: WISHES['tighter-driver'],
    change: withSpreads((spread) => (spread.club.kind === 'driver' ? tighter(spread, 0.9) : spread)),
  },
  {
    id: 'longer-driver',
    words: WISHES['longer-driver'],
    change: withSpreads((spread) => (spread.club.kind === 'driver' ? longer(spread, 10) : spread)),
  },
  {
    id: 'tighter-irons',
    words: WISHES['tighter-irons'],
    change: withSpreads((spread) => (IRONS.has(spread.club.kind) ? tighter(spread, 0.9) : spread)),
  },
  {
    id: 'tighter-wedges',
    words: WISHES['tighter-wedges'],
    change: withSpreads((spread) =>
      spread.club.kind === 'wedge' || spread.swing === 'part' ? tighter(spread, 0.9) : spread,
    ),
  },
  {
    id: 'fewer-poor-strikes',
    words: WISHES['fewer-poor-strikes'],
    change: withSpreads((spread) => ({ ...spread, poorShare: spread.poorShare / 2 })),
  },
  {
    id: 'better-pace',
    words: WISHES['better-pace'],
    change: ({ player, course }) => ({
      course,
      player: {
        ...player,
        putting: { ...player.putting, distanceSdShare: player.putting.distanceSdShare * 0.8 },
      },
    }),
  },
  {
    id: 'straighter-putts',
    words: WISHES['straighter-putts'],
    change: ({ player, course }) => ({
      course,
      player: { ...player, putting: { ...player.putting, directionSd: player.putting.directionSd * 0.9 } },
    }),
  },
  {
    id: 'no-penalty-balls',
    words: WISHES['no-penalty-balls'],
    change: ({ player, course }) => ({ player, course: withoutPenalties(course) }),
  },
];

const IRONS: ReadonlySet<ClubKind> = new Set<ClubKind>(['iron', 'hybrid']);

export function improvementOf(id: ImprovementId): Improvement {
  return IMPROVEMENTS.find((improvement) => improvement.id === id)!;
}

function withSpreads(change: (spread: ShotSpread) => ShotSpread): (setup: Setup) => Setup {
  return ({ player, course }) => ({
    course,
    player: { ...player, spreads: player.spreads.map(change).sort((a, b) => b.carryMean - a.carryMean) },
  });
}

function tighter(spread: ShotSpread, factor: number): ShotSpread {
  return {
    ...spread,
    carrySd: spread.carrySd * factor,
    directionSd: spread.directionSd * factor,
    poor: { ...spread.poor, directionSd: spread.poor.directionSd * factor },
  };
}

function longer(spread: ShotSpread, metres: number): ShotSpread {
  const factor = (spread.carryMean + metres) / spread.carryMean;
  return { ...spread, carryMean: spread.carryMean * factor, carrySd: spread.carrySd * factor };
}

function withoutPenalties(course: Course): Course {
  return {
    ...course,
    areas: course.areas.flatMap((area) => {
      switch (area.kind) {
        case 'penalty-red':
        case 'penalty-yellow':
          return [{ ...area, kind: 'rough' as const }];
        case 'out-of-bounds':
        case 'boundary':
          return [];
        default:
          return [area];
      }
    }),
  };
}

/** Score distributions of the holes for a setup, in the order of play; `null`: the player as is. */
export type SolveRound = (
  setup: Setup,
  improvement: ImprovementId | null,
) => Promise<readonly ScoreDistribution[]>;

export interface HelpLine {
  readonly id: ImprovementId;
  readonly words: string;
  readonly chance: number;
  /** Change of the chance against the player as is, and strokes saved per round on average. */
  readonly gain: number;
  readonly saved: number;
}

export interface HelpReport {
  readonly target: number;
  readonly chance: number;
  readonly expected: number;
  /** The greatest gain first; without those that were not reached before a cancellation. */
  readonly lines: readonly HelpLine[];
  readonly wasCancelled: boolean;
}

export interface HelpOptions {
  readonly improvements?: readonly Improvement[];
  readonly formSd?: number;
  /** The holes of the player as is, where they are known already. */
  readonly known?: readonly ScoreDistribution[];
  /**
   * The same holes under the full plan, where `solve` works on a coarse grid: the odds told are then these, and what an
   * improvement saves on the coarse grid moves them.
   */
  readonly planned?: readonly ScoreDistribution[];
  readonly onProgress?: (done: number, total: number) => void;
  /** Told of each improvement as it comes, with the odds of the player as is. */
  readonly onLine?: (line: HelpLine, now: { readonly chance: number; readonly expected: number }) => void;
  readonly isCancelled?: () => boolean;
}

/** Chance of a score of at most `strokes`, which need not be whole: straight between whole scores. */
function chanceWithin(scores: ScoreDistribution, strokes: number): number {
  const whole = Math.floor(strokes);
  const share = strokes - whole;
  return (1 - share) * chanceOfAtMost(scores, whole) + share * chanceOfAtMost(scores, whole + 1);
}

export async function whatWouldHelp(
  setup: Setup,
  target: number,
  solve: SolveRound,
  options: HelpOptions = {},
): Promise<HelpReport> {
  const { improvements = IMPROVEMENTS, formSd = FORM_SD_STROKES, onProgress, onLine } = options;
  const isCancelled = options.isCancelled ?? (() => false);
  const round = (holes: readonly ScoreDistribution[]) => roundDistribution(holes, formSd);
  const now = round(options.known ?? (await solve(setup, null)));
  const told = options.planned === undefined ? null : round(options.planned);
  const chance = chanceOfAtMost(told ?? now, target);
  const expected = meanOf(told ?? now);
  const lines: HelpLine[] = [];
  for (const [i, { id, words, change }] of improvements.entries()) {
    if (isCancelled()) break;
    const then = round(await solve(change(setup), id));
    const saved = meanOf(now) - meanOf(then);
    const better = told === null ? chanceOfAtMost(then, target) : chanceWithin(told, target + saved);
    const line = { id, words, chance: better, gain: better - chance, saved };
    lines.push(line);
    onLine?.(line, { chance, expected });
    onProgress?.(i + 1, improvements.length);
  }
  return {
    ...{ target, chance, expected },
    lines: lines.sort((a, b) => b.gain - a.gain || b.saved - a.saved),
    wasCancelled: lines.length < improvements.length,
  };
}
