/** Words and numbers of the room: swings, lies, sources, numbers with their intervals. */

import type { LieToChoose } from '../../core/player/in-play.ts';
import { type ClubKind, type SpreadSource, type Swing, SWINGS } from '../../core/player/model.ts';
import type { Estimate } from '../../core/player/posterior/intervals.ts';
import type { PlayerGroup } from '../../core/player/presets.ts';
import type { Words } from '../../core/words/words.ts';
import { inUnits, type Units } from '../state/measures.ts';

const DEGREE = Math.PI / 180;

const KINDS: readonly ClubKind[] = ['driver', 'wood', 'hybrid', 'iron', 'wedge', 'putter'];
const GROUPS: readonly PlayerGroup[] = ['men', 'women', 'senior-men', 'senior-women', 'juniors'];

/** Choices to offer: what the file calls it, and its words. */
export type Choices<T> = readonly (readonly [T, string])[];

export function swingChoices({ golf, player }: Words): Choices<Swing> {
  return SWINGS.map((swing) => [swing, swing === 'part' ? player.partByFeel : golf.shortSwings[swing]]);
}

export function kindChoices({ player }: Words): Choices<ClubKind> {
  return KINDS.map((kind) => [kind, player.kinds[kind]]);
}

export function groupChoices({ player }: Words): Choices<PlayerGroup> {
  return GROUPS.map((group) => [group, player.groups[group]]);
}

/** A lie as a shot's record names it; one that nobody knows comes back as it is. */
export function lieName(lie: string, { player }: Words): string {
  return Object.hasOwn(player.lies, lie) ? player.lies[lie as LieToChoose | 'range'] : lie;
}

/** `7-iron`, `7-iron, punch`. */
export function clubSwing(club: string, swing: Swing, { golf }: Words): string {
  return swing === 'full' ? club : `${club}, ${golf.shortSwings[swing]}`;
}

/** Where a law comes from, short. */
export function sourceText(source: SpreadSource, { golf, player }: Words): string {
  switch (source.from) {
    case 'measured':
      return player.source.shots({ count: source.shots });
    case 'stated':
      return player.source.stated;
    case 'preset':
      return player.source.preset;
    case 'derived':
      return player.source.derived({ swing: golf.shortSwings[source.fromSwing] });
  }
}

/** A number and the ends of its interval, ready to be set. */
export interface Shown {
  readonly mean: string;
  readonly low: string;
  readonly high: string;
}

function shown({ mean, low, high }: Estimate, text: (value: number) => string): Shown {
  return { mean: text(mean), low: text(low), high: text(high) };
}

export function lengthEstimate(estimate: Estimate, units: Units, { figures }: Words, decimals = 0): Shown {
  return shown(estimate, (metres) => figures.fixed(inUnits(metres, units), decimals));
}

/** Direction with its side: `1.2 R`. */
export function leanEstimate(estimate: Estimate, { figures }: Words): Shown {
  return shown(estimate, (radians) => {
    const degrees = Math.abs(radians / DEGREE);
    const size = figures.fixed(degrees, 1);
    return Number(degrees.toFixed(1)) === 0 ? size : `${size}${radians > 0 ? ' R' : ' L'}`;
  });
}

export function degreeEstimate(estimate: Estimate, { figures }: Words, decimals = 1): Shown {
  return shown(estimate, (radians) => figures.fixed(radians / DEGREE, decimals));
}

export function shareEstimate(estimate: Estimate, { figures }: Words): Shown {
  return shown(estimate, (share) => figures.fixed(100 * share, 0));
}

export function plainEstimate(estimate: Estimate, { figures }: Words, decimals = 2): Shown {
  return shown(estimate, (value) =>
    figures.fixed(Number(value.toFixed(decimals)) === 0 ? 0 : value, decimals),
  );
}

/** `14:05` today, else with the date. */
export function timeText(ms: number, { figures }: Words, now = Date.now()): string {
  const isToday = new Date(ms).toDateString() === new Date(now).toDateString();
  return figures.moment(ms, isToday ? 'clock' : 'day');
}
