/** Fingerprints of texts, against the published test values and the bytes that the platform's own encoder gives. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textFingerprint } from '../../server/shop/text-fingerprint.ts';

test.each([
  ['', '811c9dc5'],
  ['a', 'e40c292c'],
  ['foobar', 'bf9cf968'],
])('the published test value of %j', (text, fingerprint) => {
  expect(textFingerprint(text)).toBe(fingerprint);
});

test('one changed digit shows', () => {
  expect(textFingerprint('side 36')).not.toBe(textFingerprint('side 37'));
  expect(textFingerprint('梁')).not.toBe(textFingerprint('染'));
});

test('the bytes are those of UTF-8', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      let hash = 0x811c9dc5;
      for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
      expect(textFingerprint(text)).toBe(hash.toString(16).padStart(8, '0'));
    }),
  );
  expect(textFingerprint('\ud83d')).toBe(textFingerprint('\ufffd'));
});
