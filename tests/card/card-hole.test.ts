import { describe, expect, it } from 'vitest';
import { badPlaces } from '../../core/card/bad-places.ts';
import { cardHole } from '../../core/card/card-hole.ts';
import { drawnLength, greenDrawing } from '../../core/card/drawing.ts';
import { bearingOf, makeView, pointAlong, turnOf } from '../../core/card/frame.ts';
import { greenPlace } from '../../core/card/green-place.ts';
import { safeSide } from '../../core/card/safe-side.ts';
import { distanceM } from '../../core/course/ellipsoid.ts';
import type { Course } from '../../core/course/model.ts';
import { box, disc, flatCourse, mustPrepare, fourClubs, statedPlayer, wood } from '../plan/synthetic.ts';
import { shortHole } from '../round/short-hole.ts';
import { english } from '../../core/words/english/english.ts';
import { german } from '../../core/words/german/german.ts';

const { play, plan } = shortHole();
const { prepared, field } = play;
/** The same ground as `shortHole` draws. */
const course: Course = flatCourse({
  lengthM: 150,
  par: 3,
  greenRadiusM: 11,
  patches: [
    box('fairway', -15, -130, 15, 15),
    box('penalty-red', -40, -40, -13, 20),
    box('bunker', 13, -10, 22, 8),
    box('out-of-bounds', -90, 40, 90, 90),
    wood(25, -90, 45, 30, { topM: 12, baseM: 2, densityPerM: 0.15 }),
  ],
});
const card = cardHole(course, prepared, field, plan, {
  words: english,
  units: 'metres',
  budget: { strokes: 4, words: 'Bogey is your par here.' },
});

describe('the card of a hole', () => {
  it('says what to play and where, from the recommendation', () => {
    const best = plan.options.find(({ id }) => id === plan.recommendation.optionId)!;
    expect(card).toMatchObject({ hole: 1, par: 3, tee: 'tee', holePosition: 'middle', club: best.club });
    expect(card.aim).toMatch(/of the green/);
    expect(card.expected).toBe(best.meanStrokes);
    expect(card.budget?.words).toBe('Bogey is your par here.');
    expect(card.boxes).toContain('score');
    expect(JSON.parse(JSON.stringify(card))).toEqual(card);
  });

  it('says the same in German: other words, equal numbers', () => {
    const told = cardHole(course, prepared, field, plan, { words: german, units: 'metres' });
    expect(told.aim).toMatch(/Grüns$|Fahne$/);
    expect(told.boxes).toEqual(['Score', 'Putts', 'Abschlag mit', 'endete']);
    expect(told.safeSide?.words).toMatch(/links/i);
    expect(told.badPlaces.map(({ where }) => where)).not.toEqual(card.badPlaces.map(({ where }) => where));
    expect(told.reason).not.toBe(card.reason);
    const { drawing, carryM, expected, odds } = card;
    expect(told).toMatchObject({ drawing, carryM, expected, odds });
  });

  it('may be made for another option, and not for one that is not there', () => {
    const other = plan.options[1]!;
    const chosen = cardHole(course, prepared, field, plan, {
      words: english,
      units: 'yards',
      chosen: other.id,
    });
    expect(chosen.club).toContain(other.club);
    expect(chosen.reason).toBe(
      other.id === plan.recommendation.optionId ? plan.recommendation.reason : 'Your own choice.',
    );
    expect(() =>
      cardHole(course, prepared, field, plan, { words: english, units: 'yards', chosen: 'nothing' }),
    ).toThrow(/nothing/);
  });

  it('sends the miss away from the water', () => {
    const towards = { ...play.tee.choice, bearing: play.tee.choice.bearing - 0.04 };
    const side = safeSide(prepared, field, prepared.tee, towards, english)!;
    expect(side.side).toBe('right');
    expect(side.words).toMatch(/^Miss right of this aim: the same miss left costs 0\.\d\d more\.$/);
    expect(side.cost).toBeGreaterThan(2 * side.standardError);
    expect(card.safeSide).toEqual(safeSide(prepared, field, prepared.tee, play.tee.choice, english));
  });

  it('is the side of the water where the aim keeps far off it already', () => {
    const away = { ...play.tee.choice, bearing: play.tee.choice.bearing + 0.1 };
    const side = safeSide(prepared, field, prepared.tee, away, english)!;
    expect(side.words).toMatch(/^Miss left of this aim/);
  });

  it('knows the usual bad places and a way on from each', () => {
    const places = badPlaces(prepared, field, play.tee.choice, 'metres', english);
    expect(places.length).toBeGreaterThan(0);
    const wet = places.find(({ where }) => where === 'Red penalty area left')!;
    expect(wet.share).toBeGreaterThan(0.03);
    expect(wet.what).toMatch(
      /^drop (beside where it crossed|back on the line from hole to crossing).*, one penalty stroke; then \w+/,
    );
    for (const { what, share } of places) {
      expect(what).not.toBe('');
      expect(share).toBeLessThan(0.6);
    }
    expect(badPlaces(prepared, field, play.tee.choice, 'metres', english)).toEqual(places);
  });

  it('is drawn in metres that are true to the ground', () => {
    const [hole] = course.holes;
    expect(drawnLength(card.drawing)).toBeCloseTo(distanceM(hole!.tees[0]!.at, hole!.positions[0]!.at), 2);
    expect(card.drawing.pin.x).toBeCloseTo(0, 9);
    expect(card.drawing.tee).toEqual({ x: 0, y: 0 });
    const { box: shown } = card.drawing;
    for (const { x, y } of [card.drawing.tee, card.drawing.pin, card.drawing.aim!]) {
      expect(x).toBeGreaterThan(shown.left);
      expect(x).toBeLessThan(shown.right);
      expect(y).toBeGreaterThan(shown.bottom);
      expect(y).toBeLessThan(shown.top);
    }
    expect(card.drawing.areas.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['fairway', 'green', 'bunker', 'penalty-red', 'woods']),
    );
    expect(card.drawing.ellipses.map(({ share }) => share)).toEqual([0.5, 0.9]);
    // Water lies left of the line from tee to hole, sand right of it.
    const middleX = (kind: string) => {
      const ring = card.drawing.areas.find((area) => area.kind === kind)!.rings[0]!;
      return ring.reduce((sum, { x }) => sum + x, 0) / ring.length;
    };
    expect(middleX('penalty-red')).toBeLessThan(-13);
    expect(middleX('bunker')).toBeGreaterThan(13);
  });
});

