/**
 * Two invented players with invented shots, drawn from the laws stated below with a fixed seed:
 * `npx tsx tests/demo/players.ts` writes maps/demo-player.json and maps/scratch-player.json.
 * Nobody hit these shots; they only look like what a radar on a practice ground would have noted.
 */

import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import seedrandom from 'seedrandom';
import { inverseNormal } from '../../core/random/normal.ts';
import {
  type BagClub,
  type PlayerDocument,
  playerText,
  type RecordedShot,
} from '../../core/player/format.ts';

/** What the shots of one club and swing are drawn from. */
export interface StatedLaw {
  readonly club: string;
  readonly swing: 'full' | 'punch';
  readonly shots: number;
  readonly carryM: number;
  /** Standard deviation of a solid strike's carry as a share of the carry. */
  readonly carrySdShare: number;
  readonly directionDeg: number;
  readonly directionSdDeg: number;
  /** Of carry and direction. */
  readonly correlation: number;
  /** Of the shots, this many are poor strikes. */
  readonly poorShots: number;
}

interface InventedPlayer {
  readonly file: string;
  readonly seed: string;
  readonly head: Pick<
    PlayerDocument,
    'name' | 'invented' | 'hand' | 'handicap' | 'group' | 'settings' | 'putting'
  > & { readonly notes: string };
  readonly bag: readonly BagClub[];
  readonly laws: readonly StatedLaw[];
}

const NOTE = 'Invented player, invented shots, drawn from a stated law by tests/demo/players.ts.';

function club(
  name: string,
  kind: BagClub['kind'],
  loftDeg: number,
  lengthM: number,
  swings: BagClub['swings'],
): BagClub {
  return { name, kind, loftDeg, lengthM, swings };
}

function law(
  name: string,
  shots: number,
  carryM: number,
  carrySdShare: number,
  directionDeg: number,
  directionSdDeg: number,
  poorShots: number,
  swing: 'full' | 'punch' = 'full',
): StatedLaw {
  // long shots that leak right lose a little carry, hence the small negative correlation of the longest clubs
  const correlation = carryM > 150 ? -0.15 : 0;
  return {
    club: name,
    swing,
    shots,
    carryM,
    carrySdShare,
    directionDeg,
    directionSdDeg,
    correlation,
    poorShots,
  };
}

const PUTTER = club('Putter', 'putter', 3, 0.87, ['full']);

/** Goes round a par 70 in about 90; a slight push with the driver. */
export const SAMPLE_PLAYER: InventedPlayer = {
  file: 'demo-player.json',
  seed: 'sample player of the demo',
  head: {
    name: 'Sample player (invented)',
    invented: true,
    notes: NOTE,
    hand: 'right',
    handicap: 17,
    group: 'men',
    settings: { units: 'yards', marginStrokes: 0.05 },
    putting: { directionSdDeg: 1.7, distanceSdShare: 0.11 },
  },
  bag: [
    club('Driver', 'driver', 10.5, 1.14, ['full']),
    club('3-wood', 'wood', 15, 1.09, ['full']),
    club('5-wood', 'wood', 18, 1.07, ['full']),
    club('4-hybrid', 'hybrid', 22, 1.01, ['full', 'punch']),
    club('5-iron', 'iron', 25, 0.97, ['full', 'punch']),
    club('6-iron', 'iron', 28, 0.95, ['full', 'punch']),
    club('7-iron', 'iron', 32, 0.94, ['full', 'punch']),
    club('8-iron', 'iron', 36, 0.93, ['full', 'part']),
    club('9-iron', 'iron', 41, 0.91, ['full', 'part']),
    club('Pitching wedge', 'wedge', 46, 0.9, ['full', 'part']),
    club('Gap wedge', 'wedge', 50, 0.9, ['full', 'part']),
    club('Sand wedge', 'wedge', 56, 0.89, ['full', 'part']),
    club('Lob wedge', 'wedge', 60, 0.89, ['full', 'part']),
    PUTTER,
  ],
  laws: [
    law('Driver', 40, 190, 0.065, 1.3, 6.4, 4),
    law('3-wood', 28, 174, 0.07, 0.8, 5.9, 3),
    law('5-wood', 26, 164, 0.07, 0.6, 5.6, 2),
    law('4-hybrid', 28, 154, 0.07, 0.2, 5.3, 2),
    law('5-iron', 26, 145, 0.072, 0.3, 5.1, 2),
    law('6-iron', 28, 135.5, 0.07, 0.2, 5, 2),
    law('7-iron', 36, 125.5, 0.068, 0, 4.9, 2),
    law('8-iron', 28, 115.5, 0.068, -0.2, 4.8, 2),
    law('9-iron', 28, 105, 0.068, -0.3, 4.7, 2),
    law('Pitching wedge', 30, 94, 0.07, -0.3, 4.5, 2),
    law('Gap wedge', 26, 82, 0.07, -0.2, 4.5, 2),
    law('Sand wedge', 28, 69, 0.075, 0, 4.4, 2),
    law('Lob wedge', 20, 55, 0.085, 0.2, 4.6, 2),
    law('5-iron', 20, 88, 0.085, 0.3, 4.4, 1, 'punch'),
    law('7-iron', 20, 76, 0.085, 0, 4.3, 1, 'punch'),
  ],
};

