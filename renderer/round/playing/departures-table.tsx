/** Where playing to the aim departs from the lowest mean, and by how much the odds change. */

import type { Departure } from '../../../core/round/departures.ts';
import { departureWords } from '../../../core/round/departures.ts';
import type { PlayingAnswer } from '../../workers/round-api.ts';
import { signedText } from '../../state/measures.ts';
import { chanceWords } from '../target/odds-panel.tsx';
import type { RoundHoles } from '../state/planned-holes.ts';
import { optionWords } from './option-words.ts';
import { useWords } from '../../state/use-words.ts';

const MOST_LINES = 14;

export function DeparturesTable({
  answer,
  holes,
}: {
  readonly answer: PlayingAnswer;
  readonly holes: RoundHoles;
}) {
  const words = useWords();
  const { plan, departures } = answer;
  const wordsOf = ({ hole }: Departure) => {
    const planned = holes.ready.find((one) => one.hole === hole);
    return (id: string): string => (planned === undefined ? id : optionWords(planned.plan, id, words));
  };
  if (departures.length === 0)
    return (
      <p>
        However the round stands, the choice with the lowest mean is as good as anything for this aim, within
        a third of a per cent.
      </p>
    );
  const shown = departures.slice(0, MOST_LINES);
  return (
    <>
      <table class="plain-table">
        <thead>
          <tr>
            <th scope="col">Where it differs from the lowest mean</th>
            <th scope="col" class="number">
              Odds
            </th>
            <th scope="col" class="number">
              Costs, strokes
            </th>
            <th scope="col" class="number">
              Comes up in
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((departure) => (
            <tr key={`${departure.hole} ${departure.count}`}>
              <th scope="row">{departureWords(departure, plan.aim, wordsOf(departure))}</th>
              <td class="number">{signedText(100 * departure.gain, words, 1)} % points</td>
              <td class="number">{signedText(departure.cost, words)}</td>
              <td class="number">{chanceWords(departure.reach)} of rounds</td>
            </tr>
          ))}
        </tbody>
      </table>
      {departures.length > shown.length && (
        <p class="faint">
          {departures.length - shown.length} more that matter less: try any tee and score below.
        </p>
      )}
    </>
  );
}
