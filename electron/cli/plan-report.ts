/** The plan of a hole in words and columns for a terminal. */

import { dayWords, isOrdinaryDay } from '../../core/conditions/day-words.ts';
import { errorText, nameOf, provisionalWords } from '../../core/plan/recommend.ts';
import type { AimSide } from '../../core/plan/aim-side.ts';
import type { ConditionSpan } from '../../core/plan/sensitivity.ts';
import { spanText } from '../../core/plan/sensitivity-words.ts';
import type { Option, Trouble } from '../../core/plan/model.ts';
import type { PlannedHole } from './plan-task.ts';
import { lengthWords, puttWords, type LengthUnit } from './units.ts';
import { english } from '../../core/words/english/english.ts';

const TROUBLE_WORDS: readonly (readonly [keyof Trouble, string])[] = [
  ['outOfBounds', 'out of bounds'],
  ['penaltyRed', 'red penalty area'],
  ['penaltyYellow', 'yellow penalty area'],
  ['trees', 'trees'],
  ['bunker', 'bunker'],
  ['longRough', 'long rough'],
];

export function planReport(
  { plan, sides, tee, holePosition, lengthM, convergence, conditions, sensitivity }: PlannedHole,
  unit: LengthUnit,
): string {
  const from =
    plan.lie === 'tee'
      ? `from tee ${tee}`
      : `from ${lieWords(plan.lie)}, ${lengthWords(plan.distanceToHoleM, unit)} to the hole`;
  const head = `Hole ${plan.hole}, par ${plan.par}, ${lengthWords(lengthM, unit)}, ${from}, hole position ${holePosition ?? 'as given'}`;
  const best = plan.options.find((option) => option.id === plan.recommendation.optionId);
  const day = isOrdinaryDay(conditions) ? [] : [`${dayWords(conditions, unit, english)}.`];
  const lines = [head, ...day, ''];
  if (best !== undefined)
    lines.push(`Play ${optionWords(best, sides[best.id], unit)}. ${plan.recommendation.reason}`);
  else lines.push(plan.recommendation.reason);
  const provisional = best === undefined ? null : provisionalWords(best, conditions.rules, english);
  if (provisional !== null) lines.push(provisional);
  if (best?.doubt !== undefined) {
    const { lowStrokes, highStrokes, cheapestShare } = best.doubt;
    lines.push(
      `The measured shots leave room for ${lowStrokes.toFixed(2)} to ${highStrokes.toFixed(2)} (nine in ten); it is the lowest of all in ${percent(cheapestShare)} of the bags that fit them.`,
    );
  }
  if (plan.options.length > 0) {
    const rows = plan.options.map((option) => [
      `${option.id === plan.recommendation.optionId ? '*' : ' '} ${optionWords(option, sides[option.id], unit)}`,
      `${option.meanStrokes.toFixed(2)} ± ${errorText(option.standardError, english)}`,
      option.tooCloseToCall
        ? 'too close to call'
        : option.lossToBest > 0
          ? `+${option.lossToBest.toFixed(2)}`
          : 'lowest',
      percent(option.parOdds.parOrBetter),
      percent(option.parOdds.bogey),
      percent(option.parOdds.doubleOrWorse),
      option.kind === 'shot' && option.clubKind === 'putter'
        ? puttWords(option.leave.medianM, unit)
        : lengthWords(option.leave.medianM, unit),
      troubleWords(option.trouble),
    ]);
    const titles = ['  option', 'strokes', 'against best', 'par-', 'bogey', 'double+', 'leaves', 'trouble'];
    lines.push('', ...columns([titles, ...rows]));
  }
  if (sensitivity !== null) lines.push('', ...sensitivityLines(sensitivity, unit));
  const last = convergence.rmsChange.at(-1);
  const spacing = convergence.spacingsM.at(-1);
  if (last !== undefined && spacing !== undefined) {
    lines.push(
      '',
      `Field at ${spacing} m; the last refinement changed it by ${last.toFixed(3)} strokes (root mean square).`,
    );
  }
  lines.push(
    '“The line” is the hole’s line of play. Strokes are those of best play; odds are estimates from this',
    'player’s shots. Check distances on the course; local rules come first.',
  );
  return lines.join('\n');
}

function sensitivityLines(spans: readonly ConditionSpan[], units: LengthUnit): string[] {
  const { sensitivity: told, figures } = english;
  if (spans.length === 0) return [told.noClub];
  return [
    `${told.title}. ${told.intro}`,
    ...spans.map((span) => `  ${spanText(span, { told, figures, units })}`),
  ];
}

function optionWords(option: Option, side: AimSide | undefined, unit: LengthUnit): string {
  if (option.kind === 'relief') {
    return `${nameOf(option, english)}, ${option.penaltyStrokes === 2 ? 'two strokes' : 'one stroke'}`;
  }
  if (option.clubKind === 'putter') return `putt of ${puttWords(option.carryM, unit)}`;
  const swing = option.swing === 'full' ? '' : ` (${option.swing}, ${lengthWords(option.carryM, unit)})`;
  return `${option.club}${swing} ${sideWords(side, unit)}`;
}

function sideWords(side: AimSide | undefined, unit: LengthUnit): string {
  if (side === undefined) return '';
  const aside = lengthWords(Math.abs(side.rightM), unit);
  const where = side.of === 'flag' ? 'the flag' : 'the line';
  if (aside.startsWith('0 ')) return side.of === 'flag' ? 'at the flag' : 'on the line';
  return `${aside} ${side.rightM < 0 ? 'left' : 'right'} of ${where}`;
}

function troubleWords(trouble: Trouble): string {
  const parts = TROUBLE_WORDS.filter(([kind]) => trouble[kind] >= 0.005).map(
    ([kind, words]) => `${words} ${percent(trouble[kind])}`,
  );
  return parts.length === 0 ? 'none to speak of' : parts.join(', ');
}

const LIE_WORDS: Readonly<Record<string, string>> = {
  longRough: 'long rough',
  penaltyYellow: 'a yellow penalty area',
  penaltyRed: 'a red penalty area',
  outOfBounds: 'out of bounds',
};

export function lieWords(lie: string): string {
  return LIE_WORDS[lie] ?? lie;
}

export function percent(share: number): string {
  return `${(100 * share).toFixed(share < 0.0995 && share > 0 ? 1 : 0)} %`;
}

export function columns(rows: readonly (readonly string[])[]): string[] {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  return rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column]!))
      .join('  ')
      .trimEnd(),
  );
}
