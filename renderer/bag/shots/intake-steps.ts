/** What happens to a table of shots on its way in: opened, mapped, read, mended, taken. */

import { faultText } from '../../../core/words/told.ts';
import type { Words } from '../../../core/words/words.ts';
import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
import { ruleOf } from '../../../core/player/csv/mapping.ts';
import { mendRows } from '../../../core/player/csv/mend.ts';
import { rememberSource } from '../../../core/player/csv/sources.ts';
import { addShots } from '../../../core/player/edits/shots.ts';
import { succeed } from '../../../core/result.ts';
import type { BagDesk } from '../state/bag-desk.ts';
import type { Intake } from '../state/bag-state.ts';

function patch(desk: BagDesk, change: Partial<Intake>): void {
  const { intake } = desk.store.state();
  if (intake !== null) desk.store.dispatch({ type: 'intake', intake: { ...intake, ...change } });
}

export async function openIntake(
  desk: BagDesk,
  source: File | string,
  name: string,
  words: Words,
): Promise<void> {
  const { file } = desk.store.state();
  if (file === null) return;
  const intake: Intake = {
    name,
    stage: { at: 'opening' },
    table: null,
    mapping: null,
    names: [],
    preview: [],
    fault: null,
    withDuplicates: false,
  };
  desk.store.dispatch({ type: 'intake', intake });
  const opened = await desk.office.openTable(source, name, file.history.present);
  if (!opened.ok) {
    const { where, message } = faultText(opened.error, words);
    patch(desk, { stage: { at: 'refused', message: `${where}: ${message}` } });
    return;
  }
  patch(desk, { stage: { at: 'mapping' }, table: opened.value });
  await setMapping(desk, opened.value.mapping);
}

/** Takes a mapping on trial: the preview follows, and the names where the column of clubs is another. */
export async function setMapping(desk: BagDesk, mapping: ShotMapping): Promise<void> {
  const { intake, file } = desk.store.state();
  if (intake === null || file === null) return;
  const before = intake.mapping === null ? undefined : ruleOf(intake.mapping, 'club')?.index;
  const column = ruleOf(mapping, 'club')?.index;
  const isMoved =
    column !== before ||
    mapping.skipRows !== intake.mapping?.skipRows ||
    mapping.delimiter !== intake.mapping.delimiter;
  patch(desk, { mapping, stage: { at: 'mapping' }, fault: null });
  // Another change may come meanwhile; its own answers follow.
  const isWanted = (): boolean => desk.store.state().intake?.mapping === mapping;
  const preview = await desk.office.preview(mapping, file.history.present);
  if (isWanted()) patch(desk, { preview });
  if (!isMoved) return;
  const names = column === undefined ? [] : await desk.office.texts(mapping, column);
  if (isWanted()) patch(desk, { names });
}

export async function readIntake(desk: BagDesk, words: Words): Promise<void> {
  const { intake, file } = desk.store.state();
  if (intake === null || file === null || intake.mapping === null) return;
  patch(desk, { stage: { at: 'reading', progress: null }, fault: null });
  const read = await desk.office.readTable(intake.mapping, file.history.present, (progress) => {
    if (desk.store.state().intake?.stage.at === 'reading')
      patch(desk, { stage: { at: 'reading', progress } });
  });
  if (read.ok) patch(desk, { stage: { at: 'read', table: read.value } });
  else if (read.error === 'cancelled') patch(desk, { stage: { at: 'mapping' } });
  else patch(desk, { stage: { at: 'mapping' }, fault: faultText(read.error, words).message });
}

export function mendIntake(desk: BagDesk, cells: ReadonlyMap<number, readonly string[]>): void {
  const { intake, file } = desk.store.state();
  if (intake?.stage.at !== 'read' || intake.mapping === null || file === null) return;
  const table = mendRows(intake.stage.table, cells, intake.mapping, file.history.present.bag);
  patch(desk, { stage: { at: 'read', table } });
}

/** The shots that would be added as things stand. */
export function shotsToTake(intake: Intake): number {
  if (intake.stage.at !== 'read') return 0;
  const { accepted, duplicates } = intake.stage.table;
  return accepted.length + (intake.withDuplicates ? duplicates.length : 0);
}

/** Adds the shots and remembers how the table was read, as one step. */
export function takeIntake(desk: BagDesk, words: Words): void {
  const { intake } = desk.store.state();
  if (intake?.stage.at !== 'read' || intake.table === null || intake.mapping === null) return;
  const { table, mapping, name, stage, withDuplicates } = intake;
  const rows = [...stage.table.accepted, ...(withDuplicates ? stage.table.duplicates : [])];
  rows.sort((a, b) => a.line - b.line);
  const shots = rows.map(({ shot }) => shot);
  const counted = words.shots.count({ count: shots.length });
  const taken = desk.edit(words.shots.addStep({ shots: counted, name }), (document) => {
    const added = addShots(document, shots);
    return added.ok ? succeed(rememberSource(added.value, name, table.shape, mapping)) : added;
  });
  if (!taken) return;
  desk.store.dispatch({ type: 'said', words: words.shots.added({ shots: counted }) });
  closeIntake(desk);
}

export function closeIntake(desk: BagDesk): void {
  desk.store.dispatch({ type: 'intake', intake: null });
  void desk.office.closeTable();
}
