/** For a ball in trees: how the shot on the map passes them, and the ways out worth comparing. */

import type { Words } from '../../core/words/words.ts';
import { OWN_AIM } from '../state/app-state.ts';
import { withHole } from '../state/history.ts';
import { chanceText, strokesText } from '../state/measures.ts';
import { currentPlan, optionOf, paintedShot } from '../state/selectors.ts';
import { useApp, useTools } from '../state/use-app.ts';
import { shotPhrase } from '../panels/shot-words.ts';
import type { WayOutOfTrees } from '../workers/ways-out.ts';
import { currentWays } from './current-ways.ts';
import { degreesText, gapWords, heightLines } from './passage-words.ts';
import { useWords } from '../state/use-words.ts';

export function WaysOutPanel() {
  const words = useWords();
  const isInTrees = useApp((state) => currentPlan(state)?.lie === 'woods');
  if (!isInTrees) return null;
  return (
    <section class="ways-out" aria-label={words.trees.waysOut}>
      <h3>{words.trees.outOfTrees}</h3>
      <ShownShot />
      <Ways />
    </section>
  );
}

function ShownShot() {
  const words = useWords();
  const answer = useApp((state) => state.answers.treePassage);
  const option = useApp((state) => optionOf(state, paintedShot(state)));
  const units = useApp((state) => state.settings.units);
  if (option === null || option.kind !== 'shot') return <p class="faint">{words.trees.chooseBelow}</p>;
  if (answer === null) return <p class="faint">{words.trees.looking}</p>;
  const { passage } = answer;
  return (
    <div class="tree-passage">
      <p>
        <strong>{shotPhrase(option, words)}</strong>, {words.trees.passages[passage.passage]}.{' '}
        {gapWords(passage, words)}
      </p>
      {heightLines(passage, units, words).map((line) => (
        <p key={line} class="tree-height">
          {line}
        </p>
      ))}
    </div>
  );
}

/** Wider than a half turn is no gap but open country. */
function gapText(degrees: number, { trees }: Words): string {
  if (degrees === 0) return trees.none;
  return degrees > 179 ? trees.openGap : degreesText(degrees);
}

function Ways() {
  const words = useWords();
  const { store } = useTools();
  const hole = useApp((state) => state.view.hole);
  const answer = useApp(currentWays);
  if (hole === null) return null;
  if (answer === null) return <p class="faint">{words.trees.onceWorkedOut}</p>;
  if (answer.ways.length === 0) return <p class="faint">{words.trees.noClub}</p>;
  const tryOut = ({ club, way, spreadIndex, target }: WayOutOfTrees): void => {
    const situation = withHole(store.state().history.present, hole, { aim: { spreadIndex, target } });
    const label = words.plan.steps.tryWay({ club, way: words.trees.ways[way], hole });
    store.dispatch({ type: 'situation-taken', situation, label });
    store.dispatch({ type: 'shot-chosen', shot: OWN_AIM });
  };
  return (
    <>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.trees.columns.way}</th>
            <th scope="col">{words.trees.columns.gap}</th>
            <th scope="col">{words.trees.columns.through}</th>
            <th scope="col">{words.trees.columns.strokes}</th>
          </tr>
        </thead>
        <tbody>
          {answer.ways.map((way) => (
            <tr key={`${way.spreadIndex} ${way.bearing} ${way.carryM}`}>
              <th scope="row">
                <button
                  type="button"
                  class="option-name"
                  title={words.trees.tryIt}
                  onClick={() => tryOut(way)}
                >
                  {way.club}
                  <small>{way.swing === 'full' ? '' : `, ${words.golf.swings[way.swing]}`}</small>
                </button>
                <span class="option-aim">
                  {words.trees.ways[way.way]}, {words.trees.passages[way.passage]}
                </span>
              </th>
              <td>
                {gapText(way.gapDeg, words)} / {degreesText(way.spreadDeg)}
              </td>
              <td>{chanceText(way.throughChance)}</td>
              <td>{strokesText(way.meanStrokes, words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="faint">{words.trees.note}</p>
    </>
  );
}
