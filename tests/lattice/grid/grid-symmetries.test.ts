/** Which moves lay a grid on itself: the order of its point group, the axes of turning over, and every line met. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Grid } from '../../../server/design/design-model.ts';
import { dot, type Point } from '../../../server/geometry/point.ts';
import { type LineFamily, lineFamilies, lineOffset } from '../../../server/lattice/grid/grid-lines.ts';
import { type GridMove, movedPoint, movesOnto, undone } from '../../../server/lattice/grid/grid-symmetries.ts';
import { basketGrid, diamondGrid, gridOf, stripStock } from '../../design-builder.ts';

const ash = stripStock('ash', 3);
const grids: Record<string, Grid> = {
  square: gridOf('square', 40, ash),
  diamond: diamondGrid(40, 50, ash),
  three_way: gridOf('three_way', 40, ash),
  kagome: basketGrid(40, ash),
};
const anyLaps = { wood: false, laps: false };
const matchLaps = { wood: false, laps: true };

const movesOf = (grid: Grid, rules: typeof anyLaps, at: Point = { x: 0, y: 0 }): readonly GridMove[] =>
  movesOnto(lineFamilies(grid, { x: 0, y: 0 }), lineFamilies(grid, at), rules)?.moves ?? [];

const turnsOf = (moves: readonly GridMove[], mirrored: boolean): number[] =>
  [...new Set(moves.filter((move) => move.mirrored === mirrored).map(({ turn }) => turn))].sort((a, b) => a - b);

describe('turns of a bare grid', () => {
  // Point groups of the plane lattices, International Tables for Crystallography, vol. A: 4mm, 2mm, 6mm (from memory).
  test.each([
    ['square', [0, 90, 180, 270]],
    ['diamond', [0, 180]],
    ['three_way', [0, 60, 120, 180, 240, 300]],
    ['kagome', [0, 60, 120, 180, 240, 300]],
  ] as const)('%s', (name, turns) => {
    const moves = movesOf(grids[name] as Grid, anyLaps);
    expect(turnsOf(moves, false)).toEqual(turns);
    expect(turnsOf(moves, true)).toHaveLength(turns.length);
  });
});

describe('with the laps matched', () => {
  // A move that mirrors by R(turn)·M leaves the line at turn/2 where it is: the axis of turning over.
  test.each([
    ['square', [45, 135]],
    ['diamond', [0, 90]],
    ['three_way', [60, 150]],
    ['kagome', [60, 150]],
  ] as const)('%s turns by 0° and 180° only, and over the axes of its layers', (name, axes) => {
    const moves = movesOf(grids[name] as Grid, matchLaps);
    expect(turnsOf(moves, false)).toEqual([0, 180]);
    expect(turnsOf(moves, true).map((turn) => turn / 2)).toEqual(axes);
  });
});

test('families of different faces or woods lie only on their like', () => {
  const square = grids.square as Grid;
  const stocks = [ash, stripStock('wide', 5)];
  const families = square.families.map((family, index) => ({ ...family, stock: stocks[index] ?? ash }));
  expect(turnsOf(movesOf({ ...square, families }, anyLaps), false)).toEqual([0, 180]);
  const woods = square.families.map((family, index) => ({ ...family, stock: stripStock(`wood ${String(index)}`, 3) }));
  expect(turnsOf(movesOf({ ...square, families: woods }, { wood: true, laps: false }), false)).toEqual([0, 180]);
  expect(turnsOf(movesOf({ ...square, families: woods }, anyLaps), false)).toEqual([0, 90, 180, 270]);
});

test('a grid without a period has none', () => {
  const square = grids.square as Grid;
  const families = square.families.map((family) => ({ ...family, positions: [0, 30, 70] }));
  expect(movesOnto(lineFamilies({ ...square, families }, { x: 0, y: 0 }), [], anyLaps)).toBeNull();
});

test('every move, by whole periods too, lays lines on lines; undone, it brings each place back', () => {
  const shift = fc.record({
    x: fc.double({ min: -90, max: 90, noNaN: true }),
    y: fc.double({ min: -90, max: 90, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.constantFrom(...Object.values(grids)), shift, fc.integer({ min: -5, max: 5 }), (grid, at, line) => {
      const onto = lineFamilies(grid, at);
      const moves = movesOf(grid, anyLaps, at);
      expect(moves.length).toBeGreaterThan(0);
      for (const move of moves)
        for (const from of lineFamilies(grid, { x: 0, y: 0 }))
          for (const along of [-70, 130]) {
            const place = placeOn(from, line, along);
            const moved = movedPoint(place, move);
            expect(Math.min(...onto.map((lines) => missOf(lines, moved)))).toBeLessThan(1e-6);
            const back = movedPoint(moved, undone(move));
            expect(Math.hypot(back.x - place.x, back.y - place.y)).toBeLessThan(1e-6);
          }
    }),
    { numRuns: 40 },
  );
});

/** A place on a line, so far along it. */
function placeOn(lines: LineFamily, line: number, along: number): Point {
  const reach = lineOffset(lines, line);
  return {
    x: lines.normal.x * reach + lines.along.x * along,
    y: lines.normal.y * reach + lines.along.y * along,
  };
}

/** Distance from the nearest line of the family. */
function missOf(lines: LineFamily, place: Point): number {
  const steps = (dot(lines.normal, place) - lines.offset) / lines.spacing;
  return Math.abs(steps - Math.round(steps)) * lines.spacing;
}
