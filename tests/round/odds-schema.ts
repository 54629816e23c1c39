/** What the round command prints as JSON, for maps/schemas/round-odds.schema.json. */

import { toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { LEDGER_KINDS } from '../../core/round/ledger.ts';
import { SHOT_CLASSES } from '../../core/round/play-hole.ts';
import { usedDaySchema } from '../conditions/used-day.ts';

const chance = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
const count = v.pipe(v.number(), v.integer());
const lonLat = v.strictTuple([v.number(), v.number()]);
const scores = v.array(v.strictObject({ score: count, chance }));

const tally = v.strictObject({
  mean: v.number(),
  standardError: v.pipe(v.number(), v.description('Of the mean, from the plays')),
  sd: v.pipe(v.number(), v.description('Standard deviation of one play')),
});

function tallies(kinds: readonly string[]) {
  return v.strictObject(Object.fromEntries(kinds.map((kind) => [kind, tally])));
}

const holeLedger = v.strictObject({
  hole: count,
  par: count,
  plays: count,
  score: tally,
  strokes: tallies(LEDGER_KINDS),
  gainedOnPlan: v.pipe(
    tallies(LEDGER_KINDS),
    v.description('Strokes gained on the player’s own expectation, penalties apart; zero on average'),
  ),
  gainedOnPeer: v.pipe(
    v.nullable(tallies(SHOT_CLASSES)),
    v.description('Strokes gained on the peer’s expectation, penalties with the stroke that led to them'),
  ),
  threePutts: tally,
  greensInRegulation: tally,
  penaltyBalls: tally,
});

const input = v.looseObject({ file: v.string(), name: v.string(), formatVersion: count, sha256: v.string() });

export const OddsSchema = v.strictObject({
  target: v.pipe(count, v.description('The highest score that counts')),
  par: count,
  chance: v.pipe(v.nullable(chance), v.description('Of the target score or fewer')),
  expected: v.number(),
  sd: v.number(),
  range: v.pipe(
    v.strictObject({ low: count, high: count, share: chance }),
    v.description('The scores between which at least 8 of 10 rounds fall'),
  ),
  formSd: v.pipe(
    v.number(),
    v.description('Standard deviation of the form of the day, strokes over 18 holes'),
  ),
  distribution: scores,
  holes: v.array(
    v.strictObject({
      hole: count,
      par: count,
      strokeIndex: v.nullable(count),
      tee: v.string(),
      holePosition: v.nullable(v.string()),
      lengthM: v.number(),
      option: v.strictObject({
        id: v.string(),
        club: v.string(),
        swing: v.string(),
        aim: lonLat,
        carryM: v.number(),
      }),
      expected: v.number(),
      sd: v.number(),
      standardError: v.number(),
      scores,
      budget: v.strictObject({
        byStrokeIndex: count,
        pace: v.pipe(v.nullable(v.number()), v.description('Average on this hole in rounds at the target')),
        strokes: count,
        words: v.string(),
      }),
    }),
  ),
  budget: v.strictObject({ allowance: count, possible: v.boolean() }),
  ledger: v.nullable(
    v.strictObject({
      lines: v.array(
        v.strictObject({
          kind: v.picklist(LEDGER_KINDS),
          strokes: tally,
          gainedOnPeer: v.nullable(tally),
          shareOfSpread: chance,
        }),
      ),
      score: tally,
      threePutts: v.number(),
      greensInRegulation: v.number(),
      penaltyBalls: v.number(),
      holes: v.array(holeLedger),
    }),
  ),
  playing: v.strictObject({
    chance: v.pipe(chance, v.description('Of the target with the best choice on each tee, form included')),
    chanceByLowestMean: chance,
    chanceOnAverageDay: chance,
    chanceByLowestMeanOnAverageDay: chance,
    departures: v.array(
      v.strictObject({
        hole: count,
        count: v.pipe(count, v.description('Strokes left to spend')),
        inHand: v.pipe(count, v.description('Beyond what the rest costs on average')),
        take: v.string(),
        insteadOf: v.string(),
        chance,
        chanceByLowestMean: chance,
        gain: chance,
        reach: v.pipe(chance, v.description('Chance that the round stands like this')),
        cost: v.pipe(v.number(), v.description('Strokes that the choice costs on average')),
      }),
    ),
  }),
  peer: v.nullable(v.string()),
  conditions: v.any(),
  seed: v.string(),
  inputs: v.strictObject({ program: v.string(), course: input, player: input }),
});

export function oddsSchemaText(): string {
  const { $schema, ...rest } = toJsonSchema(OddsSchema, { typeMode: 'input', errorMode: 'throw' });
  const head = { $schema, title: 'What `round --json` prints', description: 'Strokes, metres, shares of 1.' };
  const properties = { ...rest.properties, conditions: usedDaySchema() };
  return `${JSON.stringify({ ...head, ...rest, properties }, null, 2)}\n`;
}
