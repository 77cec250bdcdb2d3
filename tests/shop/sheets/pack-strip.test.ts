/** Strip packing: jigsaws, whose best layout is known by construction, and random outlines, checked by flatten-js. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../../server/geometry/polygons.ts';
import { turned } from '../../../server/geometry/point.ts';
import type { NestKind } from '../../../server/shop/sheets/nest-kind.ts';
import { packStrip, type StripPacking } from '../../../server/shop/sheets/pack-strip.ts';
import { type Cut, cutUp } from './jigsaws.ts';
import { layoutFaults, ringsOf } from './layout-faults.ts';

const size = 1_000_000;
/** The strip is 0.01 % wider than the pieces need, for they are kept a hair apart. */
const strip = size + 100;
const hair = { width: 8, arcTolerance: 0 };
const at = (x: number, y: number) => ({ x: x * size, y: y * size });

function packed(kinds: readonly NestKind[], steps: number, width = strip): StripPacking {
  const packing = packStrip({ kinds, width, gap: hair, steps });
  if (!packing) throw new Error('a piece is wider than the strip');
  return packing;
}

const faultsOf = (kinds: readonly NestKind[], { places, length }: StripPacking): string[] =>
  layoutFaults(ringsOf(kinds, places), { left: 0, right: length, bottom: 0, top: strip }, 1);

const crossed: Cut[] = [
  [at(0, 0.3), at(1, 0.7)],
  [at(0.25, 0), at(0.6, 1)],
];
const shards: Cut[] = [...crossed, [at(0.9, 0), at(0.3, 1)]];

describe.each([
  { name: 'four pieces by two cuts', cuts: crossed, turns: [0], steps: 8000 },
  { name: 'seven pieces by three cuts', cuts: shards, turns: [0], steps: 20000 },
])('a square cut into $name', ({ cuts, turns, steps }) => {
  const kinds = cutUp(size, size, cuts, turns);
  const packing = packed(kinds, steps);

  test('goes back into little more than the square', () => {
    expect(packing.length).toBeGreaterThanOrEqual(size - 2);
    expect(packing.length).toBeLessThan(1.03 * size);
  });

  test('without overlap', () => {
    expect(packing.places).toHaveLength(kinds.length);
    expect(faultsOf(kinds, packing)).toEqual([]);
  });

  test('and a piece shifted by 1 % is found out', () => {
    const tight = packing.places.map((_, moved) =>
      [
        [0.01, 0],
        [-0.01, 0],
        [0, 0.01],
        [0, -0.01],
      ].map(([x = 0, y = 0]) => {
        const places = packing.places.map((place, index) =>
          index === moved ? { ...place, x: place.x + x * size, y: place.y + y * size } : place,
        );
        return faultsOf(kinds, { ...packing, places }).length > 0;
      }),
    );
    // In a full square hardly any piece has room that way, and none has room every way.
    expect(tight.every((ways) => ways.includes(true))).toBe(true);
    expect(tight.flat().filter((found) => found).length).toBeGreaterThan(0.6 * tight.flat().length);
  });

  test('the same again', () => {
    expect(packed(kinds, steps)).toEqual(packing);
  });
});

test('turns are used: of L-shaped tiles, two make a full rectangle when one of them may turn', () => {
  const tile = [at(0, 0), at(0.5, 0), at(0.5, 0.24), at(0.25, 0.24), at(0.25, 0.49), at(0, 0.49)];
  const kinds = (turns: number[]): NestKind[] => [{ name: 'L', ring: tile, count: 4, turns }];
  // Two pairs, each 0.75 long and 0.49 high.
  expect(packed(kinds([0, 180]), 600).length).toBeLessThan(0.76 * size);
  expect(packed(kinds([0]), 600).length).toBeGreaterThan(0.76 * size);
});

test('more steps never give a longer strip, and one step is a layout already', () => {
  const kinds = cutUp(size, size, shards, [0, 180]);
  const lengths = [1, 100, 600].map((steps) => packed(kinds, steps).length);
  expect([...lengths].sort((first, second) => second - first)).toEqual(lengths);
});

test('a piece wider than the strip has no place', () => {
  const plank = { name: 'plank', ring: [at(0, 0), at(1, 0), at(1, 2), at(0, 2)], count: 1, turns: [0] };
  expect(packStrip({ kinds: [plank], width: size, gap: hair, steps: 10 })).toBeNull();
  expect(packStrip({ kinds: [{ ...plank, turns: [90] }], width: size, gap: hair, steps: 10 })?.length).toBe(2 * size);
});

const outline = fc.array(fc.integer({ min: 60_000, max: 240_000 }), { minLength: 3, maxLength: 8 }).map((radii) =>
  radii.map((radius, index) => {
    const { x, y } = turned({ x: radius, y: 0 }, (360 * index) / radii.length);
    return { x: Math.round(x), y: Math.round(y) };
  }),
);

test('random outlines lie apart, inside, all of them, in turns they may take', () => {
  fc.assert(
    fc.property(fc.array(outline, { minLength: 2, maxLength: 5 }), (rings) => {
      const kinds = rings.map((ring, index) => ({ name: `K${index}`, ring, count: 2, turns: [0, 180] }));
      const packing = packed(kinds, 150);
      expect(packing.places.map(({ kind }) => kind)).toEqual(kinds.flatMap((_, kind) => [kind, kind]));
      expect(packing.places.every(({ turn }) => turn === 0 || turn === 180)).toBe(true);
      expect(faultsOf(kinds, packing)).toEqual([]);
      expect(packing.length * size).toBeGreaterThan(2 * areaOf(rings));
    }),
    { seed: 5, numRuns: 12 },
  );
});
