/** For a ball in trees: how the shot on the map passes them, and the ways out worth comparing. */

import { OWN_AIM } from '../state/app-state.ts';
import { withHole } from '../state/history.ts';
import { chanceText, strokesText } from '../state/measures.ts';
import { currentPlan, optionOf, paintedShot } from '../state/selectors.ts';
import { useApp, useTools } from '../state/use-app.ts';
import { shotPhrase, SWING_WORDS } from '../panels/shot-words.ts';
import type { WayOutOfTrees } from '../workers/ways-out.ts';
import { currentWays } from './current-ways.ts';
import { degreesText, gapWords, heightLines, PASSAGE_WORDS, WAY_WORDS } from './passage-words.ts';

export function WaysOutPanel() {
  const isInTrees = useApp((state) => currentPlan(state)?.lie === 'woods');
  if (!isInTrees) return null;
  return (
    <section class="ways-out" aria-label="Ways out of the trees">
      <h3>Out of the trees</h3>
      <ShownShot />
      <Ways />
    </section>
  );
}

function ShownShot() {
  const answer = useApp((state) => state.answers.treePassage);
  const option = useApp((state) => optionOf(state, paintedShot(state)));
  const units = useApp((state) => state.settings.units);
  if (option === null || option.kind !== 'shot')
    return <p class="faint">Choose a shot below to see how it passes the trees.</p>;
  if (answer === null) return <p class="faint">Looking at the trees around the ball.</p>;
  const { passage } = answer;
  return (
    <div class="tree-passage">
      <p>
        <strong>{shotPhrase(option)}</strong>, {PASSAGE_WORDS[passage.passage]}. {gapWords(passage)}
      </p>
      {heightLines(passage, units).map((line) => (
        <p key={line} class="tree-height">
          {line}
        </p>
      ))}
    </div>
  );
}

/** Wider than a half turn is no gap but open country. */
function gapText(degrees: number): string {
  if (degrees === 0) return 'none';
  return degrees > 179 ? 'open' : degreesText(degrees);
}

function Ways() {
  const { store } = useTools();
  const hole = useApp((state) => state.view.hole);
  const answer = useApp(currentWays);
  if (hole === null) return null;
  if (answer === null)
    return <p class="faint">The ways out are compared once the hole is worked out in full.</p>;
  if (answer.ways.length === 0)
    return <p class="faint">No club of the bag is played from here: see the drops below.</p>;
  const tryOut = ({ club, way, spreadIndex, target }: WayOutOfTrees): void => {
    const situation = withHole(store.state().history.present, hole, { aim: { spreadIndex, target } });
    const label = `try ${club} ${WAY_WORDS[way]} on hole ${hole}`;
    store.dispatch({ type: 'situation-taken', situation, label });
    store.dispatch({ type: 'shot-chosen', shot: OWN_AIM });
  };
  return (
    <>
      <table>
        <thead>
          <tr>
            <th scope="col">Way out</th>
            <th scope="col">Gap / yours</th>
            <th scope="col">Through</th>
            <th scope="col">Strokes</th>
          </tr>
        </thead>
        <tbody>
          {answer.ways.map((way) => (
            <tr key={`${way.spreadIndex} ${way.bearing} ${way.carryM}`}>
              <th scope="row">
                <button type="button" class="option-name" title="Try it" onClick={() => tryOut(way)}>
                  {way.club}
                  <small>{way.swing === 'full' ? '' : `, ${SWING_WORDS[way.swing]}`}</small>
                </button>
                <span class="option-aim">
                  {WAY_WORDS[way.way]}, {PASSAGE_WORDS[way.passage]}
                </span>
              </th>
              <td>
                {gapText(way.gapDeg)} / {degreesText(way.spreadDeg)}
              </td>
              <td>{chanceText(way.throughChance)}</td>
              <td>{strokesText(way.meanStrokes)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="faint">
        Strokes from few samples; choose one to weigh it in full as your own aim. The table below has the
        drops for an unplayable ball too. How thick the trees are is a guess of the map: look before you play,
        and never play towards people.
      </p>
    </>
  );
}
