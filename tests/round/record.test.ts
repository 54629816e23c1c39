import { readFileSync, writeFileSync } from 'node:fs';
import { toJsonSchema } from '@valibot/to-json-schema';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvCell, holesCsv, shotsCsv } from '../../core/round/csv.ts';
import {
  migrateRound,
  ROUND_FORMAT_VERSION,
  type RoundDocument,
  RoundDocumentSchema,
  type RoundMigration,
  roundText,
} from '../../core/round/format.ts';
import {
  newRound,
  parseRound,
  parseRoundText,
  totalsOf,
  withHole,
  withoutHole,
} from '../../core/round/record.ts';

const version1 = readFileSync(new URL('./fixtures/version-1.round.json', import.meta.url), 'utf8');

function read(text: string): RoundDocument {
  const parsed = parseRoundText(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  return parsed.value.round;
}

describe('a round file', () => {
  it('of format version 1 opens for good, unknown members kept', () => {
    const round = read(version1);
    expect(round).toEqual(JSON.parse(version1));
    expect(round.played[1]).toMatchObject({ hole: 2, somethingNew: 'kept' });
    expect(totalsOf(round)).toEqual({ holes: 2, score: 9, par: 7, putts: null, penalties: null });
    expect(read(roundText(round))).toEqual(round);
  });

  it('is entered hole by hole; entering a hole again replaces it', () => {
    const round = newRound({ name: 'x', course: { name: 'c' }, player: { name: 'p' } });
    const one = withHole(withHole(round, { hole: 3, par: 4, score: 6 }), { hole: 1, par: 3, score: 3 });
    const two = withHole(one, { hole: 3, par: 4, score: 5, putts: 2 });
    expect(two.played.map(({ hole, score }) => [hole, score])).toEqual([
      [3, 5],
      [1, 3],
    ]);
    expect(withoutHole(two, 1).played).toHaveLength(1);
    expect(round.played).toEqual([]);
    expect(parseRound(two).ok).toBe(true);
  });

  it.each([
    ['another format', { holewright: { format: 'player', formatVersion: 1 } }, /not say that it is a round/],
    [
      'a newer version',
      { ...JSON.parse(version1), holewright: { format: 'round', formatVersion: 2 } },
      /version 2.*up to version 1/,
    ],
    ['no score', { ...JSON.parse(version1), played: [{ hole: 1, par: 4 }] }, /It is missing/],
    [
      'a hole twice',
      {
        ...JSON.parse(version1),
        played: [
          { hole: 1, par: 4, score: 4 },
          { hole: 1, par: 4, score: 5 },
        ],
      },
      /entered twice/,
    ],
    [
      'a place that is none',
      {
        ...JSON.parse(version1),
        played: [{ hole: 1, par: 4, score: 4, shots: [{ club: 'x', to: [500, 1] }] }],
      },
      /500/,
    ],
  ])('with %s is refused in words', (_, json, words) => {
    const parsed = parseRound(json);
    expect(parsed.ok).toBe(false);
    if (!parsed.ok)
      expect(parsed.error.map(({ where, message }) => `${where} ${message}`).join()).toMatch(words);
  });

  it('what cannot quite be true is pointed out, not refused', () => {
    const json = JSON.parse(version1) as { played: object[] };
    const odd = {
      ...json,
      played: [
        { hole: 1, par: 4, score: 4, putts: 3, penalties: 2 },
        { hole: 2, par: 3, score: 2, shots: [{ club: 'a' }, { club: 'b', penalty: 1 }] },
        { hole: 4, par: 3, score: 2, putts: 1, penalties: 0 },
      ],
    };
    const parsed = parseRound(odd);
    expect(parsed.ok && parsed.value.warnings.map(({ where, code }) => [where, code])).toEqual([
      ['hole 1', 'strokes-do-not-add-up'],
      ['hole 2', 'more-shots-than-strokes'],
    ]);
  });

  it('goes through each later step of a chain of versions', () => {
    const mark =
      (name: string): RoundMigration =>
      (document) => ({
        ...document,
        steps: [...((document['steps'] as string[] | undefined) ?? []), name],
      });
    const chain = [mark('1 to 2'), mark('2 to 3')];
    expect(migrateRound({}, 1, chain)).toEqual({ ok: true, value: { steps: ['1 to 2', '2 to 3'] } });
    expect(migrateRound({}, 3, chain)).toEqual({ ok: true, value: {} });
    expect(migrateRound({}, 4, chain).ok).toBe(false);
    expect(ROUND_FORMAT_VERSION).toBe(1);
  });

  it('never throws, whatever it is given', () => {
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string()), (text) => {
        parseRoundText(text);
      }),
    );
    const base = JSON.parse(version1) as Record<string, unknown>;
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(base)), fc.jsonValue(), (key, value) => {
        parseRound({ ...base, [key]: value });
      }),
    );
  });
});

