/** Ways out of trees on a small drawn ground: a wall of crowns, a gap in it, a roof of branches. */

import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { Lie } from '../../core/ground/lies.ts';
import { presetPlayer } from '../../core/player/presets.ts';
import { clearanceOver, clearanceUnder, clearanceWords, lipChance } from '../../core/recovery/clearance.ts';
import { gapsFor, throughChance } from '../../core/recovery/gaps.ts';
import { recoveryOptions } from '../../core/recovery/recovery-shots.ts';
import { heightThere, recoveryShot } from '../../core/recovery/shot-heights.ts';
import { restAfterHit } from '../../core/recovery/stopped-ball.ts';
import { crownDensity, lightShare, seasonalDensity, trunkRadiusM } from '../../core/ground/tree-kinds.ts';
import { STEMS_PER_M } from '../../core/ground/tree-kinds.ts';
import { passChance, type TreeGround, treesAlong } from '../../core/recovery/tree-line.ts';
import { english } from '../../core/words/english/english.ts';

const SIZE = 240;
const DEGREE = Math.PI / 180;

/** 240 m square with the origin in its middle; `at` gives top, base and density of the crown over a place. */
function groundWith(at: (x: number, y: number) => readonly [number, number, number] | null): TreeGround {
  const cells = SIZE * SIZE;
  const ground = {
    cellM: 1,
    columns: SIZE,
    rows: SIZE,
    west: -SIZE / 2,
    south: -SIZE / 2,
    lie: new Uint8Array(cells).fill(Lie.rough),
    canopyTop: new Float32Array(cells),
    canopyBase: new Float32Array(cells),
    canopyDensity: new Float32Array(cells),
    elevation: null,
  };
  for (let row = 0; row < SIZE; row++)
    for (let column = 0; column < SIZE; column++) {
      const crown = at(column + 0.5 - SIZE / 2, row + 0.5 - SIZE / 2);
      if (crown === null) continue;
      const i = row * SIZE + column;
      [ground.canopyTop[i], ground.canopyBase[i], ground.canopyDensity[i]] = crown;
      ground.lie[i] = Lie.woods;
    }
  return ground;
}

const player = presetPlayer({ handicap: 10, group: 'men' });
const shot = (club: string, swing = 'full') =>
  recoveryShot(
    player.spreads.find((spread) => spread.club.name === club && spread.swing === swing)!,
    DEFAULT_CONDITIONS,
  );
const nineIron = shot('9-iron');
const fiveIron = shot('5-iron');
const punch = shot('7-iron', 'punch');

/** A wall of crowns across the north from 30 to 40 m, 14 m high, its branches 2.5 m above the ground. */
const wall = groundWith((_, y) => (y > 30 && y < 40 ? [14, 2.5, 0.3] : null));

describe('the trees along a line', () => {
  it('are told with where they begin and end, how high and how low', () => {
    const [stretch, ...more] = treesAlong(wall, 0, 0, 0, 100);
    expect(more).toHaveLength(0);
    expect(stretch).toMatchObject({ fromM: 30, toM: 40, topM: 14, baseM: 2.5 });
    expect(treesAlong(wall, 0, 0, Math.PI, 100)).toHaveLength(0);
  });

  it('count from the ground under the ball where the ground rises', () => {
    const up = { ...wall, elevation: new Float32Array(SIZE * SIZE) };
    for (let i = 0; i < up.elevation.length; i++) up.elevation[i] = Math.floor(i / SIZE) * 0.1;
    expect(treesAlong(up, 0, 0, 0, 100)[0]!.topM).toBeCloseTo(14 + 0.1 * 39, 1);
  });

  it('let light through by their density and the way in the crown, and stems by theirs', () => {
    expect(passChance(wall, 0, 0, 0, 100, () => 8)).toBeCloseTo(Math.exp(-0.3 * 10), 6);
    expect(passChance(wall, 0, 0, 0, 100, () => 8, 0.5)).toBeCloseTo(Math.exp(-0.15 * 10), 6);
    expect(passChance(wall, 0, 0, 0, 100, () => 1)).toBeCloseTo(Math.exp(-STEMS_PER_M * 10), 6);
    expect(passChance(wall, 0, 0, 0, 100, () => 15)).toBe(1);
    expect(passChance(wall, 0, 0, 0, 25, () => 8)).toBe(1);
  });

  it('a trunk stops the ball that meets it and no other', () => {
    const trunks = [{ x: 0, y: 10, radiusM: 0.2, heightM: 4 }];
    const one = { ...groundWith(() => null), trunks };
    expect(passChance(one, 0, 0, 0, 50, () => 1)).toBe(0);
    expect(passChance(one, 0, 0, 2 * DEGREE, 50, () => 1)).toBe(1);
    expect(passChance(one, 0, 0, 0, 50, () => 5)).toBe(1);
    expect(passChance(one, 0, 0, 0, 9, () => 1)).toBe(1);
    expect(passChance(one, 0, 0, Math.PI, 50, () => 1)).toBe(1);
  });
});

