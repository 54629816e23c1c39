/** How fast a putt may be to drop, by how far beside the middle of the hole it passes. */

import { captureSpeedMps } from '../../../core/green/capture-speed.ts';
import { HOLE_RADIUS_M } from '../../../core/putting/capture.ts';
import { curve, type PlotData } from './plot-data.ts';

const MM = 1000;

export function captureBySpeed(): PlotData<'fastest'> {
  const edge = HOLE_RADIUS_M * MM;
  return {
    x: { from: -60, to: 60, ticks: [-60, -40, -20, 0, 20, 40, 60] },
    y: { from: 0, to: 1.8, ticks: [0, 0.3, 0.6, 0.9, 1.2, 1.5, 1.8] },
    lines: [
      {
        label: 'fastest',
        points: curve(-edge, edge, 96, (offset) => captureSpeedMps(Math.abs(offset) / MM)),
      },
    ],
  };
}
