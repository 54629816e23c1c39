/** What rating and slope make of the handicaps in the game that is played: the strokes on which points or holes are counted. */

import { ALLOWANCE, courseHandicap, playingHandicap } from '../../../core/round/handicap.ts';
import { useApp } from '../../state/use-app.ts';
import { useWords } from '../../state/use-words.ts';
import { matchHandicaps } from '../effects/follow-playing.ts';
import { handicapOf, ratingOf } from '../state/planned-holes.ts';
import { useRound } from '../state/use-round.ts';

export function StrokesNote() {
  const words = useWords();
  const wishes = useRound((state) => state.wishes);
  const course = useApp((state) => state.course?.value ?? null);
  const player = useApp((state) => state.player?.value ?? null);
  if (course === null) return null;
  const told = words.round.playing;
  const rating = ratingOf(wishes, course);
  const index =
    player?.handicap === undefined ? words.round.target.noHandicap : words.figures.short(player.handicap, 1);
  const own = courseHandicap(handicapOf(player), rating);
  const match = matchHandicaps(wishes, course, player);
  const said =
    wishes.game === 'match'
      ? told.matchHandicaps({
          ...{ index, own, theirs: match.theirs },
          theirIndex: words.figures.short(wishes.peerHandicap ?? handicapOf(player), 1),
          difference: match.own - match.theirs,
        })
      : told.pointsHandicaps({
          ...{ index, own },
          playing: playingHandicap(handicapOf(player), rating, ALLOWANCE.stableford),
        });
  return (
    <p class="faint">
      {said}
      {wishes.courseRating === null && ` ${words.round.target.unrated}`}
    </p>
  );
}
