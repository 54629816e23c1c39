/** A planner's desk that also serves a round: ledgers and improvements in slices, cards and play at once. */

import { type Conditions, DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { dayKey } from '../../core/conditions/day-words.ts';
import { cardHole } from '../../core/card/card-hole.ts';
import { wordsIn } from '../../core/words/words.ts';
import type { CardHole } from '../../core/card/model.ts';
import { planFromSpot } from '../../core/plan/options.ts';
import type { SpotPlan } from '../../core/plan/model.ts';
import { prepareHole, type PreparedHole } from '../../core/plan/prepare.ts';
import { DEFAULT_SETTINGS, solveStrokes, type SolveSettings } from '../../core/plan/solve.ts';
import type { StrokesField } from '../../core/plan/strokes-field.ts';
import type { PlayerLevel } from '../../core/player/presets.ts';
import { type Fault, refuse, type Result, succeed } from '../../core/result.ts';
import { departuresOf } from '../../core/round/departures.ts';
import type { ScoreDistribution } from '../../core/round/distribution.ts';
import type { PlannedHoleRecord, PlayedHoleRecord } from '../../core/round/format.ts';
import { type Expectation, holeLedgerSteps } from '../../core/round/ledger.ts';
import { LuckSource } from '../../core/round/luck.ts';
import type { Decision } from '../../core/round/own-policy.ts';
import { peerOf } from '../../core/round/peer.ts';
import { type Ball, decideBy, HolePlay, playHole } from '../../core/round/play-hole.ts';
import { playToTarget } from '../../core/round/play-to-target.ts';
import { recordOfPlay } from '../../core/round/record-play.ts';
import { type HoleReview, reviewHole } from '../../core/round/review-hole.ts';
import { recommendedOf, teePlanOf } from '../../core/round/round-hole.ts';
import { holeScores } from '../../core/round/score-distribution.ts';
import { costOfChoice } from '../../core/round/try-out.ts';
import { improvementOf } from '../../core/round/what-would-help.ts';
import type { Unfinished } from './planner-api.ts';
import { type Opened, PlannerDesk, type Solved } from './planner-desk.ts';
import { progressShare } from './progress-share.ts';
import type {
  ImprovedTask,
  LedgerAnswer,
  LedgerTask,
  LuckName,
  PlayingAnswer,
  PlayingQuestion,
  RoundApi,
  ShareReport,
  TriedShot,
  TryChoices,
  CardStyle,
} from './round-api.ts';
import { type QueueMeans, SolveQueue } from './solve-queue.ts';

/** Enough for averages over whole rounds, and for what strokes were worth on another day. */
const PEER_SETTINGS: SolveSettings = { ...DEFAULT_SETTINGS, spacingsM: [20, 10], draws: 32 };
/** For differences between two players, both worked out alike with the same luck. */
const COMPARING_SETTINGS: SolveSettings = { ...DEFAULT_SETTINGS, spacingsM: [24], draws: 16, mostSweeps: 4 };
const COMPARING_SAMPLES = 1024;
/** Samples behind the cost of a choice while trying out: an answer at once. */
const TRYING_SAMPLES = 1024;
/** Holes on other days that are kept: two rounds' worth for each worker. */
const MOST_DAY_PLAYS = 36;
/** Share of a ledger's work that goes into the peer's plan. */
const PEER_SHARE = 0.9;

interface Played {
  readonly play: HolePlay;
  readonly plan: SpotPlan;
}

interface Peer {
  readonly expectation: Expectation;
  readonly scores: ScoreDistribution;
}

type LedgerEnd = Result<LedgerAnswer, Fault>;
type ImprovedEnd = Result<ScoreDistribution, Fault>;

export class RoundDesk extends PlannerDesk implements RoundApi {
  private readonly ledgers: SolveQueue<number, LedgerEnd>;
  private readonly improvements: SolveQueue<number, ImprovedEnd>;
  private readonly plays = new Map<Solved, Played>();
  private readonly peers = new Map<string, Peer>();
  private readonly otherDays: SolveQueue<number, HolePlay | null>;
  /** Holes as they play on the days of played rounds. */
  private readonly dayPlays = new Map<string, Promise<HolePlay | null>>();

  constructor(means: QueueMeans) {
    super(means);
    this.ledgers = new SolveQueue(means);
    this.improvements = new SolveQueue(means);
    this.otherDays = new SolveQueue(means);
  }

  override open(courseText: string, playerText: string): Promise<Result<null, readonly Fault[]>> {
    this.ledgers.cancelAll();
    this.improvements.cancelAll();
    this.plays.clear();
    this.peers.clear();
    this.otherDays.cancelAll();
    this.dayPlays.clear();
    return super.open(courseText, playerText);
  }

  async ledger(task: LedgerTask, report: ShareReport): Promise<Result<LedgerAnswer, Unfinished>> {
    const solved = this.solvedOf(task.resultKey);
    const { opened } = this;
    if (solved === null || opened === null) return refuse({ why: 'cancelled' });
    const ended = await this.ledgers.add({
      ...{ key: `ledger ${task.resultKey}`, group: solved.hole, quick: false, report },
      steps: this.ledgerWork(opened, solved, task),
    });
    return endOf(ended.finished && this.opened === opened ? ended.value : null);
  }

  private *ledgerWork(
    opened: Opened,
    solved: Solved,
    { plays, peer: level }: LedgerTask,
  ): Generator<number, LedgerEnd, void> {
    yield 0;
    let peer: Peer | null = null;
    if (level !== null) {
      const known = yield* this.peerWork(opened, solved.prepared, level);
      if (!known.ok) return known;
      peer = known.value;
    }
    const { play } = this.playOf(solved);
    const steps = holeLedgerSteps(play, plays, solved.prepared.seed, peer?.expectation ?? null);
    const before = peer === null ? 0 : PEER_SHARE;
    for (;;) {
      const step = steps.next();
      if (step.done === true) return succeed({ ledger: step.value, peerScores: peer?.scores ?? null });
      yield before + (1 - before) * (step.value / plays);
    }
  }

  private *peerWork(
    opened: Opened,
    prepared: PreparedHole,
    level: PlayerLevel,
  ): Generator<number, Result<Peer, Fault>, void> {
    const where = `${prepared.hole.number}/${prepared.teeName}/${prepared.pin.x},${prepared.pin.y}`;
    const key = `${where}/${dayKey(prepared.conditions)}/${level.handicap}/${level.group}`;
    const known = this.peers.get(key);
    if (known !== undefined) return succeed(known);
    const theirs = prepareHole({
      ...{ course: opened.course, player: peerOf(opened.player, level), holeNumber: prepared.hole.number },
      ...{ teeName: prepared.teeName, seed: prepared.seed, conditions: prepared.conditions },
      holePosition: prepared.frame.toLonLat(prepared.pin),
    });
    if (!theirs.ok) return theirs;
    const field = yield* shares(solveStrokes(theirs.value, PEER_SETTINGS), PEER_SHARE);
    const option = recommendedOf(planFromSpot(theirs.value, field, theirs.value.tee));
    const peer: Peer = {
      expectation: {
        fromTee: option.meanStrokes,
        from: (spot, lie) => field.valueAt(spot.x, spot.y, lie),
      },
      scores: holeScores(option),
    };
    this.peers.set(key, peer);
    return succeed(peer);
  }

  async improved(task: ImprovedTask, report: ShareReport): Promise<Result<ScoreDistribution, Unfinished>> {
    const { opened } = this;
    if (opened === null) return refuse({ why: 'cancelled' });
    const ended = await this.improvements.add({
      ...{ key: `${task.improvement ?? 'as is'} ${task.hole}`, group: task.hole, quick: false, report },
      steps: improvedWork(opened, task),
    });
    return endOf(ended.finished && this.opened === opened ? ended.value : null);
  }

  cancelLedgers(): Promise<void> {
    this.ledgers.cancelAll();
    return Promise.resolve();
  }

  cancelImprovements(): Promise<void> {
    this.improvements.cancelAll();
    return Promise.resolve();
  }

  playTo({ choices, aim, formSd }: PlayingQuestion): Promise<PlayingAnswer> {
    const plan = playToTarget(choices, aim, formSd);
    return Promise.resolve({ plan, departures: departuresOf(choices, plan) });
  }

  card(resultKey: string, { units, language }: CardStyle, chosen: string | null): Promise<CardHole | null> {
    const solved = this.solvedOf(resultKey);
    const { opened } = this;
    if (solved === null || opened === null) return Promise.resolve(null);
    const { plan } = this.playOf(solved);
    const isKnown = plan.options.some(({ id, kind }) => id === chosen && kind === 'shot');
    return Promise.resolve(
      cardHole(opened.course, solved.prepared, solved.field, plan, {
        units,
        words: wordsIn(language),
        ...(chosen !== null && isKnown ? { chosen } : {}),
      }),
    );
  }

  async reviewHole(
    resultKey: string,
    played: PlayedHoleRecord,
    planned: PlannedHoleRecord | null,
    seed: string,
    day: Conditions,
  ): Promise<HoleReview | null> {
    const solved = this.solvedOf(resultKey);
    if (solved === null) return null;
    const play = await this.playUnder(solved, day);
    return play === null ? null : reviewHole(played, planned ?? undefined, play, seed);
  }

  cancelReviews(): Promise<void> {
    this.otherDays.cancelAll();
    return Promise.resolve();
  }

  private playUnder(solved: Solved, day: Conditions): Promise<HolePlay | null> {
    if (dayKey(solved.prepared.conditions) === dayKey(day)) return Promise.resolve(this.playOf(solved).play);
    const { prepared, hole, content } = solved;
    const key = `${content}/${hole}/${prepared.teeName}/${prepared.pin.x},${prepared.pin.y}/${prepared.seed}/${dayKey(day)}`;
    const known = this.dayPlays.get(key);
    if (known !== undefined) return known;
    const { opened } = this;
    const asked =
      opened === null ? Promise.resolve(null) : this.playOnDay(key, playOnDay(opened, prepared, day), hole);
    this.dayPlays.set(key, asked);
    const [oldest] = this.dayPlays.keys();
    if (this.dayPlays.size > MOST_DAY_PLAYS && oldest !== undefined) this.dayPlays.delete(oldest);
    return asked;
  }

  private async playOnDay(
    key: string,
    steps: Generator<number, HolePlay | null, void>,
    group: number,
  ): Promise<HolePlay | null> {
    const ended = await this.otherDays.add({ key, group, quick: false, report: () => undefined, steps });
    if (ended.finished) return ended.value;
    // Stopped: it may be asked again.
    this.dayPlays.delete(key);
    return null;
  }

  startBall(resultKey: string): Promise<Ball | null> {
    return this.with(resultKey, ({ play }) => play.start());
  }

  tryChoices(resultKey: string, ball: Ball): Promise<TryChoices | null> {
    return this.with(resultKey, ({ play, plan }) => ({
      plan: ball.onTee
        ? plan
        : planFromSpot(play.prepared, play.field, ball.spot, {
            strokesTaken: ball.taken,
            samples: TRYING_SAMPLES,
          }),
      own: play.ownDecision(ball),
    }));
  }

  tryShot(resultKey: string, ball: Ball, decision: Decision, luck: LuckName): Promise<TriedShot | null> {
    return this.with(resultKey, ({ play }) => {
      const drawn = new LuckSource(luck.seed, play.prepared.hole.number).luckOf(luck.round, ball.step);
      return {
        shot: play.play(ball, decision, drawn),
        cost: decision.kind === 'swing' ? costOfChoice(play, ball, decision.choice, TRYING_SAMPLES) : null,
      };
    });
  }

  replay(resultKey: string, decisions: readonly Decision[], luck: LuckName) {
    return this.with(resultKey, ({ play }) => {
      const source = new LuckSource(luck.seed, play.prepared.hole.number);
      const played = playHole(play, source.hole(luck.round), decideBy(play, decisions));
      return { played, record: recordOfPlay(played, play.prepared) };
    });
  }

  private with<T>(resultKey: string, answer: (played: Played) => T): Promise<T | null> {
    const solved = this.solvedOf(resultKey);
    return Promise.resolve(solved === null ? null : answer(this.playOf(solved)));
  }

  /** The hole ready to be played; kept while its solution is. */
  private playOf(solved: Solved): Played {
    const known = this.plays.get(solved);
    if (known !== undefined) return known;
    for (const other of this.plays.keys()) if (other.hole === solved.hole) this.plays.delete(other);
    const { prepared, field } = solved;
    const plan = planFromSpot(prepared, field, prepared.tee);
    const played = { plan, play: new HolePlay(prepared, field, teePlanOf(prepared, plan)) };
    this.plays.set(solved, played);
    return played;
  }
}

function endOf<T>(end: Result<T, Fault> | null): Result<T, Unfinished> {
  if (end === null) return refuse({ why: 'cancelled' });
  return end.ok ? end : refuse({ why: 'fault', fault: end.error });
}

/** The hole as it plays on another day; null where it cannot be prepared. */
function* playOnDay(
  { course, player }: Opened,
  { hole, teeName, seed, frame, pin }: PreparedHole,
  conditions: Conditions,
): Generator<number, HolePlay | null, void> {
  yield 0;
  const prepared = prepareHole({
    ...{ course, player, holeNumber: hole.number, teeName, seed, conditions },
    holePosition: frame.toLonLat(pin),
  });
  if (!prepared.ok) return null;
  const field = yield* shares(solveStrokes(prepared.value, PEER_SETTINGS), 1);
  const plan = planFromSpot(prepared.value, field, prepared.value.tee);
  return new HolePlay(prepared.value, field, teePlanOf(prepared.value, plan));
}

function* improvedWork(
  { course, player }: Opened,
  { hole, teeName, position, seed, improvement, conditions = DEFAULT_CONDITIONS }: ImprovedTask,
): Generator<number, ImprovedEnd, void> {
  yield 0;
  const as = { player, course };
  const setup = improvement === null ? as : improvementOf(improvement).change(as);
  const prepared = prepareHole({
    ...{ ...setup, holeNumber: hole, teeName, holePosition: position, conditions, seed },
  });
  if (!prepared.ok) return prepared;
  const field: StrokesField = yield* shares(solveStrokes(prepared.value, COMPARING_SETTINGS), 1);
  const plan = planFromSpot(prepared.value, field, prepared.value.tee, { samples: COMPARING_SAMPLES });
  return succeed(holeScores(recommendedOf(plan)));
}

/** The steps of a solution as shares of its work, up to `most`. */
function* shares(
  steps: ReturnType<typeof solveStrokes>,
  most: number,
): Generator<number, StrokesField, void> {
  let share = 0;
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    share = progressShare(step.value) ?? share;
    yield most * share;
  }
}
