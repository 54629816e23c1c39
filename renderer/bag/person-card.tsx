/** Who the player is: name, handicap, group, hand; where the numbers come from; save, copy, another player. */

import { faultText, faultsText } from '../../core/words/told.ts';
import { useId } from 'preact/hooks';
import type { PlayerDocument } from '../../core/player/format.ts';
import { levelName } from '../../core/player/presets.ts';
import { type Fault, succeed } from '../../core/result.ts';
import { NumberField } from './number-field.tsx';
import { isFresh, isUnsaved } from './state/reduce-bag.ts';
import { useBag, useDesk } from './state/use-bag.ts';
import { WorkNote } from './work-note.tsx';
import { groupChoices } from './words.ts';
import { useWords } from '../state/use-words.ts';

export function PersonCard() {
  const words = useWords();
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
    <section class="person-card" aria-label={words.player.person.player}>
      <span class="bag-field wide">
        <label for={nameId}>{words.player.name}</label>
        <input
          id={nameId}
          type="text"
          value={document.name}
          maxLength={120}
          disabled={locked}
          onChange={(event) => {
            const name = event.currentTarget.value.trim();
            if (name === '') event.currentTarget.value = document.name;
            else change(words.player.person.steps.name, { name });
          }}
        />
      </span>
      <div class="bag-row">
        <NumberField
          name={words.player.handicap}
          value={document.handicap ?? null}
          least={-10}
          most={54}
          decimals={1}
          disabled={locked}
          take={(handicap) => change(words.player.person.steps.handicap, { handicap })}
        />
        <span class="bag-field">
          <label for={groupId}>{words.player.person.player}</label>
          <select
            id={groupId}
            value={document.group ?? 'men'}
            disabled={locked}
            onChange={(event) => {
              const group = groupChoices(words).find(([known]) => known === event.currentTarget.value)?.[0];
              if (group !== undefined) change(words.player.person.steps.group, { group });
            }}
          >
            {groupChoices(words).map(([group, name]) => (
              <option key={group} value={group}>
                {name}
              </option>
            ))}
          </select>
        </span>
        <span class="bag-field">
          <label for={handId}>{words.player.person.hand}</label>
          <select
            id={handId}
            value={document.hand ?? 'right'}
            disabled={locked}
            onChange={(event) =>
              change(words.player.person.steps.hand, {
                hand: event.currentTarget.value === 'left' ? 'left' : 'right',
              })
            }
          >
            <option value="right">{words.player.person.right}</option>
            <option value="left">{words.player.person.left}</option>
          </select>
        </span>
      </div>
      <NumberField
        name={words.player.person.halfLife}
        unit={words.player.person.days}
        value={document.settings?.halfLifeDays ?? null}
        least={1}
        most={36500}
        decimals={0}
        placeholder={words.player.person.never}
        disabled={locked}
        clear={() => {
          const settings = { ...document.settings };
          Reflect.deleteProperty(settings, 'halfLifeDays');
          change(words.player.person.steps.oldShots, { settings });
        }}
        take={(halfLifeDays) =>
          change(words.player.person.steps.oldShots, { settings: { ...document.settings, halfLifeDays } })
        }
      />
      <SaveButtons />
    </section>
  );
}

function SaveButtons() {
  const words = useWords();
  const desk = useDesk();
  const unsaved = useBag((state) => state.file !== null && isUnsaved(state.file));
  const may = useBag((state) => state.file?.access.may ?? 'wait');
  const isDemo = useBag((state) => state.file?.access.may === 'read' && state.file.access.why === 'demo');
  const saving = useBag((state) => state.file?.saving === true);
  return (
    <div class="save-row">
      {may === 'read' ? (
        <button type="button" class="main-button" onClick={() => void desk.saveCopy()}>
          {isDemo ? words.player.file.makeYours : words.player.file.copy}
        </button>
      ) : (
        <button
          type="button"
          class="main-button"
          disabled={!unsaved || saving || may !== 'write'}
          onClick={() => void desk.save()}
          title={words.player.file.saveTitle}
        >
          {saving ? words.player.file.saving : unsaved ? words.player.file.save : words.player.file.saved}
        </button>
      )}
      <button
        type="button"
        class="small-button"
        onClick={() => desk.store.dispatch({ type: 'making', on: true })}
      >
        {words.player.make.newPlayer}
      </button>
    </div>
  );
}

/** Whose numbers these are, said plainly above everything else. */
export function WhoseNumbers() {
  const words = useWords();
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
        <strong>{words.player.whose.fault}</strong>
        {faults.map((fault, i) => (
          <p key={i}>{faultsText([fault], words)}</p>
        ))}
      </div>
    );
  const planFault = report?.model.ok === false ? report.model.error[0] : undefined;
  return (
    <div class="whose">
      {report !== null && report.shots === 0 && (
        <p class="not-yours" role="note">
          <strong>{words.player.whose.notYours}</strong>{' '}
          {words.player.whose.preset({ level: levelName(report.level, words) })}
        </p>
      )}
      {report !== null && report.shots > 0 && (
        <p class="faint" role="status">
          {words.player.whose.count({
            invented: invented ? words.player.whose.invented : '',
            shots: words.player.whose.shots({ count: report.shots }),
            level: levelName(report.level, words),
          })}
        </p>
      )}
      {planFault !== undefined && (
        <p class="warning" role="alert">
          {faultText(planFault, words).message}
        </p>
      )}
      {work === 'busy' && !fresh && (
        <WorkNote label={words.player.whose.working} share={share} stop={desk.stopEstimate}>
          {words.player.whose.workingOn}
        </WorkNote>
      )}
      {work === 'stopped' && (
        <p class="work-note" role="status">
          {words.player.whose.stopped({
            what: report === null ? words.player.whose.nothingYet : words.player.whose.before,
          })}{' '}
          <button type="button" class="small-button" onClick={desk.resumeEstimate}>
            {words.player.goOn}
          </button>
        </p>
      )}
    </div>
  );
}
const NO_FAULTS: readonly Fault[] = [];
