/** The first page of the room: a target, its odds, the budgets and the ledger. */

import { useOutlook, useRoundHoles } from '../state/use-round.ts';
import { HolesTable } from './holes-table.tsx';
import { LedgerPanel } from './ledger-panel.tsx';
import { OddsPanel } from './odds-panel.tsx';
import { TargetForm } from './target-form.tsx';

export function TargetPage() {
  const outlook = useOutlook();
  const holes = useRoundHoles();
  return (
    <>
      <h2>What to play for</h2>
      <TargetForm />
      {outlook === null ? (
        <p class="faint">The odds come with the first hole that is worked out.</p>
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
