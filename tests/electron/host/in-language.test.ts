import { describe, expect, it } from 'vitest';
import { told } from '../../../core/words/told.ts';
import { wordsIn } from '../../../core/words/words.ts';
import type { Bridge } from '../../../electron/contract/bridge.ts';
import { readAnswer, readRequest } from '../../../electron/contract/wire.ts';
import { refused, refusedByDisk } from '../../../electron/files/answer.ts';
import { readsInCore } from '../../../electron/files/core-check.ts';
import { electronHost } from '../../../renderer/host/electron-client.ts';
import { inLanguage, writtenInLanguage } from '../../../renderer/host/in-language.ts';

const [english, german] = [wordsIn('en'), wordsIn('de')];
/** As it comes out of a response. */
const travelled = (answer: unknown): unknown => JSON.parse(JSON.stringify(answer));

describe('a refusal of the host', () => {
  const full = refusedByDisk(
    Object.assign(new Error(), { code: 'ENOSPC' }),
    told(({ refusals }) => refusals.doing.saving, { name: 'old-pines.geojson' }),
  );

  it('is English for logs and commands, and told in the language of the window', () => {
    expect(full.message).toMatch(/^The disk is full, so saving old-pines\.geojson was stopped\./u);
    const read = readAnswer('save', travelled(full));
    expect(inLanguage(read, german)).toMatchObject({
      failure: 'disk-full',
      message: expect.stringMatching(
        /^Die Platte ist voll, daher wurde das Speichern von old-pines\.geojson/u,
      ) as string,
    });
    expect(inLanguage(read, english)).toEqual(read);
  });

  it('reaches the page through its client in the language that it has just then', async () => {
    let words = english;
    const bridge = { save: () => Promise.resolve(travelled(full)), watch: () => () => undefined };
    const host = electronHost(
      bridge as unknown as Bridge,
      () => undefined,
      () => words,
    );
    const save = async (): Promise<unknown> =>
      host.save({ token: 'abcdefgh', text: '{}', baseRevision: null });
    expect(await save()).toMatchObject({ message: expect.stringContaining('The disk') as string });
    words = german;
    expect(await save()).toMatchObject({ message: expect.stringContaining('Die Platte') as string });
  });

  it('carries what core found wrong in a file', () => {
    const fault = readsInCore('player', '{"holewright":{"format":"player","formatVersion":99}}');
    const refusal = refused(
      'bad-request',
      told(({ refusals }) => refusals.content.notWritten, { name: 'a', fault: fault! }),
    );
    const read = inLanguage(readAnswer('create', travelled(refusal)), german);
    expect(read).toMatchObject({
      message: expect.stringMatching(/^a wurde nicht geschrieben: .*99/u) as string,
    });
    expect(JSON.stringify(read)).not.toContain('the last good copy');
  });

  it.each([
    ['an entry that this page does not know', { entry: ['refusals', 'neverHeardOf'], values: {} }],
    ['what every object has', { entry: ['constructor'], values: {} }],
    ['a heap of entries', { entry: ['refusals'], values: {} }],
    [
      'an unknown entry within',
      { entry: ['refusals', 'diskFull'], values: { doing: { entry: ['x'], values: {} } } },
    ],
    ['no value where one is asked for', { entry: ['refusals', 'gone'], values: {} }],
    [
      'one value of two',
      { entry: ['refusals', 'forbidden'], values: { doing: { entry: ['refusals', 'noPdf'], values: {} } } },
    ],
    [
      'no value within',
      {
        entry: ['refusals', 'gone'],
        values: { doing: { entry: ['refusals', 'doing', 'saving'], values: {} } },
      },
    ],
    ['a writer of numbers', { entry: ['figures', 'short'], values: {} }],
    ['a number for a text', { entry: ['refusals', 'gone'], values: { doing: 3 } }],
  ])('stays as it came with %s', (_what, message) => {
    const answer = readAnswer('save', {
      ok: false,
      failure: 'unknown',
      message: 'As it came.',
      told: message,
    });
    expect(inLanguage(answer, german)).toMatchObject({ failure: 'unknown', message: 'As it came.' });
  });

  it('is not read where its message is deeper than any is', () => {
    let message: object = { entry: ['refusals', 'noPdf'], values: {} };
    for (let depth = 0; depth < 50; depth++)
      message = { entry: ['refusals', 'diskFull'], values: { doing: message } };
    expect(readAnswer('save', { ok: false, failure: 'unknown', message: '', told: message })).toMatchObject({
      message: expect.stringContaining('does not understand') as string,
    });
  });
});

describe('what the contract itself says', () => {
  const said = [
    readRequest('open', { token: 'no' }),
    readRequest('open', []),
    readAnswer('open', 'no answer'),
  ];

  it.each(said)('stands in the catalogue word for word: %j', (answer) => {
    if (answer.ok || answer.told === undefined) throw new Error('It was no refusal with an entry.');
    expect(inLanguage({ ...answer, message: '' }, english)).toMatchObject({ message: answer.message });
    expect(inLanguage(answer, german)).not.toMatchObject({ message: answer.message });
  });
});

describe('where an export went', () => {
  it('is told in the language of the window', () => {
    const where = told(({ refusals }) => refusals.inExports, {
      ...{ folder: 'exports', name: 'a.csv', workspace: 'golf' },
    });
    const answer = readAnswer('saveExport', {
      ok: true,
      value: { where: 'exports/a.csv in the folder golf', told: where },
    });
    expect(writtenInLanguage(answer, german)).toEqual({
      ok: true,
      value: { where: 'exports/a.csv im Ordner golf' },
    });
  });
});
