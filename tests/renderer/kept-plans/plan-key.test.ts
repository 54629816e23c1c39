/** A kept plan is never that of another question: whatever goes to the worker is in its name. */

import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { canonical, planKey } from '../../../renderer/kept-plans/plan-key.ts';
import type { HoleTask } from '../../../renderer/workers/planner-api.ts';
import { area, at, mustParse, point, square } from '../../course/builders.ts';
import { smallCourse, smallCourseText, smallPlayerText } from '../small-course.ts';
import { oneTask } from './worked-out.ts';

const engine = { sources: 'these', browser: 'Browser/1' };
const files = [smallCourseText(), smallPlayerText()] as const;
const key = planKey(engine, files, oneTask);

const course = smallCourse();
const withMore = (...features: (typeof course.features)[number][]): string => {
  const text = JSON.stringify({ ...course, features: [...course.features, ...features] });
  mustParse(JSON.parse(text));
  return text;
};

describe('the name of a plan', () => {
  it('is a SHA-256, and the same for the same question', async () => {
    expect(await key).toMatch(/^[0-9a-f]{64}$/u);
    expect(await planKey({ ...engine }, [smallCourseText(), smallPlayerText()], { ...oneTask })).toBe(
      await key,
    );
  });

  it('is made as FIPS 180-4 has it, from the very messages to the worker', async () => {
    const sha = (text: string): string => createHash('sha256').update(text).digest('hex');
    expect(await key).toBe(sha(canonical([engine, files.map(sha), { ...oneTask, key: undefined }])));
  });

  it('does not depend on what the window calls the work, nor on the order of members', async () => {
    expect(await planKey(engine, files, { ...oneTask, key: 'another word' })).toBe(await key);
    const turned = Object.fromEntries(Object.entries(oneTask).reverse()) as unknown as HoleTask;
    expect(await planKey(engine, files, turned)).toBe(await key);
    expect(canonical({ b: [{ d: 1, c: null }], a: 2 })).toBe('{"a":2,"b":[{"c":null,"d":1}]}');
  });

  const wind = { speedMps: 4, fromDeg: 90, gustSdMps: 0 };
  const tasks: Readonly<Record<string, Partial<HoleTask>>> = {
    'another hole': { hole: 2 },
    'another tee': { teeName: 'Ash' },
    'another hole position': { position: 'back' },
    'a free hole position': { position: [4.00003, 52.00132] },
    'another free hole position': { position: [4.00003, 52.001320001] },
    'another seed': { seed: 'frost' },
    'a quick answer': { rough: true },
    wind: { conditions: { ...DEFAULT_CONDITIONS, wind } },
    'wind from elsewhere': { conditions: { ...DEFAULT_CONDITIONS, wind: { ...wind, fromDeg: 91 } } },
    gusts: { conditions: { ...DEFAULT_CONDITIONS, wind: { ...wind, gustSdMps: 1 } } },
    cold: { conditions: { ...DEFAULT_CONDITIONS, temperatureC: 5 } },
    altitude: { conditions: { ...DEFAULT_CONDITIONS, altitudeM: 900 } },
    pressure: { conditions: { ...DEFAULT_CONDITIONS, pressureHpa: 990 } },
    'damp air': { conditions: { ...DEFAULT_CONDITIONS, humidity: 0.6 } },
    'firm ground': { conditions: { ...DEFAULT_CONDITIONS, firmness: 'firm' } },
    'fast greens': { conditions: { ...DEFAULT_CONDITIONS, greenSpeedFt: 11 } },
    'bare trees': { conditions: { ...DEFAULT_CONDITIONS, season: 'bare' } },
    'a local rule': {
      conditions: {
        ...DEFAULT_CONDITIONS,
        rules: { strokeAndDistanceAlternative: true, preferredLies: false },
      },
    },
    'whatever may be asked one day': { target: 'fewest putts' } as Partial<HoleTask>,
  };
  const player = JSON.parse(smallPlayerText()) as { bag: unknown[]; [member: string]: unknown };
  const others: Readonly<Record<string, readonly [string, string]>> = {
    'a bunker more': [withMore(area({ golf: 'bunker' }, square(0, 100, 4))), files[1]],
    'a tree more': [withMore(point({ natural: 'tree' }, at(0, 60))), files[1]],
    'a height': [withMore(point({ holewright_kind: 'ground_level', ele: '3' }, at(0, 60))), files[1]],
    'a character of the course': [`${files[0]} `, files[1]],
    'a club less': [files[0], JSON.stringify({ ...player, bag: player.bag.slice(1) })],
    'a character of the player': [files[0], `${files[1]} `],
    'course and player changed round': [files[1], files[0]],
  };

  it('is another for every other thing that a plan depends on', async () => {
    const names = new Map<string, string>([[await key, 'nothing changed']]);
    const meets = (name: string, what: string): void => {
      expect(names.get(name), what).toBeUndefined();
      names.set(name, what);
    };
    for (const [what, change] of Object.entries(tasks))
      meets(await planKey(engine, files, { ...oneTask, ...change }), what);
    for (const [what, other] of Object.entries(others)) meets(await planKey(engine, other, oneTask), what);
    meets(await planKey({ ...engine, sources: 'those' }, files, oneTask), 'other sources');
    meets(await planKey({ ...engine, browser: 'Browser/2' }, files, oneTask), 'another browser');
    expect(names.size).toBe(1 + Object.keys(tasks).length + Object.keys(others).length + 2);
  });
});
