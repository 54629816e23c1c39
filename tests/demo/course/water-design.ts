/** Where the brooks run and the ponds lie. Metres east and north of the clubhouse, or along a hole. */

export interface StreamDesign {
  readonly name: string;
  /** [x, y, width of the penalty area]. */
  readonly course: readonly (readonly [number, number, number])[];
  /** Reaches between control points where the stream is marked red; the rest is yellow. */
  readonly redReaches: readonly (readonly [number, number])[];
}

export interface PondDesign {
  readonly name: string;
  readonly hole: number;
  readonly red: boolean;
  /** [station, offset] along the hole; negative stations count back from the green's middle. */
  readonly outline: readonly (readonly [number, number])[];
}

// biome-ignore format: control points read best as rows
export const STREAMS: readonly StreamDesign[] = [
  {
    name: 'West brook',
    course: [
      [-268, 806, 6], [-254, 760, 6], [-262, 712, 7], [-246, 668, 6], [-262, 628, 7], [-292, 592, 7], [-338, 566, 8],
      [-366, 526, 8], [-372, 482, 9], [-360, 440, 8], [-366, 402, 8], [-342, 366, 8], [-318, 338, 8], [-312, 302, 8],
      [-326, 274, 8], [-352, 262, 8], [-372, 236, 8], [-360, 196, 8], [-334, 158, 8], [-318, 122, 8], [-312, 88, 9],
      [-322, 52, 9], [-338, 10, 9], [-334, -14, 9],
    ],
    redReaches: [[6, 13], [16, 19]],
  },
  {
    name: 'East brook',
    course: [
      [474, 770, 5], [458, 730, 6], [464, 680, 7], [446, 634, 6], [466, 590, 6], [462, 548, 7], [438, 506, 7],
      [414, 466, 8], [378, 450, 8], [346, 440, 9], [326, 432, 9],
    ],
    redReaches: [[3, 6]],
  },
  {
    name: 'East brook, lower reach',
    course: [
      [322, 404, 8], [338, 372, 8], [330, 336, 8], [308, 296, 8], [302, 258, 8], [272, 224, 8], [240, 190, 8],
      [232, 146, 8], [212, 104, 8], [204, 62, 9], [184, 34, 10], [170, 16, 10], [156, 6, 10],
    ],
    redReaches: [[0, 3], [5, 12]],
  },
];

// biome-ignore format: control points read best as rows
export const PONDS: readonly PondDesign[] = [
  {
    name: 'Alder pond',
    hole: 16,
    red: true,
    outline: [
      [143, -32], [147, -18], [156, -9], [169, -9], [185, -14], [197, -18], [205, -27], [207, -41], [200, -54],
      [188, -53], [178, -62], [166, -74], [154, -70], [150, -56], [155, -46],
    ],
  },
  {
    name: 'Mill pond',
    hole: 18,
    red: false,
    outline: [
      [-28, 6], [-31, -6], [-42, -13], [-56, -12], [-68, -4], [-78, 10], [-90, 22], [-94, 42], [-82, 60],
      [-62, 62], [-48, 50], [-38, 36], [-28, 22],
    ],
  },
];
