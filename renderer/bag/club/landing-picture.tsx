/** Where one club's balls come down, seen from above: dots, poor strikes as crosses, ellipses of 50 and 90 in a hundred. */

import { patternWords } from '../../../core/player/pattern.ts';
import type { Words } from '../../../core/words/words.ts';
import type { LandingPattern, PatternEllipse } from '../../../core/player/pattern.ts';
import { inUnits, unitShort, type Units } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import type { SpreadLine } from '../work/bag-report.ts';
import { clubSwing } from '../words.ts';
import { niceStep } from '../picture-scale.ts';
import { useWords } from '../../state/use-words.ts';

const WIDTH = 360;
const HEIGHT = 330;
const EDGE = { left: 44, right: 10, top: 12, bottom: 30 };
/** More dots than this only make a blot: the latest are drawn. */
const MOST_DOTS = 600;

export function LandingPicture({ line }: { readonly line: SpreadLine }) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const { pattern, spread } = line;
  const frame = frameFor(pattern);
  const { x, y, perM } = frame;
  const step = niceStep(inUnits((HEIGHT - EDGE.top - EDGE.bottom) / perM, units), 6);
  const metres = units === 'yards' ? 0.9144 : 1;
  const alongTicks = ticks(frame.near / metres, frame.far / metres, step);
  const sideTicks = ticks(-frame.side / metres, frame.side / metres, step);
  const dots = pattern.dots.slice(-MOST_DOTS);
  const said = patternWords(line.spread, line.shots, units, words);
  return (
    <figure class="bag-picture">
      <figcaption>
        <strong>
          {words.player.landing.title({ club: clubSwing(spread.club.name, spread.swing, words) })}
        </strong>
      </figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={said}>
        <g class="grid">
          {alongTicks.map((tick) => (
            <g key={`a${tick}`}>
              <line x1={EDGE.left} x2={WIDTH - EDGE.right} y1={y(tick * metres)} y2={y(tick * metres)} />
              <text x={EDGE.left - 6} y={y(tick * metres) + 4} text-anchor="end">
                {tick}
              </text>
            </g>
          ))}
          {sideTicks.map((tick) => (
            <g key={`s${tick}`}>
              <line
                class={tick === 0 ? 'aim' : undefined}
                x1={x(tick * metres)}
                x2={x(tick * metres)}
                y1={EDGE.top}
                y2={HEIGHT - EDGE.bottom}
              />
              <text x={x(tick * metres)} y={HEIGHT - EDGE.bottom + 16} text-anchor="middle">
                {sideLabel(tick, units, words)}
              </text>
            </g>
          ))}
        </g>
        {pattern.ellipses.map((ellipse) => (
          <path
            key={ellipse.share}
            class={ellipse.share < 0.7 ? 'ellipse half' : 'ellipse most'}
            d={ellipsePath(ellipse, x, y)}
          />
        ))}
        {dots.map((dot, i) =>
          dot.isPoor ? (
            <path
              key={i}
              class="dot-poor"
              d={`M${(x(dot.across) - 3).toFixed(1)} ${(y(dot.along) - 3).toFixed(1)}l6 6m0 -6l-6 6`}
            />
          ) : (
            <circle key={i} class="dot" cx={x(dot.across)} cy={y(dot.along)} r={2.2} />
          ),
        )}
      </svg>
      <p class="picture-key" aria-hidden="true">
        <svg viewBox="0 0 14 10" width="14" height="10">
          <circle class="dot" cx="7" cy="5" r="2.6" />
        </svg>{' '}
        {words.player.landing.solid}{' '}
        <svg viewBox="0 0 14 10" width="14" height="10">
          <path class="dot-poor" d="M4 2l6 6m0 -6l-6 6" />
        </svg>{' '}
        {words.player.landing.poor}{' '}
        <svg viewBox="0 0 22 10" width="22" height="10">
          <ellipse class="ellipse half" cx="11" cy="5" rx="9" ry="3.6" />
        </svg>{' '}
        {words.player.landing.half}{' '}
        <svg viewBox="0 0 22 10" width="22" height="10">
          <ellipse class="ellipse most" cx="11" cy="5" rx="9" ry="3.6" />
        </svg>{' '}
        {words.player.landing.nineInTen}
      </p>
      <p class="picture-words">{said}</p>
    </figure>
  );
}

function sideLabel(tick: number, units: Units, words: Words): string {
  if (tick === 0) return words.player.landing.aim({ unit: unitShort(units) });
  return `${Math.abs(tick)} ${tick < 0 ? 'L' : 'R'}`;
}

interface Frame {
  readonly near: number;
  readonly far: number;
  readonly side: number;
  readonly perM: number;
  readonly x: (across: number) => number;
  readonly y: (along: number) => number;
}

/** The same scale both ways, so that the shape is true; all ellipses and nearly all dots inside. */
function frameFor({ dots, ellipses }: LandingPattern): Frame {
  const most = ellipses.at(-1)!;
  const reach = most.semiMajorM;
  const alongs = [most.along - reach, most.along + reach, ...dots.map(({ along }) => along)];
  const sides = [Math.abs(most.across) + reach, ...dots.map(({ across }) => Math.abs(across))];
  const near = Math.max(0, Math.min(...alongs) - 4);
  const far = Math.max(...alongs) + 4;
  const side = Math.max(...sides) + 3;
  const innerWidth = WIDTH - EDGE.left - EDGE.right;
  const innerHeight = HEIGHT - EDGE.top - EDGE.bottom;
  const perM = Math.min(innerHeight / (far - near), innerWidth / (2 * side));
  const middle = EDGE.left + innerWidth / 2;
  const shownSide = innerWidth / 2 / perM;
  const spare = (innerHeight / perM - (far - near)) / 2;
  const bottom = near - Math.min(spare, near);
  return {
    near: bottom,
    far: bottom + innerHeight / perM,
    side: shownSide,
    perM,
    x: (across) => middle + across * perM,
    y: (along) => HEIGHT - EDGE.bottom - (along - bottom) * perM,
  };
}

function ticks(from: number, to: number, step: number): readonly number[] {
  const found: number[] = [];
  for (let at = Math.ceil(from / step); at * step <= to; at++) found.push(at * step + 0);
  return found;
}

function ellipsePath(
  { along, across, semiMajorM, semiMinorM, tilt }: PatternEllipse,
  x: Frame['x'],
  y: Frame['y'],
): string {
  const points = Array.from({ length: 64 }, (_, k) => {
    const a = semiMajorM * Math.cos((k * Math.PI) / 32);
    const b = semiMinorM * Math.sin((k * Math.PI) / 32);
    const forward = along + a * Math.cos(tilt) - b * Math.sin(tilt);
    const right = across + a * Math.sin(tilt) + b * Math.cos(tilt);
    return `${x(right).toFixed(1)} ${y(forward).toFixed(1)}`;
  });
  return `M${points.join('L')}Z`;
}
