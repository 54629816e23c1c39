/** What a club is: name, kind, loft, length, its swings, the lies it is used from. */

import { changeClub, type ClubChange } from '../../../core/player/edits/clubs.ts';
import type { BagClub } from '../../../core/player/format.ts';
import { LIES_TO_CHOOSE } from '../../../core/player/in-play.ts';
import type { ClubKind, Swing } from '../../../core/player/model.ts';
import { useId } from 'preact/hooks';
import { inUnits, unitShort } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { LaunchFields } from './launch-fields.tsx';
import { NumberField } from '../number-field.tsx';
import { useBag, useDesk } from '../state/use-bag.ts';
import { kindChoices, lieName, swingChoices } from '../words.ts';
import { SWINGS } from '../../../core/player/model.ts';
import { useWords } from '../../state/use-words.ts';

export function ClubForm({ club }: { readonly club: BagClub }) {
  const words = useWords();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const nameId = useId();
  const kindId = useId();
  const change = (label: string, values: ClubChange): boolean =>
    desk.edit(words.player.club.ofClub({ label, club: club.name }), (document) =>
      changeClub(document, club.name, values),
    );
  const isPutter = club.kind === 'putter';
  const metres = units === 'yards' ? 0.9144 : 1;
  const stated = club.stated?.carryM ?? null;
  return (
    <form
      class="club-form"
      aria-label={words.player.club.about({ club: club.name })}
      onSubmit={(event) => event.preventDefault()}
    >
      <span class="bag-field wide">
        <label for={nameId}>{words.player.name}</label>
        <input
          id={nameId}
          type="text"
          value={club.name}
          maxLength={60}
          disabled={locked}
          onChange={(event) => {
            const name = event.currentTarget.value.trim();
            if (name === club.name) return;
            if (change(words.player.club.steps.name, { name }))
              desk.store.dispatch({ type: 'club-shown', shown: { club: name, swing: 'full' } });
            else event.currentTarget.value = club.name;
          }}
        />
      </span>
      <span class="bag-field">
        <label for={kindId}>{words.player.club.kind}</label>
        <select
          id={kindId}
          value={club.kind}
          disabled={locked}
          onChange={(event) =>
            change(words.player.club.steps.kind, { kind: event.currentTarget.value as ClubKind })
          }
        >
          {kindChoices(words).map(([kind, name]) => (
            <option key={kind} value={kind}>
              {name}
            </option>
          ))}
        </select>
      </span>
      <NumberField
        name={words.player.club.loft}
        unit="°"
        value={club.loftDeg}
        least={0}
        most={80}
        decimals={1}
        disabled={locked}
        take={(loftDeg) => change(words.player.club.steps.loft, { loftDeg })}
      />
      <NumberField
        name={words.player.club.length}
        unit="cm"
        value={club.lengthM === undefined ? null : club.lengthM * 100}
        least={30}
        most={160}
        decimals={1}
        disabled={locked}
        clear={() => change(words.player.club.steps.length, { lengthM: undefined })}
        take={(cm) => change(words.player.club.steps.length, { lengthM: Math.round(cm * 10) / 1000 })}
      />
      {!isPutter && (
        <NumberField
          name={words.player.club.statedCarry}
          unit={unitShort(units)}
          value={stated === null ? null : inUnits(stated, units)}
          least={1}
          most={400}
          decimals={0}
          placeholder={words.player.club.notStated}
          disabled={locked}
          clear={() => change(words.player.club.steps.statedCarry, { stated: undefined })}
          take={(length) =>
            change(words.player.club.steps.statedCarry, {
              stated: { ...club.stated, carryM: Math.round(length * metres * 10) / 10 },
            })
          }
        />
      )}
      {!isPutter && (
        <LaunchFields
          launch={club.launch ?? {}}
          locked={locked}
          change={(launch) =>
            change(words.player.club.steps.launch, {
              launch: Object.values(launch).some((value) => value !== undefined) ? launch : undefined,
            })
          }
        />
      )}
      {!isPutter && (
        <fieldset class="bag-checks">
          <legend>{words.player.club.swings}</legend>
          {swingChoices(words).map(([swing, name]) => (
            <label key={swing} class="switch">
              <input
                type="checkbox"
                checked={club.swings.includes(swing)}
                disabled={locked}
                onChange={(event) => {
                  const on = event.currentTarget.checked;
                  if (!change(words.player.club.steps.swings, { swings: withSwing(club.swings, swing, on) }))
                    event.currentTarget.checked = !on;
                }}
              />
              {name}
            </label>
          ))}
        </fieldset>
      )}
      {!isPutter && (
        <fieldset class="bag-checks">
          <legend>{words.player.club.usedFrom}</legend>
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
                    change(words.player.club.steps.lies, { notFrom: kept.length === 0 ? undefined : kept });
                  }}
                />
                {lieName(lie, words)}
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
  return SWINGS.filter((known) => (known === swing ? on : swings.includes(known)));
}
