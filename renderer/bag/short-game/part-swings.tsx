/** Part swings: how the carry scatters with the length that is asked for. */

import { partSpread } from '../../../core/player/part-swing.ts';
import { inUnits, unitShort } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import type { SpreadLine } from '../work/bag-report.ts';
import { sourceText } from '../words.ts';

/** Lengths that are shown, in the units of the person. */
const LENGTHS = [10, 20, 30, 50, 70];

export function PartSwings({ lines }: { readonly lines: readonly SpreadLine[] }) {
  const units = useApp((state) => state.settings.units);
  const parts = lines.filter(({ spread }) => spread.swing === 'part');
  const metres = units === 'yards' ? 0.9144 : 1;
  const unit = unitShort(units);
  if (parts.length === 0)
    return (
      <section class="bag-card" aria-label="Part swings">
        <h2>Part swings</h2>
        <p class="faint">No club is used for part swings. Tick “part, by feel” for a wedge under “Clubs”.</p>
      </section>
    );
  return (
    <section class="bag-card" aria-label="Part swings">
      <h2>Part swings</h2>
      <table class="bag-table">
        <caption class="unseen">Standard deviation of carry by the length asked for</caption>
        <thead>
          <tr>
            <th scope="col">Carry ±, {unit}, when asked for</th>
            {LENGTHS.map((length) => (
              <th key={length} scope="col">
                {length} {unit}
              </th>
            ))}
            <th scope="col">Rests on</th>
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
                    : inUnits(partSpread(spread, length * metres).carrySd, units).toFixed(1)}
                </td>
              ))}
              <td>{sourceText(spread.source)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="faint small-print">
        To measure them: choose a length, hit, and type the shot with swing “part” and the length under
        “Intended”. From eight shots on they count; wedges with fewer share theirs.
      </p>
    </section>
  );
}
