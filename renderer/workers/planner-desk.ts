/**
 * One worker's desk: holds the course, the player and the holes it has worked out, and answers questions about
 * them. Solutions run in slices, so that a question asked meanwhile is answered within a few milliseconds.
 */

import { type Conditions, DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { dayKey } from '../../core/conditions/day-words.ts';
import { checkCourse } from '../../core/course/check.ts';
import { parseCourseText } from '../../core/course/parse.ts';
import type { Course } from '../../core/course/model.ts';
import type { Choice, Comparison, SolveProgress, SpotPlan, StrokesSurface } from '../../core/plan/model.ts';
import { compareChoices, evaluateChoice, planFromSpot } from '../../core/plan/options.ts';
import { choiceOf } from '../../core/plan/choices.ts';
import { prepareHole, type PreparedHole } from '../../core/plan/prepare.ts';
import { DEFAULT_SETTINGS, solveStrokes, type SolveSettings } from '../../core/plan/solve.ts';
import { lieAt } from '../../core/ground/hole-ground.ts';
import { Lie } from '../../core/ground/lies.ts';
import type { StrokesField } from '../../core/plan/strokes-field.ts';
import { strokesSurface } from '../../core/plan/surface.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import { parsePlayerText } from '../../core/player/parse.ts';
import { type Fault, refuse, type Result, succeed } from '../../core/result.ts';
import type { HoleResult } from '../state/app-state.ts';
import { holeContent } from '../state/hole-content.ts';
import { resultOf, settingsOf, shotPicture } from './hole-result.ts';
import type {
  HoleTask,
  OwnShot,
  PlannerApi,
  ShotPicture,
  ShotRequest,
  SpotQuestion,
  Unfinished,
} from './planner-api.ts';
import { type QueueMeans, SolveQueue } from './solve-queue.ts';
import { treePassage, type TreePassage, waysOut, type WayOutOfTrees } from './ways-out.ts';

/** For a first answer, and while something is being dragged: one coarse grid, few draws, few sweeps. */
const ROUGH_SETTINGS: SolveSettings = { ...DEFAULT_SETTINGS, spacingsM: [24], draws: 16, mostSweeps: 3 };

export interface Solved {
  readonly hole: number;
  readonly rough: boolean;
  /** Names the field without the tee, which the field does not depend on. */
  readonly fieldKey: string;
  /** Names what of the course it was worked out from. */
  readonly content: string;
  readonly prepared: PreparedHole;
  readonly field: StrokesField;
}

export interface Opened {
  readonly course: Course;
  readonly player: PlayerModel;
  readonly playerText: string;
}

export class PlannerDesk implements PlannerApi {
  protected opened: Opened | null = null;
  private readonly solved = new Map<string, Solved>();
  private readonly queue: SolveQueue<SolveProgress, Result<Solved, Fault>>;
  private readonly waysOutQueue: SolveQueue<number, readonly WayOutOfTrees[]>;

  constructor(protected readonly means: QueueMeans) {
    this.queue = new SolveQueue(means);
    this.waysOutQueue = new SolveQueue(means);
  }

  open(courseText: string, playerText: string): Promise<Result<null, readonly Fault[]>> {
    this.queue.cancelAll();
    this.waysOutQueue.cancelAll();
    // A new version of the course leaves most holes as they were: their keys name what they depend on.
    if (this.opened?.playerText !== playerText) this.solved.clear();
    this.opened = null;
    const course = parseCourseText(courseText);
    if (!course.ok) return Promise.resolve(course);
    const player = parsePlayerText(playerText);
    if (!player.ok) return Promise.resolve(player);
    this.opened = { course: course.value, player: player.value, playerText };
    return Promise.resolve(succeed(null));
  }

  check(): Promise<readonly Fault[]> {
    return Promise.resolve(this.opened === null ? [] : checkCourse(this.opened.course));
  }

  async solve(
    task: HoleTask,
    report: (progress: SolveProgress) => void,
  ): Promise<Result<HoleResult, Unfinished>> {
    const { opened } = this;
    if (opened === null) return refuse({ why: 'cancelled' });
    const ended = await this.queue.add({
      key: solvedKey(task.key, task.rough),
      group: task.hole,
      quick: task.rough,
      steps: this.work(opened, task),
      report,
    });
    // Other files may have been opened meanwhile.
    if (!ended.finished || this.opened !== opened) return refuse({ why: 'cancelled' });
    const solved = ended.value;
    if (!solved.ok) return refuse({ why: 'fault', fault: solved.error });
    this.keep(task.key, solved.value);
    return succeed(resultOf(task, solved.value.prepared, solved.value.field));
  }

  /** Preparing is part of the work, so that a waiting hole costs nothing and the hole on screen goes first. */
  private *work(opened: Opened, task: HoleTask): Generator<SolveProgress, Result<Solved, Fault>, void> {
    const { hole, rough } = task;
    yield { stage: 'reading the ground', done: 0, total: 1 };
    const prepared = this.prepare(opened, task);
    if (!prepared.ok) return prepared;
    const content = holeContent(opened.course, hole);
    const fieldKey = `${content}/${fieldKeyOf(task)}`;
    const field =
      this.knownField(fieldKey) ??
      (yield* solveStrokes(prepared.value, rough ? ROUGH_SETTINGS : DEFAULT_SETTINGS));
    return succeed({ hole, rough, fieldKey, content, prepared: prepared.value, field });
  }

  private prepare(opened: Opened, task: HoleTask): Result<PreparedHole, Fault> {
    const { position, conditions = DEFAULT_CONDITIONS } = task;
    const content = holeContent(opened.course, task.hole);
    const known = [...this.solved.values()].find(
      (solved) =>
        solved.hole === task.hole && solved.content === content && isSameDay(solved.prepared, conditions),
    )?.prepared;
    // Putts over slopes depend on where the hole is: a rough answer does with those of before.
    const { levels, slopeMarks } = opened.course;
    const mayMove = task.rough || (levels.length === 0 && slopeMarks === undefined);
    if (
      mayMove &&
      known?.teeName === task.teeName &&
      known.seed === task.seed &&
      typeof position !== 'string'
    ) {
      // Only the hole position is another: the ground need not be drawn again, which counts while it is dragged.
      const pin = known.frame.toSpot(position);
      if (lieAt(known.ground, pin.x, pin.y) === Lie.green)
        return succeed({
          ...known,
          pin,
          playLine: [...known.playLine.slice(0, -1), pin],
          positionName: null,
        });
    }
    return prepareHole({
      ...opened,
      holeNumber: task.hole,
      teeName: task.teeName,
      holePosition: position,
      conditions,
      seed: task.seed,
    });
  }

  private knownField(fieldKey: string): StrokesField | null {
    for (const known of this.solved.values()) if (known.fieldKey === fieldKey) return known.field;
    return null;
  }

  /** A hole keeps its last full and its last quick solution; older ones make room. */
  private keep(key: string, solved: Solved): void {
    for (const [other, known] of this.solved) {
      if (known.hole === solved.hole && known.rough === solved.rough) this.solved.delete(other);
    }
    this.solved.set(solvedKey(key, solved.rough), solved);
  }

  hurry(hole: number): Promise<void> {
    this.queue.hurry(hole);
    return Promise.resolve();
  }

  cancel(key: string): Promise<void> {
    this.queue.cancel(solvedKey(key, false));
    return Promise.resolve();
  }

  plan(question: SpotQuestion): Promise<SpotPlan | null> {
    return this.about(question, (prepared, field, spot) =>
      planFromSpot(prepared, field, spot, settingsOf(question)),
    );
  }

  weigh(question: SpotQuestion, shot: ShotRequest, best: ShotRequest | null): Promise<OwnShot | null> {
    return this.about(question, (prepared, field, spot) => {
      const choice = choiceFor(prepared, spot, shot);
      const settings = settingsOf(question);
      const option = evaluateChoice(prepared, field, spot, choice, settings);
      if (option === null) return null;
      const rival = best === null ? null : choiceFor(prepared, spot, best);
      return {
        option,
        toBest: rival === null ? null : compareChoices(prepared, field, spot, choice, rival, settings),
      };
    });
  }

  compare(question: SpotQuestion, a: ShotRequest, b: ShotRequest): Promise<Comparison | null> {
    return this.about(question, (prepared, field, spot) =>
      compareChoices(
        prepared,
        field,
        spot,
        choiceFor(prepared, spot, a),
        choiceFor(prepared, spot, b),
        settingsOf(question),
      ),
    );
  }

  paint(question: SpotQuestion, shot: ShotRequest, balls: number): Promise<ShotPicture | null> {
    return this.about(question, (prepared, _field, spot) => {
      return shotPicture(prepared, spot, choiceFor(prepared, spot, shot), balls);
    });
  }

  surface(resultKey: string, cellM: number): Promise<StrokesSurface | null> {
    const known = this.solvedOf(resultKey);
    return Promise.resolve(known === null ? null : strokesSurface(known.field, cellM));
  }

  async waysOut(question: SpotQuestion): Promise<readonly WayOutOfTrees[] | null> {
    this.waysOutQueue.cancelAll();
    const known = this.solvedOf(question.resultKey);
    if (known === null) return null;
    const { prepared, field, hole } = known;
    const spot = prepared.frame.toSpot(question.ball);
    const ended = await this.waysOutQueue.add({
      ...{ key: 'ways out', group: hole, quick: false, report: () => undefined },
      steps: waysOut(prepared, field, spot, question.strokesTaken),
    });
    return ended.finished ? ended.value : null;
  }

  treePassage(question: SpotQuestion, shot: ShotRequest): Promise<TreePassage | null> {
    return this.about(question, (prepared, _field, spot) =>
      treePassage(prepared, spot, choiceFor(prepared, spot, shot)),
    );
  }

  /** The hole in full where it is there, else its quick answer. */
  protected solvedOf(resultKey: string): Solved | null {
    return (
      this.solved.get(solvedKey(resultKey, false)) ?? this.solved.get(solvedKey(resultKey, true)) ?? null
    );
  }

  private about<T>(
    question: SpotQuestion,
    answer: (
      prepared: PreparedHole,
      field: StrokesField,
      spot: { readonly x: number; readonly y: number },
    ) => T,
  ): Promise<T | null> {
    const known = this.solvedOf(question.resultKey);
    if (known === null) return Promise.resolve(null);
    const { prepared, field } = known;
    return Promise.resolve(answer(prepared, field, prepared.frame.toSpot(question.ball)));
  }
}

function isSameDay(prepared: PreparedHole, conditions: Conditions): boolean {
  return dayKey(prepared.conditions) === dayKey(conditions);
}

function solvedKey(key: string, rough: boolean): string {
  return rough ? `${key} (rough)` : key;
}

function fieldKeyOf(task: HoleTask): string {
  const at = typeof task.position === 'string' ? task.position : task.position.join(',');
  const day = dayKey(task.conditions ?? DEFAULT_CONDITIONS);
  return `${task.hole}/${task.teeName}/${at}/${day}/${task.seed}/${task.rough ? 'rough' : 'full'}`;
}

function choiceFor(
  prepared: PreparedHole,
  spot: { readonly x: number; readonly y: number },
  shot: ShotRequest,
): Choice {
  if (shot.from === 'option') return choiceOf(prepared, shot.option);
  const aim = prepared.frame.toSpot(shot.target);
  return {
    spreadIndex: shot.spreadIndex,
    bearing: Math.atan2(aim.x - spot.x, aim.y - spot.y),
    // Beyond the longest part swing there is none.
    carryM: Math.min(
      Math.hypot(aim.x - spot.x, aim.y - spot.y),
      prepared.player.spreads[shot.spreadIndex]?.carryMean ?? 0,
    ),
  };
}
