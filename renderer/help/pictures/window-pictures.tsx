/** Pictures of the window in the guide, taken by tests/browser/guide-pictures.ts. */

import type { Words } from '../../../core/words/words.ts';
import { useWords } from '../../state/use-words.ts';
import afterTheRound from './after-the-round.png';
import drawAHole from './draw-a-hole.png';
import enterShots from './enter-shots.png';
import moveTheAim from './move-the-aim.png';
import printTheCard from './print-the-card.png';
import readTheOdds from './read-the-odds.png';

interface WindowPictureFile {
  /** The page's own file. */
  readonly address: string;
  /** In pixels; the page keeps the room before the file is there, so that nothing moves while it is read. */
  readonly width: number;
  readonly height: number;
  readonly words: keyof Words['help']['windowPictures'];
}

/** By the name that a page asks for. */
export const WINDOW_PICTURES: Readonly<Record<string, WindowPictureFile>> = {
  'read-the-odds': { address: readTheOdds, width: 492, height: 566, words: 'readTheOdds' },
  'move-the-aim': { address: moveTheAim, width: 440, height: 340, words: 'moveTheAim' },
  'enter-shots': { address: enterShots, width: 588, height: 444, words: 'enterShots' },
  'draw-a-hole': { address: drawAHole, width: 620, height: 440, words: 'drawAHole' },
  'print-the-card': { address: printTheCard, width: 396, height: 559, words: 'printTheCard' },
  'after-the-round': { address: afterTheRound, width: 620, height: 361, words: 'afterTheRound' },
};

export function WindowPicture({ name }: { readonly name: string }) {
  const { address, width, height, words } = WINDOW_PICTURES[name]!;
  const told = useWords().help.windowPictures[words];
  return (
    <figure class="help-figure">
      <img class="window-picture" src={address} alt={told.alt} width={width} height={height} />
      <figcaption>{told.caption}</figcaption>
    </figure>
  );
}
