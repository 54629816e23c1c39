/** Works out what would help most: every hole anew for each improvement, on all workers, until done or stopped. */

import { faultText, told } from '../../../core/words/told.ts';
import { proxy } from 'comlink';
import type { ScoreDistribution } from '../../../core/round/distribution.ts';
import { roundOutlook } from '../../../core/round/figures.ts';
import { scoreToMeet } from '../../../core/round/target.ts';
import {
  type HelpLine,
  type ImprovementId,
  IMPROVEMENTS,
  whatWouldHelp,
} from '../../../core/round/what-would-help.ts';
import { toldReason } from '../../state/effects/follow.ts';
import { positionRequest } from '../../state/effects/solve-holes.ts';
import type { AppState } from '../../state/app-state.ts';
import { situationOfHole } from '../../state/history.ts';
import type { AppTools } from '../../state/use-app.ts';
import type { ImprovedTask } from '../../workers/round-api.ts';
import { parOf, roundHoles, targetOf } from '../state/planned-holes.ts';
import type { HelpWork, Wishes } from '../state/round-state.ts';
import type { RoundStore } from '../state/use-round.ts';
import { wordsOf } from '../../state/use-words.ts';

/** Names what the help is for. */
export function helpKey(app: AppState, wishes: Wishes): string {
  const course = app.course?.value;
  if (course === undefined) return '';
  const target = scoreToMeet(targetOf(wishes, course, app.player?.value ?? null), parOf(course.holes));
  return `${roundHoles(app)
    .ready.map(({ result }) => result.key)
    .join('|')}/${target}/${wishes.formSd}`;
}

class Stopped extends Error {}

export async function findHelp({ store, pool }: AppTools, round: RoundStore): Promise<void> {
  const app = store.state();
  const { wishes } = round.state();
  const course = app.course?.value;
  const player = app.player?.value;
  if (course === undefined || player === undefined) return;
  const key = helpKey(app, wishes);
  const target = scoreToMeet(targetOf(wishes, course, player), parOf(course.holes));
  const { ready } = roundHoles(app);
  const { scores } = roundOutlook(ready, target, wishes.formSd);
  const total = (IMPROVEMENTS.length + 1) * ready.length;
  let done = 0;
  const shares = new Map<string, number>();
  const now = (): HelpWork | null => round.state().help;
  const isOurs = (): boolean => now()?.key === key && now()?.status === 'working';
  const change = (part: Partial<HelpWork>): void => {
    const help = now();
    if (help !== null && isOurs()) round.dispatch({ type: 'help-changed', help: { ...help, ...part } });
  };
  const tell = (): void =>
    change({ share: (done + [...shares.values()].reduce((sum, share) => sum + share, 0)) / total });
  round.dispatch({
    type: 'help-changed',
    help: { key, target, status: 'working', share: 0, chance: null, expected: null, lines: [] },
  });

  const taskOf = (number: number, improvement: ImprovementId | null): ImprovedTask => {
    const hole = course.holes.find((one) => one.number === number)!;
    const planned = ready.find((one) => one.hole === number)!;
    const { position } = situationOfHole(app.history.present, number);
    return {
      ...{ hole: number, teeName: planned.result.teeName, seed: app.seed, improvement },
      position: positionRequest(hole, position),
      conditions: planned.result.conditions,
    };
  };
  const solve = async (improvement: ImprovementId | null): Promise<readonly ScoreDistribution[]> =>
    Promise.all(
      ready.map(async ({ hole }) => {
        const name = `${improvement ?? ''} ${hole}`;
        const answer = await pool.deskOf(hole).improved(
          taskOf(hole, improvement),
          proxy((share) => {
            shares.set(name, share);
            tell();
          }),
        );
        shares.delete(name);
        if (!answer.ok) {
          if (answer.error.why === 'cancelled') throw new Stopped();
          const words = wordsOf(store.state());
          const { message } = faultText(answer.error.fault, words);
          throw new Error(words.round.help.holeFault({ hole, message }));
        }
        done += 1;
        tell();
        return answer.value;
      }),
    );
  try {
    await whatWouldHelp({ player, course }, target, (_setup, improvement) => solve(improvement), {
      formSd: wishes.formSd,
      planned: scores,
      isCancelled: () => !isOurs(),
      onLine: (line, as) => change({ ...as, lines: inOrder([...(now()?.lines ?? []), line]) }),
    });
    change({ status: 'done', share: 1 });
  } catch (reason) {
    change({ status: 'stopped' });
    if (!(reason instanceof Stopped))
      store.dispatch({
        type: 'trouble-met',
        title: told(({ round }) => round.help.failed),
        message: toldReason(reason),
      });
  }
}

/** What is worked out stays. */
export function stopHelp({ pool }: AppTools, round: RoundStore): void {
  const { help } = round.state();
  if (help !== null) round.dispatch({ type: 'help-changed', help: { ...help, status: 'stopped' } });
  for (let worker = 0; worker < pool.workers; worker++) void pool.deskOf(worker).cancelImprovements();
}

function inOrder(lines: readonly HelpLine[]): readonly HelpLine[] {
  return [...lines].sort((a, b) => b.gain - a.gain || b.saved - a.saved);
}
