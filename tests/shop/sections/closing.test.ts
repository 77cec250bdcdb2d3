/** Drift of settings and spread of errors against the fit, by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  closingOf,
  driftOfSettings,
  mostNotchesThatClose,
  spreadOfScatter,
  type NotchingError,
} from '../../../server/shop/sections/closing.ts';

const pin = (settings: number[], scatter = 0): NotchingError => ({ location: 'pin', settings, scatter });
const stop = (settings: number[], scatter = 0): NotchingError => ({ location: 'stop', settings, scatter });
const length = fc.double({ min: 0, max: 1, noNaN: true });
const count = fc.integer({ min: 0, max: 200 });

describe('drift and spread', () => {
  test('two pins 0.02 apart are 0.38 apart at the twentieth notch', () => {
    expect(driftOfSettings(0.02, 20)).toBeCloseTo(0.38, 12);
  });

  test('errors of 0.01 add up to 0.08 over seventeen notches on a pin, and not from a stop', () => {
    expect(spreadOfScatter('pin', 0.01, 17)).toBeCloseTo(0.08, 12);
    expect(spreadOfScatter('stop', 0.01, 17)).toBeCloseTo(0.02, 12);
    expect(spreadOfScatter('stop', 0.01, 170)).toBeCloseTo(0.02, 12);
  });

  test('one notch has no neighbour to be off from', () => {
    fc.assert(
      fc.property(length, fc.constantFrom(0, 1), (error, notches) => {
        expect(driftOfSettings(error, notches)).toBe(0);
        expect(spreadOfScatter('pin', error, notches)).toBe(0);
      }),
    );
  });

  test('drift grows with the notches, spread with their root', () => {
    fc.assert(
      fc.property(length, fc.integer({ min: 2, max: 200 }), (error, notches) => {
        expect(driftOfSettings(error, 4 * (notches - 1) + 1)).toBeCloseTo(4 * driftOfSettings(error, notches), 9);
        expect(spreadOfScatter('pin', error, 4 * (notches - 1) + 1)).toBeCloseTo(
          2 * spreadOfScatter('pin', error, notches),
          9,
        );
      }),
    );
  });
});

describe('the verdict', () => {
  test('a pitch that is off alike everywhere, or one setting, raises nothing', () => {
    expect(closingOf(pin([40.3]), 100, 0.05).verdict).toBe('closes');
    expect(closingOf(pin([40.3, 40.3, 40.3]), 100, 0).verdict).toBe('closes');
    expect(closingOf(pin([]), 100, 0).verdict).toBe('closes');
  });

  test('settings apart by more than the fit come apart', () => {
    expect(closingOf(pin([40, 40.01]), 11, 0.05)).toMatchObject({ verdict: 'apart', allowance: 0.05 });
    expect(closingOf(pin([40, 40.01]), 6, 0.05).verdict).toBe('closes');
    expect(closingOf(stop([40, 40.01]), 100, 0.05).verdict).toBe('closes');
  });

  test('scatter alone only tightens', () => {
    expect(closingOf(pin([40], 0.01), 17, 0.05).verdict).toBe('tight');
    expect(closingOf(pin([40], 0.005), 17, 0.05).verdict).toBe('closes');
  });

  test('a pressed fit takes up as much as it presses', () => {
    fc.assert(
      fc.property(length, length, count, length, (difference, scatter, notches, fit) => {
        const error = pin([40, 40 + difference], scatter);
        expect(closingOf(error, notches, -fit)).toEqual(closingOf(error, notches, fit));
      }),
    );
  });

  test('what closes still closes with a looser fit or fewer notches', () => {
    fc.assert(
      fc.property(length, length, count, length, (difference, scatter, notches, fit) => {
        const error = pin([40, 40 + difference / 20], scatter / 20);
        if (closingOf(error, notches + 1, fit).verdict !== 'closes') return;
        expect(closingOf(error, notches, fit).verdict).toBe('closes');
        expect(closingOf(error, notches + 1, 2 * fit).verdict).toBe('closes');
      }),
    );
  });

  test('the most notches close, and one more does not', () => {
    expect(mostNotchesThatClose(0, 0.05)).toBe(Infinity);
    expect(mostNotchesThatClose(0.01, 0.05)).toBe(6);
    expect(closingOf(pin([40, 40.01]), 6, 0.05).verdict).toBe('closes');
    expect(closingOf(pin([40, 40.01]), 7, 0.05).verdict).toBe('apart');
  });
});
