/** Tables of five devices that nobody has seen before: found out, read, nothing lost. All invented. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readShots } from '../../../core/player/csv/read-shots.ts';
import { findSource, rememberSource } from '../../../core/player/csv/sources.ts';
import { type CsvShape, sniffCsv } from '../../../core/player/csv/sniff.ts';
import { suggestMapping } from '../../../core/player/csv/suggest.ts';
import { type PlayerDocument, playerText } from '../../../core/player/format.ts';
import { parsePlayerDocumentText } from '../../../core/player/parse.ts';
import { STANDARD_BAG } from '../../../core/player/presets.ts';
import { minimalPlayer } from '../sample-player.ts';
import { inventTables } from './invent-devices.ts';
import { inEnglish } from '../../../core/words/told.ts';

const bag = STANDARD_BAG.map((club) => ({ ...club, swings: [...club.swings] }));

function shapeOf(text: string): CsvShape {
  const shape = sniffCsv(text);
  if (!shape.ok) throw new Error(shape.error.message);
  return shape.value;
}

describe.each(inventTables())('$file', ({ file, shots, text: drawn, bad }) => {
  const text = readFileSync(new URL(`fixtures/${file}`, import.meta.url), 'utf8');
  const shape = shapeOf(text);
  const { mapping, doubts } = suggestMapping(shape, bag);

  it('is what the generator draws, byte for byte', () => {
    expect(text === drawn).toBe(true);
  });

  it('is read without a hand laid on it: every shot, and no more', () => {
    const table = readShots(text, mapping, { bag });
    if (!table.ok) throw new Error(table.error.message);
    const { accepted, rejected, duplicates, rows } = table.value;
    expect(rejected.map((row) => row.message)).toHaveLength(bad);
    expect(duplicates).toEqual([]);
    expect(accepted).toHaveLength(shots.length);
    expect(rows).toBe(shots.length + bad);
    accepted.forEach(({ shot }, i) => {
      const truth = shots[i]!;
      expect(shot.club).toBe(truth.club);
      // Tables round to a tenth of a yard, metre or degree.
      expect(Math.abs(shot.carryM - truth.carryM)).toBeLessThan(0.06);
      const offline = shot.offlineM ?? shot.carryM * Math.sin((shot.directionDeg! * Math.PI) / 180);
      expect(Math.abs(offline - truth.offlineM)).toBeLessThan(0.08);
      if (shot.totalM !== undefined) expect(Math.abs(shot.totalM - truth.totalM)).toBeLessThan(0.06);
      if (shot.at !== undefined) {
        const clock = `${String(Math.floor(truth.minute / 60)).padStart(2, '0')}:${String(truth.minute % 60).padStart(2, '0')}`;
        expect(shot.at).toBe(`2026-05-${String(truth.day).padStart(2, '0')}T${clock}:00`);
      }
    });
  });

  it('gives shots that a player file takes, and notices them the second time', () => {
    const table = readShots(text, mapping, { bag });
    if (!table.ok) throw new Error(table.error.message);
    const player: PlayerDocument = {
      ...minimalPlayer(),
      bag,
      shots: table.value.accepted.map(({ shot }) => shot),
    };
    expect(parsePlayerDocumentText(playerText(player)).ok).toBe(true);
    const again = readShots(text, mapping, { bag, existing: player.shots! });
    if (!again.ok) throw new Error(again.error.message);
    expect(again.value.accepted).toEqual([]);
    expect(again.value.duplicates).toHaveLength(shots.length);
    expect(again.value.duplicates.every(({ ofLine }) => ofLine === undefined)).toBe(true);
  });

  it('is known again by its columns, also from a saved player file', () => {
    const remembered = rememberSource({ ...minimalPlayer(), bag }, file, shape, mapping);
    const saved = parsePlayerDocumentText(playerText(remembered));
    if (!saved.ok) throw new Error(saved.error.map((fault) => `${fault.where}: ${fault.message}`).join('\n'));
    expect(findSource(saved.value.document, shape)?.mapping).toEqual(mapping);
    for (const other of inventTables().filter((table) => table.file !== file))
      expect(findSource(saved.value.document, shapeOf(other.text))).toBeUndefined();
  });

  it('says what it is not sure of, in whole sentences', () => {
    for (const doubt of doubts) expect(inEnglish(doubt)).toMatch(/^\p{Lu}.*\.$|^“.*\.$/u);
  });
});
