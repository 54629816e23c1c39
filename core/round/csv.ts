/**
 * A round as CSV (RFC 4180): one row per hole, or one per shot. Text that a spreadsheet would take for a formula is
 * written with an apostrophe before it, so that opening a stranger's round runs nothing.
 */

import { withoutFormulas } from '../csv-formulas.ts';
import type { PlayedHoleRecord, RoundDocument } from './format.ts';

type Cell = string | number | boolean | undefined;

export function csvCell(value: Cell): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  const safe = withoutFormulas(value);
  return /[",\r\n]/u.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function csvText(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

const HOLE_COLUMNS = [
  ...['hole', 'par', 'stroke_index', 'budget', 'plan_club', 'plan_expected'],
  ...['score', 'putts', 'penalties', 'tee_club', 'tee_end', 'notes', 'played_at'],
];

export function holesCsv(round: RoundDocument): string {
  const rows = round.played.map((played): Cell[] => {
    const planned = round.plan?.holes.find(({ hole }) => hole === played.hole);
    const chosen = planned?.options.find(({ id }) => id === planned.chosen);
    return [
      ...[played.hole, played.par, played.strokeIndex, planned?.budget, chosen?.club],
      chosen === undefined ? undefined : Math.round(1000 * chosen.meanStrokes) / 1000,
      ...[played.score, played.putts, played.penalties, played.teeClub, played.teeEnd, played.notes],
      round.playedAt,
    ];
  });
  return csvText([HOLE_COLUMNS, ...rows]);
}

const SHOT_COLUMNS = [
  ...['hole', 'shot', 'club', 'swing', 'from_lon', 'from_lat', 'from_lie', 'aim_lon', 'aim_lat'],
  ...['to_lon', 'to_lat', 'to_lie', 'penalty', 'poor', 'hit_tree'],
  ...['penalty_kind', 'drop_lon', 'drop_lat', 'drop_lie'],
];

export function shotsCsv(round: RoundDocument): string {
  return csvText([SHOT_COLUMNS, ...round.played.flatMap(shotRows)]);
}

function shotRows({ hole, shots }: PlayedHoleRecord): Cell[][] {
  return (shots ?? []).map((shot, i) => [
    ...[hole, i + 1, shot.club, shot.swing, shot.from?.[0], shot.from?.[1], shot.fromLie],
    ...[shot.aim?.[0], shot.aim?.[1], shot.to?.[0], shot.to?.[1], shot.toLie],
    ...[shot.penalty, shot.poor, shot.hitTree],
    ...[shot.penaltyKind, shot.drop?.[0], shot.drop?.[1], shot.dropLie],
  ]);
}
