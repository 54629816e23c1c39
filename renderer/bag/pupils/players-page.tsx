/** Several players: the list of all files in the folder, and two of them compared on one hole. */

import { useEffect, useState } from 'preact/hooks';
import { MOST_CLUBS_IN_PLAY } from '../../../core/player/format.ts';
import type { FileEntry } from '../../../electron/contract/host.ts';
import { remember } from '../../state/remember.ts';
import type { AppState } from '../../state/app-state.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { useDesk } from '../state/use-bag.ts';
import { ComparePlayers } from './compare-players.tsx';
import { MOST_PUPILS, type Pupil, type PupilLine, readPupil } from './pupil-list.ts';

const playerFiles = remember((files: AppState['files']): readonly FileEntry[] =>
  (files ?? []).filter(({ kind }) => kind === 'player'),
);

export function PlayersPage() {
  const { host, duties } = useTools();
  const desk = useDesk();
  const files = useApp((state) => playerFiles(state.files));
  const open = useApp((state) => state.player?.entry.token ?? null);
  const revision = useApp((state) => state.player?.revision ?? '');
  const [lines, setLines] = useState<readonly PupilLine[] | null>(null);
  useEffect(() => {
    let isWanted = true;
    void Promise.all(files.slice(0, MOST_PUPILS).map((entry) => readPupil(host, entry))).then((read) => {
      if (isWanted) setLines(read);
    });
    return () => {
      isWanted = false;
    };
  }, [host, files, revision]);
  const pupils = (lines ?? []).filter((line): line is Pupil => !('fault' in line));
  return (
    <div class="players-page">
      <section class="bag-card" aria-label="Players in the folder">
        <div class="page-head">
          <h2>Players in the folder</h2>
          <button
            type="button"
            class="small-button"
            onClick={() => desk.store.dispatch({ type: 'making', on: true })}
          >
            New player
          </button>
        </div>
        {lines === null ? (
          <p class="faint" role="status">
            Reading the players …
          </p>
        ) : (
          <table class="bag-table">
            <thead>
              <tr>
                <th scope="col">Player</th>
                <th scope="col">Handicap</th>
                <th scope="col">Clubs</th>
                <th scope="col">Shots</th>
                <th scope="col">Last shot</th>
                <th scope="col">File</th>
                <th scope="col">
                  <span class="unseen">Open</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {lines.map((line) => (
                <PupilRow
                  key={line.entry.token}
                  line={line}
                  isOpen={line.entry.token === open}
                  choose={() => void duties.openFile('player', line.entry.token)}
                />
              ))}
            </tbody>
          </table>
        )}
        {files.length > MOST_PUPILS && (
          <p class="faint">
            The first {MOST_PUPILS} of {files.length} are listed. The others are in the list of players above.
          </p>
        )}
      </section>
      <ComparePlayers pupils={pupils} open={open} />
    </div>
  );
}

interface RowProps {
  readonly line: PupilLine;
  readonly isOpen: boolean;
  readonly choose: () => void;
}

function PupilRow({ line, isOpen, choose }: RowProps) {
  const { entry } = line;
  const cells =
    'fault' in line
      ? null
      : [
          line.handicap === null ? '–' : handicapText(line.handicap),
          line.clubs > MOST_CLUBS_IN_PLAY ? `${line.clubs} kept` : String(line.clubs),
          String(line.shots),
          line.lastShot ?? '–',
        ];
  return (
    <tr class={isOpen ? 'is-shown' : undefined}>
      <th scope="row">{'fault' in line ? entry.name : line.name}</th>
      {cells === null ? (
        <td colSpan={4} class="warning">
          {'fault' in line ? line.fault : ''}
        </td>
      ) : (
        cells.map((cell, i) => <td key={i}>{cell}</td>)
      )}
      <td class="faint">
        {entry.name}
        {entry.readOnly && <span class="tag">demo</span>}
      </td>
      <td>
        {isOpen ? (
          <span class="faint">open</span>
        ) : (
          <button type="button" class="small-button" aria-label={`Open ${entry.name}`} onClick={choose}>
            Open
          </button>
        )}
      </td>
    </tr>
  );
}

/** Plus handicaps with their plus. */
export function handicapText(handicap: number): string {
  return handicap < 0 ? `+${-handicap}` : String(handicap);
}
