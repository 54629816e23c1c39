/** `npm run --silent putt`: one putt of a player on a green of given speed and slope. */

import { reportPutt } from '../../core/green/one-putt.ts';
import { solvePutts } from '../../core/green/putt-field.ts';
import { GREEN_SPEED_RANGE_FT, rollDeceleration } from '../../core/green/stimpmeter.ts';
import { planeGreen, SLOPE_PULL_MPS2 } from '../../core/green/surface.ts';
import { EXIT, optionalText, readArguments, requiredText, Stop, stopForUsage } from './command.ts';
import { readPlayer } from './inputs.ts';

const USAGE = `usage: npm run --silent putt -- --distance-ft X --green-speed-ft S --player FILE
       [--slope-percent G --slope-direction-deg D] [--json]
The green is a plane. The direction is where it falls to, clockwise from the line to the hole: 0 is a putt downhill, 180
uphill, 90 one that the slope takes to the right. The output's schema is maps/schemas/putt.schema.json.`;

const FOOT_M = 0.3048;
const DEGREE = Math.PI / 180;

interface Range {
  readonly lowest: number;
  readonly highest: number;
}

export async function putt(args: readonly string[]): Promise<void> {
  const text = { type: 'string' } as const;
  const values = readArguments(
    args,
    {
      'distance-ft': text,
      'green-speed-ft': text,
      'slope-percent': text,
      'slope-direction-deg': text,
      player: text,
      json: { type: 'boolean' },
    },
    USAGE,
  );
  const number = (name: string, range: Range, fallback?: number): number => {
    const given = optionalText(values, name);
    if (given === undefined) {
      if (fallback === undefined) throw stopForUsage(`--${name} is missing.`, USAGE);
      return fallback;
    }
    const value = given.trim() === '' ? NaN : Number(given);
    if (!(value >= range.lowest && value <= range.highest))
      throw stopForUsage(
        `--${name} takes a number from ${range.lowest} to ${range.highest}, not “${given}”.`,
        USAGE,
      );
    return value;
  };
  const distanceFt = number('distance-ft', { lowest: 0.5, highest: 120 });
  const greenSpeedFt = number('green-speed-ft', GREEN_SPEED_RANGE_FT);
  const slopePercent = number('slope-percent', { lowest: 0, highest: 8 }, 0);
  const slopeDirectionDeg = number('slope-direction-deg', { lowest: -360, highest: 360 }, 0);
  const deceleration = rollDeceleration(greenSpeedFt);
  if ((SLOPE_PULL_MPS2 * slopePercent) / 100 >= deceleration) {
    throw new Stop(EXIT.badInput, [
      `error: slope: on a green of ${greenSpeedFt} ft a ball does not stop on a slope of ${slopePercent} %. Give a slope below ${Math.floor((1000 * deceleration) / SLOPE_PULL_MPS2) / 10} %, or a slower green.`,
    ]);
  }
  const player = await readPlayer(requiredText(values, 'player', USAGE));

  const distanceM = distanceFt * FOOT_M;
  // The ball lies south of the hole, so the line to the hole runs north.
  const field = solvePutts({
    surface: planeGreen(slopePercent / 100, slopeDirectionDeg * DEGREE),
    greenSpeedFt,
    putting: player.value.putting,
    longestM: Math.max(6, 0.6 * distanceM),
  });
  const report = reportPutt(field, 0, -distanceM);
  if (values.json === true) {
    const { version } = player;
    const output = {
      input: { player: version, distanceFt, greenSpeedFt, slopePercent, slopeDirectionDeg },
      ...report,
    };
    process.stdout.write(`${JSON.stringify(output, null, 1)}\n`);
    return;
  }
  const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
  const feet = (metres: number): string => `${(metres / FOOT_M).toFixed(1)} ft`;
  const side = report.aimOffsetM > 0 ? 'right' : 'left';
  const aim =
    Math.abs(report.aimOffsetM) < 0.005
      ? 'aim straight at the hole'
      : `aim ${(100 * Math.abs(report.aimOffsetM)).toFixed(0)} cm ${side} of the hole`;
  process.stdout.write(
    `${[
      `${aim}, as long as a level putt of ${feet(report.playsLikeM)}`,
      `holed ${percent(report.chances.one)}, two putts ${percent(report.chances.two)}, three or more ${percent(report.chances.threeOrMore)}; ${report.expectedPutts.toFixed(2)} on average`,
      `a miss leaves ${feet(report.leave.medianM)}; one in ten more than ${feet(report.leave.ninthM)}; ${percent(report.leave.shortShare)} of the misses are short`,
    ].join('\n')}\n`,
  );
}
