/** What the map's colours and marks mean; folded away until wanted. */

import type { ComponentChildren } from 'preact';
import { Lie, type LieCode } from '../../core/ground/lies.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { type Palette, paletteOf, type Theme } from './palette.ts';

const GROUNDS: readonly (readonly [LieCode, string])[] = [
  [Lie.fairway, 'Fairway'],
  [Lie.green, 'Green'],
  [Lie.tee, 'Tee'],
  [Lie.rough, 'Rough'],
  [Lie.longRough, 'Long rough'],
  [Lie.woods, 'Trees'],
  [Lie.bunker, 'Bunker'],
  [Lie.path, 'Path'],
];

export function Legend({ theme }: { readonly theme: Theme }) {
  const open = useApp((state) => state.view.showLegend);
  const onHole = useApp((state) => state.view.hole !== null);
  const dispatch = useDispatch();
  const palette = paletteOf(theme);
  return (
    <details
      class="legend"
      open={open}
      onToggle={(event) => dispatch({ type: 'layer-set', layer: 'showLegend', on: event.currentTarget.open })}
    >
      <summary>Legend</summary>
      <ul>
        {GROUNDS.map(([lie, words]) => (
          <Entry key={words} words={words}>
            <rect
              x="1"
              y="2"
              width="24"
              height="12"
              rx="2"
              fill={palette.ground[lie]}
              stroke={edgeOf(lie, palette)}
            />
          </Entry>
        ))}
        <Entry words="Penalty area, yellow">
          <Water palette={palette} colour={palette.stakeYellow} dash="5 4" />
        </Entry>
        <Entry words="Penalty area, red">
          <Water palette={palette} colour={palette.stakeRed} />
        </Entry>
        <Entry words="Out of bounds">
          <rect x="1" y="2" width="24" height="12" fill={palette.ground[Lie.outOfBounds]} />
          <path d="M1 2H25" stroke={palette.stakeCase} stroke-width="3" />
          <path d="M1 2H25" stroke={palette.stakeWhite} stroke-width="1.8" stroke-dasharray="2 4" />
        </Entry>
        {onHole && <ShotEntries palette={palette} />}
      </ul>
    </details>
  );
}

function ShotEntries({ palette }: { readonly palette: Palette }) {
  return (
    <>
      <Entry words="Shot and aim (A of two)">
        <path d="M1 8H25" stroke={palette.shotA} stroke-width="2.6" />
      </Entry>
      <Entry words="B of two">
        <path d="M1 8H25" stroke={palette.shotB} stroke-width="2.6" stroke-dasharray="6 4" />
      </Entry>
      <Entry words="50 and 90 % of solid strikes">
        <ellipse cx="13" cy="8" rx="12" ry="7" fill="none" stroke={palette.shotA} stroke-width="1.2" />
        <ellipse cx="13" cy="8" rx="7" ry="4" fill="none" stroke={palette.shotA} stroke-width="2" />
      </Entry>
      <Entry words="At rest; out or in a penalty area">
        <circle cx="7" cy="8" r="2.6" fill={palette.ballFill} stroke={palette.shotA} />
        <path d="M15 4l8 8M15 12l8-8" stroke={palette.troubleMark} stroke-width="1.8" />
      </Entry>
      <Entry words="The recommended shot">
        <path
          d="M1 8H25"
          stroke={palette.shotA}
          stroke-width="2"
          stroke-dasharray="1 4"
          stroke-linecap="round"
        />
      </Entry>
      <Entry words="188–204: near and far edge">
        <circle cx="13" cy="8" r="2.6" fill="none" stroke={palette.labelInk} />
      </Entry>
    </>
  );
}

function Entry({ words, children }: { readonly words: string; readonly children: ComponentChildren }) {
  return (
    <li>
      <svg viewBox="0 0 26 16" width="26" height="16" aria-hidden="true">
        {children}
      </svg>
      {words}
    </li>
  );
}

function Water({
  palette,
  colour,
  dash,
}: {
  readonly palette: Palette;
  readonly colour: string;
  readonly dash?: string;
}) {
  return (
    <>
      <rect
        x="2"
        y="3"
        width="22"
        height="10"
        rx="2"
        fill={palette.ground[Lie.penaltyRed]}
        stroke={palette.stakeCase}
        stroke-width="3"
      />
      <rect
        x="2"
        y="3"
        width="22"
        height="10"
        rx="2"
        fill="none"
        stroke={colour}
        stroke-width="1.8"
        stroke-dasharray={dash ?? 'none'}
      />
    </>
  );
}

function edgeOf(lie: LieCode, palette: Palette): string {
  if (lie === Lie.green) return palette.greenEdge;
  return lie === Lie.bunker ? palette.bunkerEdge : 'none';
}
