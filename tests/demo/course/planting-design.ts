/** Where woods and long grass may grow. Metres east and north of the clubhouse. */

/** [x, y, reach]: what grows fills the band around this spine that keeps its distance from play. */
export type Spine = readonly (readonly [number, number, number])[];

export interface WoodDesign {
  readonly name: string;
  readonly spine: Spine;
  /** Least distance from fairways, greens, tees and bunkers, metres. */
  readonly clearanceM: number;
  readonly topM: number;
  readonly baseM: number;
  readonly densityPerM: number;
}

function wood(
  name: string,
  clearanceM: number,
  topM: number,
  baseM: number,
  densityPerM: number,
  spine: Spine,
): WoodDesign {
  return { name, spine, clearanceM, topM, baseM, densityPerM };
}

/** Name, clearance, canopy top and base in metres, density in 1/m, spine. */
// biome-ignore format: control points read best as rows
export const WOODS: readonly WoodDesign[] = [
  wood('Gate wood', 13, 14, 2, 0.14, [[-92, 372, 22], [-100, 300, 34], [-112, 230, 36], [-100, 168, 34], [-78, 120, 18]]),
  wood('Middle wood', 14, 16, 2.5, 0.13, [[22, 128, 20], [22, 190, 34], [34, 270, 44], [52, 340, 46], [66, 396, 30]]),
  wood('Club grove', 15, 12, 2, 0.12, [[-20, -98, 16], [30, -96, 20]]),
  wood('Crook wood', 13, 25, 1.5, 0.2, [[-116, 396, 24], [-122, 440, 36], [-124, 500, 42], [-144, 560, 46], [-164, 620, 48], [-190, 660, 26]]),
  wood('Crook belt', 16, 13, 1.5, 0.15, [[-340, 790, 22], [-240, 778, 22], [-150, 772, 30], [-80, 742, 34]]),
  wood('North wood', 17, 15, 2, 0.15, [[-28, 520, 24], [-6, 580, 42], [6, 650, 50], [-6, 715, 40]]),
  wood('Saucer wood', 15, 13, 1.5, 0.16, [[-500, 764, 30], [-550, 722, 44], [-590, 660, 30]]),
  wood('Saucer copse', 13, 11, 1.5, 0.15, [[-436, 676, 17], [-418, 664, 15]]),
  wood('Field oaks', 15, 12, 2.5, 0.12, [[-580, 540, 16], [-578, 488, 12]]),
  wood('Hedgerow spinney', 14, 13, 2, 0.12, [[-470, 586, 20], [-460, 500, 34], [-452, 420, 38], [-450, 340, 40], [-470, 292, 24]]),
  wood('Inner wood', 16, 17, 3, 0.11, [[-418, 268, 34], [-428, 210, 44], [-462, 176, 30], [-490, 210, 20]]),
  wood('Corner copse', 16, 12, 2, 0.14, [[-590, 108, 22], [-560, 88, 18]]),
  wood('South hedge', 16, 9, 1, 0.18, [[-500, 56, 15], [-420, 30, 16], [-370, 20, 14]]),
  wood('Brook carr', 17, 14, 1.5, 0.18, [[-318, 516, 26], [-292, 450, 46], [-262, 380, 44], [-246, 300, 44], [-238, 236, 30]]),
  wood('South spinney', 13, 12, 2, 0.14, [[-222, 186, 24], [-212, 120, 26], [-206, 50, 30]]),
  wood('Range wood', 17, 16, 2.5, 0.13, [[138, 96, 26], [152, 150, 44], [166, 230, 52], [196, 310, 38]]),
  wood('Alder wood', 7.5, 15, 1.5, 0.2, [[184, 512, 30], [204, 450, 34], [222, 390, 31], [232, 348, 17]]),
  wood('Thimble wood', 17, 13, 2, 0.15, [[150, 536, 24], [140, 600, 34], [126, 656, 26]]),
  wood('Orchard', 15, 9, 1.2, 0.1, [[300, 560, 30], [296, 500, 26], [330, 480, 16]]),
  wood('Upper orchard', 15, 9, 1.2, 0.1, [[310, 668, 22], [370, 640, 36], [430, 616, 36], [410, 560, 26]]),
  wood('Lane hedge', 18, 9, 0.8, 0.2, [[150, 770, 10], [280, 778, 10], [430, 758, 10], [550, 722, 10]]),
  wood('Corner wood', 18, 14, 2, 0.15, [[600, 664, 30], [636, 620, 26]]),
  wood('Windbreak', 14, 17, 3, 0.12, [[508, 570, 26], [516, 500, 40], [520, 420, 40], [500, 350, 36], [470, 300, 20]]),
  wood('East edge', 17, 14, 2, 0.15, [[648, 560, 28], [646, 440, 26], [626, 330, 26], [612, 240, 26]]),
  wood('Brow copse', 15, 13, 2, 0.14, [[462, 348, 24], [456, 400, 22]]),
  wood('South-east wood', 17, 14, 2, 0.15, [[606, 160, 24], [600, 90, 34], [580, 10, 34]]),
  wood('Ford wood', 14, 14, 2, 0.14, [[488, 160, 22], [452, 196, 30], [410, 226, 28], [372, 236, 16]]),
  wood('Allotment spinney', 13, 12, 1.5, 0.16, [[470, 72, 22], [410, 88, 30], [340, 104, 32], [286, 128, 34], [262, 168, 26]]),
  wood('Allotment hedge', 15, 8, 0.8, 0.2, [[500, -34, 12], [420, -30, 12], [330, -16, 12], [270, -34, 12]]),
];

