import { describe, expect, it } from 'vitest';
import { levelIn, levelName, type PlayerLevel } from '../../core/player/presets.ts';
import { wordsIn } from '../../core/words/words.ts';

describe('the level that a spread names as its source', () => {
  it('is told in the language of the window', () => {
    expect(levelIn('handicap 17, men', wordsIn('de'))).toBe('Handicap 17, Männer');
    expect(levelIn('the coach’s guess', wordsIn('de'))).toBe('the coach’s guess');
  });

  it('comes back as it was in English', () => {
    for (const handicap of [-2.5, 0, 7.3, 54])
      for (const group of ['men', 'women', 'senior-men', 'senior-women'] as const) {
        const level: PlayerLevel = { handicap, group };
        expect(levelIn(levelName(level), wordsIn('en'))).toBe(levelName(level));
      }
  });
});
