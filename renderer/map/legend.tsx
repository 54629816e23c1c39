/** What the map's colours and marks mean; folded away until wanted. */

import type { ComponentChildren } from 'preact';
import { Lie, type LieCode } from '../../core/ground/lies.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { type Palette, paletteOf, type Theme } from './palette.ts';
import { useWords } from '../state/use-words.ts';

const GROUNDS = ['fairway', 'green', 'tee', 'rough', 'longRough', 'woods', 'bunker', 'path'] as const;

export function Legend({ theme }: { readonly theme: Theme }) {
  const words = useWords();
  const open = useApp((state) => state.view.showLegend);
  const onHole = useApp((state) => state.view.hole !== null);
  const hasSlopeArrows = useApp((state) => (state.course?.value.slopeMarks?.length ?? 0) > 0);
  const dispatch = useDispatch();
  const palette = paletteOf(theme);
  return (
    <details
      class="legend"
      open={open}
      onToggle={(event) => dispatch({ type: 'layer-set', layer: 'showLegend', on: event.currentTarget.open })}
    >
      <summary>{words.map.legend}</summary>
      <ul>
        {GROUNDS.map((ground) => (
          <Entry key={ground} name={words.map.grounds[ground]}>
            <rect
              x="1"
              y="2"
              width="24"
              height="12"
              rx="2"
              fill={palette.ground[Lie[ground]]}
              stroke={edgeOf(Lie[ground], palette)}
            />
          </Entry>
        ))}
        <Entry name={words.map.penaltyYellow}>
          <Water palette={palette} colour={palette.stakeYellow} dash="5 4" />
        </Entry>
        <Entry name={words.map.penaltyRed}>
          <Water palette={palette} colour={palette.stakeRed} />
        </Entry>
        <Entry name={words.map.outOfBounds}>
          <rect x="1" y="2" width="24" height="12" fill={palette.ground[Lie.outOfBounds]} />
          <path d="M1 2H25" stroke={palette.stakeCase} stroke-width="3" />
          <path d="M1 2H25" stroke={palette.stakeWhite} stroke-width="1.8" stroke-dasharray="2 4" />
        </Entry>
        {hasSlopeArrows && (
          <Entry name={words.map.slopeArrow}>
            <path d="M3 8H22M16 3L22 8L16 13" fill="none" stroke={palette.labelInk} stroke-width="1.8" />
          </Entry>
        )}
        {onHole && <ShotEntries palette={palette} />}
      </ul>
    </details>
  );
}

function ShotEntries({ palette }: { readonly palette: Palette }) {
  const words = useWords();
  return (
    <>
      <Entry name={words.map.shotAndAim}>
        <path d="M1 8H25" stroke={palette.shotA} stroke-width="2.6" />
      </Entry>
      <Entry name={words.map.bOfTwo}>
        <path d="M1 8H25" stroke={palette.shotB} stroke-width="2.6" stroke-dasharray="6 4" />
      </Entry>
      <Entry name={words.map.ellipses}>
        <ellipse cx="13" cy="8" rx="12" ry="7" fill="none" stroke={palette.shotA} stroke-width="1.2" />
        <ellipse cx="13" cy="8" rx="7" ry="4" fill="none" stroke={palette.shotA} stroke-width="2" />
      </Entry>
      <Entry name={words.map.atRest}>
        <circle cx="7" cy="8" r="2.6" fill={palette.ballFill} stroke={palette.shotA} />
        <path d="M15 4l8 8M15 12l8-8" stroke={palette.troubleMark} stroke-width="1.8" />
      </Entry>
      <Entry name={words.map.theRecommended}>
        <path
          d="M1 8H25"
          stroke={palette.shotA}
          stroke-width="2"
          stroke-dasharray="1 4"
          stroke-linecap="round"
        />
      </Entry>
      <Entry name={words.map.nearAndFar}>
        <circle cx="13" cy="8" r="2.6" fill="none" stroke={palette.labelInk} />
      </Entry>
    </>
  );
}

function Entry({ name, children }: { readonly name: string; readonly children: ComponentChildren }) {
  return (
    <li>
      <svg viewBox="0 0 26 16" width="26" height="16" aria-hidden="true">
        {children}
      </svg>
      {name}
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
