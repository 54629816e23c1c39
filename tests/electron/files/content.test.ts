import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inEnglish } from '../../../core/words/told.ts';
import { bytesOf, readsAsItsKind, revisionOf, textOf } from '../../../electron/files/content.ts';
import { readsInCore } from '../../../electron/files/core-check.ts';
import { failureOf, valueOf } from './workspace.ts';

describe('a revision', () => {
  it('is SHA-256: the examples of FIPS 180-4 (NIST, SHA256.pdf)', () => {
    expect(revisionOf(Buffer.from('abc'))).toBe(
      'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
    );
    expect(revisionOf(Buffer.from('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq'))).toBe(
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    );
  });
});

describe('text', () => {
  it('drops a byte-order mark', () => {
    expect(valueOf(textOf(Buffer.from('\ufeff{}'), 'a'))).toBe('{}');
  });

  // RFC 3629, section 10: overlong forms and surrogates must not be decoded.
  it.each([
    [[0xc0, 0x80]],
    [[0x2f, 0xc0, 0xae, 0x2e, 0x2f]],
    [[0xed, 0xa0, 0x80]],
    [[0xf5, 0x80, 0x80, 0x80]],
    [[0xff, 0xfe, 0x7b, 0x00]],
  ])('of the bytes %j is refused', (bytes) => {
    expect(failureOf(textOf(Uint8Array.from(bytes), 'a'))).toBe('not-text');
  });

  it('comes back from its bytes', () => {
    const text = '{"name":"Ä 🌲"}';
    expect(valueOf(textOf(valueOf(bytesOf(text, 'a')), 'a'))).toBe(text);
  });
});

describe('what may be written', () => {
  const demo = readFileSync(join(import.meta.dirname, '../../../maps/demo-course.geojson'), 'utf8');

  it('is what core can read again', () => {
    expect(readsInCore('course', demo)).toBeNull();
    expect(inEnglish(readsInCore('course', demo.slice(0, -20))!)).toMatch(/JSON/u);
    const newer = '{"type":"FeatureCollection","holewright":{"formatVersion":99},"features":[]}';
    expect(inEnglish(readsInCore('course', newer)!)).toMatch(/99/u);
    expect(readsInCore('player', '{}')).not.toBeNull();
    expect(readsInCore('round', '{}')).toBeNull();
    expect(readsInCore('round', '[]')).not.toBeNull();
  });

  it('is at the least a JSON object, for a course a FeatureCollection', () => {
    expect(readsAsItsKind('course', '{"type":"FeatureCollection","features":[]}')).toBeNull();
    expect(readsAsItsKind('course', '{"type":"FeatureCollection"}')).not.toBeNull();
    expect(readsAsItsKind('course', '{"type":"Feature","features":[]}')).not.toBeNull();
    expect(readsAsItsKind('player', '{')).not.toBeNull();
    expect(readsAsItsKind('player', 'null')).not.toBeNull();
  });
});
