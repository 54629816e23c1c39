/** Every sensible shot from here, with what it costs and risks. A row paints its shot; A and B compare two. */

import { useRef } from 'preact/hooks';
import type { Option } from '../../core/plan/model.ts';
import { type AppState, OWN_AIM, type ShotId } from '../state/app-state.ts';
import { currentPlan, isPlanRough, ownOption, paintedShot } from '../state/selectors.ts';
import { useApp } from '../state/use-app.ts';
import { remember } from '../state/remember.ts';
import { LipNote } from './lip-note.tsx';
import { OddsKey } from './odds-bar.tsx';
import { OptionRow } from './option-row.tsx';
import { OwnAimLine } from './own-aim.tsx';
import { useWords } from '../state/use-words.ts';

interface Row {
  readonly id: ShotId;
  readonly option: Option;
}

const rowsOf = remember((options: readonly Option[], own: Option | null): readonly Row[] => {
  const rows = options.map((option) => ({ id: option.id, option }));
  return own === null ? rows : [{ id: OWN_AIM, option: own }, ...rows];
});

function tableRows(state: AppState): readonly Row[] {
  return rowsOf(currentPlan(state)?.options ?? NO_OPTIONS, ownOption(state));
}
const NO_OPTIONS: readonly Option[] = [];

export function OptionsTable() {
  const words = useWords();
  const rows = useApp(tableRows);
  const painted = useApp(paintedShot);
  const recommended = useApp((state) => currentPlan(state)?.recommendation.optionId ?? null);
  const rough = useApp(isPlanRough);
  const body = useRef<HTMLTableSectionElement>(null);
  if (rows.length === 0) return null;
  const step = (by: number): void => {
    const names = [...(body.current?.querySelectorAll<HTMLElement>('.option-name') ?? [])];
    const at = names.findIndex((name) => name === document.activeElement);
    if (at >= 0) names[at + by]?.focus();
  };
  return (
    <section class={rough ? 'options rough' : 'options'} aria-label={words.plan.optionsName}>
      <div class="options-head">
        <h3>
          {words.plan.shotsFromHere}
          {rough && <span class="tag">{words.plan.roughBeingRefined}</span>}
        </h3>
        <OddsKey />
      </div>
      <table
        onKeyDown={(event) => {
          if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
          event.preventDefault();
          step(event.key === 'ArrowDown' ? 1 : -1);
        }}
      >
        <thead>
          <tr>
            <th scope="col">{words.plan.columns.shot}</th>
            <th scope="col">{words.plan.columns.strokes}</th>
            <th scope="col">{words.plan.columns.odds}</th>
            <th scope="col">{words.plan.columns.trouble}</th>
            <th scope="col">{words.plan.columns.leaves}</th>
            <th scope="col">
              <span class="unseen">{words.plan.columns.compare}</span>
            </th>
          </tr>
        </thead>
        <tbody ref={body}>
          {rows.map(({ id, option }) => (
            <OptionRow
              key={id}
              id={id}
              option={option}
              painted={id === painted}
              recommended={id === recommended}
            />
          ))}
        </tbody>
      </table>
      <LipNote />
      <OwnAimLine />
    </section>
  );
}
