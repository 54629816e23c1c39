/** The ground round the holes: boundary, water, woods, long rough, paths. Metres east and north of the clubhouse. */

import type { Point } from './curves.ts';

/** The edge of the property. */
export const BOUNDARY: readonly Point[] = [
  [-604, 70],
  [-622, 180],
  [-606, 280],
  [-572, 360],
  [-564, 430],
  [-590, 510],
  [-612, 610],
  [-586, 715],
  [-500, 786],
  [-400, 812],
  [-270, 790],
  [-150, 796],
  [-40, 752],
  [30, 742],
  [130, 768],
  [280, 782],
  [430, 762],
  [560, 724],
  [640, 640],
  [662, 520],
  [650, 380],
  [622, 260],
  [628, 140],
  [604, 20],
  [540, -42],
  [440, -40],
  [330, -22],
  [230, -62],
  [150, -112],
  [60, -112],
  [-60, -112],
  [-160, -66],
  [-220, 8],
  [-330, 2],
  [-440, 20],
  [-530, 50],
];

/** Ground of the neighbours, drawn where it comes closest to play: along holes 4, 12 and 18. */
export const OUT_OF_BOUNDS: readonly { readonly name: string; readonly ring: readonly Point[] }[] = [
  {
    name: 'Barley field beside hole 4',
    ring: [
      [-606, 280],
      [-572, 360],
      [-564, 430],
      [-590, 510],
      [-612, 575],
      [-650, 580],
      [-668, 430],
      [-655, 300],
    ],
  },
  {
    name: 'Lane behind the hedge of hole 12',
    ring: [
      [130, 768],
      [280, 782],
      [430, 762],
      [560, 724],
      [585, 748],
      [440, 798],
      [285, 818],
      [125, 800],
    ],
  },
  {
    name: 'Allotments beside hole 18',
    ring: [
      [540, -42],
      [440, -40],
      [330, -22],
      [230, -62],
      [190, -88],
      [215, -118],
      [330, -82],
      [440, -92],
      [560, -90],
    ],
  },
];

export interface StreamDesign {
  readonly name: string;
  /** [x, y, width of the penalty area]. */
  readonly course: readonly (readonly [number, number, number])[];
  /** Reaches between control points where the stream is marked red; the rest is yellow. */
  readonly redReaches: readonly (readonly [number, number])[];
}

export const STREAMS: readonly StreamDesign[] = [
  {
    name: 'West brook',
    course: [
      [-268, 806, 6],
      [-254, 760, 6],
      [-262, 712, 7],
      [-246, 668, 6],
      [-262, 628, 7],
      [-292, 592, 7],
      [-338, 566, 8],
      [-366, 526, 8],
      [-372, 482, 9],
      [-360, 440, 8],
      [-366, 402, 8],
      [-342, 366, 8],
      [-318, 338, 8],
      [-312, 302, 8],
      [-326, 274, 8],
      [-352, 262, 8],
      [-372, 236, 8],
      [-360, 196, 8],
      [-334, 158, 8],
      [-318, 122, 8],
      [-312, 88, 9],
      [-322, 52, 9],
      [-338, 10, 9],
      [-334, -14, 9],
    ],
    redReaches: [
      [6, 13],
      [16, 19],
    ],
  },
  {
    name: 'East brook',
    course: [
      [474, 770, 5],
      [458, 730, 6],
      [464, 680, 7],
      [446, 634, 6],
      [466, 590, 6],
      [462, 548, 7],
      [438, 506, 7],
      [414, 466, 8],
      [378, 450, 8],
      [346, 440, 9],
      [326, 432, 9],
    ],
    redReaches: [[3, 6]],
  },
  {
    name: 'East brook, lower reach',
    course: [
      [322, 404, 8],
      [338, 372, 8],
      [330, 336, 8],
      [308, 296, 8],
      [302, 258, 8],
      [272, 224, 8],
      [240, 190, 8],
      [232, 146, 8],
      [212, 104, 8],
      [204, 62, 9],
      [180, 30, 10],
    ],
    redReaches: [
      [0, 3],
      [5, 10],
    ],
  },
];

export interface PondDesign {
  readonly name: string;
  readonly hole: number;
  readonly red: boolean;
  /** [station, offset] along the hole; negative stations count back from the green's middle. */
  readonly outline: readonly (readonly [number, number])[];
}

