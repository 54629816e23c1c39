import { describe, expect, it } from 'vitest';
import { aimWords } from '../../core/card/aim-words.ts';
import { carriesAlong, runOutAlong } from '../../core/card/carries.ts';
import { landmarksFrom } from '../../core/card/landmarks.ts';
import { canSee } from '../../core/card/sight.ts';
import type { FlatHole } from '../plan/synthetic.ts';
import { box, disc, flatCourse, fourClubs, mustPrepare, statedPlayer, wood } from '../plan/synthetic.ts';
import { english } from '../../core/words/english/english.ts';

const player = statedPlayer({ spreads: fourClubs() });
const OAK = { topM: 14, baseM: 3, densityPerM: 0.15 };

/** A hole played north: tee at (0, -length), flag at (0, 0). */
function scene(spec: Omit<FlatHole, 'lengthM'>, lengthM = 360) {
  const whole = { ...spec, lengthM };
  const prepared = mustPrepare(whole, player);
  const course = flatCourse(whole);
  const { tee } = prepared;
  return {
    ...{ prepared, course, tee },
    words: (aimX: number, aimY: number) =>
      aimWords(
        course,
        prepared,
        tee,
        Math.atan2(aimX - tee.x, aimY - tee.y),
        Math.hypot(aimX - tee.x, aimY - tee.y),
        'metres',
        english,
      ),
  };
}

const fairway = box('fairway', -20, -300, 20, -30);

describe('an aim in words', () => {
  it('is the edge of the sand that the eye finds there', () => {
    const { words } = scene({
      patches: [fairway, disc('bunker', -25, -150, 7), disc('bunker', 26, -110, 7)],
    });
    expect(words(-18, -150)).toBe('right edge of the near bunker, left third of the fairway');
    // The bunker's left edge stands 19 m right at 250 m: the line to it passes 16 m right at 210 m.
    expect(words(16, -150)).toBe('left edge of the far bunker, right third of the fairway');
  });

  it('is the flag itself on a short hole', () => {
    const { words } = scene({}, 140);
    expect(words(0, 0)).toBe('the flag, middle of the green');
  });

  it('is so far beside a landmark where none is on the line', () => {
    const { words } = scene({ patches: [fairway] });
    // 190 m of 360 m: 12 m right there is 23 m right at the hole, some 11 m past the edge of a green of 12 m.
    expect(words(12, -170)).toMatch(
      /^1[012] m right of the right edge of the green, right third of the fairway$/u,
    );
    expect(words(-12, -170)).toMatch(
      /^1[012] m left of the left edge of the green, left third of the fairway$/u,
    );
  });

  it('does not send the player to a thing behind trees', () => {
    const sand = disc('bunker', -25, -110, 7);
    const open = scene({ patches: [fairway, sand] });
    const hidden = scene({ patches: [fairway, sand, wood(-45, -200, -8, -170, OAK)] });
    expect(open.words(-17, -150)).toMatch(/bunker/);
    expect(hidden.words(-17, -150)).not.toMatch(/bunker/);
  });

  it('names a single tree, and not one that stands in a wood', () => {
    const tree = { x: 3, y: 20, radiusM: 4, canopy: OAK };
    const lone = scene({ trees: [tree] });
    expect(lone.words(0, -170)).toMatch(/flag|single tree/);
    const { course, prepared, tee } = lone;
    expect(landmarksFrom(course, prepared, tee, 0, 'metres', english).map(({ kind }) => kind)).toContain(
      'tree',
    );
    const among = scene({ trees: [tree], patches: [wood(-20, 15, 30, 40, OAK)] });
    expect(
      landmarksFrom(among.course, among.prepared, among.tee, 0, 'metres', english).map(({ kind }) => kind),
    ).not.toContain('tree');
  });

  it('with nothing in sight goes by the line to the hole', () => {
    const { words } = scene({ patches: [wood(-80, -330, 80, -300, OAK)] });
    expect(words(9, -180)).toBe('9 m right of the line to the hole');
    expect(words(0, -180)).toBe('straight at the hole');
  });
});

describe('sight from the tee', () => {
  it('is blocked by a crown, a ridge, and not by what stands behind', () => {
    const flat = scene({});
    expect(canSee(flat.prepared.ground, flat.tee, { x: 0, y: 0 }, 2)).toBe(true);
    const trees = scene({ patches: [wood(-30, -200, 30, -180, OAK)] });
    expect(canSee(trees.prepared.ground, trees.tee, { x: 0, y: 0 }, 2)).toBe(false);
    expect(canSee(trees.prepared.ground, trees.tee, { x: 0, y: -220 }, 0.3)).toBe(true);
    const level = (y: number, elevationM: number) => [-60, 0, 60].map((x) => ({ x, y, elevationM }));
    const ridge = scene({ levels: [...level(-360, 0), ...level(-180, 8), ...level(0, 0)] });
    expect(canSee(ridge.prepared.ground, ridge.tee, { x: 0, y: 0 }, 2)).toBe(false);
  });
});

describe('distances along the aim', () => {
  const { course, prepared, tee } = scene({
    patches: [
      fairway,
      disc('bunker', 15, -160, 6),
      box('penalty-red', -60, -140, 60, -128),
      disc('bunker', 60, -150, 6),
    ],
  });

  it('are to reach and to carry, with the side', () => {
    const carries = carriesAlong(course, prepared, tee, 0, 260, english);
    expect(carries.map(({ words, side }) => [words, side])).toEqual([
      ['bunker', 'right'],
      ['red penalty area', 'across'],
    ]);
    const [sand, water] = carries;
    expect(Math.abs(sand!.nearM - Math.hypot(15, 200) + 6)).toBeLessThan(1);
    expect(Math.abs(sand!.farM - Math.hypot(15, 200) - 6)).toBeLessThan(1);
    expect(water!.nearM).toBeCloseTo(220, 0);
    // The far edge is told inside the lane beside the aim, where it lies a little farther than straight ahead.
    expect(water!.farM).toBeGreaterThan(231.9);
    expect(water!.farM).toBeLessThan(235);
    expect(carriesAlong(course, prepared, tee, 0, 150, english)).toEqual([]);
  });

  it('say where the fairway ends', () => {
    const found = runOutAlong(prepared, tee, 0, 190, english)!;
    expect(Math.abs(found.atM - 220)).toBeLessThan(1.5);
    expect(found.words).toBe('the red penalty area');
    const open = scene({ patches: [fairway] });
    expect(Math.abs(runOutAlong(open.prepared, open.tee, 0.09, 190, english)!.atM - 223)).toBeLessThan(3);
    expect(runOutAlong(open.prepared, open.tee, 0.5, 190, english)).toBeNull();
  });
});
