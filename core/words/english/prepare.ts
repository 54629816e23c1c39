/** The day of the round: form and sheet. */

export const prepare = {
  theDay: 'The day',
  title: ({ course }: { readonly course: string }) => `Preparation, ${course}`,
  teeOff: 'Tee-off',
  timeSuchAs: 'A time such as 08:40',
  minutes: 'Minutes for the round',
  rain: 'rain likely',
  sun: 'strong sun',
  food: 'Your own food, with commas',
  foodHint: 'suggestions stand in while this is empty',
  allergies: 'Allergies, with commas',
  allergiesHint: 'e.g. nut, gluten',
  note: 'Small portions at even distances, common practice; no medical advice. With an illness or a diet ask somebody who knows it.',
  noTime: 'The tee-off time is no time of day. Write it as 08:40.',
  speedToday: ({ feet }: { readonly feet: string }) => `Green speed today: ${feet} feet.`,
  speed: {
    title: 'Green speed today',
    how: 'One stroke that you know, paced out once on a green of known speed; then the same stroke today, up and down one flat stretch.',
    rolled: 'It rolled, paces',
    onGreen: 'on a green of, feet',
    up: 'Today up, paces',
    down: 'down, paces',
    feet: ({ feet }: { readonly feet: string }) => `${feet} feet`,
    unlikely: 'not a likely speed: pace again',
    use: 'Use it today',
    planned: ({ feet }: { readonly feet: string }) =>
      `Planned with today: ${feet} feet. It is part of the plan’s day: undo it in the Plan room.`,
  },
  sheet: {
    times: ({ teeOff, finish }: { readonly teeOff: string; readonly finish: string }) =>
      `Tee-off ${teeOff}, expected finish ${finish}`,
    when: 'When',
    food: 'Food and water',
    before: ({ hole, food }: { readonly hole: number; readonly food: string }) =>
      `before hole ${hole}: ${food}`,
    allergies: ({ list }: { readonly list: string }) => `Allergies: ${list}`,
    noneEntered: 'none entered',
    check: ({ warning }: { readonly warning: string }) => `Check: ${warning}`,
    bag: 'In the bag',
    warmUp: 'Gentle warm-up, ten minutes',
    min: ({ minutes }: { readonly minutes: number }) => `${minutes} min`,
    green: 'On the practice green',
    rolled: 'Rolled up ______ down ______ green speed today ______',
    lastLook: 'Last look: hole positions and wind',
    lookBefore: 'look at it from the green before',
    care: 'Take care',
  },
  windIs: ({ wind }: { readonly wind: string }) => `wind ${wind}`,
  foods: {
    sandwich: 'half a wholemeal sandwich',
    banana: 'a banana',
    nuts: 'a handful of nuts',
    oatBar: 'an oat bar',
    apple: 'an apple',
    riceCakes: 'rice cakes',
    own: 'food of your own',
  },
  water: ({ litres }: { readonly litres: string }) =>
    `About ${litres} litres of water, a few mouthfuls on every second tee; more when thirsty.`,
  checkEveryItem:
    'With an allergy nothing is suggested. Check every item yourself, its packet and what it may have touched.',
  allergyWarning: ({ item, allergy }: { readonly item: string; readonly allergy: string }) =>
    `“${item}” is on your list, and “${allergy}” is among your allergies.`,
  eat: ({ food }: { readonly food: string }) => `Eat: ${food}. Drink.`,
  tooManyClubs: ({
    count,
    most,
    out,
  }: {
    readonly count: number;
    readonly most: number;
    readonly out: number;
  }) => `${count} clubs are on the list; Rule 4.1b allows ${most}. Take ${out} out.`,
  times: {
    meal: 'Eat a usual meal, nothing new today; fill the bottles.',
    arrive: 'Arrive. Local rules sheet, hole positions of the day, wind.',
    green: 'Green routine, fifteen minutes; write down the green speed.',
    warmUp: 'Gentle warm-up, ten minutes.',
    range:
      'Ten to fifteen easy balls if there is a range: short clubs first, last the club of the first tee.',
    firstTee: 'To the first tee. Card, pencil, marker, tees, a second ball in the pocket. Drink.',
    lastLook: 'Last look at hole 1: club, aim, side to miss.',
    teeOff: 'Tee off.',
  },
  bag: {
    clubs: ({ count }: { readonly count: number }) => `${count} clubs`,
    clubsNamed: ({ count, list }: { readonly count: number; readonly list: string }) =>
      `${count} clubs: ${list}`,
    balls: ({ count }: { readonly count: number }) => `${count} balls, marked as yours`,
    tees: 'tees, two ball markers, pitch-mark fork',
    glovesRain: 'two gloves in good order and a dry one in a bag',
    gloves: 'a glove in good order and a spare',
    towel: 'towel, one end wet',
    papers: 'strategy card, scorecard, two pencils, local rules sheet',
    food: 'water and food as planned',
    rainThings: 'rain suit, umbrella, dry towel, cover for the bag',
    lightJacket: 'light rain jacket',
    sunThings: 'hat, sun cream, sunglasses',
    hat: 'hat',
    warm: 'warm layer, hand warmers',
    plasters: 'plasters, your own medicines',
  },
  warmUp: {
    walk: 'Walk briskly until you feel warm, arms swinging.',
    shoulders: 'Roll the shoulders back, then make small arm circles that grow.',
    hips: 'Feet apart, hands on hips: slow circles with the hips, both ways.',
    turn: 'A club across the shoulders: turn slowly left and right, only as far as it goes by itself.',
    knees: 'Hold a club for balance: shallow knee bends, heels down, back long.',
    legs: 'Hold on and swing each leg gently forwards and back, never with a bounce.',
    wrists: 'Wrists: hold a club at its middle and turn it slowly, palm up and palm down.',
    swings: 'A short iron: slow half swings, then longer ones; last a few at playing pace.',
  },
  routine: {
    long: ({ length }: { readonly length: string }) =>
      `Three balls from ${length} to the fringe, no hole: stop each as near the edge as you can. Feel first, look later.`,
    speed:
      'One stroke that you know, rolled up and down the same flat stretch: pace both rolls out and write them down. Green speed today = speed you know × today’s mean roll ÷ roll you know.',
    lag: ({ length }: { readonly length: string }) =>
      `Lag putts from about ${length}: three balls, each to end within a putter’s length of the hole.`,
    short: 'Short ones last: a circle of putts at one long step, then at two. Finish with one that drops.',
  },
  cautions: {
    warmUp:
      'Warm up gently; stop if anything hurts. With pain or a known condition see a physiotherapist or doctor first.',
    thunder: 'Thunder heard: leave the course. Do not wait under a tree.',
    ahead: 'Never play until the group ahead is out of reach; shout a warning if a ball may reach somebody.',
    hot: 'Hot today: drink on every tee, use shade, wet the towel. Dizzy or no longer sweating: stop and get help.',
    heat: 'In heat drink more and use shade.',
    rules: 'Local rules and the committee’s decisions come first.',
  },
};
