/** A new player within a minute: handicap, group, hand; a usual bag and preset numbers follow. */

import { useId, useState } from 'preact/hooks';
import { newPlayer } from '../../core/player/edits/new-player.ts';
import type { PlayerGroup } from '../../core/player/presets.ts';
import { useApp } from '../state/use-app.ts';
import { Choice } from '../panels/choice.tsx';
import { readTyped } from './number-field.tsx';
import { useBag, useDesk } from './state/use-bag.ts';
import { GROUP_WORDS } from './words.ts';

export function NewPlayer() {
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
  const make = async (): Promise<void> => {
    const typed = readHandicap(handicap);
    if (typed === null) {
      setFault('Type the handicap as a number from −10 to 54; a plus handicap as +2.');
      return;
    }
    setFault(null);
    setBusy(true);
    const made = newPlayer({ name: name.trim() || 'New player', handicap: typed, group, hand, units });
    await desk.create(made);
    setBusy(false);
  };
  return (
    <section class="new-player" aria-label="New player">
      <h2>New player</h2>
      <p>
        With a handicap you can plan at once: a usual bag of fourteen and the shots that players of that level
        hit on average. They are not your shots; measured ones take their place as you bring them in.
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        <span class="bag-field wide">
          <label for={nameId}>Name</label>
          <input
            id={nameId}
            type="text"
            value={name}
            maxLength={110}
            placeholder="New player"
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </span>
        <span class="bag-field">
          <label for={handicapId}>Handicap</label>
          <input
            id={handicapId}
            type="text"
            inputMode="decimal"
            value={handicap}
            aria-invalid={fault !== null}
            onInput={(event) => setHandicap(event.currentTarget.value)}
          />
        </span>
        {fault !== null && (
          <p class="field-fault" role="alert">
            {fault}
          </p>
        )}
        <Choice label="Player" name="group" value={group} entries={GROUP_WORDS} choose={setGroup} />
        <Choice
          label="Hand"
          name="hand"
          value={hand}
          entries={[
            ['right', 'Right-handed'],
            ['left', 'Left-handed'],
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
            {busy ? 'Making …' : 'Make this player'}
          </button>
          {hasFile && (
            <button
              type="button"
              class="small-button"
              onClick={() => desk.store.dispatch({ type: 'making', on: false })}
            >
              Back
            </button>
          )}
        </div>
      </form>
      <p class="faint small-print">
        Sources of the presets: the course rating system’s lengths for scratch and bogey players, club
        golfers’ driving distances, tour players’ and amateurs’ directions and putting from published studies;
        the rest is common practice. The help says which is which.
      </p>
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
