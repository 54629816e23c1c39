/** Words and numbers of the room: swings, lies, sources, numbers with their intervals. */

import type { LieToChoose } from '../../core/player/in-play.ts';
import type { ClubKind, SpreadSource, Swing } from '../../core/player/model.ts';
import type { Estimate } from '../../core/player/posterior/intervals.ts';
import type { PlayerGroup } from '../../core/player/presets.ts';
import { countText, inUnits, type Units } from '../state/measures.ts';

const DEGREE = Math.PI / 180;

export const SWING_WORDS: readonly (readonly [Swing, string])[] = [
  ['full', 'full'],
  ['three-quarter', 'three-quarter'],
  ['half', 'half'],
  ['punch', 'punch'],
  ['part', 'part, by feel'],
  ['curved-left', 'curved left'],
  ['curved-right', 'curved right'],
];

export const KIND_WORDS: readonly (readonly [ClubKind, string])[] = [
  ['driver', 'Driver'],
  ['wood', 'Wood'],
  ['hybrid', 'Hybrid'],
  ['iron', 'Iron'],
  ['wedge', 'Wedge'],
  ['putter', 'Putter'],
];

export const LIE_WORDS: Readonly<Record<LieToChoose, string>> = {
  tee: 'tee',
  fairway: 'fairway',
  rough: 'rough',
  longRough: 'long rough',
  bunker: 'bunker',
  woods: 'under trees',
};

export const GROUP_WORDS: readonly (readonly [PlayerGroup, string])[] = [
  ['men', 'Man'],
  ['women', 'Woman'],
  ['senior-men', 'Senior, man'],
  ['senior-women', 'Senior, woman'],
  ['juniors', 'Junior'],
];

/** `7-iron`, `7-iron, punch`. */
export function clubSwing(club: string, swing: Swing): string {
  return swing === 'full' ? club : `${club}, ${swing}`;
}

/** Where a law comes from, short. */
export function sourceText(source: SpreadSource): string {
  switch (source.from) {
    case 'measured':
      return countText(source.shots, 'shot', 'shots');
    case 'stated':
      return 'as you state it';
    case 'preset':
      return 'preset';
    case 'derived':
      return `from the ${source.fromSwing} swing`;
  }
}

/** A number and the ends of its interval, ready to be set. */
export interface Shown {
  readonly mean: string;
  readonly low: string;
  readonly high: string;
}

export function lengthEstimate({ mean, low, high }: Estimate, units: Units, decimals = 0): Shown {
  const text = (metres: number): string => inUnits(metres, units).toFixed(decimals);
  return { mean: text(mean), low: text(low), high: text(high) };
}

/** Direction with its side: `1.2 R`. */
export function leanEstimate({ mean, low, high }: Estimate): Shown {
  const text = (radians: number): string => {
    const size = Math.abs(radians / DEGREE).toFixed(1);
    return Number(size) === 0 ? '0.0' : `${size}${radians > 0 ? ' R' : ' L'}`;
  };
  return { mean: text(mean), low: text(low), high: text(high) };
}

export function degreeEstimate({ mean, low, high }: Estimate, decimals = 1): Shown {
  const text = (radians: number): string => (radians / DEGREE).toFixed(decimals);
  return { mean: text(mean), low: text(low), high: text(high) };
}

export function shareEstimate({ mean, low, high }: Estimate): Shown {
  const text = (share: number): string => (100 * share).toFixed(0);
  return { mean: text(mean), low: text(low), high: text(high) };
}

export function plainEstimate({ mean, low, high }: Estimate, decimals = 2): Shown {
  const text = (value: number): string => {
    const size = Math.abs(value).toFixed(decimals);
    return value < 0 && Number(size) !== 0 ? `−${size}` : size;
  };
  return { mean: text(mean), low: text(low), high: text(high) };
}

/** `14:05` today, else with the date. */
export function timeText(ms: number, now = Date.now()): string {
  const at = new Date(ms);
  const sameDay = at.toDateString() === new Date(now).toDateString();
  const clock = at.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  return sameDay ? clock : `${at.toLocaleDateString('en-GB', { day: 'numeric', month: 'short' })}, ${clock}`;
}
