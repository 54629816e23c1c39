/** A straight, flat, open hole for checks against published averages: fairway, rough beside it, a round green. */

import { makeLocalFrame } from '../../core/course/local-frame.ts';
import type { Course, LonLat } from '../../core/course/model.ts';
import { lieEffectsFor } from '../../core/player/lie-effects.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import { type PlayerLevel, presetPlayer } from '../../core/player/presets.ts';
import type { Spot } from '../../core/plan/model.ts';
import { prepareHole, type PreparedHole } from '../../core/plan/prepare.ts';

export interface FlatHole {
  readonly lengthM: number;
  readonly fairwayHalfWidthM: number;
  readonly greenRadiusM: number;
}

/** The preset player of a level. `poor: false` leaves poor strikes out, for standards that speak of solid shots. */
export function presetModel(level: PlayerLevel, { poor }: { readonly poor: boolean }): PlayerModel {
  const preset = presetPlayer(level);
  return {
    name: 'preset',
    invented: true,
    hand: 'right',
    spreads: poor ? preset.spreads : preset.spreads.map((spread) => ({ ...spread, poorShare: 0 })),
    putting: preset.putting,
    lieEffect: lieEffectsFor(level.handicap),
    units: 'yards',
    marginStrokes: 0.05,
    warnings: [],
  };
}

/** The hole played north from its tee at (0, 0); `spotAt(d)` is the point d metres short of the hole. */
export function prepareFlatHole(
  hole: FlatHole,
  player: PlayerModel,
): { prepared: PreparedHole; spotAt: (metres: number) => Spot } {
  const { lengthM, fairwayHalfWidthM: half, greenRadiusM } = hole;
  const frame = makeLocalFrame([-30, 40]);
  const at = (x: number, y: number): LonLat => frame.toLonLat({ x, y });
  const fairway = [
    at(-half, -70),
    at(half, -70),
    at(half, lengthM + 70),
    at(-half, lengthM + 70),
    at(-half, -70),
  ];
  const green = Array.from({ length: 73 }, (_, k) => {
    const angle = (k * Math.PI) / 36;
    return at(greenRadiusM * Math.cos(angle), lengthM + greenRadiusM * Math.sin(angle));
  });
  const course: Course = {
    name: 'Flat',
    formatVersion: 1,
    invented: true,
    warnings: [],
    trees: [],
    levels: [],
    strayMarkers: [],
    holes: [
      {
        number: 1,
        par: 4,
        line: [at(0, 0), at(0, lengthM)],
        tees: [{ name: 'only', at: at(0, 0) }],
        positions: [{ name: 'middle', at: at(0, lengthM) }],
        featureIndex: 0,
      },
    ],
    areas: [
      { kind: 'fairway', rings: [fairway], featureIndex: 1 },
      { kind: 'green', rings: [green], hole: 1, featureIndex: 2 },
    ],
  };
  const prepared = prepareHole({ course, holeNumber: 1, player, seed: 'published' });
  if (!prepared.ok) throw new Error(prepared.error.message);
  return {
    prepared: prepared.value,
    spotAt: (metres) => prepared.value.frame.toSpot(at(0, lengthM - metres)),
  };
}
