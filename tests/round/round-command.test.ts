/** The round command: its figures on stored odds, and one run as a child process on a course of two short holes. */

import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { describe, expect, it, vi } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import type { RoundHole } from '../../core/round/round-hole.ts';
import type { Option } from '../../core/plan/model.ts';
import { roundFigures } from '../../core/round/figures.ts';
import { roundDocument, roundReport } from '../../electron/cli/round-report.ts';
import { smallCourseText, smallPlayerText } from '../renderer/small-course.ts';
import { oddsSchemaText } from './odds-schema.ts';
import { runCommand } from '../run-command.ts';

const schemaFile = new URL('../../maps/schemas/round-odds.schema.json', import.meta.url);
const folder = mkdtempSync(join(tmpdir(), 'holewright-round-'));
vi.setConfig({ testTimeout: 120_000 });

const run = (...args: string[]) => runCommand('round', ...args);

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const course = file('two.geojson', smallCourseText());
const player = file('player.json', smallPlayerText());

describe('maps/schemas/round-odds.schema.json', () => {
  it('says what the command prints (else WRITE_SCHEMAS=1 and look at the difference)', () => {
    if (process.env['WRITE_SCHEMAS'] === '1') writeFileSync(schemaFile, oddsSchemaText());
    expect(readFileSync(schemaFile, 'utf8')).toBe(oddsSchemaText());
  });
});

/** Holes as a worker posts them, their odds taken from a file instead of being solved. */
function storedHoles(): RoundHole[] {
  const odds = JSON.parse(
    readFileSync(new URL('./fixtures/demo-hole-odds.json', import.meta.url), 'utf8'),
  ) as {
    holes: {
      hole: number;
      par: number;
      options: { id: string; meanStrokes: number; scoreOdds: number[] }[];
    }[];
  };
  return odds.holes.map(({ hole, par, options }) => ({
    ...{ hole, par, strokeIndex: hole, tee: 'Gorse', holePosition: 'middle', lengthM: 300 + hole },
    plan: {
      ...{ hole, par, options: options.map((option) => storedOption(option)) },
      recommendation: { optionId: options[0]!.id, reason: 'Stored.' },
    } as unknown as RoundHole['plan'],
    convergence: { spacingsM: [], rmsChange: [], maxChange: [], sweeps: [] },
    ledger: null,
    card: null,
  }));
}

function storedOption({
  id,
  meanStrokes,
  scoreOdds,
}: {
  id: string;
  meanStrokes: number;
  scoreOdds: number[];
}) {
  const [club, swing] = id.split('/');
  const aim = { bearing: 0, lonLat: [0, 0], spot: { x: 0, y: 0 } };
  return {
    kind: 'shot',
    id,
    club,
    swing,
    aim,
    carryM: 200,
    meanStrokes,
    standardError: 0.003,
    scoreOdds,
  } as unknown as Option;
}

describe('the figures of a round', () => {
  const holes = storedHoles();
  const figures = roundFigures(holes, 89);

  it('hang together: odds, budgets and the aim agree on the target', () => {
    expect(figures.odds.target).toMatchObject({ score: 89 });
    expect(figures.budget.holes.reduce((sum, { budget }) => sum + budget, 0)).toBe(89);
    const means = holes.reduce((sum, { plan }) => sum + plan.options[0]!.meanStrokes, 0);
    expect(figures.odds.expected).toBeCloseTo(means, 4);
    // The recommendation is the lowest mean here, so the two agree.
    expect(figures.playing.withForm.chanceByLowestMean).toBeCloseTo(figures.odds.target!.chance, 9);
  });

  it('fit the schema and the words', () => {
    const extra = {
      ...{ peer: null, seed: 's', conditions: DEFAULT_CONDITIONS },
      inputs: Object.fromEntries(
        ['course', 'player'].map((name) => [name, { file: 'f', name, formatVersion: 1, sha256: 'x' }]),
      ),
    };
    const document = roundDocument(holes, figures, { ...extra, inputs: { program: '0', ...extra.inputs } });
    const validate = new Ajv({ strict: false }).compile(JSON.parse(oddsSchemaText()) as object);
    validate(JSON.parse(JSON.stringify(document)));
    expect(validate.errors).toBeNull();
    const words = roundReport(holes, figures, 'yards', 'Stored course, tee Gorse', null);
    expect(words).toMatch(/^Stored course, tee Gorse, 18 holes, par 70: 89 or fewer/);
    expect(words).toMatch(/Bogey is your par here\./);
    expect(words).toMatch(/Playing to 89: \d/);
    expect(words).toContain('local rules come first');
  });
});

describe('the round command', () => {
  it('prints JSON by its schema for two holes', async () => {
    const args = ['--course', course, '--player', player, '--target', '8', '--seed', 'a', '--json'];
    args.push('--wind-mps', '4', '--wind-from-deg', '180');
    const first = await run(...args);
    expect(first.err).not.toMatch(/error/);
    expect(first.code).toBe(0);
    const validate = new Ajv({ strict: false }).compile(JSON.parse(oddsSchemaText()) as object);
    validate(JSON.parse(first.out));
    expect(validate.errors).toBeNull();
    const document = JSON.parse(first.out) as {
      chance: number;
      expected: number;
      distribution: { score: number; chance: number }[];
      ledger: { lines: { strokes: { mean: number } }[]; score: { mean: number; standardError: number } };
      peer: string;
      conditions: object;
    };
    const upTo8 = document.distribution.filter(({ score }) => score <= 8);
    expect(upTo8.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(document.chance, 9);
    expect(document.distribution.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
    const { lines, score } = document.ledger;
    expect(lines.reduce((sum, { strokes }) => sum + strokes.mean, 0)).toBeCloseTo(score.mean, 9);
    // Played by the plan: the mean of the odds, within sampling and what playing from the nearest node costs.
    expect(Math.abs(score.mean - document.expected)).toBeLessThan(3 * score.standardError + 0.06);
    expect(document.peer).toMatch(/handicap 17/);
    expect(document.conditions).toMatchObject({ wind: { speedMps: 4, fromDeg: 180 } });
  });

  it.each([
    [
      'a target that is none',
      2,
      ['--target', '89.5'],
      /--target takes a whole number from 1 to 400, not “89\.5”/,
    ],
    [
      'a tee that is not there',
      1,
      ['--target', '8', '--tee', 'Nettle', '--peer', 'none'],
      /no tee named “Nettle”/,
    ],
  ] as const)('%s', async (_, code, args, words) => {
    const result = await run('--course', course, '--player', player, ...args);
    expect(result.err).toMatch(words);
    expect(result.code).toBe(code);
    expect(result.out).toBe('');
  });
});
