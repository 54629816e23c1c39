/** Notes of one kind on many clubs as one that names them: a new player's thirteen say the same thing. */

import type { Fault } from '../result.ts';
import { told, type Told, toldFault } from '../words/told.ts';

/** A club, with its swing where that is not the full one. */
type Name = string | Told;

interface Group {
  /** Where the folded note stands: the place of the first. */
  readonly first: Fault;
  readonly clubs: Name[];
  readonly handicap: number;
  isFitted: boolean;
}

/** Clubs without a measured shot that rest on the same preset are told together; all else stays as it is. */
export function foldNotes(notes: readonly Fault[]): readonly Fault[] {
  const groups = new Map<number, Group>();
  for (const note of notes) {
    const parts = presetNote(note);
    if (parts === null) continue;
    const group = groups.get(parts.handicap);
    if (group === undefined) groups.set(parts.handicap, { first: note, ...parts, clubs: [parts.club] });
    else {
      group.clubs.push(parts.club);
      group.isFitted ||= parts.isFitted;
    }
  }
  return notes.flatMap((note): readonly Fault[] => {
    const group = groups.get(presetNote(note)?.handicap ?? NaN);
    if (group === undefined || group.clubs.length < 2) return [note];
    return note === group.first ? [folded(group)] : [];
  });
}

function presetNote({
  told: entry,
}: Fault): { readonly club: Name; readonly handicap: number; readonly isFitted: boolean } | null {
  const message = entry?.message;
  if (message?.entry.join('.') !== 'faults.player.noShots') return null;
  const { club, handicap, fitted } = message.values;
  return club === undefined || typeof club === 'number' || typeof handicap !== 'number'
    ? null
    : { club, handicap, isFitted: fitted !== '' };
}

function folded({ first, clubs, handicap, isFitted }: Group): Fault {
  return toldFault({
    severity: first.severity,
    code: first.code,
    where: told(({ player }) => player.bag.name),
    message: told(({ faults }) => faults.player.manyNoShots, {
      clubs: clubs.reduce((before, second) =>
        told(({ features }) => features.joined, { first: before, second }),
      ),
      handicap,
      fitted: isFitted ? told(({ faults }) => faults.player.allFitted) : '',
    }),
  });
}