export const PONDS: readonly PondDesign[] = [
  {
    name: 'Alder pond',
    hole: 16,
    red: true,
    outline: [
      [128, -30],
      [134, -16],
      [148, -9],
      [164, -8],
      [178, -12],
      [190, -21],
      [196, -36],
      [190, -50],
      [172, -52],
      [160, -62],
      [142, -60],
      [130, -46],
    ],
  },
  {
    name: 'Mill pond',
    hole: 18,
    red: false,
    outline: [
      [-28, 6],
      [-31, -6],
      [-42, -13],
      [-56, -12],
      [-68, -4],
      [-78, 10],
      [-90, 22],
      [-94, 42],
      [-82, 60],
      [-62, 62],
      [-48, 50],
      [-38, 36],
      [-28, 22],
    ],
  },
];

export interface WoodDesign {
  readonly name: string;
  /** [x, y, reach]: the wood fills the band around this spine that keeps its distance from play. */
  readonly spine: readonly (readonly [number, number, number])[];
  /** Least distance from fairways, greens, tees and bunkers, metres. */
  readonly clearanceM: number;
  readonly topM: number;
  readonly baseM: number;
  readonly densityPerM: number;
}

export const WOODS: readonly WoodDesign[] = [
  {
    name: 'Gate wood',
    spine: [
      [-96, 330, 30],
      [-104, 240, 28],
      [-84, 150, 24],
    ],
    clearanceM: 14,
    topM: 14,
    baseM: 2,
    densityPerM: 0.14,
  },
  {
    name: 'Middle wood',
    spine: [
      [20, 150, 26],
      [28, 240, 34],
      [52, 330, 36],
      [70, 400, 28],
    ],
    clearanceM: 15,
    topM: 16,
    baseM: 2.5,
    densityPerM: 0.13,
  },
  {
    name: 'Crook wood',
    spine: [
      [-120, 520, 34],
      [-150, 600, 40],
      [-170, 650, 30],
    ],
    clearanceM: 15,
    topM: 15,
    baseM: 2,
    densityPerM: 0.15,
  },
  {
    name: 'North wood',
    spine: [
      [-20, 560, 30],
      [0, 640, 36],
      [-10, 700, 34],
    ],
    clearanceM: 18,
    topM: 15,
    baseM: 2,
    densityPerM: 0.15,
  },
  {
    name: 'Saucer wood',
    spine: [
      [-520, 740, 40],
      [-570, 680, 36],
    ],
    clearanceM: 16,
    topM: 13,
    baseM: 1.5,
    densityPerM: 0.16,
  },
  {
    name: 'Hedgerow spinney',
    spine: [
      [-462, 560, 24],
      [-458, 480, 28],
      [-448, 400, 28],
      [-448, 330, 30],
    ],
    clearanceM: 15,
    topM: 13,
    baseM: 2,
    densityPerM: 0.12,
  },
  {
    name: 'Inner wood',
    spine: [
      [-420, 240, 44],
      [-450, 170, 30],
    ],
    clearanceM: 18,
    topM: 17,
    baseM: 3,
    densityPerM: 0.11,
  },
  {
    name: 'Brook carr',
    spine: [
      [-300, 500, 34],
      [-276, 430, 44],
      [-250, 360, 34],
      [-250, 270, 38],
    ],
    clearanceM: 18,
    topM: 14,
    baseM: 1.5,
    densityPerM: 0.18,
  },
  {
    name: 'South spinney',
    spine: [
      [-220, 170, 20],
      [-206, 60, 22],
    ],
    clearanceM: 14,
    topM: 12,
    baseM: 2,
    densityPerM: 0.14,
  },
  {
    name: 'Range wood',
    spine: [
      [150, 130, 40],
      [170, 220, 44],
      [190, 310, 36],
    ],
    clearanceM: 18,
    topM: 16,
    baseM: 2.5,
    densityPerM: 0.13,
  },
  {
    name: 'Alder wood',
    spine: [
      [184, 500, 30],
      [206, 440, 32],
      [224, 380, 30],
      [236, 345, 18],
    ],
    clearanceM: 9,
    topM: 15,
    baseM: 1.5,
    densityPerM: 0.2,
  },
  {
    name: 'Thimble wood',
    spine: [
      [140, 560, 26],
      [130, 640, 26],
    ],
    clearanceM: 18,
    topM: 13,
    baseM: 2,
    densityPerM: 0.15,
  },
  {
    name: 'Orchard',
    spine: [
      [300, 600, 36],
      [300, 520, 30],
      [310, 660, 26],
      [400, 620, 34],
    ],
    clearanceM: 16,
    topM: 9,
    baseM: 1.2,
    densityPerM: 0.1,
  },
  {
    name: 'Windbreak',
    spine: [
      [512, 560, 26],
      [520, 480, 30],
      [524, 400, 28],
      [490, 330, 28],
    ],
    clearanceM: 15,
    topM: 17,
    baseM: 3,
    densityPerM: 0.12,
  },
  {
    name: 'East edge',
    spine: [
      [645, 560, 26],
      [640, 440, 24],
      [620, 320, 22],
      [610, 220, 26],
    ],
    clearanceM: 18,
    topM: 14,
    baseM: 2,
    densityPerM: 0.15,
  },
  {
    name: 'Brow wood',
    spine: [
      [440, 330, 20],
      [470, 400, 26],
    ],
    clearanceM: 16,
    topM: 13,
    baseM: 2,
    densityPerM: 0.14,
  },
  {
    name: 'Ford wood',
    spine: [
      [470, 170, 26],
      [420, 230, 24],
    ],
    clearanceM: 15,
    topM: 14,
    baseM: 2,
    densityPerM: 0.14,
  },
  {
    name: 'Allotment spinney',
    spine: [
      [450, 76, 20],
      [380, 100, 22],
      [300, 110, 30],
      [270, 170, 26],
    ],
    clearanceM: 14,
    topM: 12,
    baseM: 1.5,
    densityPerM: 0.16,
  },
];

