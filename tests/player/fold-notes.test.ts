import { describe, expect, it } from 'vitest';
import { foldNotes } from '../../core/player/fold-notes.ts';
import { parsePlayer } from '../../core/player/parse.ts';
import { faultText } from '../../core/words/told.ts';
import { wordsIn } from '../../core/words/words.ts';
import { minimalPlayer } from './sample-player.ts';

function notesOf(document: unknown) {
  const player = parsePlayer(document);
  if (!player.ok) throw new Error(player.error[0]?.message);
  return player.value.warnings;
}

describe('notes on a player’s clubs', () => {
  it('that say the same of many clubs become one that names them', () => {
    const notes = notesOf(minimalPlayer());
    const many = notes.filter(({ message }) => message.includes('no measured shots'));
    expect(many.length).toBeGreaterThan(1);
    const folded = foldNotes(notes);
    expect(folded).toHaveLength(notes.length - many.length + 1);
    const [one] = folded.filter(({ message }) => message.startsWith('No measured shots'));
    for (const { where } of many) expect(one!.message).toContain(/\((.*)\)/u.exec(where)![1]);
    expect(faultText(one!, wordsIn('de')).message).toMatch(/^Keine gemessenen Schläge mit .*Handicap 17\.$/u);
  });

  it('stay as they are where one club stands alone, and where they say something else', () => {
    const notes = notesOf(minimalPlayer());
    const alone = notes.filter(({ message }) => message.includes('no measured shots')).slice(0, 1);
    expect(foldNotes(alone)).toEqual(alone);
    const other = { severity: 'warning', code: 'x', where: 'bag', message: 'Something else.' } as const;
    expect(foldNotes([other, ...notes])[0]).toBe(other);
  });
});
