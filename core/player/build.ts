/**
 * From a player file to the player as the engine sees it. Every law comes out of one estimate over the whole bag
 * (`posterior.ts`): measured shots as far as they go, then what the player states, the neighbours in the bag, and the
 * preset for the player's level.
 */

import { type Fault, type Result, refuse, succeed } from '../result.ts';
import { BagReading, evidenceOf, type ShotGroups } from './bag-laws.ts';
import { type BagClub, DEFAULT_MARGIN_STROKES, type PlayerDocument } from './format.ts';
import { type GroupedShots, groupShotsInSteps } from './group-shots.ts';
import { clubsInRound, countFault, isInRound, lieEffectsOf } from './in-play.ts';
import { inferLevel } from './infer-level.ts';
import { LEAST_SHOTS } from './measured-shot.ts';
import type { PlayerModel } from './model.ts';
import { type BagPosterior, type SpreadEvidence, SPREAD_WIDTH } from './posterior.ts';
import { levelTold, type PlayerLevel } from './presets.ts';
import { readPutting } from './read-putting.ts';
import { noShortShot } from './short-shots.ts';
import { dayOf, weightOfAge } from './recency.ts';
import type { PartShot } from './short-game.ts';
import type { StillAir } from './still-air.ts';
import { told, toldFault } from '../words/told.ts';

export interface BuildSettings {
  /** The day from which the age of shots counts (ISO 8601); by default the day of the newest shot. */
  readonly today?: string;
  /** With the clubs that stay at home: to look at a bag, not to plan with it. */
  readonly wholeBag?: boolean;
  /** Kept from one time to the next, so that shots in wind need no new flights. */
  readonly air?: StillAir;
  /** What `readEvidence` found of the same file, where it is known already, and the posterior of it. */
  readonly known?: { readonly evidence: PlayerEvidence; readonly posterior: BagPosterior };
}

/** The player that a file describes. Refuses a bag that cannot be planned with, and a player of unknown level. */
export function buildPlayer(
  document: PlayerDocument,
  settings: BuildSettings = {},
): Result<PlayerModel, readonly Fault[]> {
  const bagErrors = checkBag(document.bag);
  if (bagErrors.length > 0) return refuse(bagErrors);
  const { known } = settings;
  const read = known === undefined ? readEvidence(document, settings) : succeed(known.evidence);
  if (!read.ok) return read;
  const { level, evidence, partShots } = read.value;
  const tooMany = countFault(document.bag);
  const warnings = [...(tooMany === null ? [] : [tooMany]), ...read.value.warnings];
  const goesOut = new Set(
    (settings.wholeBag === true ? document.bag : clubsInRound(document.bag)).map(({ name }) => name),
  );
  const laws = new BagReading(document.bag, level, evidence, partShots, known?.posterior).laws();
  laws.forEach(({ faults }, i) => {
    if (goesOut.has(document.bag[i]!.name)) warnings.push(...faults);
  });
  // Longest first; the posterior follows the same order.
  const sorted = laws
    .flatMap(({ spreads }) => spreads)
    .filter(({ spread }) => goesOut.has(spread.club.name))
    .sort((a, b) => b.spread.carryMean - a.spread.carryMean);

  const note = noShortShot(sorted.map(({ spread }) => spread));
  if (note !== null) warnings.push(note);
  const putting = readPutting(document, level);
  if (putting.warning !== undefined) warnings.push(putting.warning);
  return succeed({
    name: document.name,
    invented: document.invented ?? false,
    ...(document.handicap === undefined ? {} : { handicap: document.handicap }),
    hand: document.hand ?? 'right',
    spreads: sorted.map(({ spread }) => spread),
    putting: putting.skill,
    puttingSource: putting.source,
    lieEffect: lieEffectsOf(document.bag, level.handicap),
    posterior: () => {
      const entries = sorted.map(({ posterior }) => posterior());
      return { entries, drawCount: (entries[0]?.draws.length ?? 0) / SPREAD_WIDTH };
    },
    units: document.settings?.units ?? 'yards',
    marginStrokes: document.settings?.marginStrokes ?? DEFAULT_MARGIN_STROKES,
    warnings,
  });
}

