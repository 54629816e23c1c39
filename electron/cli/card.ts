/** `npm run --silent card`: strategy cards for a round as a PDF file. */

import { readFile, rename, rm, writeFile } from 'node:fs/promises';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { dayWords, isOrdinaryDay, speedText, wholeTurn } from '../../core/conditions/day-words.ts';
import { preparationSheet, type PreparationSheet } from '../../core/card/preparation.ts';
import { windOnHole } from '../../core/card/wind-words.ts';
import type { CardHole } from '../../core/card/model.ts';
import { bearingRad } from '../../core/course/ellipsoid.ts';
import type { Course } from '../../core/course/model.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import { faultLine } from '../../core/result.ts';
import { departuresOf, departureWords } from '../../core/round/departures.ts';
import { roundFigures, type RoundFigures } from '../../core/round/figures.ts';
import {
  EXIT,
  optionalText,
  readArguments,
  requiredText,
  Stop,
  stopForUsage,
  wholeNumber,
} from './command.ts';
import type { CardExtras } from './card-page.ts';
import { DAY_OPTIONS, DAY_USAGE, readDay } from './day-options.ts';
import { PAPERS, sheetFor, STYLES } from './card-paper.ts';
import { cardPdf } from './card-pdf.ts';
import { readCourse, readPlayer } from './inputs.ts';
import { percent } from './plan-report.ts';
import { solveRound } from './round-pool.ts';
import { cardsToPrint, cardTasks } from './card-round.ts';
import { LANGUAGES } from '../../core/words/language.ts';
import { type Words, wordsIn } from '../../core/words/words.ts';

const USAGE = `usage: npm run --silent card -- --course FILE --player FILE --to FILE.pdf [--paper a4|letter|a6] [--style plain|ink-saving|large-print]
       [--hole all|N,N,...] [--target N] [--tee NAME] [--hole-position NAME] [--no-greens] [--language en|de] [--wind-from DEGREES]
       [--tee-off HH:MM --duration MINUTES] [--food LIST] [--allergies LIST] [--temperature C] [--seed S]
${DAY_USAGE}
With --target the whole round is worked out, so that the holes of --hole get their share of it.
The plan goes by the day; --wind-from and --temperature alone change its words, not its plan.`;

