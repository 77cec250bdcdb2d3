/** Measures as text. One inch is 25.4 mm, one pound 453.59237 g (international yard and pound agreement, 1959); precisions: common practice. */
import { expect, test } from 'vitest';
import { problemAt } from '../../grammar/problems/problem-catalogue.ts';
import { figure, joined, measure, type Measure, words } from '../../grammar/words.ts';
import { writeProblems, writeWords } from '../../server/words/write-words.ts';

test.each<[string, Measure, inMillimetres: string, inInches: string]>([
  ['a length', measure.length(36), '36.0 mm', '1.417 in'],
  ['a length below the precision', measure.length(-0.01), '0.0 mm', '0.000 in'],
  ['a fine length', measure.fine(3.048), '3.05 mm', '0.120 in'],
  ['a key: 17.785 mm and its sister', measure.key(17.88), '17.90 mm', '0.704 in'],
  ['a pin: 36 · sin 60°', measure.pin(31.177), '31.18 mm', '1.227 in'],
  ['a given length', measure.given(36), '36 mm', '1.417 in'],
  ['a size in exact fractions', measure.size(88.9), '88.9 mm', '3 1/2 in'],
  ['a size in sixty-fourths', measure.size(0.396875), '0.4 mm', '1/64 in'],
  ['a size without an exact fraction', measure.size(900), '900 mm', '35.433 in'],
  ['two sizes', measure.size([508, 254]), '508 × 254 mm', '20 × 10 in'],
  ['two lengths', measure.given([12.7, 38.1], ' and '), '12.7 and 38.1 mm', '0.5 and 1.5 in'],
  ['a bare length', figure.length(25.4), '25.4', '1.000 in'],
  ['a length to write', measure.written(12.7), '12.7', '0.5'],
  ['a place', measure.place({ x: 254, y: -12.7 }), '254, -12.7', '10, -0.5'],
  ['an area', measure.area(12.5), '12.5 mm²', '0.019 in²'],
  ['a surface', measure.surface(929030.4), '0.93 m²', '10.00 ft²'],
  ['an angle', measure.angle(29.9), '30°', '30°'],
  ['a fine angle', measure.fineAngle(22.54), '22.5°', '22.5°'],
  ['a mass', measure.mass(1360.77711), '1.36 kg', '3 lb'],
  ['a small mass', measure.mass(85.05), '85 g', '3 oz'],
  ['resin', measure.resin(479.71), '479.7 g', '479.7 g'],
  ['a volume', measure.volume(636.84), '636.8 mL', '636.8 mL'],
  ['yen, which have no coin', measure.money(1500, 'JPY'), '1500 JPY', '1500 JPY'],
  ['euros', measure.money(29, 'EUR'), '29.00 EUR', '29.00 EUR'],
  ['a currency of no one', measure.money(1.234, null), '1.23', '1.23'],
  ['hours', measure.hours(150), '2.5 h', '2.5 h'],
  ['a name', measure.name('panel', 'blade'), 'blade', 'blade'],
])('%s', (_, said, inMillimetres, inInches) => {
  expect(writeWords(words`${said}`, 'mm')).toBe(inMillimetres);
  expect(writeWords(words`${said}`, 'in')).toBe(inInches);
});

test('files in cm and ft are told in mm and inches; what is to be written into them, and places, are told so', () => {
  expect(writeWords(words`${measure.given(25)}`, 'cm')).toBe('25 mm');
  expect(writeWords(words`${measure.written(25)}`, 'cm')).toBe('2.5');
  expect(writeWords(words`${measure.place({ x: 25, y: 0 })}`, 'cm')).toBe('25, 0 mm');
  expect(writeWords(words`${measure.given(304.8)}`, 'ft')).toBe('12 in');
});

test('words without a measure are text, whatever they are put together from', () => {
  expect(words`${2} of ${'ash'}, ${words`${3} of bass`}`).toBe('2 of ash, 3 of bass');
  expect(joined(['one', 'two'], ' and ')).toBe('one and two');
});

test('words in words keep their measures', () => {
  const said = words`Notches ${joined([measure.given(1), measure.given(25.4)], ' and ')} meet.`;
  expect(writeWords(said, 'mm')).toBe('Notches 1 mm and 25.4 mm meet.');
  expect(writeWords(said, 'in')).toBe('Notches 0.039 in and 1 in meet.');
});

test('problems are written with the places that belong to them', () => {
  const related = [{ range: { start: 2, end: 3 }, message: words`Here it is ${measure.given(12.7)}.` }];
  const [problem] = writeProblems([problemAt('outOfRange', { start: 0, end: 1 }, 'Too wide.', related)], 'in');
  expect(problem?.related?.[0]?.message).toBe('Here it is 0.5 in.');
});
