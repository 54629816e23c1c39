/** `npm run --silent simulate`: where the balls of one club and aim end, and what that costs. */

import { dayWords, isOrdinaryDay } from '../../core/conditions/day-words.ts';
import { LIE_NAMES } from '../../core/ground/lies.ts';
import { DEFAULT_SEED, prepareHole } from '../../core/plan/prepare.ts';
import { lieOfSpot } from '../../core/plan/sample.ts';
import { simulateChoice, simulateStrokes } from '../../core/plan/simulate.ts';
import { solveNow } from '../../core/plan/solve.ts';
import type { LonLat } from '../../core/course/model.ts';
import { faultLine } from '../../core/result.ts';
import { spotOffMap } from './plan-task.ts';
import {
  optionalText,
  readArguments,
  readLonLat,
  requiredText,
  stopForFaults,
  stopForUsage,
  wholeNumber,
} from './command.ts';
import { DAY_OPTIONS, DAY_USAGE, readDay } from './day-options.ts';
import { readCourse, readPlayer } from './inputs.ts';
import { lieWords, percent } from './plan-report.ts';
import { lengthWords } from './units.ts';
import { PROGRAM_VERSION } from './version.ts';
import { english } from '../../core/words/english/english.ts';

const USAGE = `usage: npm run --silent simulate -- --course FILE --player FILE --hole N --club NAME --aim LON,LAT
       [--swing full|punch|part|...] [--from LON,LAT] [--tee NAME] [--hole-position NAME] [--samples K] [--no-roll] [--seed S] [--json]
${DAY_USAGE}`;

export async function simulate(args: readonly string[]): Promise<void> {
  const text = { type: 'string' } as const;
  const values = readArguments(
    args,
    {
      ...{
        course: text,
        player: text,
        hole: text,
        club: text,
        aim: text,
        swing: text,
        from: text,
        tee: text,
      },
      ...{
        'hole-position': text,
        samples: text,
        seed: text,
        'no-roll': { type: 'boolean' },
        json: { type: 'boolean' },
      },
      ...DAY_OPTIONS,
    },
    USAGE,
  );
  const place = (name: string): LonLat | undefined => {
    const given = optionalText(values, name);
    if (given === undefined) return undefined;
    const lonLat = readLonLat(given);
    if (!lonLat.ok) throw stopForUsage(`--${name}: ${lonLat.error}`, USAGE);
    return lonLat.value;
  };
  const courseFile = requiredText(values, 'course', USAGE);
  const playerFile = requiredText(values, 'player', USAGE);
  const holeNumber = wholeNumber(values, 'hole', { lowest: 1, highest: 999 }, USAGE);
  const clubName = requiredText(values, 'club', USAGE);
  requiredText(values, 'aim', USAGE);
  const aim = place('aim')!;
  const from = place('from');
  const samples = wholeNumber(
    values,
    'samples',
    { lowest: 16, highest: 10_000_000, fallback: 20_000 },
    USAGE,
  );
  const seed = optionalText(values, 'seed') ?? DEFAULT_SEED;
  const teeName = optionalText(values, 'tee');
  const holePosition = optionalText(values, 'hole-position');
  const conditions = await readDay(values, USAGE);

  const course = await readCourse(courseFile);
  const player = await readPlayer(playerFile);
  const prepared = prepareHole({
    ...{ course: course.value, player: player.value, holeNumber, seed, conditions },
    ...(teeName === undefined ? {} : { teeName }),
    ...(holePosition === undefined ? {} : { holePosition }),
  });
  if (!prepared.ok) throw stopForFaults(courseFile, [prepared.error]);
  const hole = prepared.value;
  const spot = from === undefined ? hole.tee : hole.frame.toSpot(from);
  for (const warning of player.value.warnings) process.stderr.write(`${playerFile}: ${faultLine(warning)}\n`);
  const wantedSwing = optionalText(values, 'swing');
  const spreadIndex = player.value.spreads.findIndex(
    (spread) => spread.club.name === clubName && (wantedSwing === undefined || spread.swing === wantedSwing),
  );
  const spread = player.value.spreads[spreadIndex];
  if (spread === undefined) {
    const known = player.value.spreads
      .map((candidate) => `${candidate.club.name} ${candidate.swing}`)
      .join(', ');
    throw stopForFaults(playerFile, [
      {
        severity: 'error',
        code: 'no-such-club',
        where: `--club ${clubName}`,
        message: `the bag has no such club and swing; it has ${known}.`,
      },
    ]);
  }
  for (const [name, lonLat] of [
    ['from', from],
    ['aim', aim],
  ] as const) {
    if (lonLat !== undefined && !hole.isOnMap(hole.frame.toSpot(lonLat))) {
      throw stopForFaults(courseFile, [spotOffMap(name, lonLat, holeNumber)]);
    }
  }
  const target = hole.frame.toSpot(aim);
  const choice = {
    spreadIndex,
    bearing: Math.atan2(target.x - spot.x, target.y - spot.y),
    carryM: spread.swing === 'part' ? Math.hypot(target.x - spot.x, target.y - spot.y) : spread.carryMean,
  };
  const pattern = simulateChoice(hole, spot, choice, { samples, rolls: values['no-roll'] !== true });
  const lie = LIE_NAMES[lieOfSpot(hole, spot)]!;
  if (pattern === null) {
    throw stopForFaults(playerFile, [
      {
        severity: 'error',
        code: 'club-not-played',
        where: `${clubName} from ${lieWords(lie)}`,
        message: 'that club is not played from this lie. Choose another club or spot.',
      },
    ]);
  }
  const strokes = simulateStrokes(hole, solveNow(hole), spot, choice, Math.min(samples, 65_536));
  if (values.json === true) {
    const document = {
      hole: holeNumber,
      club: clubName,
      swing: spread.swing,
      from: hole.frame.toLonLat(spot),
      lie,
      aim,
      rolls: values['no-roll'] !== true,
      ...pattern,
      meanStrokes: strokes === null ? null : strokes.mean,
      standardError: strokes === null ? null : strokes.standardError,
      spreadSource: spread.source,
      conditions,
      seed,
      inputs: { program: PROGRAM_VERSION, course: course.version, player: player.version },
    };
    process.stdout.write(`${JSON.stringify(document, null, 1)}\n`);
    return;
  }
  const unit = player.value.units;
  const { along, across } = pattern;
  const side = across.mean >= 0 ? 'right' : 'left';
  const lines = [
    `Hole ${holeNumber}, ${clubName} ${spread.swing} from ${lieWords(lie)}, ${samples} shots`,
    ...(isOrdinaryDay(conditions) ? [] : [`${dayWords(conditions, unit, english)}.`]),
    `along the aim ${lengthWords(along.mean, unit)} ± ${lengthWords(along.sd, unit)}, across ${lengthWords(Math.abs(across.mean), unit)} ${side} ± ${lengthWords(across.sd, unit)} (one standard deviation)`,
    ...LIE_NAMES.filter((name) => pattern.endShare[name] > 0).map(
      (name) => `  ${lieWords(name).padEnd(24)} ${percent(pattern.endShare[name])}`,
    ),
    `  ${'stopped by trees'.padEnd(24)} ${percent(pattern.stoppedByTrees)}`,
    strokes === null
      ? 'This choice almost never stays in play.'
      : `strokes to hole out ${strokes.mean.toFixed(3)} ± ${strokes.standardError.toFixed(3)}`,
  ];
  process.stdout.write(`${lines.join('\n')}\n`);
}
