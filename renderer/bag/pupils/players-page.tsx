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
import { useWords } from '../../state/use-words.ts';

const playerFiles = remember((files: AppState['files']): readonly FileEntry[] =>
  (files ?? []).filter(({ kind }) => kind === 'player'),
);

export function PlayersPage() {
  const words = useWords();
  const { host, duties } = useTools();
  const desk = useDesk();
  const files = useApp((state) => playerFiles(state.files));
  const open = useApp((state) => state.player?.entry.token ?? null);
  const revision = useApp((state) => state.player?.revision ?? '');
  const [lines, setLines] = useState<readonly PupilLine[] | null>(null);
  useEffect(() => {
    let isWanted = true;
    void Promise.all(files.slice(0, MOST_PUPILS).map((entry) => readPupil(host, entry, words))).then(
      (read) => {
        if (isWanted) setLines(read);
      },
    );
    return () => {
      isWanted = false;
    };
  }, [host, files, revision, words]);
  const pupils = (lines ?? []).filter((line): line is Pupil => !('fault' in line));
  return (
    <div class="players-page">
      <section class="bag-card" aria-label={words.player.pupils.title}>
        <div class="page-head">
          <h2>{words.player.pupils.title}</h2>
          <button
            type="button"
            class="small-button"
            onClick={() => desk.store.dispatch({ type: 'making', on: true })}
          >
            {words.player.make.newPlayer}
          </button>
        </div>
        {lines === null ? (
          <p class="faint" role="status">
            {words.player.pupils.reading}
          </p>
        ) : (
          <table class="bag-table">
            <thead>
              <tr>
                <th scope="col">{words.player.person.player}</th>
                <th scope="col">{words.player.handicap}</th>
                <th scope="col">{words.player.pages.clubs}</th>
                <th scope="col">{words.player.pages.shots}</th>
                <th scope="col">{words.player.pupils.lastShot}</th>
                <th scope="col">{words.player.pupils.file}</th>
                <th scope="col">
                  <span class="unseen">{words.player.pupils.open}</span>
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
          <p class="faint">{words.player.pupils.more({ most: MOST_PUPILS, files: files.length })}</p>
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
  const words = useWords();
  const { entry } = line;
  const cells =
    'fault' in line
      ? null
      : [
          line.handicap === null ? '–' : handicapText(line.handicap),
          line.clubs > MOST_CLUBS_IN_PLAY
            ? words.player.pupils.kept({ clubs: line.clubs })
            : String(line.clubs),
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
        {entry.readOnly && <span class="tag">{words.player.pupils.demo}</span>}
      </td>
      <td>
        {isOpen ? (
          <span class="faint">{words.player.pupils.isOpen}</span>
        ) : (
          <button
            type="button"
            class="small-button"
            aria-label={words.player.pupils.openNamed({ name: entry.name })}
            onClick={choose}
          >
            {words.player.pupils.open}
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
