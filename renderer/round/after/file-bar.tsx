/** Which round is at hand, how its file fares, and the others to open. */

import { useEffect, useState } from 'preact/hooks';
import type { FileEntry } from '../../../electron/contract/host.ts';
import { Field } from '../../panels/field.tsx';
import { useTools } from '../../state/use-app.ts';
import type { OpenRound } from './round-file.ts';
import { roundFileDesk, useRoundFiles } from './use-round-file.ts';
import { useWords } from '../../state/use-words.ts';

export function FileBar() {
  const words = useWords();
  const tools = useTools();
  const { keeper } = roundFileDesk(tools);
  const open = useRoundFiles((state) => state.open);
  const files = useRoundList(open?.entry.token ?? null);
  return (
    <>
      <div class="file-line">
        {files.length > 0 && (
          <Field
            name={words.round.file.round}
            control={(id) => (
              <select
                id={id}
                value={open?.entry.token ?? ''}
                onChange={(event) => {
                  const entry = files.find(({ token }) => token === event.currentTarget.value);
                  if (entry !== undefined) void keeper.openFile(entry);
                }}
              >
                <option value="">{open === null ? words.round.file.openEarlier : ''}</option>
                {files.map(({ token, name }) => (
                  <option key={token} value={token}>
                    {name}
                  </option>
                ))}
              </select>
            )}
          />
        )}
        {open !== null && (
          <>
            <SaveState open={open} />
            <button type="button" class="text-button" onClick={() => void keeper.leave()}>
              {words.round.file.close}
            </button>
          </>
        )}
      </div>
      {open !== null && <Troubles open={open} />}
    </>
  );
}

function SaveState({ open }: { readonly open: OpenRound }) {
  const told = useWords().round.file;
  const isSaved = open.document === open.saved;
  const busy = open.status === 'saving' ? told.saving : isSaved ? told.saved : told.soon;
  const state = open.readOnlyWhy !== null ? told.readOnly : busy;
  return (
    <span role="status" class="faint" data-save-state={open.document === open.saved ? 'saved' : 'unsaved'}>
      {open.entry.name}: {state}
    </span>
  );
}

function Troubles({ open }: { readonly open: OpenRound }) {
  const words = useWords();
  const { keeper } = roundFileDesk(useTools());
  const { lost } = open;
  return (
    <>
      {open.readOnlyWhy !== null && <p class="warning">{open.readOnlyWhy}</p>}
      {open.trouble !== null && (
        <div class="fault-box" role="alert">
          {open.trouble}{' '}
          <button type="button" class="small-button" onClick={() => void keeper.save()}>
            {words.round.file.saveNow}
          </button>{' '}
          <button type="button" class="small-button" onClick={() => void keeper.keepAsCopy()}>
            {words.round.file.keepMine}
          </button>{' '}
          <button type="button" class="small-button" onClick={() => void keeper.drop()}>
            {words.round.file.drop}
          </button>
        </div>
      )}
      {open.isChangedOnDisk && (
        <div class="fault-box" role="alert">
          {words.round.file.changed}{' '}
          <button type="button" class="small-button" onClick={() => void keeper.keepAsCopy()}>
            {words.round.file.keepMine}
          </button>{' '}
          <button type="button" class="small-button" onClick={() => void keeper.readAgain()}>
            {words.round.file.readAgain}
          </button>
        </div>
      )}
      {lost !== null && (
        <div class="fault-box" role="alert">
          {words.round.file.lost({
            when: words.figures.moment(lost.writtenAt, 'day'),
            holes: lost.document.played.length,
          })}
          <button type="button" class="small-button" onClick={() => void keeper.bringBack(lost)}>
            {words.round.file.bringBack}
          </button>{' '}
          <button type="button" class="small-button" onClick={() => void keeper.giveUp(lost)}>
            {words.round.file.leave}
          </button>
        </div>
      )}
    </>
  );
}

/** Round files of the workspace, newest first; read again when one is opened or closed. */
export function useRoundList(openToken: string | null): readonly FileEntry[] {
  const { host } = useTools();
  const [files, setFiles] = useState<readonly FileEntry[]>([]);
  useEffect(() => {
    let isOld = false;
    const list = async (): Promise<void> => {
      const answer = await host.list();
      if (!isOld && answer.ok)
        setFiles(
          answer.value.filter(({ kind }) => kind === 'round').sort((a, b) => b.modifiedAt - a.modifiedAt),
        );
    };
    void list();
    return () => {
      isOld = true;
    };
  }, [host, openToken]);
  return files;
}
