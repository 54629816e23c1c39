/** From course, hole and player to what planning works on, and every way in which that is refused. */

import { describe, expect, it } from 'vitest';
import type { Course } from '../../core/course/model.ts';
import type { Fault } from '../../core/result.ts';
import { prepareHole, type HoleProblem } from '../../core/plan/prepare.ts';
import { faultText } from '../../core/words/told.ts';
import { wordsIn } from '../../core/words/words.ts';
import { flatCourse, fourClubs, mustPrepare, statedPlayer } from './synthetic.ts';

const player = statedPlayer({ spreads: fourClubs() });
const course = flatCourse({ lengthM: 180, number: 7 });

function refusal(problem: Partial<HoleProblem>): Fault {
  const result = prepareHole({ course, holeNumber: 7, player, seed: 's', ...problem });
  if (result.ok) throw new Error('prepared, though it should have been refused');
  return result.error;
}

describe('a prepared hole', () => {
  it('has tee and pin in a frame of metres, the line between them and its length', () => {
    const hole = mustPrepare({ lengthM: 180 }, player);
    expect(hole.tee.x).toBeCloseTo(0, 5);
    expect(hole.tee.y).toBeCloseTo(-180, 5);
    expect(Math.hypot(hole.pin.x, hole.pin.y)).toBeLessThan(1e-5);
    expect(hole.lengthM).toBeCloseTo(180, 3);
    expect(hole.playLine).toHaveLength(2);
    expect([hole.teeName, hole.positionName]).toEqual(['tee', 'middle']);
    expect(hole.isOnMap({ x: 0, y: -90 })).toBe(true);
    expect(hole.isOnMap({ x: 500, y: 0 })).toBe(false);
  });

  it('takes a point on the green for the pin', () => {
    const frame = mustPrepare({ lengthM: 180, number: 7 }, player).frame;
    const result = prepareHole({
      course,
      holeNumber: 7,
      player,
      seed: 's',
      holePosition: frame.toLonLat({ x: 4, y: 5 }),
    });
    if (!result.ok) throw new Error(result.error.message);
    expect(result.value.positionName).toBeNull();
    expect(result.value.pin.x).toBeCloseTo(4, 5);
    expect(result.value.pin.y).toBeCloseTo(5, 5);
  });

  it('has its own random key by seed and number', () => {
    const keys = [
      mustPrepare({ lengthM: 180, number: 7 }, player, 'a').key,
      mustPrepare({ lengthM: 180, number: 8 }, player, 'a').key,
      mustPrepare({ lengthM: 180, number: 7 }, player, 'b').key,
    ];
    expect(new Set(keys.map((key) => key.join())).size).toBe(3);
  });
});

describe('what is refused', () => {
  it('is told in German with the names quoted as in German', () => {
    const [hole] = course.holes;
    const [tee] = hole!.tees;
    const [position] = hole!.positions;
    const twice = {
      ...hole!,
      tees: [tee!, { ...tee!, name: 'Gorse' }],
      positions: [position!, { ...position!, name: 'back' }],
    };
    const inGerman = (problem: Partial<HoleProblem>) =>
      faultText(refusal({ course: { ...course, holes: [twice] }, ...problem }), wordsIn('de'));
    expect(inGerman({ teeName: 'nope' })).toEqual({
      where: 'Loch 7',
      message: 'Einen Abschlag „nope“ hat es nicht; es hat „tee“, „Gorse“.',
    });
    expect(inGerman({ holePosition: 'nope' }).message).toContain('es hat „middle“, „back“.');
  });

  it('is named with its place and a remedy', () => {
    expect(refusal({ holeNumber: 12 })).toMatchObject({ code: 'no-such-hole', where: 'hole 12' });
    expect(refusal({ holeNumber: 12 }).message).toContain('it has 7');
    const noGreen: Course = { ...course, areas: course.areas.filter((area) => area.kind !== 'green') };
    expect(refusal({ course: noGreen })).toMatchObject({ code: 'hole-without-green', where: 'hole 7' });
    expect(refusal({ course: noGreen }).message).toContain('Draw its green');
    const noClubs = refusal({ player: { ...player, spreads: [] } });
    expect(noClubs.code).toBe('no-clubs');
    expect(noClubs.message).toContain('Add clubs');
    expect(refusal({ teeName: 'gold' })).toMatchObject({ code: 'no-such-tee' });
    expect(refusal({ teeName: 'gold' }).message).toContain('“tee”');
    expect(refusal({ holePosition: 'Friday' })).toMatchObject({ code: 'no-such-position' });
    expect(refusal({ holePosition: 'Friday' }).message).toContain('“middle”');
    const frame = mustPrepare({ lengthM: 180, number: 7 }, player).frame;
    const off = refusal({ holePosition: frame.toLonLat({ x: 30, y: 0 }) });
    expect(off.code).toBe('position-off-green');
    expect(off.message).toContain('Move it onto the green');
  });
});
