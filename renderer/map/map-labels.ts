/** The distances written on the map for the hole on screen. */

import type { Course } from '../../core/course/model.ts';
import type { Spot } from '../../core/plan/model.ts';
import type { AppState } from '../state/app-state.ts';
import { noAimWords } from '../panels/shot-words.ts';
import { lengthNumber, lengthText, toHoleText } from '../state/measures.ts';
import { wordsOf } from '../state/use-words.ts';
import { currentPlan } from '../state/selectors.ts';
import { carriesAlong } from './carries.ts';
import type { MapLabel } from './label-painter.ts';
import { aimReach, ballSpot } from './moves.ts';
import { type DrawnShot, isComparing } from './shot-scene.ts';
import type { Sheet } from './sheet.ts';

/** Hazards this much beyond the carry are still told, metres: a long roll or a good strike may reach them. */
const BEYOND_CARRY_M = 45;

export function mapLabels(
  state: AppState,
  sheet: Sheet,
  shots: readonly DrawnShot[],
  pin: Spot | null,
): readonly MapLabel[] {
  const { frame } = sheet;
  const course = state.course?.value;
  const ball = ballSpot(state);
  const main = shots.find((shot) => shot.part === 'main');
  if (course === undefined || ball === null || main === undefined) return [];
  const { units } = state.settings;
  const words = wordsOf(state);
  const labels: MapLabel[] = [];
  const comparing = isComparing(state);
  for (const shot of shots) {
    if (shot.part === 'ghost' || shot.option === null) continue;
    if (shot.option.kind === 'relief') {
      const at = frame.toSpot(shot.aim);
      labels.push({ at, text: words.map.dropHere, shift: [10, 0], tone: 'main', dot: false });
      continue;
    }
    const aim = frame.toSpot(shot.aim);
    const metres = shot.option.clubKind === 'putter' ? null : distance(ball, aim);
    if (metres === null) continue;
    const name = comparing ? `${shot.part === 'main' ? 'A' : 'B'}: ${shot.option.club} ` : '';
    labels.push({
      at: aim,
      text: `${name}${lengthText(metres, units)}`,
      shift: [18, 0],
      tone: shot.part === 'main' ? 'main' : 'rival',
      dot: false,
    });
  }
  const plan = currentPlan(state);
  const leave = main.option?.leave.medianM;
  if (pin !== null && plan !== null && aimReach(state) !== null && leave !== undefined && !comparing) {
    const aim = frame.toSpot(main.aim);
    const middle = { x: (aim.x + pin.x) / 2, y: (aim.y + pin.y) / 2 };
    if (distance(aim, pin) > 25) {
      labels.push({
        at: middle,
        text: words.map.lengthLeft({ length: toHoleText(leave, false, units, words) }),
        shift: [10, 0],
        tone: 'plain',
        dot: false,
      });
    }
  }
  const isSwing = main.option === null || noAimWords(main.option, words) === null;
  if (state.view.showCarries && !comparing && isSwing)
    labels.push(...carryLabels(state, course, sheet, ball, frame.toSpot(main.aim)));
  return labels;
}

/** Each hazard's near and far edge beside it, away from the line of the shot. */
function carryLabels(state: AppState, course: Course, sheet: Sheet, from: Spot, aim: Spot): MapLabel[] {
  const { units } = state.settings;
  const bearing = Math.atan2(aim.x - from.x, aim.y - from.y);
  const reach = distance(from, aim) + BEYOND_CARRY_M;
  return carriesAlong(course, sheet.frame, from, bearing, reach).map((carry) => {
    const onLine = {
      x: from.x + Math.sin(bearing) * carry.nearM,
      y: from.y + Math.cos(bearing) * carry.nearM,
    };
    const isLeft = sheet.toMap(carry.near)[1] < sheet.toMap(onLine)[1];
    return {
      at: carry.near,
      text: `${lengthNumber(carry.nearM, units)}–${lengthNumber(carry.farM, units)}`,
      shift: [isLeft ? -14 : 14, 0],
      tone: 'plain',
      dot: true,
    };
  });
}

function distance(a: Spot, b: Spot): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
