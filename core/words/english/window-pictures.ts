/** The pictures of the window in the guide: what they show, for eyes and for ears. */

export const windowPictures = {
  readTheOdds: {
    alt: 'The advice for a long par 3: the club, how far it carries and where to aim, the strokes on average, and a bar with the odds of par or better, bogey, and double bogey or worse. Below it a table of shots; the nearest are marked as too close to call.',
    caption: 'What to hit, and the odds, on hole 16 of the demo.',
  },
  moveTheAim: {
    alt: 'Part of the map: a line from the ball to a ring, two ellipses around the ring, sampled balls as dots, some as crosses in a pond; numbers give the distance to the pond and what is left to the hole.',
    caption: 'The aim is the ring: drag it, or mark it by Tab and use the arrow keys.',
  },
  enterShots: {
    alt: 'Rows to type shots in: club, swing, carry, how far off line, total. A club that is left empty repeats the one above. Below, a button adds four shots.',
    caption: 'Four shots typed in, before they are added.',
  },
  drawAHole: {
    alt: 'The kinds of things to draw at the left, the bunker among them chosen. On the map a line of play from tee to green, a fairway, a penalty area with a red edge, and a bunker with four corners so far.',
    caption: 'A bunker being drawn: each click is a corner, Enter closes it.',
  },
  printTheCard: {
    alt: 'A card of one hole: the drawing with the aim and its ellipses, distances, and beside it what to play, where to aim, which miss costs less, what is left and why; boxes for the score at the foot.',
    caption: 'The card of one hole on A6.',
  },
  afterTheRound: {
    alt: 'The last rows of a round that was typed in, with score, putts, tee club and where the tee shot ended; below, the sum against the expected score, and how many rounds by this plan are as low or lower.',
    caption: 'A round typed in, and what it says against the plan.',
  },
};
