/** What would help most: the odds again for the player who does one thing better. */

import { signedText } from '../../state/measures.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { findHelp, helpKey, stopHelp } from '../effects/find-help.ts';
import { roundStoreOf, useRound, useRoundHoles } from '../state/use-round.ts';
import { chanceWords } from '../target/odds-panel.tsx';
import { useWords } from '../../state/use-words.ts';

export function HelpPanel() {
  const words = useWords();
  const tools = useTools();
  const round = roundStoreOf(tools);
  const holes = useRoundHoles();
  const kept = useRound((state) => state.help);
  const wishes = useRound((state) => state.wishes);
  const key = useApp((app) => helpKey(app, wishes));
  const help = kept?.key === key ? kept : null;
  const isWhole = holes.ready.length === holes.all.length;
  return (
    <section class="table-box" aria-label="What would help most">
      <div class="table-head">
        <h3>What would help most</h3>
        {help?.status !== 'working' && (
          <button
            type="button"
            class="small-button"
            disabled={!isWhole}
            onClick={() => void findHelp(tools, round)}
          >
            {help === null ? 'Work it out' : 'Work it out again'}
          </button>
        )}
      </div>
      <p class="faint">
        Each line plans the whole round anew for a player who does this one thing better. It is worked out on
        a coarse grid with the same luck for both; the strokes saved there move the odds of the full plan.
        Trust the order more than the last per cent.
        {!isWhole && ' It can be asked for once every hole is worked out.'}
      </p>
      {help?.status === 'working' && (
        <div class="work-line">
          <span role="status">Working out improvements, some minutes in all</span>
          <progress class="fine-progress" max={1} value={help.share} aria-label="Improvements worked out" />
          <button type="button" class="small-button" onClick={() => stopHelp(tools, round)}>
            Stop
          </button>
        </div>
      )}
      {help !== null && help.lines.length > 0 && (
        <table class="plain-table">
          <thead>
            <tr>
              <th scope="col">With</th>
              <th scope="col" class="number">
                Chance of {help.target} or fewer
              </th>
              <th scope="col" class="number">
                Change
              </th>
              <th scope="col" class="number">
                Strokes saved
              </th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">the game as it is</th>
              <td class="number">{help.chance === null ? '' : chanceWords(help.chance)}</td>
              <td />
              <td />
            </tr>
            {help.lines.map(({ id, words: told, chance, gain, saved }) => (
              <tr key={id}>
                <th scope="row">{told}</th>
                <td class="number">{chanceWords(chance)}</td>
                <td class="number">{signedText(100 * gain, words, 1)} % points</td>
                <td class="number">{signedText(saved, words)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {help?.status === 'stopped' && <p class="faint">Stopped; what was worked out stays.</p>}
    </section>
  );
}
