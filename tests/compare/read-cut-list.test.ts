import { expect, test } from 'vitest';
import { readCutList } from '../../server/compare/read-cut-list.ts';

const marks = ['A1', 'A2', 'S1'];
const wanted = [
  { mark: 'A1', count: 36 },
  { mark: 'S1', count: 0 },
];

test.each([
  ['CSV', 'A1,36\nS1,0\n'],
  ['CSV with a head, blanks and CR LF', '\uFEFFmark,count\r\n\r\n"A1" , 36\r\nS1,0\r\n'],
  ['a list as JSON', '[{"mark":"A1","count":36},{"mark":"S1","count":0}]'],
  ['an object as JSON', ' {"A1":36,"S1":0}'],
])('reads %s', (_, text) => {
  expect(readCutList(text, marks)).toEqual({ counts: wanted, fault: null });
});

test('an empty list says that nothing is cut', () => {
  expect(readCutList('', marks)).toEqual({ counts: [], fault: null });
});

test.each([
  ['an unknown mark', 'A1,3\nB,4', 'line 2: the old version has no mark “B”; it has A1, A2, S1'],
  ['a mark twice', 'A1,3\nA1,4', 'line 2: mark A1 stands there twice; add the two up'],
  ['a fraction', 'A1,3.5', 'line 1: expected a whole number of pieces of A1, found “3.5”'],
  ['a negative count', '{"A1":-1}', '“A1”: expected a whole number of pieces of A1, found “-1”'],
  ['a missing count', 'A1', 'line 1: expected a mark, a comma and a count'],
  ['an entry without a mark', '[{"count":3}]', 'entry 1: the old version has no mark “”; it has A1, A2, S1'],
])('refuses %s, and says where', (_, text, fault) => {
  expect(readCutList(text, marks)).toEqual({ counts: null, fault });
});

test('refuses broken JSON', () => {
  expect(readCutList('[{', marks).fault).toMatch(/^not JSON: /);
});
