/** Where words stood before an edit: the marks in a drawing that is older than its text. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { earlierPlace } from '../../server/language/features/earlier-place.ts';

const text = 'grid mesh\npiece arm from corner to hub\ncopies 3';
const placeOf = (words: string, within: string) => {
  const start = within.indexOf(words);
  return { start, end: start + words.length };
};

it('keeps words before a change, moves words behind it, and stretches words in it to the change', () => {
  const later = text.replace('corner to', 'cornrr to the');
  expect(earlierPlace(text, later, placeOf('mesh', later))).toEqual(placeOf('mesh', text));
  expect(earlierPlace(text, later, placeOf('copies', later))).toEqual(placeOf('copies', text));
  const changed = earlierPlace(text, later, placeOf('cornrr', later));
  expect(text.slice(changed.start, changed.end)).toMatch(/^corne/);
});

it('is a place of the earlier text, whatever changed, and the same place where nothing did', () => {
  const words = fc.string({ maxLength: 30 });
  fc.assert(
    fc.property(words, words, fc.nat(30), fc.nat(30), (earlier, later, first, second) => {
      const start = Math.min(first, second, later.length);
      const end = Math.min(Math.max(first, second), later.length);
      const place = earlierPlace(earlier, later, { start, end });
      expect(place.start).toBeGreaterThanOrEqual(0);
      expect(place.end).toBeGreaterThanOrEqual(place.start);
      expect(place.end).toBeLessThanOrEqual(earlier.length);
      expect(earlierPlace(later, later, { start, end })).toEqual({ start, end });
    }),
  );
});
