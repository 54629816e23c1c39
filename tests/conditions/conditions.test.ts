/** Conditions: defaults, refusals that name the member, wind by bearing, and the shipped schema. */

import { readFileSync, writeFileSync } from 'node:fs';
import { toJsonSchema } from '@valibot/to-json-schema';
import { describe, expect, it } from 'vitest';
import {
  airOfConditions,
  ConditionsSchema,
  DEFAULT_CONDITIONS,
  parseConditions,
  windAlong,
} from '../../core/conditions/conditions.ts';
import { airOf } from '../../core/flight/air.ts';

const file = new URL('../../maps/schemas/conditions.schema.json', import.meta.url);

function schemaText(): string {
  const { $schema, ...rest } = toJsonSchema(ConditionsSchema, { typeMode: 'input', errorMode: 'throw' });
  const head = { $schema, title: 'Conditions of a day, as a round keeps them' };
  return `${JSON.stringify({ ...head, ...rest }, null, 2)}\n`;
}

describe('conditions', () => {
  it('have their schema shipped (WRITE_SCHEMAS=1 writes it anew)', () => {
    if (process.env['WRITE_SCHEMAS'] === '1') writeFileSync(file, schemaText());
    expect(readFileSync(file, 'utf8')).toBe(schemaText());
  });

  it('are still air, 15 °C and medium ground where nothing is said', () => {
    const parsed = parseConditions({});
    expect(parsed).toEqual({ ok: true, value: DEFAULT_CONDITIONS });
    expect(DEFAULT_CONDITIONS).toMatchObject({ temperatureC: 15, firmness: 'medium', season: 'leaf' });
    expect(DEFAULT_CONDITIONS.wind.speedMps).toBe(0);
    expect(airOfConditions(DEFAULT_CONDITIONS).densityKgM3).toBeCloseTo(
      airOf({ temperatureC: 15, altitudeM: 0, humidity: 0.5 }).densityKgM3,
      12,
    );
  });

  it.each([
    [{ wind: { speedMps: -3, fromDeg: 0 } }, 'conditions.wind.speedMps'],
    [{ temperatureC: 'warm' }, 'conditions.temperatureC'],
    [{ firmness: 'concrete' }, 'conditions.firmness'],
    [{ greenSpeedFt: 40 }, 'conditions.greenSpeedFt'],
  ])('refuse %j at %s', (data, where) => {
    const parsed = parseConditions(data);
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(parsed.error[0]!.where).toBe(where);
  });

  it('meet a shot by its bearing: from ahead, from behind, from the right', () => {
    const conditions = { ...DEFAULT_CONDITIONS, wind: { speedMps: 5, fromDeg: 90, gustSdMps: 0 } };
    const ahead = windAlong(conditions, Math.PI / 2);
    expect(ahead.along).toBeCloseTo(-5, 12);
    expect(ahead.right).toBeCloseTo(0, 12);
    expect(windAlong(conditions, -Math.PI / 2).along).toBeCloseTo(5, 12);
    // Aiming north, an east wind comes from the right and pushes to the left.
    expect(windAlong(conditions, 0).right).toBeCloseTo(-5, 12);
  });
});
