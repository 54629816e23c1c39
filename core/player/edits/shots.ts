/** Changes of the measured shots of a player file. Places are indices into the file's list. */

import { type Result, refuse, succeed } from '../../result.ts';
import { MOST_SHOTS, type PlayerDocument, type RecordedShot } from '../format.ts';
import { told, type Told } from '../../words/told.ts';

export function addShots(
  document: PlayerDocument,
  shots: readonly RecordedShot[],
): Result<PlayerDocument, Told> {
  const known = document.shots ?? [];
  if (known.length + shots.length > MOST_SHOTS)
    return refuse(
      told(({ faults }) => faults.player.noRoom, { most: MOST_SHOTS, room: MOST_SHOTS - known.length }),
    );
  return succeed({ ...document, shots: [...known, ...shots] });
}

export function replaceShot(document: PlayerDocument, at: number, shot: RecordedShot): PlayerDocument {
  return { ...document, shots: (document.shots ?? []).map((known, i) => (i === at ? shot : known)) };
}

/** Values of these shots; undefined takes one out. */
export function changeShots(
  document: PlayerDocument,
  places: ReadonlySet<number>,
  change: { readonly [K in keyof RecordedShot]?: RecordedShot[K] | undefined },
): PlayerDocument {
  const changed = (shot: RecordedShot): RecordedShot => {
    const next = { ...shot, ...change } as RecordedShot;
    for (const [key, value] of Object.entries(change))
      if (value === undefined) Reflect.deleteProperty(next, key);
    return next;
  };
  return {
    ...document,
    shots: (document.shots ?? []).map((shot, i) => (places.has(i) ? changed(shot) : shot)),
  };
}

export function removeShots(document: PlayerDocument, places: ReadonlySet<number>): PlayerDocument {
  return { ...document, shots: (document.shots ?? []).filter((_, i) => !places.has(i)) };
}