/** Drives about 229 m and is good for about 201 m with the second: the scratch player of the rating system. */
export const SCRATCH_PLAYER: InventedPlayer = {
  file: 'scratch-player.json',
  seed: 'scratch player of the demo',
  head: {
    name: 'Scratch player (invented)',
    invented: true,
    notes: NOTE,
    hand: 'right',
    handicap: 0,
    group: 'men',
    settings: { units: 'yards', marginStrokes: 0.05 },
    putting: { directionSdDeg: 1.2, distanceSdShare: 0.085 },
  },
  bag: [
    club('Driver', 'driver', 10.5, 1.14, ['full']),
    club('3-wood', 'wood', 15, 1.09, ['full']),
    club('5-wood', 'wood', 18, 1.07, ['full']),
    club('4-iron', 'iron', 23, 0.98, ['full', 'punch']),
    club('5-iron', 'iron', 26, 0.97, ['full', 'punch']),
    club('6-iron', 'iron', 29, 0.95, ['full', 'punch']),
    club('7-iron', 'iron', 33, 0.94, ['full', 'punch']),
    club('8-iron', 'iron', 37, 0.93, ['full', 'part']),
    club('9-iron', 'iron', 41, 0.91, ['full', 'part']),
    club('Pitching wedge', 'wedge', 46, 0.9, ['full', 'part']),
    club('Gap wedge', 'wedge', 50, 0.9, ['full', 'part']),
    club('Sand wedge', 'wedge', 56, 0.89, ['full', 'part']),
    club('Lob wedge', 'wedge', 60, 0.89, ['full', 'part']),
    PUTTER,
  ],
  laws: [
    law('Driver', 40, 210, 0.045, 0.2, 4.1, 1),
    law('3-wood', 30, 186, 0.048, 0, 3.7, 1),
    law('5-wood', 28, 176, 0.048, 0, 3.5, 1),
    law('4-iron', 28, 164, 0.05, 0, 3.3, 1),
    law('5-iron', 28, 155, 0.048, 0, 3.1, 1),
    law('6-iron', 30, 146, 0.046, 0, 3, 1),
    law('7-iron', 36, 136.5, 0.045, 0, 2.9, 1),
    law('8-iron', 30, 126.5, 0.044, -0.1, 2.8, 1),
    law('9-iron', 30, 115.5, 0.044, -0.2, 2.7, 1),
    law('Pitching wedge', 30, 104, 0.045, -0.2, 2.7, 1),
    law('Gap wedge', 28, 91, 0.047, 0, 2.7, 1),
    law('Sand wedge', 28, 78, 0.05, 0, 2.7, 1),
    law('Lob wedge', 24, 64, 0.055, 0, 2.8, 1),
    law('5-iron', 20, 96, 0.06, 0, 2.9, 0, 'punch'),
    law('7-iron', 20, 84, 0.06, 0, 2.8, 0, 'punch'),
  ],
};

