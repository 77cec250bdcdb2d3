/** Moisture, movement, density and bending against published and independently worked figures. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formRadius, coldBendingLimit, radiusAfterSpringback } from '../../../server/shop/wood/bending.ts';
import { averageGravityAt, densityAt, densityOf, gravityAt } from '../../../server/shop/wood/density.ts';
import { equilibriumMoisture } from '../../../server/shop/wood/equilibrium-moisture.ts';
import { movementAcross, shrinkageTo } from '../../../server/shop/wood/movement.ts';
import type { Wood } from '../../../server/shop/wood/wood.ts';
import { builtInWoods } from '../../../server/shop/wood/wood-table.ts';

const wood = (name: string): Wood => {
  const found = builtInWoods.get(name);
  if (!found) throw new Error(`no wood ${name}`);
  return found;
};
const anyWood = fc.constantFrom(...builtInWoods.values());
const grain = fc.constantFrom('radial' as const, 'tangential' as const);

/** °C, relative humidity in percent, Wood Handbook Table 4-2 (null: not in it), eq. 4-5 to four decimals. */
const moistures: [number, number, number | null, number][] = [
  [21.1, 20, 4.5, 4.4921],
  [21.1, 30, 6.2, 6.1698],
  [21.1, 40, 7.7, 7.6993],
  [21.1, 50, 9.2, 9.2426],
  [21.1, 65, 12.0, 11.9585],
  [21.1, 80, 16.0, 15.9896],
  [21.1, 90, 20.5, 20.4795],
  [-1.1, 50, 9.5, 9.5148],
  [4.4, 80, 16.5, 16.4942],
  [10, 70, 13.4, 13.4257],
  [32.2, 50, 8.9, 8.891],
  [43.3, 60, 10, 10.0344],
  [54.4, 50, 7.9, 7.9389],
  [20, 35, null, 6.9632],
  [20, 50, null, 9.2711],
  [20, 65, null, 11.9963],
  [25, 60, null, 10.8321],
];

