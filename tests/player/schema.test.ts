/**
 * The JSON Schema that is shipped for other programs says what the parser says. After a change of the format run
 * `WRITE_SCHEMAS=1 npx vitest run tests/player/schema.test.ts` and look at the difference.
 */

import { readFileSync, writeFileSync } from 'node:fs';
import { toJsonSchema } from '@valibot/to-json-schema';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { PlayerDocumentSchema } from '../../core/player/format.ts';
import { parsePlayer } from '../../core/player/parse.ts';
import { minimalPlayer } from './sample-player.ts';

const file = new URL('../../maps/schemas/player.schema.json', import.meta.url);

function schemaText(): string {
  const { $schema, ...rest } = toJsonSchema(PlayerDocumentSchema, { typeMode: 'input', errorMode: 'throw' });
  const head = {
    $schema,
    title: 'Holewright player file, format version 1',
    description:
      'Bag, measured shots, putting and settings of one player. Metres and degrees; directions are positive right of the aim. Unknown members are kept.',
  };
  return `${JSON.stringify({ ...head, ...rest }, null, 2)}\n`;
}

describe('maps/schemas/player.schema.json', () => {
  it('is the schema of the parser', () => {
    if (process.env['WRITE_SCHEMAS'] === '1') writeFileSync(file, schemaText());
    expect(readFileSync(file, 'utf8')).toBe(schemaText());
  });

  const validate = new Ajv({ strict: false }).compile(JSON.parse(schemaText()) as object);
  const player = minimalPlayer();
  const [club] = player.bag;

  it.each([
    ['a complete player', player, true],
    ['an unknown member', { ...player, colour: 'red' }, true],
    ['no name', { ...player, name: undefined }, false],
    ['an empty bag', { ...player, bag: [] }, false],
    ['an unknown kind of club', { ...player, bag: [{ ...club, kind: 'chipper' }] }, false],
    ['a loft as text', { ...player, bag: [{ ...club, loftDeg: '10' }] }, false],
    ['a shot of negative carry', { ...player, shots: [{ club: 'Driver', carryM: -3 }] }, false],
    [
      'an impossible putting spread',
      { ...player, putting: { directionSdDeg: 0, distanceSdShare: 0.1 } },
      false,
    ],
    ['another format', { ...player, holewright: { format: 'course', formatVersion: 1 } }, false],
  ])('ajv and the parser agree on %s', (_, candidate, good) => {
    const json = JSON.parse(JSON.stringify(candidate)) as unknown;
    expect(validate(json)).toBe(good);
    expect(parsePlayer(json).ok).toBe(good);
  });
});
