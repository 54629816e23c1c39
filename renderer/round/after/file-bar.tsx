/** Which round is at hand, how its file fares, and the others to open. */

import { useEffect, useState } from 'preact/hooks';
import type { FileEntry } from '../../../electron/contract/host.ts';
import { Field } from '../../panels/field.tsx';
import { useTools } from '../../state/use-app.ts';
import type { OpenRound } from './round-file.ts';
import { roundFileDesk, useRoundFiles } from './use-round-file.ts';

export function FileBar() {
  const tools = useTools();
  const { keeper } = roundFileDesk(tools);
  const open = useRoundFiles((state) => state.open);
  const files = useRoundList(open?.entry.token ?? null);
  return (
    <>
      <div class="file-line">
        {files.length > 0 && (
          <Field
            name="Round"
            control={(id) => (
              <select
                id={id}
                value={open?.entry.token ?? ''}
                onChange={(event) => {
                  const entry = files.find(({ token }) => token === event.currentTarget.value);
                  if (entry !== undefined) void keeper.openFile(entry);
                }}
              >
                <option value="">{open === null ? 'Open an earlier round' : ''}</option>
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
              Close this round
            </button>
          </>
        )}
      </div>
      {open !== null && <Troubles open={open} />}
    </>
  );
}

function SaveState({ open }: { readonly open: OpenRound }) {
  const words =
    open.readOnlyWhy !== null
      ? 'to look at only'
      : open.status === 'saving'
        ? 'saving …'
        : open.document === open.saved
          ? 'saved'
          : 'typing is written down, saved in a moment';
  return (
    <span role="status" class="faint" data-save-state={open.document === open.saved ? 'saved' : 'unsaved'}>
      {open.entry.name}: {words}
    </span>
  );
}

function Troubles({ open }: { readonly open: OpenRound }) {
  const { keeper } = roundFileDesk(useTools());
  const { lost } = open;
  return (
    <>
      {open.readOnlyWhy !== null && <p class="warning">{open.readOnlyWhy}</p>}
      {open.trouble !== null && (
        <div class="fault-box" role="alert">
          {open.trouble}{' '}
          <button type="button" class="small-button" onClick={() => void keeper.save()}>
            Save now
          </button>
        </div>
      )}
      {open.isChangedOnDisk && (
        <div class="fault-box" role="alert">
          Another program changed this file. What you typed is still here.{' '}
          <button type="button" class="small-button" onClick={() => void keeper.keepAsCopy()}>
            Keep mine as a copy
          </button>{' '}
          <button type="button" class="small-button" onClick={() => void keeper.openFile(open.entry)}>
            Read the file again
          </button>
        </div>
      )}
      {lost !== null && (
        <div class="fault-box" role="alert">
          Typing from {new Date(lost.writtenAt).toLocaleString()} was not saved then:{' '}
          {lost.document.played.length} holes.{' '}
          <button type="button" class="small-button" onClick={() => void keeper.bringBack(lost)}>
            Bring it back
          </button>{' '}
          <button type="button" class="small-button" onClick={() => void keeper.giveUp(lost)}>
            Leave it
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