export interface PlayerEvidence {
  readonly level: PlayerLevel;
  readonly evidence: readonly SpreadEvidence[];
  /** Part swings whose intended length is known, by name of the club. */
  readonly partShots: ReadonlyMap<string, readonly PartShot[]>;
  /** By place in the file: shots that do not simply count as measured. */
  readonly counted: GroupedShots['counted'];
  readonly warnings: readonly Fault[];
}

/** What a file knows of each club and swing, before anything is estimated; shots that cannot be used are named. */
export function readEvidence(
  document: PlayerDocument,
  settings: BuildSettings = {},
): Result<PlayerEvidence, readonly Fault[]> {
  const steps = readEvidenceInSteps(document, settings);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** As `readEvidence`; each `next()` tells the share done, and the work can be left there. */
export function* readEvidenceInSteps(
  document: PlayerDocument,
  settings: BuildSettings = {},
): Generator<number, Result<PlayerEvidence, readonly Fault[]>, void> {
  const grouped = yield* groupShotsInSteps(document.bag, document.shots ?? [], {
    handicap: document.handicap,
    air: settings.air,
  });
  const { groups, partShots, counted } = grouped;
  const warnings = [...grouped.warnings];
  const level = readLevel(document, groups, warnings);
  if (!level.ok) return refuse([level.error, ...warnings]);
  const weighed = weighShots(groups, document, settings);
  const evidence = document.bag.flatMap((bagClub) => evidenceOf(bagClub, level.value, weighed));
  return succeed({ level: level.value, evidence, partShots, counted, warnings });
}

function checkBag(bag: readonly BagClub[]): readonly Fault[] {
  const faults: Fault[] = [];
  const seen = new Set<string>();
  bag.forEach(({ name }, index) => {
    if (seen.has(name)) {
      const message = told(({ faults }) => faults.player.twice, { club: name });
      faults.push(toldFault({ severity: 'error', code: 'club-twice', where: `bag[${index}]`, message }));
    }
    seen.add(name);
  });
  if (bag.every(({ kind }) => kind === 'putter')) {
    const message = told(({ faults }) => faults.player.onlyPutter);
    faults.push(toldFault({ severity: 'error', code: 'no-clubs', where: 'bag', message }));
  } else if (!bag.some((club) => club.kind !== 'putter' && isInRound(club))) {
    const message = told(({ faults }) => faults.player.noneChosen);
    faults.push(toldFault({ severity: 'error', code: 'no-clubs', where: 'bag', message }));
  }
  return faults;
}

/** The level whose presets stand in for what is not measured: the handicap given, else one that fits the carries. */
function readLevel(
  document: PlayerDocument,
  groups: ShotGroups,
  warnings: Fault[],
): Result<PlayerLevel, Fault> {
  const group = document.group ?? 'men';
  const hand = document.hand ?? 'right';
  if (document.handicap !== undefined) return succeed({ handicap: document.handicap, group, hand });
  const inferred = inferLevel(document.bag, groups, group, hand);
  if (inferred === undefined) {
    const message = told(({ faults }) => faults.player.noLevel, { least: LEAST_SHOTS });
    return refuse(toldFault({ severity: 'error', code: 'level-unknown', where: 'handicap', message }));
  }
  const message = told(({ faults }) => faults.player.noHandicap, { level: levelTold(inferred) });
  warnings.push(toldFault({ severity: 'warning', code: 'handicap-missing', where: 'handicap', message }));
  return succeed(inferred);
}

/** The same shots with a weight by age, where the player wants recent shots to count more. */
function weighShots(groups: ShotGroups, document: PlayerDocument, settings: BuildSettings): ShotGroups {
  const halfLife = document.settings?.halfLifeDays;
  if (halfLife === undefined) return groups;
  let newest = -Infinity;
  for (const shots of groups.values())
    for (const { day } of shots) newest = Math.max(newest, day ?? -Infinity);
  const today = dayOf(settings.today) ?? (newest === -Infinity ? undefined : newest);
  return new Map(
    [...groups].map(([key, shots]) => [
      key,
      shots.map((shot) => ({ ...shot, weight: weightOfAge(shot.day, today, halfLife) })),
    ]),
  );
}
