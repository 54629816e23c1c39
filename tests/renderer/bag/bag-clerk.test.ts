/** The worker's clerk: the report is the core's own numbers, the model survives the crossing, tables can be stopped. */

import { describe, expect, it } from 'vitest';
import { buildPlayer } from '../../../core/player/build.ts';
import { changeClub } from '../../../core/player/edits/clubs.ts';
import { ownMapping } from '../../../core/player/csv/export.ts';
import { type PlayerDocument, playerText } from '../../../core/player/format.ts';
import { estimatesOf } from '../../../core/player/posterior.ts';
import { BagClerk } from '../../../renderer/bag/work/bag-clerk.ts';
import { modelOf, countWords, isConverted } from '../../../renderer/bag/work/bag-report.ts';
import { textOfBytes } from '../../../renderer/bag/work/read-table.ts';
import { drawShots, minimalPlayer, record } from '../../player/sample-player.ts';
import { english } from '../../../core/words/english/english.ts';
import { inEnglish } from '../../../core/words/told.ts';
import { patternWords } from '../../../core/player/pattern.ts';

const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

function measured(): PlayerDocument {
  const model = buildPlayer(minimalPlayer());
  if (!model.ok) throw new Error('no player');
  const shots = model.value.spreads
    .filter(({ swing }) => swing === 'full')
    .flatMap((spread) => record(spread.club.name, drawShots(spread, 25, spread.club.name)));
  return { ...minimalPlayer(), shots };
}

async function reported(clerk: BagClerk, document: PlayerDocument) {
  const report = await clerk.report(document);
  if (!report.ok) throw new Error(JSON.stringify(report.error));
  return report.value;
}

describe('an estimate', () => {
  /** A clock by which every slice is over at once. */
  const hurried = () => {
    let ms = 0;
    return () => (ms += 1000);
  };

  it('is the report, and tells how far it is on the way', async () => {
    const document = measured();
    const told: number[] = [];
    const found = await new BagClerk(turn, hurried()).estimate(document, (share) => told.push(share));
    expect(found).toEqual(await new BagClerk(turn).report(document));
    expect(told.length).toBeGreaterThan(1000);
    expect(told).toEqual([...told].sort((a, b) => a - b));
    expect(told[0]).toBeGreaterThanOrEqual(0);
    expect(told.at(-1)).toBeLessThan(1);
  });

  it('ends when it is called off, and when another is asked for; the open table stays', async () => {
    const clerk = new BagClerk(turn, hurried());
    const document = measured();
    const opened = await clerk.openTable('Club,Carry (m),Off line (m)\n7-iron,120,1\n', 'a.csv', document);
    const off = clerk.estimate(document, () => undefined);
    await turn();
    await clerk.cancelEstimate();
    expect(await off).toEqual({ ok: false, error: 'cancelled' });
    const first = clerk.estimate(document, () => undefined);
    const second = clerk.estimate({ ...document, handicap: 9 }, () => undefined);
    expect(await first).toEqual({ ok: false, error: 'cancelled' });
    expect((await second).ok).toBe(true);
    if (!opened.ok) throw new Error('no table');
    expect(await clerk.preview(opened.value.mapping, document)).toHaveLength(1);
  });

  it('of shots in wind and from sand says what each counts as', async () => {
    const { shots = [], ...rest } = measured();
    const document = {
      ...rest,
      shots: shots.map((shot, i) =>
        i === 0 ? { ...shot, windMps: 5, windFromDeg: 0 } : i === 1 ? { ...shot, windMps: 50 } : shot,
      ),
    };
    const { counted } = await reported(new BagClerk(turn), document);
    expect([...counted].map(([place, count]) => [place, isConverted(count)])).toEqual([
      [0, true],
      [1, false],
    ]);
    expect(countWords(counted.get(0)!, document.shots[0]!, 'metres', english)).toMatch(
      /in 5 m\/s of wind from ahead\.$/,
    );
  });
});

