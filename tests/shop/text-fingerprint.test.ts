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
