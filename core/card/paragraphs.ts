/** The words of a card, as headed lines in the order in which they are needed. */

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
export function cardParagraphs(card: CardHole, notes: CardNotes): readonly Paragraph[] {
  const { units } = card;
  const distances = [
    ...card.carries.map(({ words, side, nearM, farM }) => {
      const where = side === 'across' ? '' : ` ${side}`;
      return `${words}${where} ${lengthNumber(nearM, units)}, over ${lengthNumber(farM, units)}`;
    }),
    ...(card.runOut === null
      ? []
      : [`fairway ends ${lengthNumber(card.runOut.atM, units)}, then ${card.runOut.words}`]),
  ];
  const paragraphs: Paragraph[] = [
    { label: 'Play', text: `${card.club}, carry ${lengthWords(card.carryM, units)}` },
    { label: 'Aim', text: card.aim },
  ];
  const add = (label: string, text: string | null | undefined): void => {
    if (text !== null && text !== undefined && text !== '') paragraphs.push({ label, text });
  };
  add('Miss', card.safeSide?.words);
  add(`From the tee (${units === 'yards' ? 'yd' : 'm'})`, distances.join('; '));
  add('Leaves', card.leave.words);
  add('Hole', card.green?.words);
  add('Budget', card.budget?.words);
  add('Wind', notes.wind);
  add('Day', card.day);
  add('Remember', notes.reminder);
  for (const { where, share, what } of card.badPlaces) add(`${where}, ${Math.round(100 * share)} %`, what);
  add('Why', card.reason);
  return paragraphs;
}