describe('over the trees', () => {
  it('says what height is needed where, what the club has, and how sure that is', () => {
    const over = clearanceOver(wall, 0, 0, 0, nineIron)!;
    expect(over.needsM).toBe(14);
    expect(Math.abs(over.atM - 30)).toBeLessThan(1);
    const there = heightThere(nineIron, 0, over.atM);
    expect(over.hasM).toBeCloseTo(there.mean, 9);
    expect(over.sdM).toBeGreaterThan(0.5);
    expect(clearanceWords(over, nineIron, 'metres', english)).toMatch(
      /^needs 14 m at 31 m; your 9-iron has \d+ ± \d+$/,
    );
    expect(clearanceWords(over, punch, 'yards', english)).toMatch(
      /^needs 46 ft at 33 yd; your punch 7-iron has/,
    );
  });

  it('leaves the crown over the ball to the question of going under', () => {
    const both = groundWith((_, y) =>
      y > -3 && y < 8 ? [12, 4, 0.3] : y > 60 && y < 70 ? [6, 1, 0.3] : null,
    );
    expect(clearanceOver(both, 0, 0, 0, nineIron)!.needsM).toBe(6);
    expect(clearanceUnder(both, 0, 0, 0, nineIron)!.needsM).toBe(4);
  });

  it('is likelier with more loft and from farther back, and no question in the open', () => {
    const chance = (club: string, y: number): number => clearanceOver(wall, 0, y, 0, shot(club))!.chance;
    expect(chance('Sand wedge', 0)).toBeGreaterThan(chance('9-iron', 0));
    expect(chance('9-iron', 0)).toBeGreaterThan(chance('5-iron', 0));
    expect(chance('9-iron', -15)).toBeGreaterThan(chance('9-iron', 0));
    expect(clearanceOver(wall, 0, 0, Math.PI, nineIron)).toBeNull();
  });
});

describe('a bunker’s lip', () => {
  it('forces a lofted club where it is high and near', () => {
    const wedge = shot('Sand wedge');
    expect(lipChance(wedge, 0, 1, 3)).toBeGreaterThan(lipChance(fiveIron, 0, 1, 3) + 0.5);
    expect(lipChance(fiveIron, 0, 1, 12)).toBeGreaterThan(lipChance(fiveIron, 0, 1, 3));
    expect(lipChance(wedge, 0, 0, 3)).toBeGreaterThan(0.99);
  });
});

describe('under the branches', () => {
  const roof = groundWith((_, y) => (y > 2 && y < 25 ? [12, 4, 0.3] : null));

  it('a punch stays below what a full iron flies into', () => {
    const under = clearanceUnder(roof, 0, 0, 0, punch)!;
    expect(clearanceWords({ ...under, atM: 20 }, punch, 'metres', english, 'under')).toMatch(
      /^stay below 4\.0 m at 20 m; your punch 7-iron has \d\.\d ± \d\.\d$/,
    );
    expect(under.chance).toBeGreaterThan(0.7);
    expect(clearanceUnder(roof, 0, 0, 0, nineIron)!.chance).toBeLessThan(0.05);
    expect(throughChance(roof, 0, 0, 0, punch)).toBeGreaterThan(throughChance(roof, 0, 0, 0, nineIron) + 0.3);
  });
});

