/** What every club golfer knows, held against the demo. Common practice, no source. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseCourseText } from '../../core/course/parse.ts';
import { parsePlayerText } from '../../core/player/parse.ts';
import { compareChoices, planFromSpot } from '../../core/plan/options.ts';
import { choiceOf } from '../../core/plan/choices.ts';
import { prepareHole } from '../../core/plan/prepare.ts';
import { solveNow } from '../../core/plan/solve.ts';

const read = (name: string): string => readFileSync(new URL(`../../maps/${name}`, import.meta.url), 'utf8');
const course = parseCourseText(read('demo-course.geojson'));
const player = parsePlayerText(read('demo-player.json'));
if (!course.ok || !player.ok) throw new Error('The demo files do not parse.');

describe('the demo course', () => {
  it('is a par 70, on which 18 bogeys are 88', () => {
    const par = course.value.holes.reduce((sum, hole) => sum + hole.par, 0);
    expect(course.value.holes).toHaveLength(18);
    expect(par + course.value.holes.length).toBe(88);
  });
});

describe('the long par 3 for the sample player', () => {
  const prepared = prepareHole({
    course: course.value,
    player: player.value,
    holeNumber: 16,
    seed: 'practice',
  });
  if (!prepared.ok) throw new Error(prepared.error.message);
  const hole = prepared.value;
  const field = solveNow(hole);
  const plan = planFromSpot(hole, field, hole.tee);
  const option = (club: string) => {
    const found = plan.options.find((candidate) => candidate.club === club && candidate.swing === 'full');
    if (found === undefined) throw new Error(`No option with the ${club}.`);
    return found;
  };
  const driver = option('Driver');
  const iron = option('6-iron');
  const comparison = compareChoices(hole, field, hole.tee, choiceOf(hole, iron), choiceOf(hole, driver))!;

  it('a mid-iron, a short approach and two putts are no worse on average than driver', () => {
    const { difference, standardError } = comparison;
    expect(difference).toBeLessThan(Math.max(2 * standardError, player.value.marginStrokes));
  });

  it('and have a clearly lower chance of double bogey or worse', () => {
    expect(comparison.second.parOdds.doubleOrWorse - comparison.first.parOdds.doubleOrWorse).toBeGreaterThan(
      0.03,
    );
  });

  it('the mid-iron leaves a short approach', () => {
    expect(iron.leave.medianM).toBeGreaterThan(30);
    expect(iron.leave.medianM).toBeLessThan(110);
  });
});
