/**
 * The best aim beside trouble against a one-dimensional integral over the normal law of direction. A ball that carries
 * c at an angle a to the line lands c sin a aside; beyond the boundary it costs stroke and distance (Rules of Golf
 * 2023, 18.2), inside it the strokes that its place is worth. So an aim costs V = (1 + p + E[rest]) / (1 - p), with p the
 * share beyond, and the best aim is where V is least. The integral is a plain trapezium rule with jstat's density.
 */

import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { runShare } from '../../core/flight/shot-law.ts';
import { Lie } from '../../core/ground/lies.ts';
import { lieAt } from '../../core/ground/hole-ground.ts';
import type { Option, Spot } from '../../core/plan/model.ts';
import { evaluateChoice, planFromSpot } from '../../core/plan/options.ts';
import type { PreparedHole } from '../../core/plan/prepare.ts';
import { solveNow } from '../../core/plan/solve.ts';
import type { StrokesField } from '../../core/plan/strokes-field.ts';
import { makeStreamKey } from '../../core/random/streams.ts';
import {
  box,
  COARSE,
  fourClubs,
  givenField,
  mustPrepare,
  ROUGH_LIES,
  stated,
  statedPlayer,
  ordinaryBook,
} from '../plan/synthetic.ts';

const DEGREE = Math.PI / 180;
const LOFT = 46;
const CARRY = 180;
/** A boundary this far to the right of the line from tee to pin. */
const ASIDE = 14;
/** Strokes that a metre farther from the boundary costs: the way round gets longer. */
const PER_METRE = 0.012;

/** Long rough takes nearly all of a lofted ball's run; the little that is left counts as carry (see core/ground-run). */
const RUN =
  CARRY *
  runShare(
    ordinaryBook(
      statedPlayer({
        spreads: [stated({ club: 'Club', loftDeg: LOFT, carryM: CARRY, carrySd: 0, directionSd: 0 })],
      }),
    ).lawOf(0, Lie.tee, 0)!,
    Lie.longRough,
  );

/** Cost of aiming at `bearing` with a spread of `sd` radians, the trouble on the right. */
function costOfAim(bearing: number, sd: number): number {
  // In standard units the boundary lies here: beyond it the chance is the normal tail, up to it the integral runs.
  const edge = (Math.asin(ASIDE / (CARRY + RUN)) - bearing) / sd;
  const beyond = jStat.normal.cdf(-edge, 0, 1);
  const worth = (z: number): number => {
    const x = (CARRY + RUN) * Math.sin(bearing + sd * z);
    return jStat.normal.pdf(z, 0, 1) * (3 + PER_METRE * (ASIDE - x));
  };
  const steps = 300;
  const step = (edge + 7) / steps;
  let rest = (worth(-7) + worth(edge)) / 2;
  for (let k = 1; k < steps; k++) rest += worth(-7 + k * step);
  return (1 + beyond + rest * step) / (1 - beyond);
}

/** The aim of least cost, to a twentieth of a degree. */
function bestAim(sd: number): number {
  let best = 0;
  let least = Infinity;
  for (let degrees = -10; degrees <= 2; degrees += 0.05) {
    const cost = costOfAim(degrees * DEGREE, sd);
    if (cost >= least) continue;
    least = cost;
    best = degrees * DEGREE;
  }
  return best;
}

/** The hole, trouble right (+1) or left (-1), and a field that knows nothing but the linear cost of being aside. */
function linearHole(sd: number, side: 1 | -1): { prepared: PreparedHole; field: StrokesField } {
  const out =
    side > 0 ? box('out-of-bounds', ASIDE, -400, 300, 200) : box('out-of-bounds', -300, -400, -ASIDE, 200);
  const club = stated({ club: 'Club', loftDeg: LOFT, carryM: CARRY, carrySd: 0, directionSd: sd });
  const prepared = mustPrepare(
    { lengthM: 320, patches: [box('long-rough', -300, -400, 300, 200), out] },
    statedPlayer({ spreads: [club] }),
  );
  const field = givenField(prepared.ground, (spot) => 3 + PER_METRE * (ASIDE - side * spot.x));
  return { prepared, field };
}

/** What `planFromSpot` finds on the same hole with eight seeds. */
function findAims(sd: number, side: 1 | -1): readonly Option[] {
  const { prepared, field } = linearHole(sd, side);
  return Array.from({ length: 8 }, (_, i) => {
    const hole = { ...prepared, key: makeStreamKey(`aim ${i}`) };
    return planFromSpot(hole, field, hole.tee, { samples: 2048 }).options[0]!;
  });
}

function meanAim(options: readonly Option[]): number {
  return options.reduce((sum, option) => sum + option.aim.bearing, 0) / options.length;
}

