/** A round's odds, budgets and ledger, as figures for JSON and in words for a terminal. */

import { departuresOf, departureWords } from '../../core/round/departures.ts';
import { meanOf, type ScoreDistribution, varianceOf } from '../../core/round/distribution.ts';
import type { RoundFigures } from '../../core/round/figures.ts';
import { type RoundLedger } from '../../core/round/ledger.ts';
import { recommendedOf, type RoundHole } from '../../core/round/round-hole.ts';
import { columns, percent } from './plan-report.ts';
import { lengthWords, type LengthUnit } from './units.ts';
import { english } from '../../core/words/english/english.ts';

/** Departures that a terminal shows. */
const MOST_DEPARTURES = 8;

/** The JSON of a round; its fields are described in maps/schemas/round-odds.schema.json. */
export function roundDocument(holes: readonly RoundHole[], figures: RoundFigures, extra: object): object {
  const { odds, budget, ledger, playing, choices, scores } = figures;
  return {
    target: figures.target,
    par: budget.par,
    chance: odds.target?.chance ?? null,
    expected: odds.expected,
    sd: odds.sd,
    range: odds.range,
    formSd: odds.formSd,
    distribution: odds.distribution.chances.map((chance, i) => ({
      score: odds.distribution.lowest + i,
      chance,
    })),
    holes: holes.map((hole, i) => {
      const option = recommendedOf(hole.plan);
      const { byStrokeIndex, pace, budget: strokes, words } = budget.holes[i]!;
      return {
        hole: hole.hole,
        par: hole.par,
        strokeIndex: hole.strokeIndex,
        tee: hole.tee,
        holePosition: hole.holePosition,
        lengthM: hole.lengthM,
        option: {
          id: option.id,
          club: option.club,
          swing: option.swing,
          aim: option.aim.lonLat,
          carryM: option.carryM,
        },
        expected: meanOf(scores[i]!),
        sd: Math.sqrt(varianceOf(scores[i]!)),
        standardError: option.standardError,
        scores: scores[i]!.chances.map((chance, k) => ({ score: scores[i]!.lowest + k, chance })),
        budget: { byStrokeIndex, pace, strokes, words },
      };
    }),
    budget: { allowance: budget.allowance, possible: budget.possible },
    ledger,
    playing: {
      chance: playing.withForm.chance,
      chanceByLowestMean: playing.withForm.chanceByLowestMean,
      chanceOnAverageDay: playing.chance,
      chanceByLowestMeanOnAverageDay: playing.chanceByLowestMean,
      departures: departuresOf(choices, playing),
    },
    ...extra,
  };
}

export function roundReport(
  holes: readonly RoundHole[],
  figures: RoundFigures,
  unit: LengthUnit,
  title: string,
  peer: string | null,
): string {
  const { odds, budget, target } = figures;
  const { low, high, share } = odds.range;
  const error = Math.hypot(...holes.map(({ plan }) => recommendedOf(plan).standardError));
  const lines = [
    `${title}, ${holes.length} holes, par ${budget.par}: ${target} or fewer`,
    '',
    `odds      ${percent(odds.target?.chance ?? 0)}`,
    `expected  ${odds.expected.toFixed(1)} (± ${error.toFixed(2)} from sampling); standard deviation of a round ${odds.sd.toFixed(1)}`,
    `range     ${low} to ${high}, ${Math.round(100 * share)} of 100 rounds`,
    `form      ${odds.formSd.toFixed(1)} strokes from day to day (assumed; a day’s form moves all holes together)`,
    '',
    ...distributionLines(odds.distribution),
    '',
    ...columns([
      ['hole', 'par', 'index', 'length', 'play', 'expected', 'pace', 'budget', ''],
      ...holes.map((hole, i) => {
        const { pace, budget: strokes, words } = budget.holes[i]!;
        return [
          ...[`${hole.hole}`, `${hole.par}`, `${hole.strokeIndex ?? '–'}`, lengthWords(hole.lengthM, unit)],
          ...[recommendedOf(hole.plan).club, meanOf(figures.scores[i]!).toFixed(2)],
          ...[pace === null ? '–' : pace.toFixed(2), `${strokes}`, words],
        ];
      }),
    ]),
  ];
  if (!budget.possible)
    lines.push('', `No round that these odds allow comes out at ${target}; the budget is a wish.`);
  if (figures.ledger !== null) lines.push('', ...ledgerLines(figures.ledger, peer));
  lines.push('', ...playingLines(figures));
  lines.push(
    '',
    'Odds are estimates from this player’s shots. Check distances on the course; local rules come first.',
  );
  return lines.join('\n');
}

/** Rows of a bar each, from where it begins to matter. */
function distributionLines({ lowest, chances }: ScoreDistribution): string[] {
  const most = Math.max(...chances);
  return chances.flatMap((chance, i) =>
    chance < 0.003
      ? []
      : [
          `${String(lowest + i).padStart(4)}  ${percent(chance).padStart(6)}  ${'#'.repeat(Math.round((40 * chance) / most))}`,
        ],
  );
}

function ledgerLines(ledger: RoundLedger, peer: string | null): string[] {
  const signed = (value: number): string => `${value >= 0 ? '+' : '-'}${Math.abs(value).toFixed(2)}`;
  const rows = ledger.lines
    .filter(({ strokes }) => strokes.mean > 0)
    .map(({ kind, strokes, gainedOnPeer, shareOfSpread }) => [
      english.round.ledger.kinds[kind],
      strokes.mean.toFixed(1),
      ...(peer === null
        ? []
        : [
            gainedOnPeer === null
              ? 'in their strokes'
              : `${signed(gainedOnPeer.mean)} ± ${gainedOnPeer.standardError.toFixed(2)}`,
          ]),
      percent(shareOfSpread),
    ]);
  return [
    ...columns([
      [
        'where strokes go, per round',
        'strokes',
        ...(peer === null ? [] : [`against ${peer}`]),
        'share of ups and downs',
      ],
      ...rows,
    ]),
    `greens in regulation ${ledger.greensInRegulation.toFixed(1)}, three putts or more ${ledger.threePutts.toFixed(1)}, penalty balls ${ledger.penaltyBalls.toFixed(1)}`,
  ];
}

function playingLines({ choices, playing, target }: RoundFigures): string[] {
  const departures = departuresOf(choices, playing).slice(0, MOST_DEPARTURES);
  const names = new Map(choices.flatMap(({ options }) => options.map(({ id }) => [id, nameOf(id)])));
  const head = `Playing to ${target}: ${percent(playing.withForm.chance)} with the best choice on each tee, ${percent(playing.withForm.chanceByLowestMean)} with the lowest mean on each.`;
  if (departures.length === 0)
    return [head, 'The lowest mean is as good as anything, however the round stands.'];
  return [
    head,
    ...departures.map(
      (departure) => `  ${departureWords(departure, playing.aim, english, (id) => names.get(id) ?? id)}`,
    ),
  ];
}

/** `Driver/full/best` to `Driver`. */
function nameOf(id: string): string {
  const [club, swing] = id.split('/');
  return swing === undefined || swing === 'full' ? (club ?? id) : `${club ?? id} (${swing})`;
}