export async function card(args: readonly string[]): Promise<void> {
  const text = { type: 'string' } as const;
  const values = readArguments(
    args,
    {
      ...{
        course: text,
        player: text,
        to: text,
        paper: text,
        style: text,
        hole: text,
        target: text,
        tee: text,
      },
      ...{
        'hole-position': text,
        'no-greens': { type: 'boolean' },
        'wind-from': text,
        'tee-off': text,
        duration: text,
      },
      ...{ food: text, allergies: text, temperature: text, seed: text, language: text },
      ...DAY_OPTIONS,
    },
    USAGE,
  );
  const courseFile = requiredText(values, 'course', USAGE);
  const playerFile = requiredText(values, 'player', USAGE);
  const to = requiredText(values, 'to', USAGE);
  if (!/\.pdf$/iu.test(to)) throw stopForUsage(`--to takes a file that ends in .pdf, not “${to}”.`, USAGE);
  const paper = oneOf('paper', optionalText(values, 'paper') ?? 'a4', PAPERS);
  const words = wordsIn(oneOf('language', optionalText(values, 'language') ?? 'en', LANGUAGES));
  const style = oneOf('style', optionalText(values, 'style') ?? 'plain', STYLES);
  const target =
    optionalText(values, 'target') === undefined
      ? null
      : wholeNumber(values, 'target', { lowest: 1, highest: 400 }, USAGE);
  const conditions = await readDay(values, USAGE);
  const { wind } = conditions;
  const windFrom =
    degreesOf(optionalText(values, 'wind-from')) ?? (wind.speedMps > 0 ? wholeTurn(wind.fromDeg) : null);
  const times = timesOf(optionalText(values, 'tee-off'), optionalText(values, 'duration'));
  const temperatureC =
    celsiusOf(optionalText(values, 'temperature')) ??
    (conditions.temperatureC === DEFAULT_CONDITIONS.temperatureC ? null : conditions.temperatureC);
  await checkPlace(to);

  const course = await readCourse(courseFile);
  const player = await readPlayer(playerFile);
  for (const warning of player.value.warnings) process.stderr.write(`${playerFile}: ${faultLine(warning)}\n`);
  const numbers = holesOf(optionalText(values, 'hole') ?? 'all', course.value);
  const tee = optionalText(values, 'tee');
  const holePosition = optionalText(values, 'hole-position');
  const { units } = player.value;
  const tasks = cardTasks(course.value, numbers, target !== null, {
    ...{ tee, holePosition, seed: optionalText(values, 'seed') ?? 'holewright' },
    ...{ card: { units, language: words.language }, conditions },
  });
  const holes = await solveRound(course, player, tasks);
  const figures = target === null ? null : roundFigures(holes, target);
  const cards = cardsToPrint(holes, numbers, figures?.budget ?? null, words);
  const windSpeed = wind.speedMps > 0 ? `${speedText(wind.speedMps, units, words)} ` : '';
  const winds = new Map(
    cards.map((one) => [
      one.hole,
      windFrom === null ? null : windWords(course.value, one.hole, windFrom, windSpeed, words),
    ]),
  );
  const penaltyBalls = holes.reduce((sum, { ledger }) => sum + (ledger?.penaltyBalls.mean ?? 0), 0);
  const preparation: PreparationSheet | null =
    times === null
      ? null
      : preparationSheet(
          {
            ...times,
            ...{ holes: numbers.length, units, penaltyBalls, clubs: clubsOf(player.value) },
            food: {
              items: listOf(optionalText(values, 'food')),
              allergies: listOf(optionalText(values, 'allergies')),
            },
            lastLook: cards.map(({ hole, green }) => ({
              hole,
              words: [green?.words, winds.get(hole) ?? null].filter(Boolean).join('; '),
            })),
            ...(temperatureC === null ? {} : { temperatureC }),
          },
          words,
        );
  const extrasOf = ({ hole }: CardHole): CardExtras => ({
    hasGreens: values['no-greens'] !== true,
    reminder: preparation?.food.reminders.find((reminder) => reminder.hole === hole)?.words ?? null,
    wind: winds.get(hole) ?? null,
  });
  const overview = {
    course: course.value.name,
    player: player.value.name,
    tee: tee ?? holes[0]?.tee ?? '',
    lines: [
      ...(isOrdinaryDay(conditions) ? [] : [`${dayWords(conditions, units, words)}.`]),
      ...overviewLines(figures, words),
    ],
  };
  const bytes = await cardPdf(
    { cards, overview, preparation, extrasOf, madeAt: new Date() },
    sheetFor(paper, style, words),
  );
  await save(to, bytes);
  process.stdout.write(
    `${to}: ${cards.length} cards on ${paper}, ${style}, ${Math.round(bytes.length / 1024)} KiB\n`,
  );
}

function overviewLines(figures: RoundFigures | null, words: Words): string[] {
  const care = words.cards.estimatesLong;
  if (figures === null) return [care];
  const { odds, choices, playing, target } = figures;
  const { low, high } = odds.range;
  const departures = departuresOf(choices, playing).slice(0, 2);
  return [
    words.cards.oddsLineLong({
      ...{ target, low, high, chance: percent(odds.target?.chance ?? 0) },
      expected: words.figures.fixed(odds.expected, 1),
    }),
    ...departures.map((departure) =>
      departureWords(departure, playing.aim, words, (id) => id.split('/')[0] ?? id),
    ),
    care,
  ];
}

/** Where the wind is felt on the hole's last leg and its first may differ; the straight line from tee to hole stands for both. */
function windWords(
  course: Course,
  number: number,
  fromDeg: number,
  speed: string,
  words: Words,
): string | null {
  const hole = course.holes.find((candidate) => candidate.number === number);
  const start = hole?.line[0];
  const end = hole?.line.at(-1);
  return start === undefined || end === undefined
    ? null
    : words.prepare.windIs({ wind: `${speed}${windOnHole(bearingRad(start, end), fromDeg, words)}` });
}