/** Run of a drive or a wood on level turf as a share of its carry; noted for these clubs only. */
const RUN_SHARE: Readonly<Record<string, number>> = { driver: 0.085, wood: 0.07 };

/** Evenings on the practice ground, four clubs to an evening. */
const SESSIONS = [
  '2026-03-08',
  '2026-03-15',
  '2026-03-22',
  '2026-04-05',
  '2026-04-12',
  '2026-04-19',
  '2026-05-03',
];

export function inventPlayer(player: InventedPlayer): PlayerDocument {
  const random = seedrandom(player.seed);
  const kinds = new Map(player.bag.map((c) => [c.name, c.kind]));
  const shots = player.laws.flatMap((stated, k) => {
    const poorAt = new Set<number>();
    while (poorAt.size < stated.poorShots) poorAt.add(Math.floor(random() * stated.shots));
    const along = evenNormals(stated.shots, random);
    const across = evenNormals(stated.shots, random);
    return Array.from({ length: stated.shots }, (_, i): RecordedShot => {
      const [carryM, directionDeg] = poorAt.has(i)
        ? poorStrike(stated, random)
        : solidStrike(stated, along[i]!, across[i]!);
      const runShare = RUN_SHARE[kinds.get(stated.club) ?? 'iron'];
      const run = runShare === undefined ? undefined : carryM * runShare * (0.8 + 0.4 * random());
      return {
        club: stated.club,
        swing: stated.swing,
        carryM: tenths(carryM),
        offlineM: tenths(carryM * Math.sin((directionDeg * Math.PI) / 180)),
        ...(run === undefined ? {} : { totalM: tenths(carryM + run) }),
        lie: 'range',
        at: SESSIONS[Math.floor((k + (2 * i) / stated.shots) / 2) % SESSIONS.length]!,
      };
    });
  });
  return { holewright: { format: 'player', formatVersion: 1 }, ...player.head, bag: [...player.bag], shots };
}

function solidStrike(stated: StatedLaw, u: number, v: number): [number, number] {
  const across = stated.correlation * u + Math.sqrt(1 - stated.correlation ** 2) * v;
  return [
    stated.carryM * (1 + stated.carrySdShare * u),
    stated.directionDeg + stated.directionSdDeg * across,
  ];
}

/** Standard normal numbers, one from each of `count` equal slices of the law, shuffled: few shots, yet a fair sample. */
function evenNormals(count: number, random: () => number): number[] {
  const slices = Array.from({ length: count }, (_, k) => inverseNormal((k + 0.1 + 0.8 * random()) / count));
  for (let k = count - 1; k > 0; k--) {
    const other = Math.floor(random() * (k + 1));
    [slices[k], slices[other]] = [slices[other]!, slices[k]!];
  }
  return slices;
}

/** Tops, thin and heavy ones and now and then a shank. */
function poorStrike({ carryM, directionSdDeg }: StatedLaw, random: () => number): [number, number] {
  const kind = random();
  const share = random();
  if (kind < 0.3) return [carryM * (0.16 + 0.25 * share), 1.3 * directionSdDeg * normal(random)];
  if (kind < 0.6) return [carryM * (0.58 + 0.2 * share), 1.5 * directionSdDeg * normal(random)];
  if (kind < 0.88) return [carryM * (0.45 + 0.25 * share), 1.2 * directionSdDeg * normal(random)];
  return [carryM * (0.38 + 0.2 * share), 26 + 14 * random()];
}

/** Box & Muller 1958. */
function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

function tenths(metres: number): number {
  return Number(metres.toFixed(1));
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  for (const player of [SAMPLE_PLAYER, SCRATCH_PLAYER]) {
    const target = new URL(`../../maps/${player.file}`, import.meta.url);
    writeFileSync(target, playerText(inventPlayer(player)));
    console.log(target.pathname);
  }
}
