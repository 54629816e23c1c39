/** Names of clubs as tables write them (`7i`, `Iron 7`, `PW`, `56°`) matched with the names in the bag. */

import type { BagClub } from '../format.ts';

/** What a name says: a kind and a number or a loft. */
interface ClubSign {
  readonly kind: 'driver' | 'wood' | 'hybrid' | 'iron' | 'wedge' | 'putter';
  /** 7 of a 7-iron; a letter of a wedge (`p`, `g`, `s`, `l`). */
  readonly mark: string;
}

/** For every name that is understood, the club of the bag that it means. */
export function matchClubs(names: readonly string[], bag: readonly BagClub[]): Record<string, string> {
  const matched: Record<string, string> = {};
  for (const name of names) {
    const club = findClub(name, bag);
    if (club !== undefined) matched[name] = club.name;
  }
  return matched;
}

export function findClub(name: string, bag: readonly BagClub[]): BagClub | undefined {
  const wanted = plain(name);
  const same = bag.find((club) => plain(club.name) === wanted);
  if (same !== undefined) return same;
  const sign = signOf(name);
  if (sign !== undefined) {
    const alike = bag.filter((club) => {
      const other = signOf(club.name);
      return other?.kind === sign.kind && other.mark === sign.mark;
    });
    if (alike.length === 1) return alike[0];
  }
  // A loft alone names a wedge where only one has it.
  const loft = /(\d{2})\s*(?:°|deg|degrees)?\s*(?:wedge)?$/iu.exec(name.trim());
  if (loft !== null) {
    const wedges = bag.filter(
      (club) => club.kind === 'wedge' && Math.abs(club.loftDeg - Number(loft[1])) < 0.75,
    );
    if (wedges.length === 1) return wedges[0];
  }
  return undefined;
}

function plain(name: string): string {
  return name.toLowerCase().replace(/[\s\-_.]+/gu, '');
}

function signOf(name: string): ClubSign | undefined {
  const text = name
    .toLowerCase()
    .replace(/[\s\-_.]+/gu, ' ')
    .trim();
  const number = /(\d{1,2})/u.exec(text)?.[1];
  if (/^(?:dr|d|driver|1 ?w|1 ?wood|holz 1)$/u.test(text)) return { kind: 'driver', mark: '1' };
  if (/^(?:pt|putt|putter)$/u.test(text)) return { kind: 'putter', mark: '' };
  const wedge = wedgeMark(text);
  if (wedge !== undefined) return { kind: 'wedge', mark: wedge };
  if (number === undefined || Number(number) > 12) return undefined;
  if (
    /^\d ?(?:w|wood)$|^wood ?\d$|^(?:holz|fw|fairway|fairway wood|bois|w) ?\d$|^\d ?(?:holz|fw|fairway|fairway wood)$/u.test(
      text,
    )
  )
    return { kind: 'wood', mark: number };
  if (/^\d ?(?:h|hy|hyb|hybrid|rescue|ut|utility)$|^(?:h|hy|hyb|hybrid|rescue|ut|utility) ?\d$/u.test(text))
    return { kind: 'hybrid', mark: number };
  if (/^\d{1,2} ?(?:i|iron|eisen|fer)?$|^(?:i|iron|eisen|fer) ?\d{1,2}$/u.test(text))
    return { kind: 'iron', mark: number };
  return undefined;
}

function wedgeMark(text: string): string | undefined {
  if (/^(?:pw|pitching(?: wedge)?|pitch)$/u.test(text)) return 'p';
  if (/^(?:gw|aw|uw|gap(?: wedge)?|approach(?: wedge)?|attack(?: wedge)?)$/u.test(text)) return 'g';
  if (/^(?:sw|sand(?: ?wedge)?)$/u.test(text)) return 's';
  if (/^(?:lw|lob(?: ?wedge)?)$/u.test(text)) return 'l';
  return undefined;
}
