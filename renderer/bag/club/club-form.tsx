/** What a club is: name, kind, loft, length, its swings, the lies it is used from. */

import { changeClub, type ClubChange } from '../../../core/player/edits/clubs.ts';
import type { BagClub } from '../../../core/player/format.ts';
import { LIES_TO_CHOOSE } from '../../../core/player/in-play.ts';
import type { ClubKind, Swing } from '../../../core/player/model.ts';
import { useId } from 'preact/hooks';
import { inUnits, unitShort } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { useBag, useDesk } from '../state/use-bag.ts';
import { KIND_WORDS, LIE_WORDS, SWING_WORDS } from '../words.ts';

export function ClubForm({ club }: { readonly club: BagClub }) {
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const nameId = useId();
  const kindId = useId();
  const change = (label: string, values: ClubChange): boolean =>
    desk.edit(`${label} of ${club.name}`, (document) => changeClub(document, club.name, values));
  const isPutter = club.kind === 'putter';
  const metres = units === 'yards' ? 0.9144 : 1;
  const stated = club.stated?.carryM ?? null;
  return (
    <form class="club-form" aria-label={`About ${club.name}`} onSubmit={(event) => event.preventDefault()}>
      <span class="bag-field wide">
        <label for={nameId}>Name</label>
        <input
          id={nameId}
          type="text"
          value={club.name}
          maxLength={60}
          disabled={locked}
          onChange={(event) => {
            const name = event.currentTarget.value.trim();
            if (name === club.name) return;
            if (change('name', { name }))
              desk.store.dispatch({ type: 'club-shown', shown: { club: name, swing: 'full' } });
            else event.currentTarget.value = club.name;
          }}
        />
      </span>
      <span class="bag-field">
        <label for={kindId}>Kind</label>
        <select
          id={kindId}
          value={club.kind}
          disabled={locked}
          onChange={(event) => change('kind', { kind: event.currentTarget.value as ClubKind })}
        >
          {KIND_WORDS.map(([kind, words]) => (
            <option key={kind} value={kind}>
              {words}
            </option>
          ))}
        </select>
      </span>
      <NumberField
        name="Loft"
        unit="°"
        value={club.loftDeg}
        least={0}
        most={80}
        decimals={1}
        disabled={locked}
        take={(loftDeg) => change('loft', { loftDeg })}
      />
      <NumberField
        name="Length"
        unit="cm"
        value={club.lengthM === undefined ? null : club.lengthM * 100}
        least={30}
        most={160}
        decimals={1}
        disabled={locked}
        clear={() => change('length', { lengthM: undefined })}
        take={(cm) => change('length', { lengthM: Math.round(cm * 10) / 1000 })}
      />
      {!isPutter && (
        <NumberField
          name="Carry, as you state it"
          unit={unitShort(units)}
          value={stated === null ? null : inUnits(stated, units)}
          least={1}
          most={400}
          decimals={0}
          placeholder="not stated"
          disabled={locked}
          clear={() => change('stated carry', { stated: undefined })}
          take={(length) =>
            change('stated carry', {
              stated: { ...club.stated, carryM: Math.round(length * metres * 10) / 10 },
            })
          }
        />
      )}
      {!isPutter && (
        <fieldset class="bag-checks">
          <legend>Swings</legend>
          {SWING_WORDS.map(([swing, words]) => (
            <label key={swing} class="switch">
              <input
                type="checkbox"
                checked={club.swings.includes(swing)}
                disabled={locked}
                onChange={(event) => {
                  const on = event.currentTarget.checked;
                  if (!change('swings', { swings: withSwing(club.swings, swing, on) }))
                    event.currentTarget.checked = !on;
                }}
              />
              {words}
            </label>
          ))}
        </fieldset>
      )}
      {!isPutter && (
        <fieldset class="bag-checks">
          <legend>Used from</legend>
          {LIES_TO_CHOOSE.map((lie) => {
            const off = club.notFrom ?? [];
            return (
              <label key={lie} class="switch">
                <input
                  type="checkbox"
                  checked={!off.includes(lie)}
                  disabled={locked}
                  onChange={(event) => {
                    const kept = event.currentTarget.checked
                      ? off.filter((other) => other !== lie)
                      : [...off, lie];
                    change('lies', { notFrom: kept.length === 0 ? undefined : kept });
                  }}
                />
                {LIE_WORDS[lie]}
              </label>
            );
          })}
        </fieldset>
      )}
    </form>
  );
}

/** In the order in which the swings are listed. */
function withSwing(swings: readonly Swing[], swing: Swing, on: boolean): Swing[] {
  return SWING_WORDS.map(([known]) => known).filter((known) =>
    known === swing ? on : swings.includes(known),
  );
}
