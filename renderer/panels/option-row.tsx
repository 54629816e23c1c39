/** One shot of the table. */

import type { Option } from '../../core/plan/model.ts';
import { type AppState, OWN_AIM, type ShotId } from '../state/app-state.ts';
import { isComparing } from '../map/shot-scene.ts';
import {
  chanceText,
  errorText,
  lengthNumber,
  signedText,
  strokesText,
  toHoleText,
} from '../state/measures.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { OddsBar } from './odds-bar.tsx';
import { aimNote } from './plan-frame.ts';
import { shotPhrase, shotWords, troubleList } from './shot-words.ts';
import { useWords } from '../state/use-words.ts';

interface Props {
  readonly id: ShotId;
  readonly option: Option;
  readonly painted: boolean;
  readonly recommended: boolean;
}

/** Kinds of trouble that fit a row. */
const TROUBLES_SHOWN = 2;

export function OptionRow({ id, option, painted, recommended }: Props) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const aim = useApp((state) => aimNote(state, option));
  const dispatch = useDispatch();
  const { name, manner } = shotWords(option, words);
  const own = id === OWN_AIM;
  const side = useApp((state) => comparedAs(state, id));
  const choose = (): void => dispatch({ type: 'shot-chosen', shot: id });
  return (
    <tr class={rowClass(painted, side)} data-option={id} onClick={choose}>
      <th scope="row">
        <span class="option-title">
          <button type="button" class="option-name" aria-pressed={painted} onClick={choose}>
            {name}
            {manner !== '' && <small> {manner}</small>}
          </button>
          {recommended && <span class="tag tag-best">{words.plan.recommended}</span>}
          {own && <span class="tag">{words.plan.yourAim}</span>}
        </span>
        <span class="option-aim">{aim}</span>
      </th>
      <td class="number">
        <strong>{strokesText(option.meanStrokes, words)}</strong>
        {option.standardError > 0 && <span class="error"> ± {errorText(option.standardError, words)}</span>}
        <LossLine id={id} option={option} />
      </td>
      <td>
        <OddsBar odds={option.parOdds} />
      </td>
      <td class="troubles">
        <Troubles option={option} />
      </td>
      <td class="number">
        {option.clubKind === 'putter' && option.kind === 'shot' ? (
          toHoleText(option.leave.medianM, true, units, words)
        ) : (
          <>
            {toHoleText(option.leave.medianM, false, units, words)}
            {option.kind === 'shot' && (
              <span class="range">
                {lengthNumber(option.leave.p10M, units)}–{lengthNumber(option.leave.p90M, units)}
              </span>
            )}
          </>
        )}
      </td>
      <td class="compare-cell">
        {option.kind === 'shot' && option.clubKind !== 'putter' && (
          <>
            <CompareButton side="A" id={id} option={option} />
            <CompareButton side="B" id={id} option={option} />
          </>
        )}
      </td>
    </tr>
  );
}

function rowClass(painted: boolean, side: 'none' | 'alone' | 'A' | 'B'): string {
  if (side === 'A') return 'option as-a';
  if (side === 'B') return 'option as-b';
  return painted && side === 'alone' ? 'option painted' : 'option';
}

/** The row's part on the map: A or B of a comparison, none in it, or no comparison at all. */
function comparedAs(state: AppState, id: ShotId): 'none' | 'alone' | 'A' | 'B' {
  if (!isComparing(state)) return 'alone';
  if (state.view.compareA === id) return 'A';
  return state.view.compareB === id ? 'B' : 'none';
}

/** Against the best: the difference, or that it is too close to call. */
function LossLine({ id, option }: { readonly id: ShotId; readonly option: Option }) {
  const words = useWords();
  const toBest = useApp((state) => (id === OWN_AIM ? (state.answers.own?.toBest ?? null) : null));
  const isBest = useApp((state) => bestId(state) === id);
  if (isBest) return <span class="loss">{words.plan.lowest}</span>;
  const close = toBest === null ? option.tooCloseToCall : toBest.tooCloseToCall;
  const loss = toBest === null ? option.lossToBest : toBest.difference;
  if (id === OWN_AIM && toBest === null) return null;
  return (
    <span class={close ? 'loss close' : 'loss'}>
      {close ? words.plan.closeLoss({ loss: signedText(loss, words) }) : signedText(loss, words)}
    </span>
  );
}

function bestId(state: AppState): string | null {
  return state.answers.plan?.plan.options[0]?.id ?? null;
}

function Troubles({ option }: { readonly option: Option }) {
  const words = useWords();
  const all = troubleList(option.trouble, true, words);
  if (all.length === 0)
    return (
      <span class="faint">
        {option.kind === 'relief'
          ? option.penaltyStrokes === 2
            ? words.plan.twoStrokes
            : words.plan.oneStroke
          : words.plan.hardlyAny}
      </span>
    );
  const title = troubleList(option.trouble, false, words)
    .map((entry) => `${entry.words} ${chanceText(entry.chance)}`)
    .join(', ');
  return (
    <span title={title}>
      {all.slice(0, TROUBLES_SHOWN).map((entry) => (
        <span key={entry.words} class="trouble">
          {entry.words} {chanceText(entry.chance)}
        </span>
      ))}
      {all.length > TROUBLES_SHOWN && (
        <span class="faint">{words.plan.andMore({ count: all.length - TROUBLES_SHOWN })}</span>
      )}
    </span>
  );
}

function CompareButton({
  side,
  id,
  option,
}: {
  readonly side: 'A' | 'B';
  readonly id: ShotId;
  readonly option: Option;
}) {
  const words = useWords();
  const shot = shotPhrase(option, words);
  const on = useApp((state) => (side === 'A' ? state.view.compareA : state.view.compareB) === id);
  const dispatch = useDispatch();
  return (
    <button
      type="button"
      class={`side-button side-${side}`}
      aria-pressed={on}
      aria-label={words.plan.compareAs({ shot, side })}
      title={on ? words.plan.endCompareOf({ shot }) : words.plan.compareAs({ shot, side })}
      onClick={(event) => {
        event.stopPropagation();
        dispatch({ type: 'compare-set', side, shot: on ? null : id });
      }}
    >
      {side}
    </button>
  );
}
