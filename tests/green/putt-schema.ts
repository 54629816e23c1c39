/** What the putt command prints as JSON, for maps/schemas/putt.schema.json. */

import { toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';

const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
const length = v.pipe(v.number(), v.minValue(0));

export const PuttSchema = v.strictObject({
  input: v.strictObject({
    player: v.looseObject({
      file: v.string(),
      name: v.string(),
      formatVersion: v.pipe(v.number(), v.integer()),
      sha256: v.string(),
    }),
    distanceFt: v.number(),
    greenSpeedFt: v.pipe(v.number(), v.description('Stimpmeter reading')),
    slopePercent: v.number(),
    slopeDirectionDeg: v.pipe(
      v.number(),
      v.description('Where the green falls to, clockwise from the line to the hole; 0 is a putt downhill'),
    ),
  }),
  distanceM: length,
  chances: v.pipe(
    v.strictObject({ one: share, two: share, threeOrMore: share }),
    v.description('Chances of holing out in so many putts; they sum to 1'),
  ),
  expectedPutts: v.pipe(v.number(), v.minValue(1)),
  holeError: v.pipe(share, v.description('Standard error of chances.one, from the putts drawn')),
  aimOffsetM: v.pipe(v.number(), v.description('Aim beside the hole, positive to the right')),
  speedMps: v.pipe(length, v.description('Speed off the club')),
  playsLikeM: v.pipe(v.number(), v.description('Length of the level putt that starts as fast')),
  leave: v.pipe(
    v.strictObject({
      meanM: length,
      tenthM: length,
      medianM: length,
      ninthM: length,
      shortShare: share,
      rightShare: share,
    }),
    v.description('Where the putts that miss stop: lengths not exceeded by one, five and nine of ten'),
  ),
});

export function puttJsonSchemaText(): string {
  const { $schema, ...rest } = toJsonSchema(PuttSchema, { errorMode: 'throw' });
  const head = { $schema, title: 'Output of the putt command with --json' };
  return `${JSON.stringify({ ...head, ...rest }, null, 2)}\n`;
}
