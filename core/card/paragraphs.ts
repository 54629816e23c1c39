/** The words of a card, as headed lines in the order in which they are needed. */

import type { Words } from '../words/words.ts';
import { lengthNumber, lengthWords } from './lengths.ts';
import type { CardHole } from './model.ts';

/** What the day adds to a hole's card. */
export interface CardNotes {
  /** Short lines such as when to eat. */
  readonly reminder: string | null;
  /** How the wind of the day is felt here; null without a wind. */
  readonly wind: string | null;
}

export interface Paragraph {
  readonly label: string;
  readonly text: string;
}

/** What a card says, most needed first: the last go first where the paper has no room. */
export function cardParagraphs(card: CardHole, notes: CardNotes, { cards }: Words): readonly Paragraph[] {
  const { labels, carries } = cards;
  const { units } = card;
  const distances = [
    ...card.carries.map(({ words, side, nearM, farM }) => {
      const where = side === 'across' ? '' : ` ${carries[side]}`;
      const [near, far] = [lengthNumber(nearM, units), lengthNumber(farM, units)];
      return carries.line({ hazard: words, where, near, far });
    }),
    ...(card.runOut === null
      ? []
      : [carries.runOut({ length: lengthNumber(card.runOut.atM, units), into: card.runOut.words })]),
  ];
  const paragraphs: Paragraph[] = [
    {
      label: labels.play,
      text: cards.clubCarry({ club: card.club, carry: lengthWords(card.carryM, units) }),
    },
    { label: labels.aim, text: card.aim },
  ];
  const add = (label: string, text: string | null | undefined): void => {
    if (text !== null && text !== undefined && text !== '') paragraphs.push({ label, text });
  };
  add(labels.miss, card.safeSide?.words);
  add(labels.fromTee({ unit: units === 'yards' ? 'yd' : 'm' }), distances.join('; '));
  add(labels.leaves, card.leave.words);
  add(labels.hole, card.green?.words);
  add(labels.budget, card.budget?.words);
  add(labels.wind, notes.wind);
  add(labels.day, card.day);
  add(labels.remember, notes.reminder);
  for (const { where, share, what } of card.badPlaces) add(`${where}, ${Math.round(100 * share)} %`, what);
  add(labels.why, card.reason);
  return paragraphs;
}
