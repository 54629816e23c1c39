import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  asideText,
  chanceText,
  errorText,
  grouped,
  lengthText,
  signedText,
  toHoleText,
  wholePercents,
} from '../../../renderer/state/measures.ts';
import { english } from '../../../core/words/english/english.ts';

/** The narrow gap reads as a plain one here. */
const plain = (text: string): string => text.replaceAll('\u202f', ' ');

describe('lengths', () => {
  // International yard and pound agreement (1959): a yard is 0.9144 m, a foot 0.3048 m.
  it('are whole yards or metres', () => {
    expect(plain(lengthText(91.44, 'yards'))).toBe('100 yd');
    expect(plain(lengthText(91.44, 'metres'))).toBe('91 m');
    expect(plain(lengthText(5862, 'metres'))).toBe('5 862 m');
  });

  it('are feet for a putt where yards are chosen', () => {
    expect(plain(toHoleText(3.048, true, 'yards', english))).toBe('10 ft');
    expect(plain(toHoleText(3.048, true, 'metres', english))).toBe('3.0 m');
    expect(plain(toHoleText(91.44, false, 'yards', english))).toBe('100 yd');
  });

  it('tell the side', () => {
    expect(plain(asideText(-7.3152, 'yards', english))).toBe('8 yd left');
    expect(plain(asideText(4, 'metres', english))).toBe('4 m right');
    expect(asideText(0.2, 'yards', english)).toBe('straight');
  });
});

describe('chances and strokes', () => {
  it('never call a small chance nothing nor a large one certain', () => {
    expect(plain(chanceText(0.001))).toBe('< 1 %');
    expect(plain(chanceText(0.999))).toBe('> 99 %');
    expect(plain(chanceText(0))).toBe('0 %');
    expect(plain(chanceText(1))).toBe('100 %');
  });

  it('keep the sign of a difference and drop it from nothing', () => {
    expect(signedText(0.123, english)).toBe('+0.12');
    expect(signedText(-0.5, english)).toBe('−0.50');
    expect(signedText(-0.001, english)).toBe('0.00');
    expect(errorText(0.0123, english)).toBe('0.01');
    expect(errorText(0.0023, english)).toBe('0.002');
    expect(errorText(0, english)).toBe('< 0.001');
  });

  it('add up to a hundred', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 3, maxLength: 3 }), (parts) => {
        const sum = parts.reduce((a, b) => a + b, 0);
        fc.pre(sum > 0);
        const whole = wholePercents(parts.map((part) => part / sum));
        expect(whole.reduce((a, b) => a + b, 0)).toBe(100);
        whole.forEach((value, i) => expect(Math.abs(value - (100 * parts[i]!) / sum)).toBeLessThan(1));
      }),
    );
  });

  it('group thousands', () => {
    expect(plain(grouped(1234567))).toBe('1 234 567');
    expect(grouped(987)).toBe('987');
  });
});