/** The names of the bag, longest first, the putter last. */
function clubsOf({ spreads }: PlayerModel): string[] {
  return [...new Set(spreads.map(({ club }) => club.name)), 'Putter'];
}

function listOf(text: string | undefined): string[] {
  return (text ?? '')
    .split(',')
    .map((item) => item.trim())
    .filter((item) => item !== '');
}

function oneOf<Name extends string>(option: string, text: string, names: readonly Name[]): Name {
  const found = names.find((name) => name === text.toLowerCase());
  if (found === undefined) throw stopForUsage(`--${option} takes ${names.join(', ')}, not “${text}”.`, USAGE);
  return found;
}

function degreesOf(text: string | undefined): number | null {
  if (text === undefined) return null;
  const value = text.trim() === '' ? NaN : Number(text);
  if (!(value >= 0 && value <= 360))
    throw stopForUsage(`--wind-from takes degrees from 0 to 360, not “${text}”.`, USAGE);
  return value;
}

function celsiusOf(text: string | undefined): number | null {
  if (text === undefined) return null;
  const value = text.trim() === '' ? NaN : Number(text);
  if (!(value >= -20 && value <= 55))
    throw stopForUsage(`--temperature takes degrees Celsius from -20 to 55, not “${text}”.`, USAGE);
  return value;
}

function timesOf(
  teeOff: string | undefined,
  duration: string | undefined,
): { readonly teeOffMin: number; readonly durationMin: number } | null {
  if (teeOff === undefined) {
    if (duration !== undefined) throw stopForUsage('--duration needs --tee-off.', USAGE);
    return null;
  }
  const match = /^(\d{1,2}):(\d{2})$/u.exec(teeOff);
  const teeOffMin = match === null ? NaN : 60 * Number(match[1]) + Number(match[2]);
  if (match === null || Number(match[2]) > 59 || !(teeOffMin < 24 * 60))
    throw stopForUsage(`--tee-off takes a time such as 08:40, not “${teeOff}”.`, USAGE);
  const durationMin = duration === undefined ? 255 : Number(duration);
  if (!(durationMin >= 30 && durationMin <= 600))
    throw stopForUsage(`--duration takes minutes from 30 to 600, not “${duration ?? ''}”.`, USAGE);
  return { teeOffMin, durationMin };
}

function holesOf(text: string, course: Course): number[] {
  const known = course.holes.map((hole) => hole.number);
  if (text === 'all') return known;
  const numbers = text.split(',').map(Number);
  if (numbers.some((number) => !Number.isInteger(number) || number < 1))
    throw stopForUsage(`--hole takes hole numbers or “all”, not “${text}”.`, USAGE);
  return numbers;
}

/** Before minutes of work: is there a folder to write to, and is what stands there a PDF that may be replaced? */
async function checkPlace(to: string): Promise<void> {
  let old: Uint8Array | null = null;
  try {
    old = await readFile(to);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code !== 'ENOENT')
      throw new Stop(EXIT.badInput, [
        `${to}: error: it cannot be written (${String(code)}). Choose another place.`,
      ]);
  }
  if (old !== null && Buffer.from(old.subarray(0, 5)).toString('latin1') !== '%PDF-')
    throw new Stop(EXIT.badInput, [
      `${to}: error: a file that is no PDF stands there. Choose another name, or move it away.`,
    ]);
  const trial = `${to}.part`;
  try {
    await writeFile(trial, '');
    await rm(trial);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    const why = code === 'ENOENT' ? 'there is no such folder' : `it cannot be written (${String(code)})`;
    throw new Stop(EXIT.badInput, [`${to}: error: ${why}. Choose another place.`]);
  }
}

/** Whole or not at all: beside it first, then renamed. */
async function save(to: string, bytes: Uint8Array): Promise<void> {
  const part = `${to}.part`;
  try {
    await writeFile(part, bytes);
    await rename(part, to);
  } catch (error) {
    await rm(part, { force: true });
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    throw new Stop(EXIT.badInput, [
      `${to}: error: it cannot be written (${String(code)}). Nothing was changed.`,
    ]);
  }
}
