/** Eighteen short invented holes side by side, each worked out within a second, for paths through a whole round. */

import { area, at, collection, line, point, square } from '../../course/builders.ts';
import { minimalPlayer } from '../../player/sample-player.ts';

const APART_M = 260;

/** Par 3s of 95 to 129 m, every third with sand; stroke index from the longest down. */
export function eighteenHoles(): ReturnType<typeof collection> {
  const features = Array.from({ length: 18 }, (_, i) => {
    const number = String(i + 1);
    const x = (i % 6) * APART_M;
    const y = Math.floor(i / 6) * APART_M;
    const length = 95 + 2 * i;
    return [
      line({ golf: 'hole', ref: number, par: '3', handicap: String(18 - i) }, at(x, y), at(x, y + length)),
      area({ golf: 'tee', ref: number }, square(x, y, 7)),
      point({ holewright_kind: 'tee_marker', ref: number, name: 'Oak' }, at(x, y)),
      area({ golf: 'green', ref: number }, square(x, y + length, 12)),
      ...(i % 3 === 0 ? [area({ golf: 'bunker', ref: number }, square(x + 20, y + length - 4, 6))] : []),
    ];
  });
  return collection(...features.flat());
}

export function eighteenHolesText(): string {
  return JSON.stringify(eighteenHoles());
}

/** An invented player with an iron, a wedge and a putter: little to choose from, soon worked out. */
export function threeClubsText(): string {
  const player = minimalPlayer();
  const iron = { name: '7-iron', kind: 'iron', loftDeg: 32, swings: ['full'] };
  const bag = player.bag.filter(({ kind }) => kind === 'wedge' || kind === 'putter');
  return JSON.stringify({ ...player, bag: [iron, ...bag] });
}
