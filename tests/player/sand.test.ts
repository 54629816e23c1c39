/** Soft sand plugs more balls, firm sand fewer; what is not said changes nothing. */

import { describe, expect, it } from 'vitest';
import { courseOf, newDocument } from '../../core/course/document.ts';
import { setCourse } from '../../core/course/edits/set-course.ts';
import { Lie } from '../../core/ground/lies.ts';
import { LawBook } from '../../core/plan/choices.ts';
import { PLUGGED_SHARE, withSand } from '../../core/player/sand.ts';
import { fourClubs, ordinaryBook, ROUGH_LIES, statedPlayer } from '../plan/synthetic.ts';

const player = statedPlayer({ spreads: fourClubs(), lies: ROUGH_LIES });

describe('the sand of a course', () => {
  it('changes the poor strikes from bunkers by the balls that plug, and nothing else', () => {
    const { flights } = ordinaryBook(player);
    const poorFrom = (lie: number, sand?: 'soft' | 'medium' | 'firm'): number =>
      new LawBook(withSand(player, sand), flights).lawOf(1, lie as 0, 100)!.poorShare;
    const plain = poorFrom(Lie.bunker);
    expect(poorFrom(Lie.bunker, 'medium')).toBe(plain);
    expect(poorFrom(Lie.bunker, 'soft') - plain).toBeCloseTo(PLUGGED_SHARE.soft - PLUGGED_SHARE.medium, 12);
    expect(poorFrom(Lie.bunker, 'firm')).toBeLessThan(plain);
    expect(poorFrom(Lie.rough, 'soft')).toBe(poorFrom(Lie.rough));
  });

  it('gives the same player for the same sand, so that what is worked out for them is kept', () => {
    expect(withSand(player, undefined)).toBe(player);
    expect(withSand(player, 'medium')).toBe(player);
    expect(withSand(player, 'soft')).toBe(withSand(player, 'soft'));
    expect(withSand(player, 'soft')).not.toBe(withSand(player, 'firm'));
  });

  it('is written into the course and taken away again', () => {
    const document = newDocument('Blank');
    const soft = setCourse(document, { sand: 'soft' });
    if (!soft.ok) throw new Error(soft.error.message);
    const sandOf = (from: typeof document) => {
      const course = courseOf(from);
      return course.ok ? course.value.sand : 'unread';
    };
    expect(sandOf(soft.value.document)).toBe('soft');
    const none = setCourse(soft.value.document, { sand: '' });
    expect(none.ok && sandOf(none.value.document)).toBeUndefined();
  });
});
