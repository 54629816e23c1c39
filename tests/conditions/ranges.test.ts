import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS, parseConditions } from '../../core/conditions/conditions.ts';
import { DAY_RANGES } from '../../core/conditions/ranges.ts';
import { usedDaySchema } from './used-day.ts';

interface Part {
  readonly minimum?: number;
  readonly maximum?: number;
  readonly properties?: Readonly<Record<string, Part>>;
}

const schema = JSON.parse(
  readFileSync(new URL('../../maps/schemas/conditions.schema.json', import.meta.url), 'utf8'),
) as Part;

describe('the ranges of a day’s numbers', () => {
  it('are those of the published schema', () => {
    const { wind, ...members } = schema.properties!;
    const { speedMps, fromDeg, gustSdMps } = wind!.properties!;
    const parts: Readonly<Record<string, Part | undefined>> = {
      ...members,
      ...{ windMps: speedMps, windFromDeg: fromDeg, gustSdMps },
    };
    for (const [name, { least, most }] of Object.entries(DAY_RANGES))
      expect({ name, least, most }).toEqual({
        ...{ name, least: parts[name]?.minimum, most: parts[name]?.maximum },
      });
  });

  it('hold the demo’s windy day', () => {
    const text = readFileSync(new URL('../../maps/demo-windy-day.json', import.meta.url), 'utf8');
    const parsed = parseConditions(JSON.parse(text));
    expect(parsed.ok && parsed.value).toMatchObject({ firmness: 'soft', season: 'bare' });
    expect(parsed.ok && parsed.value.humidity).toBe(DEFAULT_CONDITIONS.humidity);
  });
});

describe('the day in the JSON of commands', () => {
  const read = (name: string): unknown =>
    JSON.parse(readFileSync(new URL(`../../maps/schemas/${name}.schema.json`, import.meta.url), 'utf8'));

  it('is the published one with every member filled in', () => {
    const plan = read('plan') as { readonly $defs: { readonly conditions: unknown } };
    const simulate = read('simulate') as { readonly properties: { readonly conditions: unknown } };
    expect(plan.$defs.conditions).toEqual(usedDaySchema());
    expect(simulate.properties.conditions).toEqual(usedDaySchema());
  });
});
