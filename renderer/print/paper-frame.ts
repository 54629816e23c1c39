/** A hole laid on paper, tee at the bottom: metres of its frame to millimetres of the sheet. */

import type { Spot, SpreadEllipse } from '../../core/plan/model.ts';
import type { Sheet } from '../map/sheet.ts';

export type PaperPoint = readonly [xMm: number, yMm: number];

export interface PaperFrame {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly mmPerM: number;
  /** Millimetres right of and below the drawing's top left corner. */
  readonly place: (spot: Spot) => PaperPoint;
}

/** Ground shown around the hole, metres. */
const BESIDE_M = 30;
const BEYOND_M = 16;

/** Fits the spots and some ground around them into `widthMm` by at most `tallestMm`; a short hole fills the width. */
export function paperFrame(
  sheet: Sheet,
  spots: readonly Spot[],
  widthMm: number,
  tallestMm: number,
): PaperFrame {
  const points = spots.map((spot) => sheet.toMap(spot));
  const west = Math.min(...points.map(([, lng]) => lng)) - BESIDE_M;
  const east = Math.max(...points.map(([, lng]) => lng)) + BESIDE_M;
  const north = Math.max(...points.map(([lat]) => lat)) + BEYOND_M;
  const south = Math.min(...points.map(([lat]) => lat)) - BEYOND_M;
  const mmPerM = Math.min(widthMm / (east - west), tallestMm / (north - south));
  // A long hole leaves room at the sides: more ground is shown there.
  const left = (west + east) / 2 - widthMm / mmPerM / 2;
  return {
    widthMm,
    heightMm: (north - south) * mmPerM,
    mmPerM,
    place: (spot) => {
      const [lat, lng] = sheet.toMap(spot);
      return [rounded((lng - left) * mmPerM), rounded((north - lat) * mmPerM)];
    },
  };
}

function rounded(mm: number): number {
  return Math.round(mm * 100) / 100;
}

/** SVG path through the spots. */
export function linePath(paper: PaperFrame, spots: readonly Spot[]): string {
  return spots.map((spot, i) => `${i === 0 ? 'M' : 'L'}${paper.place(spot).join(' ')}`).join('');
}

export function ellipsePath(paper: PaperFrame, ellipse: SpreadEllipse): string {
  const { centre, semiMajorM, semiMinorM, majorBearing } = ellipse;
  const spots = Array.from({ length: 48 }, (_, k): Spot => {
    const along = semiMajorM * Math.cos((k * Math.PI) / 24);
    const across = semiMinorM * Math.sin((k * Math.PI) / 24);
    return {
      x: centre.x + along * Math.sin(majorBearing) + across * Math.cos(majorBearing),
      y: centre.y + along * Math.cos(majorBearing) - across * Math.sin(majorBearing),
    };
  });
  return `${linePath(paper, spots)}Z`;
}
