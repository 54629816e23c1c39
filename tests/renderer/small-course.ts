/** A course of two short invented holes, quick to work out, and an invented player with few clubs. */

import { area, at, collection, line, point, square } from '../course/builders.ts';
import { minimalPlayer } from '../player/sample-player.ts';

/** A par 3 of about 145 m with a pond left and a bunker right, and a plain one of about 90 m beside it. */
export function smallCourse(): ReturnType<typeof collection> {
  return collection(
    line({ golf: 'hole', ref: '1', par: '3', handicap: '1', name: 'Pond' }, at(0, 0), at(0, 130)),
    area({ golf: 'tee', ref: '1' }, square(0, 0, 8)),
    point({ holewright_kind: 'tee_marker', ref: '1', name: 'Oak' }, at(0, 0)),
    point({ holewright_kind: 'tee_marker', ref: '1', name: 'Ash' }, at(0, 15)),
    area({ golf: 'green', ref: '1' }, square(0, 130, 14)),
    point({ holewright_kind: 'hole_position', ref: '1', name: 'front' }, at(0, 122)),
    point({ holewright_kind: 'hole_position', ref: '1', name: 'back' }, at(4, 138)),
    area({ golf: 'fairway', ref: '1' }, [at(-20, 40), at(20, 40), at(20, 145), at(-20, 145), at(-20, 40)]),
    area({ golf: 'lateral_water_hazard' }, [
      at(-60, 80),
      at(-22, 80),
      at(-22, 140),
      at(-60, 140),
      at(-60, 80),
    ]),
    area({ golf: 'bunker', ref: '1' }, square(24, 126, 7)),
    line({ golf: 'hole', ref: '2', par: '3', handicap: '2' }, at(160, 80), at(160, 0)),
    area({ golf: 'tee', ref: '2' }, square(160, 80, 8)),
    point({ holewright_kind: 'tee_marker', ref: '2', name: 'Oak' }, at(160, 80)),
    area({ golf: 'green', ref: '2' }, square(160, 0, 12)),
  );
}

export function smallCourseText(): string {
  return JSON.stringify(smallCourse());
}

export function smallPlayerText(): string {
  const player = minimalPlayer();
  const iron = { kind: 'iron', swings: ['full'] } as const;
  const clubs = [
    { ...iron, name: '6-iron', loftDeg: 29 },
    { ...iron, name: '8-iron', loftDeg: 36 },
  ];
  return JSON.stringify({ ...player, bag: [...player.bag, ...clubs] });
}
