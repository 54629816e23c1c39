/** The import command as a person runs it: what it writes, what it reports, how it refuses. */

import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { parseCourseText } from '../../core/course/parse.ts';
import { runCommand } from '../run-command.ts';

// Each test starts whole programs.
vi.setConfig({ testTimeout: 120_000 });

const root = new URL('../..', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'holewright-import-'));
const fixtures = join(root, 'tests/course/import/fixtures');

const run = (...args: string[]) => runCommand('import', ...args);

describe('import', () => {
  it('makes a course of an OpenStreetMap extract and says what was left out and why', async () => {
    const to = join(folder, 'links.geojson');
    const { code, out } = await run('--from', join(fixtures, 'invented-links.osm'), '--to', to);
    expect(code).toBe(0);
    expect(out).toMatch(/took in .*2 hole lines/);
    expect(out).toMatch(/put to holes: /);
    expect(out).toMatch(/left out: 1 × barrier=fence: /);
    const course = parseCourseText(readFileSync(to, 'utf8'));
    expect(course.ok && course.value.holes.length).toBe(2);
  });

  it('adds a walked track to the same course and leaves what was there', async () => {
    const to = join(folder, 'walked.geojson');
    await run('--from', join(fixtures, 'invented-links.osm'), '--to', to);
    const before = (JSON.parse(readFileSync(to, 'utf8')) as { features: unknown[] }).features;
    const { code, out } = await run('--from', join(fixtures, 'invented-walk.gpx'), '--to', to, '--json');
    expect(code).toBe(0);
    expect(() => JSON.parse(out) as unknown).not.toThrow();
    const after = (JSON.parse(readFileSync(to, 'utf8')) as { features: unknown[] }).features;
    expect(after.slice(0, before.length)).toEqual(before);
    expect(after.length).toBeGreaterThan(before.length);
  });

  it.each([
    [
      'a file that is not there',
      1,
      ['--from', 'nowhere.osm', '--to', join(folder, 'a.geojson')],
      /nowhere\.osm: error: there is no such file/,
    ],
    ['no target', 2, ['--from', 'x.osm'], /--to is missing/],
    [
      'a kind that it does not read',
      2,
      ['--from', 'x.osm', '--to', 'y.geojson', '--kind', 'sketch'],
      /--kind/,
    ],
  ] as const)('refuses %s', async (_, code, args, words) => {
    const result = await run(...args);
    expect(result.code).toBe(code);
    expect(result.err).toMatch(words);
  });

  it('never writes over a course that it cannot read', async () => {
    const to = join(folder, 'broken.geojson');
    writeFileSync(to, '{ "type": ');
    const { code, err } = await run('--from', join(fixtures, 'invented-links.osm'), '--to', to);
    expect(code).toBe(1);
    expect(err).toMatch(/broken\.geojson/);
    expect(readFileSync(to, 'utf8')).toBe('{ "type": ');
  });
});