describe('the best aim beside out of bounds', () => {
  const narrow = 0.05;
  const wide = 0.09;
  const found = { narrow: findAims(narrow, 1), wide: findAims(wide, 1) };
  const best = { narrow: bestAim(narrow), wide: bestAim(wide) };

  it.each([
    { name: 'narrow', sd: narrow },
    { name: 'wide', sd: wide },
  ] as const)('is that of the integral for a $name spread', ({ name, sd }) => {
    const ideal = best[name];
    // Aims are searched down to half a degree; a search on few draws may miss by more, their mean over seeds less.
    expect(Math.abs(meanAim(found[name]) - ideal)).toBeLessThan(1 * DEGREE);
    for (const option of found[name]) {
      expect(costOfAim(option.aim.bearing, sd) - costOfAim(ideal, sd)).toBeLessThan(0.06);
      // What the option promises is what the integral says of its aim.
      // The run's scatter is not in the integral: 0.002. Seven: the standard error itself is estimated with seven degrees of freedom (t at 99.98 %).
      expect(Math.abs(option.meanStrokes - costOfAim(option.aim.bearing, sd))).toBeLessThan(
        7 * option.standardError + 2e-3,
      );
    }
  });

  it('is found in every search to within a few thousandths of a stroke', () => {
    // The cost is flat about its minimum: half a degree, the search's step, costs about 0.001 strokes.
    for (const name of ['narrow', 'wide'] as const) {
      for (const option of found[name]) {
        const cost = costOfAim(option.aim.bearing, name === 'wide' ? wide : narrow);
        expect(cost - costOfAim(best[name], name === 'wide' ? wide : narrow)).toBeLessThan(0.005);
      }
    }
  });

  it('lies away from the trouble, farther for the wider spread', () => {
    expect(best.narrow).toBeLessThan(-1 * DEGREE);
    expect(best.wide).toBeLessThan(best.narrow - 3 * DEGREE);
    for (const option of found.narrow) expect(option.aim.bearing).toBeLessThan(0);
    // By the integral 3.4° apart; each mean is known to a degree.
    expect(meanAim(found.wide)).toBeLessThan(meanAim(found.narrow) - 2 * DEGREE);
    expect(found.wide[0]!.meanStrokes).toBeGreaterThan(found.narrow[0]!.meanStrokes);
  });

  it('is mirrored where the trouble is on the other side', () => {
    expect(Math.abs(meanAim(findAims(wide, -1)) + best.wide)).toBeLessThan(1 * DEGREE);
  });

  it('costs what the integral says wherever one aims', () => {
    const { prepared, field } = linearHole(wide, 1);
    for (const degrees of [-9, -6, -3, 0, 3]) {
      const choice = { spreadIndex: 0, bearing: degrees * DEGREE, carryM: CARRY };
      const option = evaluateChoice(prepared, field, prepared.tee, choice, { samples: 4096 })!;
      const expected = costOfAim(choice.bearing, wide);
      expect(Math.abs(option.meanStrokes - expected)).toBeLessThan(4 * option.standardError + 1e-3);
    }
  });
});

describe('the best aim on a solved hole', () => {
  /** The same integral over the field's own values, without carry spread or run of any length. */
  function costOnField(
    hole: PreparedHole,
    field: StrokesField,
    from: Spot,
    bearing: number,
    sd: number,
  ): number {
    const step = 0.02;
    let beyond = 0;
    let rest = 0;
    let total = 0;
    for (let z = -5; z <= 5; z += step) {
      const weight = step * jStat.normal.pdf(z, 0, 1);
      const angle = bearing + sd * z;
      const x = from.x + (CARRY + RUN) * Math.sin(angle);
      const y = from.y + (CARRY + RUN) * Math.cos(angle);
      const lie = lieAt(hole.ground, x, y);
      total += weight;
      if (lie === Lie.outOfBounds) beyond += weight;
      else rest += weight * field.valueAt(x, y, lie);
    }
    return (1 + beyond / total + rest / total) / (1 - beyond / total);
  }

  it('is the least of the integral over its own values, and turns away from a boundary that is drawn', () => {
    const aims = [false, true].map((isBounded) => {
      const spreads = [
        stated({ club: 'Club', loftDeg: LOFT, carryM: CARRY, carrySd: 0, directionSd: 0.06 }),
        ...fourClubs().filter((spread) => spread.club.name === 'Wedge'),
      ];
      const hole = mustPrepare(
        { lengthM: 265, patches: isBounded ? [box('out-of-bounds', ASIDE, -400, 300, 200)] : [] },
        statedPlayer({ spreads, lies: ROUGH_LIES }),
      );
      const field = solveNow(hole, COARSE);
      const option = planFromSpot(hole, field, hole.tee, { samples: 4096 }).options.find(
        (candidate) => candidate.club === 'Club',
      )!;
      let least = Infinity;
      for (let degrees = -14; degrees <= 6; degrees += 0.25) {
        least = Math.min(least, costOnField(hole, field, hole.tee, degrees * DEGREE, 0.06));
      }
      const own = costOnField(hole, field, hole.tee, option.aim.bearing, 0.06);
      // The search's half degree and few draws, on a field with its own grain.
      expect(own - least).toBeLessThan(0.06);
      expect(Math.abs(own - option.meanStrokes)).toBeLessThan(4 * option.standardError + 0.02);
      return option.aim.bearing;
    });
    expect(Math.abs(aims[0]!)).toBeLessThan(2.5 * DEGREE);
    expect(aims[1]!).toBeLessThan(aims[0]! - 2 * DEGREE);
  });
});