describe('equilibrium moisture', () => {
  test.each(moistures)('at %d °C and %d %', (celsius, humidity, table, equation) => {
    const moisture = equilibriumMoisture(celsius, humidity / 100);
    expect(moisture).toBeCloseTo(equation, 4);
    if (table !== null) expect(Math.abs(moisture - table)).toBeLessThan(0.06);
  });

  /** Wood Handbook Table 4-2, the 70 °F row at 5, 10, … 90 %. */
  test('keeps to the whole 70 °F row of the table', () => {
    const row = [1.3, 2.5, 3.5, 4.5, 5.4, 6.2, 6.9, 7.7, 8.5, 9.2, 10.1, 11.0, 12.0, 13.1, 14.4, 16.0, 17.9, 20.5];
    row.forEach((moisture, index) => {
      expect(Math.abs(equilibriumMoisture(21.1, (index + 1) / 20) - moisture)).toBeLessThan(0.1);
    });
  });

  test('rises with humidity, from bone dry', () => {
    expect(equilibriumMoisture(20, 0)).toBe(0);
    const celsius = fc.double({ min: 0, max: 50, noNaN: true });
    const humidity = fc.double({ min: 0, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(celsius, humidity, (temperature, damp) => {
        expect(equilibriumMoisture(temperature, damp + 0.01)).toBeGreaterThan(equilibriumMoisture(temperature, damp));
      }),
    );
  });

  test('refuses a humidity in percent', () => {
    expect(() => equilibriumMoisture(20, 65)).toThrow(RangeError);
    expect(() => equilibriumMoisture(20, Number.NaN)).toThrow(RangeError);
  });
});

describe('movement across the grain', () => {
  test.each([
    ['sugar_maple', 'tangential', 100, 8, 12, 1.412],
    ['basswood', 'radial', 300, 12, 6, -4.14],
    ['western_redcedar', 'tangential', 50, 14, 8, -0.702],
  ] as const)('eq. 13-2: %s %s, %d mm from %d to %d %', (name, way, size, before, after, expected) => {
    expect(movementAcross(wood(name), way, size, before, after)).toBeCloseTo(expected, 3);
  });

  /** The handbook's example of eq. 13-2 (white fir, flat-sawn) and a flooring page's (AH-72): the coefficients are theirs. */
  test.each([
    [232, 0.00245, 8, 11, 1.705],
    [5 * 25.4, 0.00129, 6, 9, 0.01935 * 25.4],
  ])('eq. 13-2: %d mm, coefficient %d', (size, value, before, after, expected) => {
    const { source } = wood('basswood').change.tangential;
    const other: Wood = { ...wood('basswood'), change: { radial: { value, source }, tangential: { value, source } } };
    expect(movementAcross(other, 'tangential', size, before, after)).toBeCloseTo(expected, 3);
  });

  /** Eq. 13-3 by hand: 100 (4 − 8) / (30·100/9.9 − 30 + 8) = −400 / 281.0303. */
  test('eq. 13-3 outside 6 to 14 %', () => {
    expect(movementAcross(wood('sugar_maple'), 'tangential', 100, 8, 4)).toBeCloseTo(-1.4233, 4);
  });

  test('eq. 13-3 from green to ovendry is the whole shrinkage, and above saturation nothing moves', () => {
    fc.assert(
      fc.property(anyWood, grain, fc.double({ min: 0, max: 70, noNaN: true }), (each, way, above) => {
        const saturation = each.saturation === 'low' ? 22 : 30;
        expect(movementAcross(each, way, 100, saturation + above, 0)).toBeCloseTo(-each.shrinkage[way].value, 9);
        expect(movementAcross(each, way, 100, saturation, saturation + above)).toBeCloseTo(0, 9);
      }),
    );
  });

  test('there and back outside the range of the coefficients is where it began', () => {
    const moisture = fc.double({ min: 15, max: 22, noNaN: true });
    fc.assert(
      fc.property(anyWood, grain, moisture, moisture, (each, way, one, two) => {
        const grown = 100 + movementAcross(each, way, 100, one, two);
        expect(grown + movementAcross(each, way, grown, two, one)).toBeCloseTo(100, 9);
      }),
    );
  });

  test('both equations agree within a twentieth where they meet', () => {
    fc.assert(
      fc.property(anyWood, grain, (each, way) => {
        if (each.name.endsWith('oak')) return;
        const near = movementAcross(each, way, 100, 14, 13);
        const beyond = movementAcross(each, way, 100, 15, 14);
        expect(Math.abs(near / beyond - 1)).toBeLessThan(0.05);
      }),
    );
  });

  /** Eq. 4-9. */
  test('sugar maple shrinks 5.94 % from green to 12 %', () => {
    expect(shrinkageTo(9.9, 12, 30)).toBeCloseTo(5.94, 12);
    expect(shrinkageTo(9.9, 40, 30)).toBe(0);
  });

  /** A trade body's published movement of 12 in plain-sawn, 10 to 5 %, in 1/64 in: good to 30 % only. */
  test.each([
    ['basswood', 10],
    ['white_ash', 10],
    ['walnut', 10],
    ['sugar_maple', 12],
    ['yellow_birch', 12],
    ['cherry', 9],
    ['yellow_poplar', 9],
  ])('12 in of %s move about %d/64 in', (name, published) => {
    const sixtyFourths = -movementAcross(wood(name), 'tangential', 12, 10, 5) * 64;
    expect(sixtyFourths / published).toBeGreaterThan(0.7);
    expect(sixtyFourths / published).toBeLessThan(1.3);
  });
});

describe('density', () => {
  /** Worked from Wood Handbook GTR-282, eqs. 4-14, 4-11 and 4-13. */
  test('the handbook relations', () => {
    expect(densityOf(0.37, 12)).toBeCloseTo(414.4, 9);
    expect(shrinkageTo(15.8, 12, 30)).toBeCloseTo(9.48, 9);
    expect(gravityAt(0.32, 15.8, 12, 30)).toBeCloseTo(0.3535, 4);
    expect(averageGravityAt(0.5, 12)).toBeCloseTo(0.5432, 4);
  });

  test('1.2 dm³ of basswood at 12 % weigh 0.497 kg', () => {
    expect((densityAt(wood('basswood'), 12) * 1.2) / 1000).toBeCloseTo(0.497, 3);
  });

  test('a drier piece of any wood is denser in wood but lighter by volume', () => {
    const moisture = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(anyWood, moisture, (each, dry) => {
        expect(densityAt(each, dry)).toBeLessThan(densityAt(each, dry + 1));
        const gravity = (percent: number): number => densityAt(each, percent) / (1 + percent / 100);
        expect(gravity(dry)).toBeGreaterThan(gravity(dry + 1));
      }),
    );
  });

  test('is the table’s at 12 %, with or without a known volume shrinkage', () => {
    fc.assert(
      fc.property(anyWood, (each) => {
        const table = 1120 * each.specificGravity.value;
        expect(densityAt(each, 12)).toBeCloseTo(table, 9);
        expect(densityAt({ ...each, volumeShrinkage: null }, 12)).toBeCloseTo(table, 9);
      }),
    );
  });
});

describe('cold bending', () => {
  test('the limit is linear in the thickness', () => {
    fc.assert(
      fc.property(
        anyWood,
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (each, t, n) => {
          expect(coldBendingLimit(each, t / n)).toBeCloseTo(coldBendingLimit(each, t) / n, 9);
        },
      ),
    );
  });

  /** Elastic springback of n glued laminae, 1/R′ = (1 − 1/n²)/R. */
  test.each([
    [2, 1.3333],
    [3, 1.125],
    [5, 1.0417],
    [10, 1.0101],
  ])('%d laminae open to %d times the form’s radius', (laminae, ratio) => {
    expect(radiusAfterSpringback(1, laminae)).toBeCloseTo(ratio, 4);
  });

  test('one strip alone straightens, and a form made tighter by the springback gives the radius', () => {
    expect(radiusAfterSpringback(100, 1)).toBe(Infinity);
    expect(formRadius(100, 1)).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e4, noNaN: true }), fc.integer({ min: 2, max: 30 }), (radius, laminae) => {
        expect(radiusAfterSpringback(formRadius(radius, laminae), laminae) / radius).toBeCloseTo(1, 12);
      }),
    );
  });
});