/** Bands of long grass, by the same rules. */
// biome-ignore format: control points read best as rows
export const LONG_ROUGH: readonly { readonly clearanceM: number; readonly spine: Spine }[] = [
  { clearanceM: 11, spine: [[-96, 420, 30], [-108, 240, 44], [-84, 90, 30]] },
  { clearanceM: 11, spine: [[20, 120, 34], [30, 250, 48], [64, 400, 44]] },
  { clearanceM: 12, spine: [[-112, 480, 40], [-150, 600, 54], [-220, 650, 34]] },
  { clearanceM: 13, spine: [[-20, 500, 34], [10, 640, 50], [-30, 730, 44], [-140, 770, 26]] },
  { clearanceM: 13, spine: [[-480, 780, 30], [-580, 700, 46], [-590, 600, 34]] },
  { clearanceM: 12, spine: [[-462, 580, 30], [-458, 480, 40], [-440, 340, 46], [-430, 220, 60]] },
  { clearanceM: 13, spine: [[-320, 500, 44], [-270, 420, 56], [-240, 250, 44], [-215, 120, 30]] },
  { clearanceM: 13, spine: [[-560, 80, 34], [-440, 50, 24], [-360, 30, 26]] },
  { clearanceM: 14, spine: [[150, 110, 50], [175, 230, 60], [200, 330, 46]] },
  { clearanceM: 8, spine: [[180, 520, 40], [220, 400, 44], [246, 340, 24]] },
  { clearanceM: 14, spine: [[150, 540, 34], [140, 650, 40]] },
  { clearanceM: 13, spine: [[280, 660, 30], [310, 560, 50], [320, 480, 34]] },
  { clearanceM: 13, spine: [[420, 630, 50], [430, 560, 30]] },
  { clearanceM: 12, spine: [[510, 580, 34], [520, 460, 46], [490, 330, 44], [450, 340, 30]] },
  { clearanceM: 14, spine: [[648, 600, 30], [645, 430, 32], [612, 220, 36], [606, 60, 40]] },
  { clearanceM: 12, spine: [[440, 220, 40], [490, 160, 30]] },
  { clearanceM: 12, spine: [[470, 74, 26], [360, 100, 34], [280, 140, 44], [230, 240, 30]] },
  { clearanceM: 12, spine: [[200, 740, 26], [340, 752, 24], [480, 720, 26]] },
  { clearanceM: 12, spine: [[250, -50, 22], [350, -20, 22], [480, -30, 24]] },
];
