import { expect, it } from 'vitest';
import { faultText } from '../../../core/words/told.ts';
import { wordsIn } from '../../../core/words/words.ts';
import { stoppedFault } from '../../../renderer/state/effects/solve-holes.ts';

it('is told in the language of the window, though that changes later', () => {
  const fault = stoppedFault(3, new Error('out of room'));
  expect(faultText(fault, wordsIn('de')).where).toBe('Loch 3');
  expect(faultText(fault, wordsIn('en')).where).toBe('hole 3');
  for (const language of ['de', 'en'] as const) {
    const words = wordsIn(language);
    expect(faultText(fault, words).message).toBe(words.bar.chooseAgain({ said: 'out of room' }));
  }
});

it('stands apart from what the engine said, which is English, each with its full stop', () => {
  const fault = stoppedFault(3, new RangeError('Array buffer allocation failed'));
  expect(faultText(fault, wordsIn('de')).message).toMatch(
    /^Technische Meldung \(englisch\): „Array buffer allocation failed“\. Das Loch noch einmal wählen;/,
  );
  expect(faultText(fault, wordsIn('en')).message).toMatch(
    /^Technical message: “Array buffer allocation failed”\. Choose the hole again;/,
  );
  for (const language of ['de', 'en'] as const) {
    const { bar } = wordsIn(language);
    expect(bar.startAgain({ message: bar.engineSaid({ said: 'gone' }) })).toMatch(/gone[“”]\. (Das|Close)/);
  }
});
