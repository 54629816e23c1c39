/** The first walk round the window. */

export const tour = {
  name: 'A first walk round',
  again: 'Walk me round the window again',
  place: ({ step, steps }: { readonly step: number; readonly steps: number }) => `${step} of ${steps}`,
  leave: 'Leave the walk',
  next: 'Next',
  back: 'Back',
  finish: 'Finish',
  goTo: 'Go to what is outlined',
  byKeyboard: 'Escape leaves the walk.',
  steps: {
    plan: {
      title: 'What to hit, and the odds',
      text: 'Choose a hole at the left. The outlined part says which club to hit, where to aim, and how many strokes it takes on average; the bar in it shows the odds of par or better, of bogey, and of worse. The table below has the other choices.',
    },
    move: {
      title: 'Another place, another aim',
      text: 'Drag the outlined ball to plan from anywhere, or the ring to try your own aim; everything follows. By keyboard: press Tab until one of them is marked, then use the arrow keys. Undo takes it back.',
    },
    shots: {
      title: 'Your own shots',
      text: 'The sample player is invented. “New player” makes you one of your own from a handicap; on the outlined page you then type in measured shots, or bring in the table that your device wrote. The more shots, the surer the odds.',
    },
    draw: {
      title: 'A hole of your own',
      text: 'Holes are drawn here. The demo course is only looked at: begin a new course at the right, under “Course”, or make a copy. Then choose at the left what to draw, click its corners on the map, and finish with Enter.',
    },
    cards: {
      title: 'On paper',
      text: 'The outlined page makes the cards to carry, hole by hole, on A4, Letter, A6 or as a booklet. Distances are as good as the map: check them on the course. Local rules come first.',
    },
    round: {
      title: 'The round',
      text: 'Set a score to beat under “Target”; the outlined page says where it asks for another club. After the round type in what you played, and see what was choice, skill and luck. This walk can be taken again from Help.',
    },
  },
};
