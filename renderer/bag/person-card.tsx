/** Who the player is: name, handicap, group, hand; where the numbers come from; save, copy, another player. */

import { useId } from 'preact/hooks';
import type { PlayerDocument } from '../../core/player/format.ts';
import { succeed } from '../../core/result.ts';
import { countText } from '../state/measures.ts';
import { NumberField } from './number-field.tsx';
import { isFresh, isUnsaved } from './state/reduce-bag.ts';
import { useBag, useDesk } from './state/use-bag.ts';
import { WorkNote } from './work-note.tsx';
import { GROUP_WORDS } from './words.ts';

export function PersonCard() {
  const desk = useDesk();
  const document = useBag((state) => state.file?.history.present ?? null);
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const nameId = useId();
  const groupId = useId();
  const handId = useId();
  if (document === null) return null;
  const change = (label: string, values: Partial<PlayerDocument>): boolean =>
    desk.edit(label, (before) => succeed({ ...before, ...values }));
  return (
    <section class="person-card" aria-label="Player">
      <span class="bag-field wide">
        <label for={nameId}>Name</label>
        <input
          id={nameId}
          type="text"
          value={document.name}
          maxLength={120}
          disabled={locked}
          onChange={(event) => {
            const name = event.currentTarget.value.trim();
            if (name === '') event.currentTarget.value = document.name;
            else change('name of the player', { name });
          }}
        />
      </span>
      <div class="bag-row">
        <NumberField
          name="Handicap"
          value={document.handicap ?? null}
          least={-10}
          most={54}
          decimals={1}
          disabled={locked}
          take={(handicap) => change('handicap', { handicap })}
        />
        <span class="bag-field">
          <label for={groupId}>Player</label>
          <select
            id={groupId}
            value={document.group ?? 'men'}
            disabled={locked}
            onChange={(event) => {
              const group = GROUP_WORDS.find(([known]) => known === event.currentTarget.value)?.[0];
              if (group !== undefined) change('group', { group });
            }}
          >
            {GROUP_WORDS.map(([group, words]) => (
              <option key={group} value={group}>
                {words}
              </option>
            ))}
          </select>
        </span>
        <span class="bag-field">
          <label for={handId}>Hand</label>
          <select
            id={handId}
            value={document.hand ?? 'right'}
            disabled={locked}
            onChange={(event) =>
              change('hand', { hand: event.currentTarget.value === 'left' ? 'left' : 'right' })
            }
          >
            <option value="right">Right</option>
            <option value="left">Left</option>
          </select>
        </span>
      </div>
      <NumberField
        name="A shot counts half after"
        unit="days"
        value={document.settings?.halfLifeDays ?? null}
        least={1}
        most={36500}
        decimals={0}
        placeholder="never"
        disabled={locked}
        clear={() => {
          const settings = { ...document.settings };
          Reflect.deleteProperty(settings, 'halfLifeDays');
          change('weight of old shots', { settings });
        }}
        take={(halfLifeDays) =>
          change('weight of old shots', { settings: { ...document.settings, halfLifeDays } })
        }
      />
      <SaveButtons />
    </section>
  );
}

function SaveButtons() {
  const desk = useDesk();
  const unsaved = useBag((state) => state.file !== null && isUnsaved(state.file));
  const may = useBag((state) => state.file?.access.may ?? 'wait');
  const isDemo = useBag((state) => state.file?.access.may === 'read' && state.file.access.why === 'demo');
  const saving = useBag((state) => state.file?.saving === true);
  return (
    <div class="save-row">
      {may === 'read' ? (
        <button type="button" class="main-button" onClick={() => void desk.saveCopy()}>
          {isDemo ? 'Make it yours' : 'Work on a copy'}
        </button>
      ) : (
        <button
          type="button"
          class="main-button"
          disabled={!unsaved || saving || may !== 'write'}
          onClick={() => void desk.save()}
          title="Save (Ctrl+S)"
        >
          {saving ? 'Saving …' : unsaved ? 'Save' : 'Saved'}
        </button>
      )}
      <button
        type="button"
        class="small-button"
        onClick={() => desk.store.dispatch({ type: 'making', on: true })}
      >
        New player
      </button>
    </div>
  );
}

/** Whose numbers these are, said plainly above everything else. */
export function WhoseNumbers() {
  const report = useBag((state) => state.file?.estimate.report ?? null);
  const invented = useBag((state) => state.file?.history.present.invented === true);
  const work = useBag((state) => state.file?.estimate.work ?? 'none');
  const share = useBag((state) => state.file?.estimate.share ?? 0);
  const fresh = useBag((state) => state.file !== null && isFresh(state.file));
  const faults = useBag((state) => state.file?.estimate.faults ?? NO_FAULTS);
  const desk = useDesk();
  if (faults.length > 0)
    return (
      <div class="fault-box" role="alert">
        <strong>This bag cannot be worked out.</strong>
        {faults.map((fault, i) => (
          <p key={i}>
            {fault.where}: {fault.message}
          </p>
        ))}
      </div>
    );
  const planFault = report?.model.ok === false ? report.model.error[0] : undefined;
  return (
    <div class="whose">
      {report !== null && report.shots === 0 && (
        <p class="not-yours" role="note">
          <strong>These are not your shots.</strong> Every number is the preset for {report.level}; you can
          plan with it at once. Bring in shots under “Shots” and the numbers become yours, club by club.
        </p>
      )}
      {report !== null && report.shots > 0 && (
        <p class="faint" role="status">
          {invented && 'An invented player with invented shots. '}
          {countText(report.shots, 'measured shot counts', 'measured shots count')}; where they are few, the
          preset for {report.level} and the neighbours in the bag help out.
        </p>
      )}
      {planFault !== undefined && (
        <p class="warning" role="alert">
          {planFault.message}
        </p>
      )}
      {work === 'busy' && !fresh && (
        <WorkNote label="Working out the estimates" share={share} stop={desk.stopEstimate}>
          Working out the estimates …
        </WorkNote>
      )}
      {work === 'stopped' && (
        <p class="work-note" role="status">
          Stopped:{' '}
          {report === null ? 'nothing is estimated yet' : 'the numbers are those from before the last change'}
          .{' '}
          <button type="button" class="small-button" onClick={desk.resumeEstimate}>
            Go on
          </button>
        </p>
      )}
    </div>
  );
}
const NO_FAULTS: readonly { readonly where: string; readonly message: string }[] = [];