/** Bands of long grass, same rules as for woods: [x, y, reach]. */
export const LONG_ROUGH: readonly {
  readonly spine: readonly (readonly [number, number, number])[];
  readonly clearanceM: number;
}[] = [
  {
    spine: [
      [-96, 420, 30],
      [-108, 240, 44],
      [-84, 90, 30],
    ],
    clearanceM: 11,
  },
  {
    spine: [
      [20, 120, 34],
      [30, 250, 48],
      [64, 400, 44],
    ],
    clearanceM: 11,
  },
  {
    spine: [
      [-112, 480, 40],
      [-150, 600, 54],
      [-220, 650, 34],
    ],
    clearanceM: 12,
  },
  {
    spine: [
      [-20, 500, 34],
      [10, 640, 50],
      [-30, 730, 44],
      [-140, 770, 26],
    ],
    clearanceM: 13,
  },
  {
    spine: [
      [-480, 780, 30],
      [-580, 700, 46],
      [-590, 600, 34],
    ],
    clearanceM: 13,
  },
  {
    spine: [
      [-462, 580, 30],
      [-458, 480, 40],
      [-440, 340, 46],
      [-430, 220, 60],
    ],
    clearanceM: 12,
  },
  {
    spine: [
      [-320, 500, 44],
      [-270, 420, 56],
      [-240, 250, 44],
      [-215, 120, 30],
    ],
    clearanceM: 13,
  },
  {
    spine: [
      [-560, 80, 34],
      [-440, 50, 24],
      [-360, 30, 26],
    ],
    clearanceM: 13,
  },
  {
    spine: [
      [150, 110, 50],
      [175, 230, 60],
      [200, 330, 46],
    ],
    clearanceM: 14,
  },
  {
    spine: [
      [180, 520, 40],
      [220, 400, 44],
      [246, 340, 24],
    ],
    clearanceM: 8,
  },
  {
    spine: [
      [150, 540, 34],
      [140, 650, 40],
    ],
    clearanceM: 14,
  },
  {
    spine: [
      [280, 660, 30],
      [310, 560, 50],
      [320, 480, 34],
    ],
    clearanceM: 13,
  },
  {
    spine: [
      [420, 630, 50],
      [430, 560, 30],
    ],
    clearanceM: 13,
  },
  {
    spine: [
      [510, 580, 34],
      [520, 460, 46],
      [490, 330, 44],
      [450, 340, 30],
    ],
    clearanceM: 12,
  },
  {
    spine: [
      [648, 600, 30],
      [645, 430, 32],
      [612, 220, 36],
      [606, 60, 40],
    ],
    clearanceM: 14,
  },
  {
    spine: [
      [440, 220, 40],
      [490, 160, 30],
    ],
    clearanceM: 12,
  },
  {
    spine: [
      [470, 74, 26],
      [360, 100, 34],
      [280, 140, 44],
      [230, 240, 30],
    ],
    clearanceM: 12,
  },
  {
    spine: [
      [200, 740, 26],
      [340, 752, 24],
      [480, 720, 26],
    ],
    clearanceM: 12,
  },
  {
    spine: [
      [250, -50, 22],
      [350, -20, 22],
      [480, -30, 24],
    ],
    clearanceM: 12,
  },
];

