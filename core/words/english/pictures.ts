/** The pictures of “How the numbers come about”: what they show, for eyes and for ears. */

export const pictures = {
  flightInWind: {
    alt: 'Five flight paths of one 7-iron. Against 10 m/s of wind it flies highest and shortest, with the wind lowest and longest; what the wind takes is more than it gives.',
    caption:
      'One 7-iron shot (120 mph, 7097 rpm, Dewhurst 2015; 16.3°, from memory) in five winds, drawn by the flight of this program: drag and lift of Smits and Smith 1994.',
    x: 'distance, m',
    y: 'height, m',
    labels: {
      against10: '10 m/s against',
      against5: '5 m/s against',
      still: 'still air',
      behind5: '5 m/s from behind',
      behind10: '10 m/s from behind',
    },
  },
  dragAndLift: {
    alt: 'Lift rises with the spin, from 0.20 at a spin ratio of 0.08 to 0.28 at 0.2. Drag rises slowly with it, from 0.31 to 0.33 at the higher Reynolds number and from 0.24 to 0.26 at the lower.',
    caption:
      'The coefficients that are used, over the spins that were measured: Smits and Smith 1994, Science and Golf II. Spin ratio is spin × radius / speed; fast and slow are Reynolds numbers of 210,000 and 70,000.',
    x: 'spin ratio',
    y: 'coefficient',
    labels: { lift: 'lift', dragFast: 'drag, fast ball', dragSlow: 'drag, slow ball' },
  },
  runByGround: {
    alt: 'Run after landing by carry, for five grounds. Long shots run far on a firm fairway and hardly in rough; short irons stop soon anywhere.',
    caption:
      'Run of a preset bag (man, handicap 15) from landing to rest: bounces of Penner 2002, measured on greens; softer and longer ground by common practice, held against course rating.',
    x: 'carry, m',
    y: 'run, m',
    labels: {
      fairwayFirm: 'firm fairway',
      fairway: 'medium fairway',
      fairwaySoft: 'soft fairway',
      green: 'green, 10 ft',
      rough: 'rough',
    },
  },
  captureSpeed: {
    alt: 'A parabola: in the middle of the hole a putt may still have 1.63 m/s, at the rim none.',
    caption:
      'The fastest putt that drops, by where it would pass the hole, whose edges are at 54 mm: Holmes 1991 in the middle, Penner 2002 beside it (both from memory).',
    x: 'beside the middle of the hole, mm',
    y: 'speed, m/s',
    labels: { fastest: 'fastest that drops' },
  },
  makeShare: {
    alt: 'Share of putts holed by distance. The model for tour players runs through the counted shares: about 99 % from 0.6 m, half from 2.4 m, 6 % from 10 m. Handicap players lie below.',
    caption:
      'Putts holed: the model of direction and run (Gelman and Nolan 2002, Gelman 2019) and tour putts as counted (Broadie 2018, as printed in Gelman 2019).',
    x: 'distance, m',
    y: 'holed, %',
    labels: {
      tour: 'tour, model',
      handicap5: 'handicap 5, preset',
      handicap25: 'handicap 25, preset',
      counted: 'tour, counted',
    },
  },
  lieEllipses: {
    alt: 'Four ellipses of where a 7-iron comes down. From the fairway it is smallest and farthest; from rough a little shorter and wider; from long rough and sand much shorter and widest.',
    caption:
      'Half of the solid strikes of a 7-iron land inside (preset man, handicap 15). What lies do is common practice, held against the strokes that tour players lose from rough and sand (Broadie 2012).',
    x: 'left and right of the aim, m',
    y: 'carry, m',
    labels: { fairway: 'fairway', rough: 'rough', longRough: 'long rough', bunker: 'bunker' },
  },
};