describe('maps/schemas/round.schema.json', () => {
  // After a change of the format: WRITE_SCHEMAS=1 npx vitest run tests/round/record.test.ts, and look at the difference.
  const file = new URL('../../maps/schemas/round.schema.json', import.meta.url);
  const { $schema, ...rest } = toJsonSchema(RoundDocumentSchema, { typeMode: 'input', errorMode: 'throw' });
  const head = {
    $schema,
    title: 'Holewright round file, format version 1',
    description:
      'Conditions, plan and scores of one round. Metres, degrees, longitude and latitude (WGS 84). Unknown members are kept.',
  };
  const text = `${JSON.stringify({ ...head, ...rest }, null, 2)}\n`;

  it('is the schema of the parser', () => {
    if (process.env['WRITE_SCHEMAS'] === '1') writeFileSync(file, text);
    expect(readFileSync(file, 'utf8')).toBe(text);
  });

  it('accepts the fixture and refuses what the parser refuses', () => {
    const validate = new Ajv({ strict: false }).compile(JSON.parse(text) as object);
    expect(validate(JSON.parse(version1))).toBe(true);
    const base = JSON.parse(version1) as Record<string, unknown>;
    for (const change of [
      { name: '' },
      { played: [{ hole: 0, par: 4, score: 4 }] },
      { feedsSpread: 'yes' },
    ]) {
      expect(validate({ ...base, ...change })).toBe(false);
      expect(parseRound({ ...base, ...change }).ok).toBe(false);
    }
  });
});

describe('CSV', () => {
  const round = read(version1);

  it('has one row per hole, and one per shot', () => {
    expect(holesCsv(round).split('\r\n')).toEqual([
      'hole,par,stroke_index,budget,plan_club,plan_expected,score,putts,penalties,tee_club,tee_end,notes,played_at',
      '1,4,1,5,Driver,4.9,5,2,0,5-iron,fairway,into the wind,2026-04-11',
      '2,3,,,,,4,,,,,,2026-04-11',
      '',
    ]);
    expect(shotsCsv(round).split('\r\n')[1]).toBe(
      '1,1,5-iron,full,4,52.00002,tee,4,52.0015,4.0001,52.0014,fairway,,,,,,,',
    );
  });

  it('no text cell begins as a formula, and every text comes back', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.constantFrom(
            '=1+1',
            '+A1',
            '-2',
            '@SUM(A1)',
            '\t=1',
            ' =1',
            '\r=1',
            '"=1"',
            '|x',
            'x;=1',
            '＝1',
          ),
        ),
        (value) => {
          const cell = csvCell(value);
          const inner = cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell;
          expect(inner).not.toMatch(/^\s*[=+\-@|]/u);
          // Apostrophes may have come in; everything else is as it was.
          expect(inner.replaceAll("'", '')).toBe(value.replaceAll("'", ''));
          expect(inner).not.toMatch(/[;\t]\s*[=+\-@|]/u);
          if (!cell.startsWith('"')) expect(cell).not.toMatch(/[",\r\n]/u);
        },
      ),
    );
    expect(csvCell(-3)).toBe('-3');
    expect(csvCell(NaN)).toBe('');
    const hostile = withHole(round, { hole: 1, par: 4, score: 4, teeClub: '=HYPERLINK("x")', notes: 'a,b' });
    expect(holesCsv(hostile)).toContain(`"'=HYPERLINK(""x"")"`);
  });
});
