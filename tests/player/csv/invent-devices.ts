/**
 * Five tables as five different measuring devices might write them, all invented, as are the shots in them:
 * `npx tsx tests/player/csv/invent-devices.ts` writes tests/player/csv/fixtures. No such makers exist.
 */

import { mkdirSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import seedrandom from 'seedrandom';
import { inverseNormal } from '../../../core/random/normal.ts';

export interface InventedShot {
  /** As the bag of the tests calls it. */
  readonly club: string;
  readonly carryM: number;
  readonly totalM: number;
  /** Positive right. */
  readonly offlineM: number;
  readonly directionDeg: number;
  readonly day: number;
  readonly minute: number;
}

export interface InventedTable {
  readonly file: string;
  readonly shots: readonly InventedShot[];
  readonly text: string;
  /** Rows that a reader must reject. */
  readonly bad: number;
}

const YARD_M = 0.9144;
const FOOT_M = 0.3048;
const CLUBS: readonly (readonly [string, number])[] = [
  ['Driver', 192],
  ['5-wood', 164],
  ['7-iron', 126],
  ['9-iron', 105],
  ['Pitching wedge', 95],
  ['Sand wedge', 70],
];

function inventShots(seed: string, count: number): InventedShot[] {
  const random = seedrandom(seed);
  const normal = (): number => inverseNormal(random() + 1e-12);
  return Array.from({ length: count }, (_, i) => {
    const [club, carry] = CLUBS[Math.floor((i * CLUBS.length) / count)]!;
    const isPoor = random() < 0.08;
    const carryM = Math.max(8, carry * (isPoor ? 0.6 + 0.15 * normal() : 1 + 0.07 * normal()));
    const directionDeg = (isPoor ? 9 : 4.8) * normal();
    return {
      club,
      carryM,
      totalM: carryM * (1.03 + 0.05 * random()),
      offlineM: carryM * Math.sin((directionDeg * Math.PI) / 180),
      directionDeg,
      day: 1 + Math.floor((28 * i) / count),
      minute: 9 * 60 + i,
    };
  });
}

const fixed = (value: number, digits = 1): string =>
  (Math.abs(value) < 0.5 * 10 ** -digits ? 0 : value).toFixed(digits);
const comma = (value: number, digits = 1): string => fixed(value, digits).replace('.', ',');
const two = (value: number): string => String(value).padStart(2, '0');
const clock = (minute: number): string => `${two(Math.floor(minute / 60) % 24)}:${two(minute % 60)}`;

/** Yards, letters for the side, a running number, columns nobody needs. */
function larkfield(): InventedTable {
  const shots = inventShots('larkfield', 300);
  const names: Readonly<Record<string, string>> = {
    Driver: 'DR',
    '5-wood': '5W',
    '7-iron': '7I',
    '9-iron': '9I',
    'Pitching wedge': 'PW',
    'Sand wedge': 'SW',
  };
  const rows = shots.map((shot, i) => {
    const offline = shot.offlineM / YARD_M;
    const side = `${fixed(Math.abs(offline))} ${offline < 0 ? 'L' : 'R'}`;
    return [
      i + 1,
      names[shot.club]!,
      fixed(shot.carryM / YARD_M),
      fixed(shot.totalM / YARD_M),
      side,
      fixed(85 + (i % 7)),
      `2026-05-${two(shot.day)} ${clock(shot.minute)}`,
    ].join(',');
  });
  const head = 'No,Club,Carry (yd),Total (yd),Offline (yd),Club Speed (mph),Date';
  return { file: 'larkfield-range-box.csv', shots, text: `${[head, ...rows].join('\n')}\n`, bad: 0 };
}

/** Semicolons, decimal commas, a row of units, a byte order mark, the left side positive. */
function ostertal(): InventedTable {
  const shots = inventShots('ostertal', 300);
  const names: Readonly<Record<string, string>> = {
    Driver: 'Driver',
    '5-wood': 'Holz 5',
    '7-iron': 'Eisen 7',
    '9-iron': 'Eisen 9',
    'Pitching wedge': 'PW',
    'Sand wedge': 'SW',
  };
  const rows = shots.map((shot, i) =>
    [
      i + 1,
      names[shot.club]!,
      comma(shot.carryM),
      comma(shot.totalM),
      comma(-shot.offlineM),
      comma(55 + (i % 5)),
      `${two(shot.day)}.05.2026`,
      clock(shot.minute),
    ].join(';'),
  );
  const head =
    'Nr.;Schläger;Flugweite;Gesamtweite;Seitenabweichung (links +);Ballgeschwindigkeit;Datum;Uhrzeit';
  const units = ';;[m];[m];[m];[m/s];;';
  return {
    file: 'ostertal-messkasten.csv',
    shots,
    text: `\ufeff${[head, units, ...rows].join('\r\n')}\r\n`,
    bad: 0,
  };
}

/** Tabs, lines of talk above the names, the direction as an angle, averages below the shots. */
function fennimore(): InventedTable {
  const shots = inventShots('fennimore', 300);
  const rows = shots.map((shot) =>
    [shot.club, fixed(shot.carryM), fixed(shot.directionDeg, 2), fixed(31.4), fixed(5200, 0)].join('\t'),
  );
  const talk = ['Fennimore field box', 'Session\tevening, dry', '', 'Name\tinvented player', ''];
  const head = ['Club', 'Carry [m]', 'Launch direction [deg, right +]', 'Apex [m]', 'Spin [rpm]'].join('\t');
  const below = ['Average\t121.7\t0.31\t30.2\t5321', 'Std. dev.\t38.0\t5.11\t4.4\t902'];
  return {
    file: 'fennimore-field-box.txt',
    shots,
    text: `${[...talk, head, ...rows, ...below].join('\n')}\n`,
    bad: 2,
  };
}

/** Everything in quotation marks, units beside the numbers, the side in a column of its own, lines inside a cell. */
function quillAndStave(): InventedTable {
  const shots = inventShots('quill', 300);
  const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;
  const rows = shots.map((shot, i) => {
    const note = i % 9 === 4 ? 'a "good" one,\nI think' : '';
    return [
      note,
      shot.club,
      `${comma(shot.carryM)} m`,
      `${comma(Math.abs(shot.offlineM))} m`,
      shot.offlineM < 0 ? 'left' : 'right',
    ]
      .map(quoted)
      .join(',');
  });
  const head = ['Remark', 'Club', 'Carry', 'Distance off line', 'Left / Right'].map(quoted).join(',');
  return { file: 'quill-and-stave.csv', shots, text: `${[head, ...rows].join('\n')}\n`, bad: 0 };
}

/** Names in one word, feet for the offline, the month first, gaps and a formula. */
function oldHarbour(): InventedTable {
  const shots = inventShots('harbour', 300);
  const names: Readonly<Record<string, string>> = {
    Driver: 'driver',
    '5-wood': 'wood_5',
    '7-iron': 'iron_7',
    '9-iron': 'iron_9',
    'Pitching wedge': 'pitching_wedge',
    'Sand wedge': 'sand_wedge',
  };
  const rows = shots.map((shot) => {
    const hour = Math.floor(shot.minute / 60);
    const time = `${((hour + 11) % 12) + 1}:${two(shot.minute % 60)} ${hour < 12 ? 'AM' : 'PM'}`;
    const date = `5/${shot.day}/2026 ${time}`;
    return [
      date,
      names[shot.club]!,
      'Full',
      fixed(shot.carryM / YARD_M, 2),
      fixed(shot.totalM / YARD_M, 2),
      fixed(shot.offlineM / FOOT_M, 1),
      'null',
    ].join(',');
  });
  const head = 'timestamp,club_name,swing_type,carry_distance_yds,total_distance_yds,side_distance_ft,smash';
  const bad = [
    '5/3/2026 9:10 AM,iron_7,Full,,,4.1,null',
    '5/3/2026 9:11 AM,iron_7,Full,=1+2,140.2,4.1,null',
    '5/3/2026 9:12 AM,iron_7,Full,137.1,140.2,N/A,null',
  ];
  return {
    file: 'old-harbour-studio.csv',
    shots,
    text: `${[head, ...rows, ...bad].join('\r\n')}\r\n`,
    bad: 3,
  };
}

export function inventTables(): readonly InventedTable[] {
  return [larkfield(), ostertal(), fennimore(), quillAndStave(), oldHarbour()];
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const folder = new URL('fixtures/', import.meta.url);
  mkdirSync(folder, { recursive: true });
  for (const { file, text } of inventTables()) writeFileSync(new URL(file, folder), text);
}
