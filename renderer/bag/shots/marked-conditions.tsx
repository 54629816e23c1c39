/** Lie and weather of all marked shots at once: those of a session that were all hit in the same wind. */

import { useState } from 'preact/hooks';
import { changeShots } from '../../../core/player/edits/shots.ts';
import { succeed } from '../../../core/result.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { type ConditionChange, ConditionFields } from './condition-fields.tsx';
import { useWords } from '../../state/use-words.ts';

export function MarkedConditions({ places }: { readonly places: readonly number[] }) {
  const words = useWords();
  const desk = useDesk();
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const [value, setValue] = useState<ConditionChange>({});
  const said = Object.values(value).some((one) => one !== undefined);
  const many = words.shots.count({ count: places.length });
  return (
    <form
      class="marked-shots"
      aria-label={words.shots.marked.name}
      onSubmit={(event) => {
        event.preventDefault();
        const given = Object.fromEntries(Object.entries(value).filter(([, one]) => one !== undefined));
        desk.edit(words.shots.marked.step({ shots: many }), (document) =>
          succeed(changeShots(document, new Set(places), given)),
        );
      }}
    >
      <ConditionFields
        value={value}
        disabled={locked}
        change={(change) => setValue({ ...value, ...change })}
      />
      <button type="submit" class="small-button" disabled={locked || !said}>
        {words.shots.marked.write({ shots: many })}
      </button>
    </form>
  );
}
