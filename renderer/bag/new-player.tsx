/** A new player within a minute: handicap, group, hand; a usual bag and preset numbers follow. */

import { useId, useState } from 'preact/hooks';
import { newPlayer } from '../../core/player/edits/new-player.ts';
import type { PlayerGroup } from '../../core/player/presets.ts';
import { useApp } from '../state/use-app.ts';
import { Choice } from '../panels/choice.tsx';
import { readTyped } from './number-field.tsx';
import { useBag, useDesk } from './state/use-bag.ts';
import { groupChoices } from './words.ts';
import { useWords } from '../state/use-words.ts';

export function NewPlayer() {
  const words = useWords();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const hasFile = useBag((state) => state.file !== null);
  const refusal = useBag((state) => state.refusal);
  const [name, setName] = useState('');
  const [handicap, setHandicap] = useState('');
  const [group, setGroup] = useState<PlayerGroup>('men');
  const [hand, setHand] = useState<'right' | 'left'>('right');
  const [fault, setFault] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const nameId = useId();
  const handicapId = useId();
  const hintId = useId();
  const make = async (): Promise<void> => {
    const typed = readHandicap(handicap);
    if (typed === null) {
      setFault(words.player.make.handicapFault);
      return;
    }
    setFault(null);
    setBusy(true);
    const made = newPlayer({
      name: name.trim() || words.player.make.newPlayer,
      handicap: typed,
      group,
      hand,
      units,
    });
    await desk.create(made);
    setBusy(false);
  };
  return (
    <section class="new-player" aria-label={words.player.make.newPlayer}>
      <h2>{words.player.make.newPlayer}</h2>
      <p>{words.player.make.explain}</p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        <span class="bag-field wide">
          <label for={nameId}>{words.player.name}</label>
          <input
            id={nameId}
            type="text"
            value={name}
            maxLength={110}
            placeholder={words.player.make.newPlayer}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </span>
        <span class="bag-field">
          <label for={handicapId}>{words.player.handicap}</label>
          <input
            id={handicapId}
            type="text"
            inputMode="decimal"
            value={handicap}
            aria-invalid={fault !== null}
            aria-describedby={hintId}
            onInput={(event) => setHandicap(event.currentTarget.value)}
          />
        </span>
        <p id={hintId} class="faint small-print">
          {words.player.make.noHandicap}
        </p>
        {fault !== null && (
          <p class="field-fault" role="alert">
            {fault}
          </p>
        )}
        <Choice
          label={words.player.person.player}
          name="group"
          value={group}
          entries={groupChoices(words)}
          choose={setGroup}
        />
        <Choice
          label={words.player.person.hand}
          name="hand"
          value={hand}
          entries={[
            ['right', words.player.make.rightHanded],
            ['left', words.player.make.leftHanded],
          ]}
          choose={setHand}
        />
        {refusal !== null && (
          <p class="field-fault" role="alert">
            {refusal}
          </p>
        )}
        <div class="save-row">
          <button type="submit" class="main-button" disabled={busy}>
            {busy ? words.player.make.making : words.player.make.make}
          </button>
          {hasFile && (
            <button
              type="button"
              class="small-button"
              onClick={() => desk.store.dispatch({ type: 'making', on: false })}
            >
              {words.player.back}
            </button>
          )}
        </div>
      </form>
      <p class="faint small-print">{words.player.make.sources}</p>
    </section>
  );
}

/** A plus handicap is typed with its plus and counts below nought. */
export function readHandicap(text: string): number | null {
  const value = readTyped(text);
  if (value === null) return null;
  const handicap = text.trim().startsWith('+') ? -value : value;
  return handicap >= -10 && handicap <= 54 ? handicap + 0 : null;
}
