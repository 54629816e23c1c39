/** Part swings: how the carry scatters with the length that is asked for. */

import { partSpread } from '../../../core/player/part-swing.ts';
import { inUnits, unitShort } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import type { SpreadLine } from '../work/bag-report.ts';
import { sourceText } from '../words.ts';
import { useWords } from '../../state/use-words.ts';

/** Lengths that are shown, in the units of the person. */
const LENGTHS = [10, 20, 30, 50, 70];

export function PartSwings({ lines }: { readonly lines: readonly SpreadLine[] }) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const parts = lines.filter(({ spread }) => spread.swing === 'part');
  const metres = units === 'yards' ? 0.9144 : 1;
  const unit = unitShort(units);
  if (parts.length === 0)
    return (
      <section class="bag-card" aria-label={words.shortGame.parts.name}>
        <h2>{words.shortGame.parts.name}</h2>
        <p class="faint">{words.shortGame.parts.none}</p>
      </section>
    );
  return (
    <section class="bag-card" aria-label={words.shortGame.parts.name}>
      <h2>{words.shortGame.parts.name}</h2>
      <table class="bag-table">
        <caption class="unseen">{words.shortGame.parts.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.shortGame.parts.carry({ unit })}</th>
            {LENGTHS.map((length) => (
              <th key={length} scope="col">
                {length} {unit}
              </th>
            ))}
            <th scope="col">{words.player.table.restsOn}</th>
          </tr>
        </thead>
        <tbody>
          {parts.map(({ spread }) => (
            <tr key={spread.club.name}>
              <th scope="row">{spread.club.name}</th>
              {LENGTHS.map((length) => (
                <td key={length}>
                  {length * metres > spread.carryMean
                    ? '–'
                    : words.figures.fixed(inUnits(partSpread(spread, length * metres).carrySd, units), 1)}
                </td>
              ))}
              <td>{sourceText(spread.source, words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="faint small-print">{words.shortGame.parts.howTo}</p>
    </section>
  );
}
