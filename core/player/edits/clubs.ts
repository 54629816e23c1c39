/** Changes of the bag: each takes a player file's content and gives the changed one, or says why it cannot be. */

import { type Result, refuse, succeed } from '../../result.ts';
import { type BagClub, MOST_CLUBS, type PlayerDocument } from '../format.ts';
import { told, type Told } from '../../words/told.ts';

/** What may be changed of a club; `undefined` takes a member away. */
export type ClubChange = { readonly [K in keyof KnownClub]?: KnownClub[K] | undefined };
type KnownClub = Pick<
  BagClub,
  'name' | 'kind' | 'loftDeg' | 'lengthM' | 'swings' | 'inRound' | 'notFrom' | 'stated' | 'launch'
>;

/** Puts a club where its loft belongs. Refuses a name that is taken, and a full bag. */
export function addClub(document: PlayerDocument, club: BagClub): Result<PlayerDocument, Told> {
  if (document.bag.length >= MOST_CLUBS)
    return refuse(told(({ faults }) => faults.bag.full, { most: MOST_CLUBS }));
  const problem = nameFault(document, club.name, null);
  if (problem !== null) return refuse(problem);
  const at = document.bag.findIndex(
    (other) => other.kind === 'putter' || (club.kind !== 'putter' && other.loftDeg > club.loftDeg),
  );
  const place = club.kind === 'putter' || at < 0 ? document.bag.length : at;
  return succeed({
    ...document,
    bag: [...document.bag.slice(0, place), club, ...document.bag.slice(place)],
  });
}

/** Changes one club; a new name is given to its shots and to the mappings of tables as well. */
export function changeClub(
  document: PlayerDocument,
  name: string,
  change: ClubChange,
): Result<PlayerDocument, Told> {
  if (change.name !== undefined) {
    const problem = nameFault(document, change.name, name);
    if (problem !== null) return refuse(problem);
  }
  if (change.swings?.length === 0) return refuse(told(({ faults }) => faults.bag.oneSwing));
  const bag = document.bag.map((club) => (club.name === name ? changed(club, change) : club));
  const renamed = change.name ?? name;
  return succeed(renamed === name ? { ...document, bag } : withName({ ...document, bag }, name, renamed));
}

/** Takes a club out. Its shots stay in the file, and count again where a club of that name comes back. */
export function removeClub(document: PlayerDocument, name: string): Result<PlayerDocument, Told> {
  const bag = document.bag.filter((club) => club.name !== name);
  if (bag.every(({ kind }) => kind === 'putter')) return refuse(told(({ faults }) => faults.bag.oneClub));
  return succeed({ ...document, bag });
}

function changed(club: BagClub, change: ClubChange): BagClub {
  const next: Record<string, unknown> = { ...club };
  for (const [key, value] of Object.entries(change)) {
    if (value === undefined) Reflect.deleteProperty(next, key);
    else next[key] = value;
  }
  return next as BagClub;
}

function nameFault(document: PlayerDocument, name: string, own: string | null): Told | null {
  if (name.trim() === '') return told(({ faults }) => faults.bag.noName);
  if (name.length > 60) return told(({ faults }) => faults.bag.longName);
  const isTaken = document.bag.some((club) => club.name === name && club.name !== own);
  return isTaken ? told(({ faults }) => faults.bag.taken, { name }) : null;
}

function withName(document: PlayerDocument, before: string, after: string): PlayerDocument {
  const sources = document.settings?.sources;
  const names = (known: Record<string, string>): Record<string, string> =>
    Object.fromEntries(
      Object.entries(known).map(([written, club]) => [written, club === before ? after : club]),
    );
  return {
    ...document,
    ...(document.shots === undefined
      ? {}
      : {
          shots: document.shots.map((shot) => (shot.club === before ? { ...shot, club: after } : shot)),
        }),
    ...(sources === undefined
      ? {}
      : {
          settings: {
            ...document.settings,
            sources: sources.map((source) => ({
              ...source,
              mapping: {
                ...source.mapping,
                ...(source.mapping.club === before ? { club: after } : {}),
                ...(source.mapping.clubNames === undefined
                  ? {}
                  : { clubNames: names(source.mapping.clubNames) }),
              },
            })),
          },
        }),
  };
}
