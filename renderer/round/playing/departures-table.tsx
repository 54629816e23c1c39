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
  const namesOf = ({ hole }: Departure) => {
    const planned = holes.ready.find((one) => one.hole === hole);
    return (id: string): string => (planned === undefined ? id : optionWords(planned.plan, id, words));
  };
  if (departures.length === 0) return <p>{words.round.playing.noDepartures}</p>;
  const shown = departures.slice(0, MOST_LINES);
  return (
    <>
      <table class="plain-table">
        <thead>
          <tr>
            <th scope="col">{words.round.playing.where}</th>
            <th scope="col" class="number">
              {words.round.playing.odds}
            </th>
            <th scope="col" class="number">
              {words.round.playing.costs}
            </th>
            <th scope="col" class="number">
              {words.round.playing.comesUp}
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((departure) => (
            <tr key={`${departure.hole} ${departure.count}`}>
              <th scope="row">{departureWords(departure, plan.aim, words, namesOf(departure))}</th>
              <td class="number">
                {words.round.chancePoints({ points: signedText(100 * departure.gain, words, 1) })}
              </td>
              <td class="number">{signedText(departure.cost, words)}</td>
              <td class="number">
                {words.round.playing.ofRounds({ chance: chanceWords(departure.reach, words) })}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {departures.length > shown.length && (
        <p class="faint">{words.round.playing.more({ count: departures.length - shown.length })}</p>
      )}
    </>
  );
}