/** Buggy paths, each a line of control points. */
export const PATHS: readonly (readonly Point[])[] = [
  [
    [6, -22],
    [4, 20],
    [-4, 60],
    [2, 110],
    [-8, 180],
    [-10, 250],
    [6, 310],
    [22, 370],
    [26, 420],
    [-4, 446],
    [-50, 440],
    [-96, 452],
    [-100, 500],
  ],
  [
    [-100, 500],
    [-96, 560],
    [-110, 622],
    [-150, 664],
    [-210, 684],
    [-250, 680],
    [-310, 680],
    [-362, 690],
    [-384, 722],
    [-404, 748],
  ],
  [
    [-404, 748],
    [-440, 730],
    [-476, 684],
    [-478, 640],
    [-500, 610],
    [-520, 600],
    [-524, 560],
    [-488, 500],
    [-474, 430],
    [-484, 350],
    [-520, 270],
    [-526, 220],
    [-544, 190],
  ],
  [
    [-544, 190],
    [-500, 164],
    [-440, 132],
    [-390, 118],
    [-330, 130],
    [-296, 128],
    [-276, 136],
    [-272, 168],
    [-298, 210],
    [-306, 250],
    [-298, 290],
    [-318, 326],
    [-356, 336],
    [-380, 332],
  ],
  [
    [-380, 332],
    [-384, 380],
    [-386, 430],
  ],
  [
    [-396, 560],
    [-386, 610],
    [-374, 634],
    [-344, 626],
    [-300, 612],
    [-252, 552],
    [-226, 480],
    [-204, 400],
    [-194, 330],
    [-160, 306],
    [-118, 290],
    [-110, 240],
  ],
  [
    [-110, 240],
    [-118, 170],
    [-118, 110],
    [-80, 50],
    [-40, -10],
    [6, -22],
  ],
  [
    [6, -22],
    [44, 24],
    [54, 70],
    [58, 140],
    [66, 200],
    [76, 260],
    [104, 330],
    [116, 400],
    [126, 446],
    [102, 462],
    [98, 500],
  ],
  [
    [98, 500],
    [104, 560],
    [96, 620],
    [66, 640],
    [44, 660],
    [70, 686],
    [120, 706],
  ],
  [
    [120, 706],
    [190, 728],
    [262, 750],
    [350, 738],
    [440, 712],
    [500, 680],
    [552, 636],
    [560, 596],
    [556, 550],
    [560, 480],
    [564, 400],
    [540, 320],
    [520, 262],
    [522, 224],
    [496, 196],
  ],
  [
    [496, 196],
    [440, 268],
    [396, 310],
    [412, 350],
    [400, 400],
    [394, 440],
    [342, 500],
    [330, 540],
    [268, 576],
    [222, 596],
    [226, 560],
    [256, 530],
  ],
  [
    [256, 530],
    [268, 490],
    [256, 440],
    [252, 390],
    [264, 350],
    [240, 326],
    [270, 318],
    [310, 266],
    [350, 240],
    [420, 178],
    [500, 138],
    [556, 80],
    [534, 30],
    [480, 44],
  ],
  [
    [480, 44],
    [400, 60],
    [320, 66],
    [250, 60],
    [214, 72],
    [160, 62],
    [110, 0],
    [60, -30],
    [6, -22],
  ],
];
