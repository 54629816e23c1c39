/** Many holes by one command: one file a hole, and a second run does only what is missing. */

import { mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { runCommand } from '../run-command.ts';

vi.setConfig({ testTimeout: 240_000 });

const root = new URL('../..', import.meta.url).pathname;
const work = mkdtempSync(join(tmpdir(), 'holewright-many-'));
const courses = join(work, 'courses');
const plans = join(work, 'plans');

/** The demo course with these holes alone. */
function writeCourse(name: string, holes: readonly number[]): void {
  const json = JSON.parse(readFileSync(join(root, 'maps/demo-course.geojson'), 'utf8')) as {
    features: { properties: Record<string, unknown> }[];
  };
  const features = json.features.filter(
    ({ properties }) => properties['golf'] !== 'hole' || holes.includes(Number(properties['ref'])),
  );
  writeFileSync(join(courses, name), JSON.stringify({ ...json, features }));
}

const plan = () =>
  runCommand('plan-many', '--courses', courses, '--player', 'maps/demo-player.json', '--to', plans);

it('plans what is missing, and says what it could not read', async () => {
  await import('node:fs/promises').then(({ mkdir }) => mkdir(courses));
  writeCourse('first.geojson', [16]);
  writeCourse('second.geojson', [16]);
  writeFileSync(join(courses, 'third.geojson'), '{ "type": "nothing" }');
  const first = await plan();
  expect(first.code).toBe(1);
  expect(first.err).toContain('2 holes, 0 of them planned before');
  expect(first.err).toContain('third.geojson: error:');
  expect(readdirSync(plans).sort()).toEqual(['first-16.json', 'second-16.json']);
  const text = readFileSync(join(plans, 'first-16.json'), 'utf8');
  const document = JSON.parse(text) as { hole: number; recommended: { club: string }; key: string };
  expect(document.hole).toBe(16);
  expect(document.recommended.club).toMatch(/iron|wood|hybrid/i);

  // Cut off in the middle, as by a crash, and another left as it is.
  writeFileSync(join(plans, 'first-16.json'), text.slice(0, 200));
  const before = statSync(join(plans, 'second-16.json')).mtimeMs;
  const second = await plan();
  expect(second.err).toContain('2 holes, 1 of them planned before');
  expect(second.err).toContain('planned 1 of 1 holes');
  expect(readFileSync(join(plans, 'first-16.json'), 'utf8')).toBe(text);
  expect(statSync(join(plans, 'second-16.json')).mtimeMs).toBe(before);
});
