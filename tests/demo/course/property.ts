/** The edge of the property and the neighbours' ground. Metres east and north of the clubhouse. */

import type { Point } from './curves.ts';

/** The edge of the property. */
// biome-ignore format: control points read best as rows
export const BOUNDARY: readonly Point[] = [
  [-604, 70], [-622, 180], [-606, 280], [-572, 360], [-564, 430], [-590, 510], [-612, 610], [-586, 715], [-500, 786],
  [-400, 812], [-270, 790], [-150, 796], [-40, 752], [30, 742], [130, 768], [280, 782], [430, 762], [560, 724],
  [640, 640], [662, 520], [650, 380], [622, 260], [628, 140], [604, 20], [540, -42], [440, -40], [330, -22],
  [230, -62], [150, -112], [60, -112], [-60, -112], [-160, -66], [-220, 8], [-330, 2], [-440, 20], [-530, 50],
];

/** Ground of the neighbours, drawn where it comes closest to play: along holes 4, 12 and 18. */
// biome-ignore format: control points read best as rows
export const OUT_OF_BOUNDS: readonly { readonly name: string; readonly ring: readonly Point[] }[] = [
  {
    name: 'Barley field beside hole 4',
    ring: [
      [-606, 280], [-572, 360], [-564, 430], [-590, 510], [-612, 575], [-650, 580], [-668, 430], [-655, 300],
    ],
  },
  {
    name: 'Lane behind the hedge of hole 12',
    ring: [
      [130, 768], [280, 782], [430, 762], [560, 724], [585, 748], [440, 798], [285, 818], [125, 800],
    ],
  },
  {
    name: 'Allotments beside hole 18',
    ring: [
      [540, -42], [440, -40], [330, -22], [230, -62], [190, -88], [215, -118], [330, -82], [440, -92],
      [560, -90],
    ],
  },
];
