/** Areas, bearings and places as people read them. */

import type { Words } from '../../core/words/words.ts';
import type { LonLat } from '../../core/course/model.ts';
import { grouped, type Units } from '../state/measures.ts';

const M_PER_YARD = 0.9144;
const NARROW_GAP = '\u202f';

/** `1 240 m²` or square yards; tenths below ten. */
export function areaText(areaM2: number, units: Units, { drawing, figures }: Words): string {
  const area = units === 'yards' ? areaM2 / M_PER_YARD ** 2 : areaM2;
  const unit = units === 'yards' ? drawing.squareYards : 'm²';
  return `${area < 10 ? figures.fixed(area, 1) : grouped(Math.round(area))}${NARROW_GAP}${unit}`;
}

/** `045°`, clockwise from north. */
export function bearingText(bearing: number): string {
  const degrees = Math.round((bearing * 180) / Math.PI) % 360;
  return `${String(degrees).padStart(3, '0')}°`;
}

/** `52.123456, 4.123456`: latitude first, as maps for people write it. */
export function placeText([lon, lat]: LonLat): string {
  return `${lat.toFixed(6)}, ${lon.toFixed(6)}`;
}
