/** The fly command as it is called: its JSON against the schema and a flight known from elsewhere, refusals. */

import { readFileSync, writeFileSync } from 'node:fs';
import { toJsonSchema } from '@valibot/to-json-schema';
import { Ajv } from 'ajv';
import * as v from 'valibot';
import { describe, expect, it, vi } from 'vitest';
import { runCommand } from '../run-command.ts';

const schemaFile = new URL('../../maps/schemas/fly.schema.json', import.meta.url);

// Each test starts a whole program.
vi.setConfig({ testTimeout: 120_000 });

const FlySchema = v.strictObject({
  carryM: v.pipe(v.number(), v.description('Along the aim')),
  driftM: v.pipe(v.number(), v.description('Where it lands right of the aim')),
  apexM: v.number(),
  descentDeg: v.pipe(v.number(), v.description('Below the horizontal')),
  timeS: v.number(),
  landingSpeedMps: v.number(),
  landingSpinRpm: v.number(),
  airDensityKgM3: v.number(),
  landed: v.pipe(v.boolean(), v.description('False where the target lies above the flight')),
});

function schemaText(): string {
  const { $schema, ...rest } = toJsonSchema(FlySchema, { errorMode: 'throw' });
  return `${JSON.stringify({ $schema, title: 'Output of the fly command with --json', ...rest }, null, 2)}\n`;
}

const fly = (...args: string[]) => runCommand('fly', ...args);

describe('fly', () => {
  it('has its schema shipped (WRITE_SCHEMAS=1 writes it anew)', () => {
    if (process.env['WRITE_SCHEMAS'] === '1') writeFileSync(schemaFile, schemaText());
    expect(readFileSync(schemaFile, 'utf8')).toBe(schemaText());
  });

  it('prints a flight that the schema accepts: 60 m/s, 13°, 3000 rpm carry 202.5 yd', async () => {
    const { code, out } = await fly(
      ...['--speed-mps', '60', '--launch-deg', '13', '--spin-rpm', '3000', '--json'],
    );
    expect(code).toBe(0);
    const flight = v.parse(FlySchema, JSON.parse(out));
    const validate = new Ajv({ strict: false }).compile(JSON.parse(schemaText()) as object);
    expect(validate(flight)).toBe(true);
    // Derived with another program from the coefficients of Smits & Smith 1994, given to 0.1 yd.
    expect(Math.abs(flight.carryM / 0.9144 - 202.5)).toBeLessThan(0.2);
  });

  it('names the side that the wind pushes to', async () => {
    const { out } = await fly(
      ...['--speed-mps', '60', '--launch-deg', '13', '--spin-rpm', '3000'],
      ...['--wind-mps', '5', '--wind-from-deg', '90'],
    );
    expect(out).toMatch(/m left/);
  });

  it('refuses what is no number', async () => {
    const { code, err } = await fly('--speed-mps', 'fast', '--launch-deg', '13', '--spin-rpm', '3000');
    expect(code).toBe(2);
    expect(err).toMatch(/not “fast”/);
  });
});
