/** A worked-out hole as text: it comes back to the last digit or not at all. */

import { describe, expect, it } from 'vitest';
import { keptText, readKept } from '../../../renderer/kept-plans/kept-plan.ts';
import { oneTask, resultOfTask } from './worked-out.ts';

const result = resultOfTask(oneTask);
const text = keptText(result) ?? '';

type Json = null | boolean | number | string | Json[] | { [member: string]: Json };

/** Paths to every part of a value. */
function paths(value: Json, path: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([name, part]) => paths(part, [...path, name]))];
}

function changed(
  path: readonly string[],
  change: (holder: Record<string, Json>, name: string) => void,
): string {
  const all = JSON.parse(text) as Json;
  let holder = all as Record<string, Json>;
  for (const name of path.slice(0, -1)) holder = holder[name] as Record<string, Json>;
  change(holder, path.at(-1)!);
  return JSON.stringify(all);
}

/** The day is read as everywhere, with defaults, and then held against the day asked for. */
const isDay = (path: readonly string[]): boolean => path.includes('conditions');
const inside = paths(JSON.parse(text) as Json).filter((path) => path.length > 0 && !isDay(path));
function at(path: readonly string[]): Json {
  let part = JSON.parse(text) as Json;
  for (const name of path) part = (part as Record<string, Json>)[name]!;
  return part;
}

describe('a worked-out hole as text', () => {
  it('comes back to the last digit, under the name that it is asked by', () => {
    expect(readKept(text, oneTask)).toEqual(result);
    expect(readKept(text, { ...oneTask, key: 'another word' })).toEqual({ ...result, key: 'another word' });
    expect(text).not.toContain(oneTask.key);
  });

  it('is small', () => {
    expect(text.length).toBeLessThan(4000);
  });

  it('is not kept where it would not come back as it is', () => {
    expect(keptText({ ...result, lengthM: NaN })).toBeNull();
    expect(keptText({ ...result, rough: true })).toBeNull();
    expect(keptText({ ...result, teeName: 'x'.repeat(300_000) })).toBeNull();
    expect(readKept(keptText({ ...result, teePicture: null }) ?? '', oneTask)?.teePicture).toBeNull();
  });

  it('is not that of another hole, tee, position, seed or day', () => {
    const { conditions } = result;
    for (const change of [
      { hole: 2 },
      { teeName: 'Ash' },
      { position: 'back' },
      { seed: 'frost' },
      { conditions: { ...conditions, temperatureC: 4 } },
    ]) {
      expect(readKept(text, { ...oneTask, ...change })).toBeNull();
    }
  });

  it('is refused whole where any part is missing, is something else or is one too many', () => {
    expect(inside.length).toBeGreaterThan(150);
    /** May be absent from any plan. */
    const free = /\.(relief|penaltyStrokes|doubt|lipBlocks)$/u;
    const isListed = (path: readonly string[]): boolean => /^\d+$/u.test(path.at(-1)!);
    for (const path of inside) {
      const name = path.join('.');
      if (!free.test(name) && !isListed(path))
        expect(
          readKept(
            changed(path, (holder, member) => Reflect.deleteProperty(holder, member)),
            oneTask,
          ),
          `without ${name}`,
        ).toBeNull();
      for (const other of [{}, [[]], 'ö', -7, null] as Json[]) {
        const before = at(path);
        const isSame = typeof before === typeof other && typeof before !== 'object';
        const isNull = other === null && /spreadSource$|teePicture$/u.test(name);
        if (isSame || isNull) continue;
        expect(
          readKept(
            changed(path, (holder, member) => (holder[member] = other)),
            oneTask,
          ),
          `${name} as ${JSON.stringify(other)}`,
        ).toBeNull();
      }
      const part = at(path);
      if (typeof part === 'object' && part !== null && !Array.isArray(part))
        expect(
          readKept(
            changed([...path, 'more'], (holder) => (holder['more'] = 1)),
            oneTask,
          ),
          `more in ${name}`,
        ).toBeNull();
    }
  });

  it('is refused where its numbers do not agree with each other', () => {
    const plan = ['result', 'teePlan'];
    const [first, last] = [
      [...plan, 'options', '0'],
      [...plan, 'options', '2'],
    ];
    const cases: readonly (readonly [readonly string[], Json])[] = [
      // shares that do not sum to 1
      [[...first, 'scoreOdds', '3'], 0.31],
      [[...first, 'scoreOdds', '5'], 0.09],
      [[...first, 'endShare', 'green'], 0.9],
      // a mean below that of the odds, or far above what the last of them may hide
      [
        [...first, 'scoreOdds'],
        [0, 0, 0, 0.6, 0.3, 0.1],
      ],
      [
        [...first, 'scoreOdds'],
        [0, 0.6, 0, 0, 0.3, 0.1, 0],
      ],
      [[...first, 'parOdds', 'bogey'], 0.301],
      [[...first, 'parOdds'], { parOrBetter: 0.3, bogey: 0.6, doubleOrWorse: 0.1 }],
      [[...plan, 'par'], 4],
      [[...plan, 'strokesTaken'], 1],
      [[...plan, 'expectedStrokes'], 3.1234],
      // the best is not first, a loss of another size
      [[...last, 'meanStrokes'], 3.1],
      [[...last, 'lossToBest'], 0.07],
    ];
    for (const [path, value] of cases) {
      const damaged = changed(path, (holder, name) => (holder[name] = value));
      expect(readKept(damaged, oneTask), `${path.join('.')} ${JSON.stringify(value)}`).toBeNull();
    }
    // within what two ways of reckoning differ by
    const near = changed([...first, 'scoreOdds'], (holder, name) => {
      holder[name] = [0, 0.05, 0.2, 0.35, 0.3, 0.1];
    });
    expect(readKept(near, oneTask)).not.toBeNull();
    const all = JSON.parse(text) as { result: { teePlan: { options: Json[] } } };
    all.result.teePlan.options.reverse();
    expect(readKept(JSON.stringify(all), oneTask)).toBeNull();
  });

  it('is refused where numbers are out of all bounds or do not belong together', () => {
    const first = ['result', 'teePlan', 'options', '0'];
    const sample = ['result', 'teePicture', 'sample'];
    const cases: readonly (readonly [readonly string[], Json])[] = [
      [['format'], 2],
      [[...first, 'meanStrokes'], -1],
      [[...first, 'scoreOdds', '2'], 1.5],
      [[...first, 'parOdds', 'bogey'], -0.1],
      [[...first, 'swing'], 'backwards'],
      [['result', 'teePlan', 'recommendation', 'optionId'], 'no such option'],
      [['result', 'teePlan', 'options'], []],
      [['result', 'teePlan', 'lie'], 'sea'],
      [[...sample, 'count'], 3],
      [[...sample, 'landing'], ''],
      [[...sample, 'landing'], 'AAAAAAA='],
      // not a number
      [[...sample, 'end'], 'AAAAAAAAAAAAAAAAAADAfw=='],
      [[...sample, 'lie'], 'Av8='],
    ];
    for (const [path, value] of cases) {
      const damaged = changed(path, (holder, name) => (holder[name] = value));
      expect(readKept(damaged, oneTask), path.join('.')).toBeNull();
    }
    for (const broken of [
      '',
      'null',
      '[]',
      '{}',
      text.slice(0, -1),
      `${text}}`,
      text.replace('134.2', '1e400'),
    ]) {
      expect(readKept(broken, oneTask)).toBeNull();
    }
  });
});
