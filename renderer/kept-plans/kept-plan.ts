/**
 * A worked-out hole as text, and back. What comes back is checked to the last member: of a text that this version would not
 * have written nothing is shown.
 */

import * as v from 'valibot';
import { ConditionsSchema, DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { LIE_NAMES, type LieName } from '../../core/ground/lies.ts';
import type { Option, ShotSample, SpotPlan } from '../../core/plan/model.ts';
import { SWINGS } from '../../core/player/model.ts';
import { LARGEST_KEPT_PLAN } from '../../electron/contract/wire.ts';
import type { HoleResult } from '../state/app-state.ts';
import type { HoleTask, ShotPicture } from '../workers/planner-api.ts';
import { fitsTogether } from './fits-together.ts';
import { canonical } from './plan-key.ts';

const FORMAT = 1;
const MOST_BALLS = 10_000;

const number = v.pipe(v.number(), v.finite());
/** Sums of many shares may miss a bound by a rounding. */
const share = v.pipe(number, v.minValue(-1e-9), v.maxValue(1 + 1e-9));
const length = v.pipe(number, v.minValue(0));
const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const lonLat = v.pipe(v.tuple([number, number]), v.readonly());
const spot = v.strictObject({ x: number, y: number });
const lie = v.picklist(LIE_NAMES);
const swing = v.picklist(SWINGS);
const clubKind = v.picklist(['driver', 'wood', 'hybrid', 'iron', 'wedge', 'putter']);
const numbers = v.pipe(v.array(number), v.readonly());

const spreadSource = v.variant('from', [
  v.strictObject({ from: v.literal('measured'), shots: count, poorShots: count }),
  v.strictObject({ from: v.literal('stated') }),
  v.strictObject({ from: v.literal('preset'), level: v.string() }),
  v.strictObject({ from: v.literal('derived'), fromSwing: swing, fromClub: v.string() }),
]);

const endShare = v.strictObject(
  Object.fromEntries(LIE_NAMES.map((name) => [name, share])) as Record<LieName, typeof share>,
);

const option = v.strictObject({
  id: v.string(),
  kind: v.picklist(['shot', 'relief']),
  relief: v.exactOptional(
    v.picklist([
      'unplayable-lateral',
      'unplayable-back-on-line',
      'unplayable-outside-bunker',
      'unplayable-replay',
      'penalty-lateral',
      'penalty-back-on-line',
      'penalty-replay',
      'out-replay',
      'out-fairway',
    ]),
  ),
  penaltyStrokes: v.exactOptional(count),
  club: v.string(),
  clubKind,
  swing,
  aim: v.strictObject({ bearing: number, lonLat, spot }),
  carryM: length,
  meanStrokes: length,
  standardError: length,
  lossToBest: number,
  lossStandardError: length,
  tooCloseToCall: v.boolean(),
  scoreOdds: v.pipe(v.array(share), v.readonly()),
  parOdds: v.strictObject({ parOrBetter: share, bogey: share, doubleOrWorse: share }),
  trouble: v.strictObject({
    outOfBounds: share,
    penaltyYellow: share,
    penaltyRed: share,
    bunker: share,
    trees: share,
    longRough: share,
  }),
  leave: v.strictObject({ p10M: length, medianM: length, p90M: length }),
  endShare,
  spreadSource: v.nullable(spreadSource),
  doubt: v.exactOptional(v.strictObject({ lowStrokes: length, highStrokes: length, cheapestShare: share })),
}) satisfies v.GenericSchema<unknown, Option>;

const plan = v.pipe(
  v.strictObject({
    hole: count,
    from: spot,
    fromLonLat: lonLat,
    lie,
    distanceToHoleM: length,
    strokesTaken: count,
    par: count,
    options: v.pipe(v.array(option), v.readonly()),
    recommendation: v.strictObject({ optionId: v.string(), reason: v.string() }),
    lipBlocks: v.exactOptional(
      v.pipe(v.array(v.strictObject({ club: v.string(), swing, lipM: number, atM: number })), v.readonly()),
    ),
    expectedStrokes: length,
    seed: v.string(),
  }),
  v.check(({ options, recommendation: { optionId } }) => options.some(({ id }) => id === optionId)),
  v.check(fitsTogether),
) satisfies v.GenericSchema<unknown, SpotPlan>;

/** Bytes as Base64 (RFC 4648), so many of them. */
const bytes = v.pipe(
  v.string(),
  v.base64(),
  v.transform((text) => Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))),
);
const floats = v.pipe(
  bytes,
  v.check(({ byteLength }) => byteLength % Float32Array.BYTES_PER_ELEMENT === 0),
  v.transform(floatsOf),
  v.check((values) => values.every(Number.isFinite)),
);

