/** Starts the window: store, host, workers, and the errands that keep them in step. */

import { told } from '../core/words/told.ts';
import { render } from 'preact';
import 'leaflet/dist/leaflet.css';
import './styles/tones.css';
import './styles/window.css';
import './styles/controls.css';
import './styles/panels.css';
import './styles/map.css';
import './styles/conditions.css';
import './styles/help.css';
import './styles/tour.css';
import './styles/seeing.css';
import './styles/print.css';
import { App } from './app.tsx';
import { connectHost } from './host/connect.ts';
import { thisEngine } from './kept-plans/engine.ts';
import { planKeeper } from './kept-plans/plan-keeper.ts';
import { showKept } from './kept-plans/show-kept.ts';
import { answerQuestions } from './state/effects/answer-questions.ts';
import { findWaysOut } from './state/effects/find-ways-out.ts';
import { keepSettings, paintTheme, tellLanguage } from './state/effects/keep-settings.ts';
import { fileDuties, readSettings, startFiles } from './state/effects/open-files.ts';
import { listenForShortcuts } from './state/effects/shortcuts.ts';
import { solveHoles } from './state/effects/solve-holes.ts';
import { initialState } from './state/initial.ts';
import { reduce } from './state/reduce.ts';
import { makeStore } from './state/store.ts';
import { makeUndoDesk, undoOfPlan } from './state/undo-desk.ts';
import { wordsOf } from './state/use-words.ts';
import { titleWindow } from './state/effects/title.ts';
import { startPlanners } from './workers/planner-pool.ts';

const BEGUN_ANEW = told(({ bar }) => bar.begunAnew);

async function start(): Promise<void> {
  const store = makeStore(initialState(navigator.languages), reduce);
  paintTheme(store, document.documentElement, window.matchMedia('(prefers-color-scheme: dark)'));
  tellLanguage(store, document.documentElement);
  const host = await connectHost(() => wordsOf(store.state()));
  const pool = startPlanners({
    broken: (said) => {
      const message =
        said === ''
          ? told(({ bar }) => bar.calculationNotStarted)
          : told(({ bar }) => bar.engineSaid, { said });
      store.dispatch({
        type: 'trouble-met',
        title: told(({ bar }) => bar.calculationFailed),
        message: told(({ bar }) => bar.startAgain, { message }),
      });
    },
    restarted: (worker, workers) => {
      store.dispatch({ type: 'work-lost', worker, workers });
      const isTold = store
        .state()
        .notices.some((one) => one.kind === 'trouble' && one.message === BEGUN_ANEW);
      if (isTold) return;
      const title = told(({ bar }) => bar.calculationStopped);
      store.dispatch({ type: 'trouble-met', title, message: BEGUN_ANEW });
    },
  });
  const place = document.getElementById('window');
  if (place === null) throw new Error('The page has no place for the window.');
  const undo = makeUndoDesk();
  undo.bring('plan', undoOfPlan(store));
  render(<App tools={{ store, duties: fileDuties(store, host), host, pool, undo }} />, place);
  listenForShortcuts(store, undo, window);
  titleWindow(store, document);
  const keeper = planKeeper(host, thisEngine(navigator.userAgent));
  const { looked } = showKept(store, keeper);
  solveHoles(store, pool, keeper.keep, looked);
  answerQuestions(store, pool);
  findWaysOut(store, pool);
  // asked for beside the settings, used after them
  const listed = host.list();
  await readSettings(store, host);
  keepSettings(store, host);
  await startFiles(store, host, listed);
}

void start();
