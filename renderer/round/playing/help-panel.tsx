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
    <section class="table-box" aria-label={words.round.help.title}>
      <div class="table-head">
        <h3>{words.round.help.title}</h3>
        {help?.status !== 'working' && (
          <button
            type="button"
            class="small-button"
            disabled={!isWhole}
            onClick={() => void findHelp(tools, round)}
          >
            {help === null ? words.round.help.work : words.round.help.again}
          </button>
        )}
      </div>
      <p class="faint">
        {words.round.help.note}
        {!isWhole && ` ${words.round.help.onceAll}`}
      </p>
      {help?.status === 'working' && (
        <div class="work-line">
          <span role="status">{words.round.help.working}</span>
          <progress class="fine-progress" max={1} value={help.share} aria-label={words.round.help.progress} />
          <button type="button" class="small-button" onClick={() => stopHelp(tools, round)}>
            {words.round.help.stop}
          </button>
        </div>
      )}
      {help !== null && help.lines.length > 0 && (
        <table class="plain-table">
          <thead>
            <tr>
              <th scope="col">{words.round.help.with}</th>
              <th scope="col" class="number">
                {words.round.help.chanceOf({ target: help.target })}
              </th>
              <th scope="col" class="number">
                {words.round.help.changeColumn}
              </th>
              <th scope="col" class="number">
                {words.round.help.saved}
              </th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">{words.round.help.asItIs}</th>
              <td class="number">{help.chance === null ? '' : chanceWords(help.chance, words)}</td>
              <td />
              <td />
            </tr>
            {help.lines.map(({ id, chance, gain, saved }) => (
              <tr key={id}>
                <th scope="row">{words.round.help.wishes[id]}</th>
                <td class="number">{chanceWords(chance, words)}</td>
                <td class="number">
                  {words.round.chancePoints({ points: signedText(100 * gain, words, 1) })}
                </td>
                <td class="number">{signedText(saved, words)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {help?.status === 'stopped' && <p class="faint">{words.round.help.stopped}</p>}
    </section>
  );
}
