/** The putt command as it is called: exit code, standard output, standard error, and its JSON against the schema. */

import { readFileSync, writeFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, it, vi } from 'vitest';
import { puttJsonSchemaText } from './putt-schema.ts';
import { runCommand } from '../run-command.ts';

const schemaFile = new URL('../../maps/schemas/putt.schema.json', import.meta.url);

// Each test starts whole programs.
vi.setConfig({ testTimeout: 120_000 });

const putt = (...args: string[]) => runCommand('putt', ...args);

const PLAYER = ['--player', 'maps/demo-player.json'];

describe('putt', () => {
  it('has its schema shipped (WRITE_SCHEMAS=1 writes it anew)', () => {
    if (process.env['WRITE_SCHEMAS'] === '1') writeFileSync(schemaFile, puttJsonSchemaText());
    expect(readFileSync(schemaFile, 'utf8')).toBe(puttJsonSchemaText());
  });

  it('prints JSON that the schema accepts, its chances summing to one', async () => {
    const { code, out } = await putt(
      ...['--distance-ft', '15', '--green-speed-ft', '10', '--slope-percent', '2'],
      ...['--slope-direction-deg', '90', ...PLAYER, '--json'],
    );
    expect(code).toBe(0);
    const result = JSON.parse(out) as {
      readonly chances: { readonly one: number; readonly two: number; readonly threeOrMore: number };
      readonly aimOffsetM: number;
    };
    const validate = new Ajv({ strict: false }).compile(JSON.parse(puttJsonSchemaText()) as object);
    expect(validate(result), JSON.stringify(validate.errors)).toBe(true);
    const { one, two, threeOrMore } = result.chances;
    expect(one + two + threeOrMore).toBeCloseTo(1, 9);
    // The slope takes the ball to the right, so the aim is left.
    expect(result.aimOffsetM).toBeLessThan(-0.2);
  });

  it.each([
    [['--distance-ft', '10', '--green-speed-ft', '99', ...PLAYER], 2, /from 5 to 15, not “99”/],
    [
      ['--distance-ft', '10', '--green-speed-ft', '14', '--slope-percent', '7', ...PLAYER],
      1,
      /does not stop on a slope of 7 %/,
    ],
  ])('refuses %j', async (args, exitCode, words) => {
    const { code, out, err } = await putt(...args);
    expect(code).toBe(exitCode);
    expect(out).toBe('');
    expect(err).toMatch(words);
  });
});
