/** The bound by area against all choices, counted one by one. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boundByArea } from '../../../server/shop/sheets/sheet-bound.ts';

test('is the cheapest of all choices that are large enough', () => {
  const size = fc.record({ worth: fc.integer({ min: 1, max: 50 }), area: fc.integer({ min: 5, max: 40 }) });
  fc.assert(
    fc.property(fc.array(size, { minLength: 1, maxLength: 3 }), fc.integer({ min: 1, max: 60 }), (sizes, need) => {
      const most = 12;
      let least = Infinity;
      for (let a = 0; a <= most; a++)
        for (let b = 0; b <= (sizes[1] ? most : 0); b++)
          for (let c = 0; c <= (sizes[2] ? most : 0); c++) {
            const counts = [a, b, c];
            const sum = (what: 'worth' | 'area'): number =>
              sizes.reduce((total, each, index) => total + (counts[index] ?? 0) * each[what], 0);
            if (sum('area') >= need) least = Math.min(least, sum('worth'));
          }
      expect(boundByArea(need, sizes)).toBe(least);
    }),
    { seed: 3 },
  );
});
