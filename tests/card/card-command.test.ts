/** The card command as a coach runs it, on a course of two short holes. */

import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { smallCourseText, smallPlayerText } from '../renderer/small-course.ts';
import { runCommand } from '../run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'holewright-card-command-'));
vi.setConfig({ testTimeout: 120_000 });

const run = (...args: string[]) => runCommand('card', ...args);

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const course = file('two.geojson', smallCourseText());
const player = file('player.json', smallPlayerText());
const inputs = ['--course', course, '--player', player];

describe('the card command', () => {
  it('writes cards and a preparation sheet that can be read back, over an older PDF only', async () => {
    const to = file('cards.pdf', '%PDF-1.4 an older one');
    const day = [
      '--target',
      '8',
      '--tee-off',
      '08:40',
      '--duration',
      '60',
      ...['--wind-mps', '4', '--wind-from-deg', '270'],
      '--allergies',
      'nuts',
    ];
    const { code, out, err } = await run(...inputs, '--to', to, '--paper', 'a6', ...day);
    expect(err).not.toMatch(/error/);
    expect(code).toBe(0);
    expect(out).toMatch(/2 cards on a6, plain/);
    const text = execFileSync('pdftotext', [to, '-'], { encoding: 'utf8' }).replaceAll(/\s+/gu, ' ');
    for (const words of [
      'Pond',
      'Par 3',
      '8 or fewer',
      'play for',
      'wind 9 mph across, from the left',
      'Wind 9 mph from the west',
      'Preparation',
      'Allergies: nuts',
      'tee-off'.slice(4),
    ])
      expect(text).toContain(words);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it.each([
    [
      'a file that is no PDF is left alone',
      1,
      ['--to', file('notes.pdf', 'mine')],
      /a file that is no PDF stands there/,
    ],
    [
      'a folder that is not there is named before any work',
      1,
      ['--to', join(folder, 'nowhere', 'x.pdf')],
      /there is no such folder/,
    ],
  ] as const)('%s', async (_, code, args, words) => {
    const result = await run(...inputs, ...args);
    expect(result.err).toMatch(words);
    expect(result.code).toBe(code);
    expect(readFileSync(join(folder, 'notes.pdf'), 'utf8')).toBe('mine');
    expect(existsSync(join(folder, 'x.pdf'))).toBe(false);
  });
});
