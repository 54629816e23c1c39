/** The commands as a coach runs them, by exit code, standard output and standard error; long work as child processes. */

import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it, vi } from 'vitest';
import type { CommandName } from '../../electron/cli/commands.ts';
import { runCommand, runScript } from '../run-command.ts';

const root = new URL('../..', import.meta.url).pathname;
const COURSE = 'maps/demo-course.geojson';
const PLAYER = 'maps/demo-player.json';
const folder = mkdtempSync(join(tmpdir(), 'holewright-cli-'));

// Each test starts whole programs.
vi.setConfig({ testTimeout: 240_000 });

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

/** The demo course, changed. */
function course(
  name: string,
  change: (features: { properties: Record<string, unknown> }[]) => unknown[],
): string {
  const json = JSON.parse(readFileSync(join(root, COURSE), 'utf8')) as {
    features: { properties: Record<string, unknown> }[];
  };
  return file(name, JSON.stringify({ ...json, features: change(json.features) }));
}

function validate(schema: string, text: string): void {
  const check = new Ajv2020({ strict: false }).compile(
    JSON.parse(readFileSync(join(root, 'maps/schemas', schema), 'utf8')) as object,
  );
  expect(check(JSON.parse(text)), JSON.stringify(check.errors)).toBe(true);
}

interface PlanJson {
  readonly hole: number;
  readonly options: {
    readonly id: string;
    readonly club: string;
    readonly meanStrokes: number;
    readonly aim: { readonly lonLat: [number, number] };
  }[];
  readonly recommended: { readonly id: string; readonly reason: string };
  readonly expectedStrokes: number;
  readonly conditions: { readonly temperatureC: number };
}

describe('plan', () => {
  it('prints JSON by its schema, how far the day may change too, and the same on workers', async () => {
    const day = ['--conditions', 'maps/demo-windy-day.json', '--wind-from-deg', '200'];
    const args = ['--course', COURSE, '--player', PLAYER, '--seed', 'a', '--json', ...day];
    // Both at once: one hole in the command's own thread, several on its workers.
    const [alone, several] = await Promise.all([
      runCommand('plan', ...args, '--hole', '16', '--sensitivity'),
      runCommand('plan', ...args, '--hole', '16,3'),
    ]);
    expect(alone.code).toBe(0);
    validate('plan.schema.json', alone.out);
    validate('plan.schema.json', several.out);
    const holes = JSON.parse(several.out) as PlanJson[];
    expect(holes.map((hole) => hole.hole)).toEqual([16, 3]);
    const { sensitivity, ...plan } = JSON.parse(alone.out) as PlanJson & {
      readonly sensitivity: readonly { readonly condition: string; readonly now: number }[];
    };
    expect(holes[0]).toEqual(plan);
    expect(sensitivity.map(({ condition }) => condition)).toEqual([
      ...['wind-along', 'wind-across', 'temperature', 'firmness', 'green-speed', 'season'],
    ]);
    expect(sensitivity[2]!.now).toBe(plan.conditions.temperatureC);
    expect(holes[0]!.options.map((option) => option.id)).toContain(holes[0]!.recommended.id);
    expect(holes[1]!.conditions).toMatchObject({ wind: { speedMps: 8, fromDeg: 200 }, firmness: 'soft' });
  });

  it('says in words what to play and why, and how far the day may change', async () => {
    const { code, out } = await runCommand(
      'plan',
      '--course',
      COURSE,
      '--player',
      PLAYER,
      '--hole',
      '3',
      '--sensitivity',
    );
    expect(code).toBe(0);
    expect(out).toMatch(/^Hole 3, par 3/);
    expect(out).toMatch(/\nPlay /);
    expect(out).toContain('local rules come first');
    expect(out).toContain('How far the day may change');
    expect(out).toMatch(/\n {2}Wind along the shot: no wind now; /);
  });

  it('a hole without a green is refused by name, the other holes are planned', async () => {
    const path = course('no-green.geojson', (features) =>
      features.filter(
        ({ properties }) => !(properties['golf'] === 'green' && String(properties['ref']) === '3'),
      ),
    );
    const refused = await runCommand('plan', '--course', path, '--player', PLAYER, '--hole', '3');
    expect(refused.code).toBe(1);
    expect(refused.err).toMatch(/hole 3: no green is drawn/);
    expect(refused.err.trim().split('\n')).toHaveLength(1);
    const checked = await runCommand('check', '--course', path);
    expect(checked.code).toBe(1);
    expect(checked.err).toMatch(/hole 3/);
  });

  it('a club with two shots is named with what is used instead', async () => {
    const player = JSON.parse(readFileSync(join(root, PLAYER), 'utf8')) as { shots: { club: string }[] };
    const few = player.shots.filter(({ club }) => club === '7-iron').slice(0, 2);
    const path = file(
      'few.json',
      JSON.stringify({ ...player, shots: [...player.shots.filter(({ club }) => club !== '7-iron'), ...few] }),
    );
    const { code, err } = await runCommand('plan', '--course', COURSE, '--player', path, '--hole', '3');
    expect(code).toBe(0);
    expect(err).toMatch(/7-iron has 2 measured shots/);
    expect(err).toMatch(/preset/);
  });
});