describe('a report', () => {
  it('holds the numbers that the plan works with, and the intervals of their posterior', async () => {
    const document = measured();
    const { lines } = await reported(new BagClerk(turn), document);
    const model = buildPlayer(document);
    if (!model.ok) throw new Error('no player');
    expect(lines.map(({ spread }) => spread)).toEqual(model.value.spreads);
    const { entries } = model.value.posterior!();
    lines.forEach(({ estimates, spread, shots }, i) => {
      expect(estimates.carryMean).toEqual({ ...estimatesOf(entries[i]!).carryMean, mean: spread.carryMean });
      expect(shots).toBe(entries[i]!.shots);
    });
    const iron = lines.find(({ spread }) => spread.club.name === '7-iron' && spread.swing === 'full')!;
    expect(iron.pattern.dots).toHaveLength(25);
    expect(patternWords(iron.spread, iron.shots, 'metres', english)).toContain(
      '25 measured shots stand behind this',
    );
  });

  it('gives a model that is the same on the other side of a message', async () => {
    const document = measured();
    const { model } = await reported(new BagClerk(turn), document);
    const crossed = structuredClone(model);
    if (!crossed.ok) throw new Error('no model');
    const again = modelOf(crossed.value, document);
    const direct = buildPlayer(document);
    if (!direct.ok) throw new Error('no player');
    expect(again.spreads).toEqual(direct.value.spreads);
    expect(again.posterior!()).toEqual(direct.value.posterior!());
    const { club, swing } = again.spreads[0]!;
    expect(again.lieEffect(club, swing, 'rough')).toEqual(direct.value.lieEffect(club, swing, 'rough'));
  });

  it('shows clubs that stay at home, which the model leaves out', async () => {
    const without = changeClub(measured(), '7-iron', { inRound: false });
    if (!without.ok) throw new Error(inEnglish(without.error));
    const { lines, model } = await reported(new BagClerk(turn), without.value);
    expect(lines.map(({ spread }) => spread.club.name)).toContain('7-iron');
    expect(model.ok && model.value.plain.spreads.map(({ club }) => club.name)).not.toContain('7-iron');
  });

  it('is kept by content: the same content gives the very same report', async () => {
    const clerk = new BagClerk(turn);
    const first = await reported(clerk, measured());
    expect(await reported(clerk, measured())).toBe(first);
    expect(await reported(clerk, { ...measured(), handicap: 3 })).not.toBe(first);
  });

  it('refuses a file that is no player with the reason', async () => {
    const read = await new BagClerk(turn).readPlayer('{"holewright":{"format":"course"}}');
    expect(!read.ok && read.error[0]?.code).toBe('not-a-player');
    expect((await new BagClerk(turn).readPlayer(playerText(measured()))).ok).toBe(true);
  });
});

describe('a table', () => {
  const rows = (count: number): string =>
    `Club,Carry (m),Off line (m)\n${Array.from({ length: count }, (_, i) => `7-iron,${120 + (i % 40)}.${i % 10},${(i % 7) - 3}`).join('\n')}\n`;

  it('can be stopped while it is read, and read again', async () => {
    const clerk = new BagClerk(turn);
    const opened = await clerk.openTable(rows(30_000), 'long.csv', minimalPlayer());
    if (!opened.ok) throw new Error(opened.error.message);
    const { mapping } = opened.value;
    let told = 0;
    const reading = clerk.readTable(mapping, minimalPlayer(), ({ done, total }) => {
      told++;
      expect(done).toBeLessThanOrEqual(total);
      void clerk.cancelTable();
    });
    expect(await reading).toEqual({ ok: false, error: 'cancelled' });
    expect(told).toBe(1);
    const whole = await clerk.readTable(mapping, minimalPlayer(), () => undefined);
    expect(whole.ok && whole.value.rows).toBeGreaterThan(19_000);
  });

  it('names every club of the file, not only those of the first rows', async () => {
    const clerk = new BagClerk(turn);
    const text = `${rows(200)}Wedge X,60,1\n`;
    const opened = await clerk.openTable(text, 'names.csv', minimalPlayer());
    if (!opened.ok) throw new Error(opened.error.message);
    expect(await clerk.texts(opened.value.mapping, 0)).toEqual(['7-iron', 'Wedge X']);
  });

  it('that is closed or no table at all is told in words', async () => {
    const clerk = new BagClerk(turn);
    const gone = await clerk.readTable(ownMapping('yards'), minimalPlayer(), () => undefined);
    expect(!gone.ok && gone.error !== 'cancelled' && gone.error.message).toContain('Choose the file again');
    const odd = await clerk.openTable('just a line of text', 'letter.txt', minimalPlayer());
    expect(!odd.ok && odd.error).toMatchObject({ where: 'letter.txt', code: 'csv-no-table' });
  });

  it('of any encoding is read as the letters it was written with', () => {
    const word = 'Schläger;Weite';
    const utf16 = Uint8Array.from([0xff, 0xfe, ...Array.from(word, (c) => [c.charCodeAt(0), 0]).flat()]);
    const western = Uint8Array.from(word, (c) => c.charCodeAt(0));
    expect(textOfBytes(new TextEncoder().encode(word))).toEqual({ text: word, doubt: null });
    expect(textOfBytes(utf16).text).toBe(word);
    expect(textOfBytes(western).text).toBe(word);
    expect(inEnglish(textOfBytes(western).doubt!)).toContain('not UTF-8');
  });
});
