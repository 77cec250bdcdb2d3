/** Arithmetic keeps its units. Expected values are worked by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDocument } from '../../../grammar/reading/parse-document.ts';
import type { LengthUnit } from '../../../server/design/design-model.ts';
import { evaluateExpression } from '../../../server/design/values/evaluate-expression.ts';
import { dimensionName } from '../../../server/design/values/quantity.ts';

/** Value and dimension of an expression; bare lengths are in `units`. */
function valueOf(expression: string, units: LengthUnit = 'mm'): [number, string] | null {
  const [declaration] = parseDocument(`let a = ${expression}`).tree.declarations;
  if (declaration?.kind !== 'let') throw new Error(`${expression} was not read`);
  const value = evaluateExpression(declaration.value, {
    units,
    report: () => undefined,
    numberNamed: () => null,
    isFromOtherFile: () => false,
  });
  return value && [value.amount, dimensionName(value.dimension)];
}

describe('values', () => {
  test.each([
    ['2 + 3 * 4', 14, 'a plain number'],
    ['(2 + 3) * 4', 20, 'a plain number'],
    ['10 - 4 - 3', 3, 'a plain number'],
    ['24 / 4 / 3', 2, 'a plain number'],
    ['-2 * -3', 6, 'a plain number'],
    ['1in', 25.4, 'a length'],
    ['1/8in', 3.175, 'a length'],
    ['3 1/2in', 88.9, 'a length'],
    ['2ft', 609.6, 'a length'],
    ['1m - 3cm', 970, 'a length'],
    ['40 + 2mm', 42, 'a length'],
    ['40mm * 2', 80, 'a length'],
    ['40mm / 8mm', 5, 'a plain number'],
    ['40mm * 3mm', 120, 'an area'],
    ['sqrt(9mm * 4mm)', 6, 'a length'],
    ['sqrt(16)', 4, 'a plain number'],
    ['30deg + 15', 45, 'an angle'],
    ['sin(30deg) * 2', 1, 'a plain number'],
    ['sin(90) + cos(90) + tan(45deg)', 2, 'a plain number'],
    ['cos(180deg) + sin(180)', -1, 'a plain number'],
    ['min(3mm, 2, 1in)', 2, 'a length'],
    ['max(3, 2, 5)', 5, 'a plain number'],
    ['1.5kg + 250g', 1750, 'a mass'],
    ['1lb - 15oz', 28.349523125, 'a mass'], // international avoirdupois pound: 453.59237 g, 16 ounces
    ['0.4L + 50mL', 450_000, 'a volume'],
    ['20mm * 5cm * 1mm + 1mL', 2000, 'a volume'],
    ['1/2h + 25min', 55, 'a time'],
    ['1day + 2days', 4320, 'a time'],
    ['3kg / 1500g', 2, 'a plain number'],
    ['sqrt(4kg * 9kg)', 6000, 'a mass'],
    ['1kg / 1L', 0.001, 'a mixed quantity'],
    ['8% * 50', 4, 'a percentage'],
    ['5% + 3%', 0.08, 'a percentage'],
    ['200mm * 5%', 10, 'a length'],
  ])('%s', (expression, amount, dimension) => {
    const value = valueOf(expression);
    expect(value?.[0]).toBeCloseTo(amount, 12);
    expect(value?.[1]).toBe(dimension);
  });

  test('a bare number beside a length is in the units of the file', () => {
    expect(valueOf('1 + 1mm', 'in')?.[0]).toBeCloseTo(26.4, 12);
    expect(valueOf('1mm - 1', 'cm')?.[0]).toBeCloseTo(-9, 12);
  });

  test.each([
    '1 / 0',
    'tan(90)',
    'sqrt(-4)',
    '1mm + 1deg',
    'sqrt(4mm)',
    'sin(4mm)',
    'min(1mm, 1deg)',
    'sinus(30)',
    '5% + 1',
  ])('%s has none', (expression) => {
    expect(valueOf(expression)).toBeNull();
  });
});

test('sums and products are those of arithmetic', () => {
  const number = fc.integer({ min: 1, max: 999 });
  fc.assert(
    fc.property(number, number, number, (a, b, c) => {
      const texts = [a, b, c].map(String);
      const [x = '', y = '', z = ''] = texts;
      expect(valueOf(`${x}mm + ${y} * ${z}`)?.[0]).toBe(a + b * c);
      expect(valueOf(`(${x} - ${y}) / ${z}`)?.[0]).toBe((a - b) / c);
      expect(valueOf(`${x} - ${y} - -${z}`)?.[0]).toBe(a - b + c);
    }),
    { numRuns: 200 },
  );
});