describe('gaps', () => {
  /** The wall with a door 12 m wide around x = 10. */
  const door = groundWith((x, y) => (y > 30 && y < 40 && Math.abs(x - 10) > 6 ? [30, 0.2, 0.5] : null));

  it('are as wide as their door looks from the ball', () => {
    const gaps = gapsFor(door, 0, 0, 0, 50 * DEGREE, fiveIron);
    expect(gaps).toHaveLength(1);
    const [gap] = gaps;
    // Seen from 0: left post at (4, 30..40), right post at (16, 30..40): from atan(4/30) to atan(16/40).
    const [left, right] = [Math.atan(4 / 30) / DEGREE, Math.atan(16 / 40) / DEGREE];
    expect(Math.abs(gap!.from / DEGREE - left)).toBeLessThan(1.6);
    expect(Math.abs(gap!.to / DEGREE - right)).toBeLessThan(1.6);
    expect(gap!.widthDeg).toBeCloseTo((gap!.to - gap!.from) / DEGREE, 9);
    expect(gap!.spreadDeg).toBeCloseTo((2 * fiveIron.directionSd) / DEGREE, 12);
  });

  it('let more balls of a straight club through than of a wild one, and more at the middle than at the edge', () => {
    const [gap] = gapsFor(door, 0, 0, 0, 50 * DEGREE, fiveIron);
    const wild = { ...fiveIron, directionSd: 3 * fiveIron.directionSd };
    expect(throughChance(door, 0, 0, gap!.middle, wild)).toBeLessThan(gap!.throughChance - 0.05);
    expect(throughChance(door, 0, 0, gap!.from, fiveIron)).toBeLessThan(gap!.throughChance);
  });

  it('a club that clears the trees sees no wall at all', () => {
    const hedge = groundWith((_, y) => (y > 60 && y < 64 ? [3, 0, 2] : null));
    const [all] = gapsFor(hedge, 0, 0, 0, 40 * DEGREE, nineIron);
    expect(all!.widthDeg).toBeGreaterThan(79);
    expect(all!.throughChance).toBe(1);
  });
});

describe('ways out', () => {
  // A pocket: trees all round from 12 to 30 m, open to the east and, low, under the branches to the north.
  const pocket = groundWith((x, y) => {
    const r = Math.hypot(x, y);
    if (r < 12 || r > 30) return null;
    const bearing = Math.atan2(x, y) / DEGREE;
    if (bearing > 75 && bearing < 105) return null;
    return Math.abs(bearing) < 25 ? [16, 3.5, 0.4] : [16, 0.2, 0.6];
  });
  const shots = [nineIron, fiveIron, punch];
  const options = recoveryOptions(pocket, 0, 0, 0, shots);

  it('offer the punch forwards under the branches, and the open side', () => {
    expect(options.some((o) => o.shot === 2 && o.way === 'forwards' && o.passage === 'under')).toBe(true);
    const side = options.filter((o) => o.way === 'sideways' && o.passage === 'open');
    expect(side.length).toBeGreaterThan(0);
    for (const option of side) expect(Math.abs(option.bearing / DEGREE - 90)).toBeLessThan(16);
  });

  it('do not offer a full 5-iron through the crowns, and give each its chance and gap', () => {
    expect(options.some((o) => o.shot === 1 && o.way === 'forwards')).toBe(false);
    for (const option of options) {
      expect(option.throughChance).toBeGreaterThanOrEqual(0.25);
      expect(option.throughChance).toBeLessThanOrEqual(1);
      expect(option.gapDeg).toBeGreaterThanOrEqual(2);
      expect(option.passage).not.toBe('through');
    }
  });

  it('deep in a wood name the likeliest ways rather than none', () => {
    const deep = groundWith(() => [16, 0.2, 0.6]);
    const resorts = recoveryOptions(deep, 0, 0, 0, shots);
    expect(resorts).toHaveLength(shots.length);
    for (const option of resorts) expect(option.gapDeg).toBe(0);
  });

  it('bend around a tree that a straight shot hits', () => {
    const spread = player.spreads.find((each) => each.club.name === '5-iron' && each.swing === 'full')!;
    const tree = groundWith((x, y) => (Math.hypot(x, y - 60) < 5 ? [30, 0, 1] : null));
    // Starts 14 degrees left and comes back right to land on the line.
    const fade = recoveryShot(spread, DEFAULT_CONDITIONS, Math.tan(14 * DEGREE));
    expect(throughChance(tree, 0, 0, 0, fiveIron)).toBeLessThan(0.3);
    expect(throughChance(tree, 0, 0, -14 * DEGREE, fade)).toBeGreaterThan(0.5);
    const landsRight = fade.sideAt!(spread.carryMean, spread.carryMean);
    expect(landsRight).toBeCloseTo(Math.tan(14 * DEGREE) * spread.carryMean, 6);
  });

  it('offer everything in the open', () => {
    const open = recoveryOptions(
      groundWith(() => null),
      0,
      0,
      0,
      [nineIron],
    );
    expect(open.some((o) => o.way === 'forwards' && Math.abs(o.bearing) < 1e-9)).toBe(true);
  });
});

