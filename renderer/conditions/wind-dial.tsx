/**
 * Where the wind comes from, on a compass with north at the top: drag the knob, or turn it by the arrow keys. The hole's own
 * line is drawn in, so that one sees how the wind meets it.
 */

import { useRef } from 'preact/hooks';
import { compassPoint, wholeTurn } from '../../core/conditions/day-words.ts';
import { dialAngle, turnedBy } from './dial-angle.ts';
import { useWords } from '../state/use-words.ts';

interface Props {
  readonly fromDeg: number;
  /** Nothing blows: the knob is drawn faintly. */
  readonly isStill: boolean;
  /** Bearing of the hole on screen, degrees; null for the whole course. */
  readonly holeDeg: number | null;
  readonly tryOut: (fromDeg: number) => void;
  /** Equal marks in a row belong to one key held down. */
  readonly take: (fromDeg: number, mark?: string) => void;
  readonly drop: () => void;
}

/** Of the drawing. */
const SIZE = 128;
const MIDDLE = SIZE / 2;
const RIM = 42;
const LETTERS = [
  ['north', 0],
  ['east', 90],
  ['south', 180],
  ['west', 270],
] as const;

function at(degrees: number, radius: number): readonly [number, number] {
  const turn = (degrees * Math.PI) / 180;
  return [MIDDLE + radius * Math.sin(turn), MIDDLE - radius * Math.cos(turn)];
}

export function WindDial({ fromDeg, isStill, holeDeg, tryOut, take, drop }: Props) {
  const words = useWords();
  const pressed = useRef<number | null>(null);
  const presses = useRef(0);
  const degrees = wholeTurn(fromDeg);
  // Keys may come faster than the dial is drawn.
  const latest = useRef(degrees);
  latest.current = degrees;
  const pointed = (event: PointerEvent): number | null => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    return dialAngle(event.clientX - box.left - box.width / 2, event.clientY - box.top - box.height / 2);
  };
  const [knobX, knobY] = at(degrees, RIM);
  return (
    <svg
      class={isStill ? 'wind-dial still' : 'wind-dial'}
      viewBox={`0 0 ${SIZE} ${SIZE}`}
      width={SIZE}
      height={SIZE}
      role="slider"
      tabindex={0}
      aria-label={words.day.windComesFrom}
      aria-valuemin={0}
      aria-valuemax={359}
      aria-valuenow={Math.round(degrees)}
      aria-valuetext={words.day.dialValue({
        point: compassPoint(degrees, words),
        degrees: Math.round(degrees),
      })}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        pressed.current = pointed(event) ?? degrees;
        tryOut(pressed.current);
      }}
      onPointerMove={(event) => {
        if (pressed.current === null) return;
        const angle = pointed(event);
        if (angle === null || angle === pressed.current) return;
        pressed.current = angle;
        tryOut(angle);
      }}
      onPointerUp={() => {
        if (pressed.current !== null) take(pressed.current);
        pressed.current = null;
      }}
      onPointerCancel={() => {
        pressed.current = null;
        drop();
      }}
      onKeyDown={(event) => {
        const next = turnedBy(event.key, latest.current);
        if (next === null) return;
        event.preventDefault();
        latest.current = next;
        if (!event.repeat) presses.current += 1;
        take(next, `wind dial ${presses.current}`);
      }}
    >
      <circle class="dial-face" cx={MIDDLE} cy={MIDDLE} r={RIM} />
      {Array.from({ length: 16 }, (_, k) => {
        const [x1, y1] = at(k * 22.5, RIM);
        const [x2, y2] = at(k * 22.5, RIM - (k % 4 === 0 ? 7 : 4));
        return <path key={k} class="dial-tick" d={`M${x1} ${y1}L${x2} ${y2}`} />;
      })}
      {LETTERS.map(([point, turn]) => {
        const [x, y] = at(turn, RIM + 15);
        return (
          <text key={point} class="dial-letter" x={x} y={y + 4}>
            {words.golf.compassLetters[point]}
          </text>
        );
      })}
      {holeDeg !== null && <HoleLine degrees={holeDeg} />}
      <g class="dial-wind">
        <path class="dial-shaft" d={`M${knobX} ${knobY}L${at(degrees + 180, 24).join(' ')}`} />
        <path
          class="dial-head"
          d={`M${at(degrees + 180, 30).join(' ')}L${at(degrees + 205, 17).join(' ')}L${at(degrees + 155, 17).join(' ')}Z`}
        />
        <circle class="dial-knob" cx={knobX} cy={knobY} r={7} />
      </g>
    </svg>
  );
}

/** From tee to green: a dotted line with a flag at its end. */
function HoleLine({ degrees }: { readonly degrees: number }) {
  const [teeX, teeY] = at(degrees + 180, RIM - 12);
  const [x, y] = at(degrees, RIM - 14);
  return (
    <g class="dial-hole">
      <path class="dial-hole-line" d={`M${teeX} ${teeY}L${x} ${y}`} />
      <path class="dial-flag" d={`M${x} ${y}v-9l6 2.4l-6 2.4`} />
    </g>
  );
}
