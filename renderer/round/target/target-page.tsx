/** The first page of the room: a target, its odds, the budgets and the ledger. */

import { useOutlook, useRoundHoles } from '../state/use-round.ts';
import { HolesTable } from './holes-table.tsx';
import { LedgerPanel } from './ledger-panel.tsx';
import { OddsPanel } from './odds-panel.tsx';
import { TargetForm } from './target-form.tsx';
import { useWords } from '../../state/use-words.ts';

export function TargetPage() {
  const words = useWords();
  const outlook = useOutlook();
  const holes = useRoundHoles();
  return (
    <>
      <h2>{words.round.target.title}</h2>
      <TargetForm />
      {outlook === null ? (
        <p class="faint">{words.round.target.comes}</p>
      ) : (
        <>
          <OddsPanel outlook={outlook} holes={holes} />
          <HolesTable outlook={outlook} holes={holes} />
          <LedgerPanel holes={holes} />
        </>
      )}
    </>
  );
}