describe('kinds of tree', () => {
  it('let more through when bare, unless they keep their needles', () => {
    expect(crownDensity('broadleaf', 'bare')).toBeLessThan(crownDensity('broadleaf', 'leaf'));
    expect(crownDensity('conifer', 'bare')).toBe(crownDensity('conifer', 'leaf'));
    const crown = { topM: 12, baseM: 2, densityPerM: 0.12 };
    expect(seasonalDensity(crown, 'leaf')).toBe(0.12);
    expect(seasonalDensity(crown, 'bare')).toBeCloseTo(0.048, 12);
    expect(seasonalDensity({ ...crown, leafType: 'needleleaved' }, 'bare')).toBe(0.12);
    expect(seasonalDensity({ ...crown, leafType: 'mixed' }, 'bare')).toBeCloseTo(0.084, 12);
    // what the cycle says goes before what the leaf is like: larch and holly
    const larch = { ...crown, leafType: 'needleleaved', leafCycle: 'deciduous' } as const;
    expect(seasonalDensity(larch, 'bare')).toBeCloseTo(0.048, 12);
    const holly = { ...crown, leafType: 'broadleaved', leafCycle: 'evergreen' } as const;
    expect(seasonalDensity(holly, 'bare')).toBe(0.12);
    expect(lightShare(0.2, 5)).toBeCloseTo(Math.exp(-1), 12);
    expect(trunkRadiusM('conifer', 16)).toBeCloseTo(0.2, 9);
  });
});

describe('a stopped ball', () => {
  it('falls near a crown on either side, comes back from a trunk, and never farther than it could', () => {
    const crown = { speedMps: 40, heightM: 6, by: 'crown' } as const;
    expect(restAfterHit(crown, 0, 1)).toEqual({ along: 0, right: 0 });
    const right = restAfterHit(crown, 0.9, 1);
    const left = restAfterHit(crown, 0.9, -1);
    expect(left.along).toBeCloseTo(right.along, 12);
    expect(left.right).toBeCloseTo(-right.right, 12);
    expect(restAfterHit({ ...crown, by: 'trunk' }, 0.8, 0).along).toBeLessThan(-3);
    expect(Math.hypot(right.along, right.right)).toBeLessThan(25);
    // Faster and higher: farther.
    const far = (speedMps: number, heightM: number): number =>
      restAfterHit({ speedMps, heightM, by: 'crown' }, 0.7, 0).along;
    expect(far(50, 6)).toBeGreaterThan(far(20, 6));
    expect(far(40, 9)).toBeGreaterThan(far(40, 2));
  });
});
