import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { readArguments, Stop } from '../../electron/cli/command.ts';
import { DAY_OPTIONS, readDay } from '../../electron/cli/day-options.ts';

const folder = mkdtempSync(join(tmpdir(), 'holewright-day-'));

function file(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

const read = (...args: string[]) => readDay(readArguments(args, DAY_OPTIONS, 'usage'), 'usage');

async function refusal(...args: string[]): Promise<{ readonly code: number; readonly words: string }> {
  try {
    await read(...args);
  } catch (error) {
    if (error instanceof Stop) return { code: error.exitCode, words: error.lines.join('\n') };
    throw error;
  }
  throw new Error('it was taken');
}

describe('the day of a command', () => {
  it('is an ordinary one where nothing is said of it', async () => {
    expect(await read()).toEqual(DEFAULT_CONDITIONS);
  });

  it('comes from a file, and single options win over it', async () => {
    const path = file('windy.json', {
      $comment: 'invented',
      wind: { speedMps: 8, fromDeg: 270, gustSdMps: 1.5 },
      temperatureC: 8,
      pressureHpa: 990,
      rules: { preferredLies: true },
    });
    expect(await read('--conditions', path, '--wind-mps', '3', '--temperature-c', '-4.5')).toEqual({
      ...DEFAULT_CONDITIONS,
      wind: { speedMps: 3, fromDeg: 270, gustSdMps: 1.5 },
      temperatureC: -4.5,
      pressureHpa: 990,
      rules: { strokeAndDistanceAlternative: false, preferredLies: true },
    });
    expect((await read('--conditions', path, '--local-rules', 'none')).rules.preferredLies).toBe(false);
  });

  it('can be told by options alone', async () => {
    const day = await read(
      ...['--wind-mps', '5', '--wind-from-deg', '-90', '--gust-sd-mps', '1', '--altitude-m', '1600'],
      ...['--humidity-percent', '20', '--pressure-hpa', '840', '--firmness', 'Firm', '--season', 'bare'],
      ...['--green-speed-ft', '11.5', '--local-rules', 'E-5,e-3', '--temperature-c', '30'],
    );
    expect(day).toEqual({
      wind: { speedMps: 5, fromDeg: -90, gustSdMps: 1 },
      ...{ temperatureC: 30, altitudeM: 1600, pressureHpa: 840, humidity: 0.2 },
      ...{ firmness: 'firm', greenSpeedFt: 11.5, season: 'bare' },
      rules: { strokeAndDistanceAlternative: true, preferredLies: true },
    });
  });

  it.each([
    [['--wind-mps', '99', '--wind-from-deg', '0'], /--wind-mps takes a number from 0 to 40, not “99”/],
    [['--wind-mps', '5'], /--wind-mps needs --wind-from-deg/],
    [['--wind-from-deg', '5'], /--wind-from-deg needs --wind-mps/],
    [['--humidity-percent', '101'], /--humidity-percent takes a number from 0 to 100/],
    [['--green-speed-ft', ''], /--green-speed-ft takes a number from 5 to 15, not “”/],
    [['--firmness', 'hard'], /--firmness takes firm, medium, soft, not “hard”/],
    [['--season', 'summer'], /--season takes leaf, bare/],
    [['--local-rules', 'E-4'], /--local-rules takes none, E-5, E-3/],
  ] as const)('is refused as %j, by the option’s name', async (args, words) => {
    const { code, words: said } = await refusal(...args);
    expect(code).toBe(2);
    expect(said).toMatch(words);
  });

  it.each([
    ['nowhere', null, /nowhere\.json: error: there is no such file/],
    ['broken', '{ "wind": ', /broken\.json: error: it is no JSON text/],
    ['misspelt', { wnd: {} }, /conditions\.wnd: there is no such member/],
    [
      'inner',
      { wind: { speedMps: 3, fromDeg: 0, gusts: 2 } },
      /conditions\.wind\.gusts: there is no such member/,
    ],
    ['range', { temperatureC: 90 }, /error: conditions\.temperatureC: .*Correct it, or leave it out/],
    ['lacking', { wind: { speedMps: 3 } }, /conditions\.wind\.fromDeg/],
    ['list', [], /conditions/],
  ] as const)('names the file and member: %s', async (name, content, words) => {
    const path = content === null ? join(folder, `${name}.json`) : file(`${name}.json`, content);
    const { code, words: said } = await refusal('--conditions', path);
    expect(code).toBe(1);
    expect(said).toMatch(words);
  });
});