describe('faults of the call', () => {
  it.each([
    [
      'a missing player file',
      1,
      ['--course', COURSE, '--player', 'nowhere.json', '--hole', '1'],
      /nowhere\.json: error: there is no such file/,
    ],
    [
      'a broken course file',
      1,
      ['--course', file('broken.geojson', '{ "type": '), '--player', PLAYER, '--hole', '1'],
      /broken\.geojson: error: .*line 1/,
    ],
    [
      'a hole that is not there',
      1,
      ['--course', COURSE, '--player', PLAYER, '--hole', '19'],
      /hole 19: the course has no such hole/,
    ],
    [
      'a tee that is not there',
      1,
      ['--course', COURSE, '--player', PLAYER, '--hole', '1', '--tee', 'Nettle'],
      /no tee named “Nettle”; it has/,
    ],
    [
      'a place off the map',
      1,
      ['--course', COURSE, '--player', PLAYER, '--hole', '1', '--from', '10,10'],
      /not on the ground of hole 1/,
    ],
    ['no player named', 2, ['--course', COURSE, '--hole', '1'], /--player is missing/],
    ['an unknown option', 2, ['--caddie', 'x'], /usage/],
    [
      'a place that is none',
      2,
      ['--course', COURSE, '--player', PLAYER, '--hole', '1', '--from', 'here'],
      /LON,LAT/,
    ],
  ] as const)('%s', async (_, code, args, words) => {
    const result = await runCommand('plan', ...args);
    expect(result.code).toBe(code);
    expect(result.err).toMatch(words);
    expect(result.out).toBe('');
  });

  it('is told to the shell', async () => {
    const result = await runScript('plan', '--course', COURSE, '--hole', '1');
    expect(result.code).toBe(2);
    expect(result.err).toMatch(/--player is missing/);
  });
});

describe('a command that does not exist', () => {
  it('is refused, with those that do', async () => {
    const result = await runCommand('plans' as CommandName, '--hole', '1');
    expect(result.code).toBe(2);
    expect(result.err).toMatch(/no command “plans”; there are card, check, .*, plan, plan-many/);
  });
});

describe('simulate', () => {
  const DAY = ['--wind-mps', '6', '--wind-from-deg', '90', '--season', 'bare'];

  it('prints where balls end, by its schema; shares sum to 1', async () => {
    const planned = JSON.parse(
      (await runCommand('plan', '--course', COURSE, '--player', PLAYER, '--hole', '3', '--json', ...DAY)).out,
    ) as PlanJson;
    const best = planned.options[0]!;
    const args = [
      '--course',
      COURSE,
      '--player',
      PLAYER,
      '--hole',
      '3',
      '--club',
      best.club,
      '--aim',
      best.aim.lonLat.join(','),
      '--json',
      ...DAY,
    ];
    const { code, out } = await runCommand('simulate', ...args);
    expect(code).toBe(0);
    validate('simulate.schema.json', out);
    const result = JSON.parse(out) as {
      endShare: Record<string, number>;
      meanStrokes: number;
      standardError: number;
    };
    expect(Object.values(result.endShare).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(JSON.parse(out)).toMatchObject({ conditions: { wind: { speedMps: 6 }, season: 'bare' } });
    // The same choice as the plan's best option, on other draws.
    expect(Math.abs(result.meanStrokes - best.meanStrokes)).toBeLessThan(0.03);
  });

  it('names the bag where the club is not in it', async () => {
    const { code, err } = await runCommand(
      'simulate',
      '--course',
      COURSE,
      '--player',
      PLAYER,
      '--hole',
      '3',
      '--club',
      'Niblick',
      '--aim',
      '-30,40',
    );
    expect(code).toBe(1);
    expect(err).toMatch(/the bag has no such club and swing; it has Driver/);
  });
});

describe('check', () => {
  it('tells what a hole still lacks, as the window does', async () => {
    const path = course('no-marker.geojson', (features) =>
      features.filter(
        ({ properties }) =>
          !(properties['holewright_kind'] === 'tee_marker' && String(properties['ref']) === '3'),
      ),
    );
    const { code, out } = await runCommand('check', '--course', path);
    expect(code).toBe(0);
    expect(out).toMatch(/warning: hole 3: Hole 3 has no tee marker/);
    expect(out).toMatch(/0 errors, 1 warnings/);
  });

  it('finds no error in the demo course', async () => {
    const { code, out } = await runCommand('check', '--course', COURSE);
    expect(code).toBe(0);
    expect(out).toMatch(/18 holes, par 70: 0 errors/);
  });
});
