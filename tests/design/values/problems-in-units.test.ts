/** Messages of files in inches. One inch is 25.4 mm. */
import { expect, test } from 'vitest';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import { problemsInUnits } from '../../../server/design/values/problems-in-units.ts';

const told = (message: string, units: 'mm' | 'in' = 'in'): string | undefined =>
  problemsInUnits([problemAt('outOfRange', { start: 0, end: 1 }, message)], units)[0]?.message;

test.each([
  ['It is 25.4 mm from its start.', 'It is 1 in from its start.'],
  ['Nothing is left of 76.2 × 50.8 mm.', 'Nothing is left of 3 in × 2 in.'],
  ['Notches at 12.7 and 38.1 mm meet.', 'Notches at 1/2 in and 1 1/2 in meet.'],
  ['More than there is at 254.0, -12.7.', 'More than there is at 10, -0.5.'],
  ['It loses 12.5 mm² there.', 'It loses 12.5 mm² there.'],
  ['Write it like `36mm` or `node at 25.4, 0`.', 'Write it like `36mm` or `node at 25.4, 0`.'],
  ['The strip `25 mm` is 0 mm wide.', 'The strip `25 mm` is 0 in wide.'],
])('%s', (written, inInches) => {
  expect(told(written)).toBe(inInches);
  expect(told(written, 'mm')).toBe(written);
});

test('so are the places that belong to it', () => {
  const related = [{ range: { start: 2, end: 3 }, message: 'Here it is 12.7 mm.' }];
  const [problem] = problemsInUnits([problemAt('outOfRange', { start: 0, end: 1 }, 'Too wide.', related)], 'ft');
  expect(problem?.related?.[0]?.message).toBe('Here it is 1/2 in.');
});