describe('the view of a card', () => {
  it('turns play up the page and keeps right on the right', () => {
    const from = { x: 10, y: -5 };
    for (const up of [0, 0.7, 2, -2.5]) {
      const view = makeView(from, up);
      const ahead = view.toPage(pointAlong(from, up, 100));
      const right = view.toPage(pointAlong(from, up + Math.PI / 2, 30));
      expect([ahead.x, ahead.y]).toEqual([expect.closeTo(0, 9), expect.closeTo(100, 9)]);
      expect([right.x, right.y]).toEqual([expect.closeTo(30, 9), expect.closeTo(0, 9)]);
      expect(turnOf(up, bearingOf(from, pointAlong(from, up + 0.4, 7)))).toBeCloseTo(0.4, 9);
    }
  });
});

describe('the hole position of the day', () => {
  const player = statedPlayer({ spreads: fourClubs() });

  it('is told from the front and from the nearer side', () => {
    const off = { x: 5, y: -4 };
    const base = flatCourse({ lengthM: 300, greenRadiusM: 14 });
    const ready = mustPrepare({ lengthM: 300, greenRadiusM: 14 }, player);
    const place = greenPlace(base, { ...ready, pin: off }, 'metres', english)!;
    // The chord through the pin; the approach is turned by one degree, since it is aimed at the pin.
    expect(place.side).toBe('right');
    expect(Math.abs(place.fromFrontM - (Math.sqrt(14 ** 2 - 5 ** 2) - 4))).toBeLessThan(0.3);
    expect(Math.abs(place.fromSideM - (Math.sqrt(14 ** 2 - 4 ** 2) - 5))).toBeLessThan(0.3);
    expect(place.words).toMatch(/^9 paces on, 8 paces from right; green 26 paces deep$/);
  });

  it('a green is drawn around its own middle', () => {
    const base = flatCourse({ lengthM: 300, greenRadiusM: 14, patches: [disc('bunker', 16, 0, 4)] });
    const ready = mustPrepare({ lengthM: 300, greenRadiusM: 14 }, player);
    const drawn = greenDrawing(base, ready)!;
    expect(Math.hypot(drawn.pin.x, drawn.pin.y)).toBeLessThan(0.1);
    expect(drawn.box.right - drawn.box.left).toBeCloseTo(28 + 12, 0);
    expect(drawn.areas.map(({ kind }) => kind)).toContain('bunker');
  });
});
