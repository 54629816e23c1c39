/** Drag and lift coefficients by spin. */

import { dragCoefficient, liftCoefficient } from '../../../core/flight/ball-flight.ts';
import { curve, type PlotData } from './plot-data.ts';

/** The ends of what was measured: spin ratio and Reynolds numbers (Smits and Smith 1994). */
const SLOW = 70_000;
const FAST = 210_000;

export function dragAndLift(): PlotData<'lift' | 'dragFast' | 'dragSlow'> {
  return {
    x: { from: 0.08, to: 0.2, ticks: [0.08, 0.1, 0.12, 0.14, 0.16, 0.18, 0.2] },
    y: { from: 0.15, to: 0.35, ticks: [0.15, 0.2, 0.25, 0.3, 0.35] },
    lines: [
      { label: 'lift', points: curve(0.08, 0.2, 48, liftCoefficient) },
      { label: 'dragFast', points: curve(0.08, 0.2, 48, (spin) => dragCoefficient(spin, FAST)) },
      { label: 'dragSlow', points: curve(0.08, 0.2, 48, (spin) => dragCoefficient(spin, SLOW)) },
    ],
  };
}
