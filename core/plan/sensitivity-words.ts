/** How far a day may change before the recommendation does, in words: one line a condition. */

import { type DayUnits, MPS_PER_MPH, temperatureText } from '../conditions/day-words.ts';
import { FIRMNESS_STEPS, SEASON_STEPS, type VariedCondition } from '../conditions/vary.ts';
import type { sensitivity } from '../words/english/sensitivity.ts';
import type { ConditionSpan, DayChange } from './sensitivity.ts';

/** The words of a language for it, and how that writes numbers. */
export interface SpanWords {
  readonly told: typeof sensitivity;
  readonly figures: {
    readonly fixed: (value: number, decimals: number) => string;
    readonly short: (value: number, mostDecimals: number) => string;
  };
  readonly units: DayUnits;
}

/** `4.5 m/s against`, `12 °C`, `firm`. */
export function conditionText(condition: VariedCondition, value: number, words: SpanWords): string {
  const { told, figures, units } = words;
  switch (condition) {
    case 'wind-along':
    case 'wind-across': {
      const isYards = units === 'yards';
      const size = Math.abs(value) / (isYards ? MPS_PER_MPH : 1);
      const number = figures.short(size, isYards || size >= 9.95 ? 0 : 1);
      if (Number(size.toFixed(isYards ? 0 : 1)) === 0) return told.none;
      const speed = `${number} ${isYards ? 'mph' : 'm/s'}`;
      if (condition === 'wind-along') return value < 0 ? told.against({ speed }) : told.behind({ speed });
      return value < 0 ? told.fromRight({ speed }) : told.fromLeft({ speed });
    }
    case 'temperature':
      return temperatureText(value, units);
    case 'green-speed':
      return `${figures.short(value, 1)} ft`;
    case 'firmness':
      return told.ground[FIRMNESS_STEPS[value] ?? 'medium'];
    case 'season':
      return told.trees[SEASON_STEPS[value] ?? 'leaf'];
  }
}

/** `from 6 m/s against the 5-wood takes over (saves 0.12 ± 0.01 at 20 m/s against)`. */
export function takeoverText(
  { condition }: ConditionSpan,
  { club, swing, at, gainAtEnd, standardError }: DayChange,
  end: number,
  words: SpanWords,
): string {
  const { told, figures } = words;
  const name = club + told.swings[swing];
  const head = told.takesOver({ at: conditionText(condition, at, words), club: name });
  if (gainAtEnd === null || standardError === null) return head;
  const where = conditionText(condition, end, words);
  if (gainAtEnd <= 2 * standardError) return head + told.notAhead({ at: where });
  const sum = { gain: figures.fixed(gainAtEnd, 2), error: figures.fixed(Math.max(0.001, standardError), 3) };
  return head + (at === end ? told.saves(sum) : told.savesAt({ ...sum, at: where }));
}

/** `from 4 m/s from the right aim 3° further right`. */
export function turnText({ condition }: ConditionSpan, turn: DayChange, words: SpanWords): string {
  const degrees = Math.round((Math.abs(turn.turnRad) * 180) / Math.PI);
  const at = conditionText(condition, turn.at, words);
  return turn.turnRad < 0 ? words.told.aimLeft({ degrees, at }) : words.told.aimRight({ degrees, at });
}

/** What happens below today and above it, the nearer of each first; empty where nothing does. */
export function changesText(span: ConditionSpan, words: SpanWords): readonly string[] {
  const sides = [
    { turn: span.turnsBelow, club: span.changesBelow, end: span.from },
    { turn: span.turnsAbove, club: span.changesAbove, end: span.to },
  ];
  return sides.flatMap(({ turn, club, end }) => [
    ...(turn === undefined ? [] : [turnText(span, turn, words)]),
    ...(club === undefined ? [] : [takeoverText(span, club, end, words)]),
  ]);
}

/** Everything that is to be said after today's value; never empty. */
export function saidOf(span: ConditionSpan, words: SpanWords): string {
  const changes = changesText(span, words);
  if (changes.length > 0) return changes.join('; ');
  if (span.unit === 'step') return words.told.noStep;
  const text = (value: number): string => conditionText(span.condition, value, words);
  return words.told.noChange({ from: text(span.from), to: text(span.to) });
}

/** The whole line, with its full stop. */
export function spanText(span: ConditionSpan, words: SpanWords): string {
  return words.told.line({
    name: words.told.conditions[span.condition],
    now: conditionText(span.condition, span.now, words),
    said: saidOf(span, words),
  });
}