const sample = v.pipe(
  v.strictObject({ count: v.pipe(count, v.maxValue(MOST_BALLS)), landing: floats, end: floats, lie: bytes }),
  v.check(
    ({ count: balls, landing, end, lie: lies }) =>
      landing.length === 2 * balls &&
      end.length === 2 * balls &&
      lies.length === balls &&
      lies.every((code) => code < LIE_NAMES.length),
  ),
) satisfies v.GenericSchema<unknown, ShotSample>;

const picture = v.strictObject({
  sample,
  ellipses: v.pipe(
    v.array(
      v.strictObject({ share, centre: spot, semiMajorM: length, semiMinorM: length, majorBearing: number }),
    ),
    v.readonly(),
  ),
}) satisfies v.GenericSchema<unknown, ShotPicture>;

const kept = v.strictObject({
  format: v.literal(FORMAT),
  result: v.strictObject({
    hole: count,
    rough: v.literal(false),
    origin: lonLat,
    tee: lonLat,
    pin: lonLat,
    teeName: v.string(),
    positionName: v.string(),
    lengthM: length,
    conditions: ConditionsSchema,
    convergence: v.strictObject({
      spacingsM: numbers,
      rmsChange: numbers,
      maxChange: numbers,
      sweeps: numbers,
    }),
    teePlan: plan,
    teePicture: v.nullable(picture),
  }),
});

/** Null for a result that does not come back as it is: it is not kept. */
export function keptText(result: HoleResult): string | null {
  const { teePicture } = result;
  const text = JSON.stringify({
    format: FORMAT,
    result: { ...result, key: undefined, teePicture: teePicture === null ? null : pictureText(teePicture) },
  });
  return text.length <= LARGEST_KEPT_PLAN && parse(text) !== null ? text : null;
}

/** The result under the task's own name; null where the text is damaged or tells of another hole. */
export function readKept(text: string, task: HoleTask): HoleResult | null {
  const { key, hole, teeName, position, seed, conditions = DEFAULT_CONDITIONS } = task;
  const result = parse(text);
  const isAsked =
    result?.hole === hole &&
    result.teePlan.hole === hole &&
    result.teeName === teeName &&
    result.positionName === position &&
    result.teePlan.seed === seed &&
    canonical(result.conditions) === canonical(conditions);
  return isAsked ? { ...result, key } : null;
}

function parse(text: string): Omit<HoleResult, 'key'> | null {
  const read = v.safeParse(v.pipe(v.string(), v.parseJson(), kept), text);
  return read.success ? read.output.result : null;
}

function pictureText({ sample: { count: balls, landing, end, lie: lies }, ellipses }: ShotPicture): unknown {
  return {
    sample: {
      count: balls,
      landing: base64(floatBytes(landing)),
      end: base64(floatBytes(end)),
      lie: base64(lies),
    },
    ellipses,
  };
}

function base64(all: Uint8Array): string {
  return btoa(Array.from(all, (byte) => String.fromCharCode(byte)).join(''));
}

/** Little-endian, whatever the machine. */
function floatBytes(values: Float32Array): Uint8Array {
  const view = new DataView(new ArrayBuffer(values.length * Float32Array.BYTES_PER_ELEMENT));
  values.forEach((value, i) => view.setFloat32(i * Float32Array.BYTES_PER_ELEMENT, value, true));
  return new Uint8Array(view.buffer);
}

function floatsOf(all: Uint8Array<ArrayBuffer>): Float32Array {
  const view = new DataView(all.buffer, all.byteOffset, all.byteLength);
  return Float32Array.from({ length: all.byteLength / Float32Array.BYTES_PER_ELEMENT }, (_, i) =>
    view.getFloat32(i * Float32Array.BYTES_PER_ELEMENT, true),
  );
}
