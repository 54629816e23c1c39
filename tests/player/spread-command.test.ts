/** The spread command as a coach runs it: by exit code, standard output and standard error. */

import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it, vi } from 'vitest';
import type { PlayerDocument } from '../../core/player/format.ts';
import { STANDARD_BAG } from '../../core/player/presets.ts';
import { minimalPlayer } from './sample-player.ts';
import { runCommand } from '../run-command.ts';

const root = new URL('../..', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'holewright-spread-'));
const DEVICE = 'tests/player/csv/fixtures/old-harbour-studio.csv';

// Each test starts whole programs.
vi.setConfig({ testTimeout: 120_000 });

const run = (...args: string[]) => runCommand('spread', ...args);

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const player: PlayerDocument = {
  ...minimalPlayer(),
  bag: STANDARD_BAG.map((club) => ({ ...club, swings: [...club.swings] })),
  puttingRecord: { holed: [{ distanceM: 2, tries: 30, made: 14 }] },
  upAndDowns: [{ kind: 'chip', tries: 10, saved: 4 }],
};
const playerFile = file('player.json', JSON.stringify(player));

interface Output {
  readonly spreads: readonly {
    readonly club: string;
    readonly swing: string;
    readonly source: { readonly from: string };
    readonly shots: number;
    readonly estimates: Readonly<
      Record<string, { readonly mean: number; readonly low: number; readonly high: number }>
    >;
  }[];
  readonly table: {
    readonly mapping: object;
    readonly accepted: number;
    readonly rejected: readonly { readonly line: number }[];
  } | null;
}

describe('spread', () => {
  it('prints JSON by its schema, shots of a table taken in, and saves the player', async () => {
    const saved = join(folder, 'saved.json');
    const { code, out, err } = await run(
      '--player',
      playerFile,
      '--shots',
      DEVICE,
      '--json',
      '--write',
      saved,
    );
    expect(err).toContain('8-iron has no measured shots');
    expect(code).toBe(0);
    const schema = JSON.parse(readFileSync(join(root, 'maps/schemas/spread.schema.json'), 'utf8')) as object;
    const check = new Ajv2020({ strict: false }).compile(schema);
    expect(check(JSON.parse(out)), JSON.stringify(check.errors)).toBe(true);
    const { spreads, table } = JSON.parse(out) as Output;
    expect(table!.accepted).toBe(300);
    expect(table!.rejected.map(({ line }) => line)).toEqual([302, 303, 304]);
    const iron = spreads.find(({ club, swing }) => club === '7-iron' && swing === 'full')!;
    expect(iron.shots).toBe(50);
    for (const { mean, low, high } of Object.values(iron.estimates)) {
      expect(low).toBeLessThanOrEqual(mean);
      expect(high).toBeGreaterThanOrEqual(mean);
    }
    const written = JSON.parse(readFileSync(saved, 'utf8')) as PlayerDocument;
    expect(written.shots).toHaveLength(300);
    expect(written.settings!.sources![0]!.name).toBe('old-harbour-studio.csv');

    // The same table again: known by its columns, every shot known, nothing twice.
    const again = await run('--player', saved, '--shots', DEVICE, '--json');
    const second = JSON.parse(again.out) as Output & {
      readonly table: { readonly duplicates: readonly unknown[] };
    };
    expect(second.table.accepted).toBe(0);
    expect(second.table.duplicates).toHaveLength(300);
    expect(again.err).not.toContain('columns:');
  });

  it('prints words: every club, what was rejected, putting and up-and-downs with their intervals', async () => {
    const mapping = {
      delimiter: ';',
      decimal: ',',
      skipRows: 1,
      club: '7-iron',
      columns: [
        { index: 0, header: 'Weite', field: 'carry', unit: 'yd' },
        { index: 1, header: 'Seite', field: 'offline', unit: 'yd', positive: 'right' },
        { index: 2, header: 'Lage', field: 'lie' },
      ],
      conditions: { windMps: 5, windFromDeg: 0 },
    };
    const columns = file('columns.json', JSON.stringify(mapping));
    // Not UTF-8: an umlaut of one byte.
    const table = file(
      'own.csv',
      Buffer.from('L\u00e4nge;Seite;Lage\n115,5;2,5;Rough\n112;-3;\nweit;1;\n', 'latin1'),
    );
    const { code, out, err } = await run('--player', playerFile, '--shots', table, '--columns', columns);
    expect(code).toBe(0);
    expect(err).toContain('windows-1252');
    expect(err).toMatch(/7-iron has 2 measured shots/);
    expect(out).toMatch(/7-iron +2 +[01] +1\d\d\.\d \(\d+\.\d to \d+\.\d\)/);
    expect(out).toContain('2 shots are counted as from a good lie in still air at 15 °C at sea level');
    expect(out).toContain('table: 3 rows, 2 shots taken, 1 rejected, 0 already known');
    expect(out).toMatch(/line 4: Carry: “weit” is no number/);
    expect(out).toMatch(/putting \(30 putts on record\): direction ± \d\.\d\d° \(\d\.\d\d to \d\.\d\d\)/);
    expect(out).toMatch(/up and down from a chip: 4 of 10, 41 % \(\d+ to \d+\)/);
  });

  it.each([
    ['no player', 2, [], /--player is missing/],
    ['columns without shots', 2, ['--player', playerFile, '--columns', 'x.json'], /name that file too/],
    [
      'a missing table',
      1,
      ['--player', playerFile, '--shots', 'nowhere.csv'],
      /nowhere\.csv: error: there is no such file/,
    ],
    [
      'no table',
      1,
      ['--player', playerFile, '--shots', file('no.csv', 'hello')],
      /No rows of two or more columns/,
    ],
    [
      'a mapping that is none',
      1,
      ['--player', playerFile, '--shots', DEVICE, '--columns', file('bad.json', '{"delimiter":"x"}')],
      /bad\.json: error: delimiter: /,
    ],
    [
      'a folder that is not there',
      1,
      ['--player', playerFile, '--write', '/nowhere/at/all.json'],
      /could not be written/,
    ],
  ] as const)('refuses %s', async (_, code, args, words) => {
    const result = await run(...args);
    expect(result.code).toBe(code);
    expect(result.err).toMatch(words);
  });
});
