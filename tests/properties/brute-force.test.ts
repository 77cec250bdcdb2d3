/** Whole, trimmed and outside of every piece, found again by brute force with flatten-js, which the engine does not use. */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Grid } from '../../server/design/design-model.ts';
import { cross, type Point, subtract } from '../../server/geometry/point.ts';
import { polygonOf } from '../independent-polygons.ts';
import { laidOut, onGround } from '../laid-out.ts';
import { panelInOutline, randomGrids, starPolygons } from './random-panels.ts';

/** Every grid is laid under so many outlines: its pieces are set out once for all of them. */
const grids = 250;
const outlinesEach = 8;

const farthest = 60;
const longestSide = 50;

/** Every piece near the outlines, each on its place. */
function allPieces(grid: Grid): Point[][] {
  const reach = farthest + 2 * longestSide;
  const corners = [
    { x: -reach, y: -reach },
    { x: reach, y: -reach },
    { x: reach, y: reach },
    { x: -reach, y: reach },
  ];
  return laidOut(panelInOutline(grid, corners, 'sawn'))
    .pieces.filter(({ fate }) => fate === 'whole')
    .flatMap(({ outline, placements }) => [...placements()].map((placement) => onGround(outline, placement)))
    .filter((piece) => piece.some(({ x, y }) => Math.hypot(x, y) <= farthest + longestSide));
}

type Fate = 'whole' | 'trimmed' | 'outside' | 'undecided';

/** The limit is 0.01 mm²; areas this near to it are left to rounding. */
const fateOf = (kept: number, lost: number): Fate => {
  if ([kept, lost].some((area) => area > 0.005 && area < 0.02)) return 'undecided';
  if (lost <= 0.01) return 'whole';
  return kept <= 0.01 ? 'outside' : 'trimmed';
};

const sidesOf = (ring: readonly Point[]) => ring.map((from, index) => [from, ring[(index + 1) % ring.length] ?? from]);

/** Whether a point lies on the left of a side, on the right, or on it. */
const sideOf = ([from, to]: readonly Point[], point: Point): number =>
  from && to ? Math.sign(cross(subtract(to, from), subtract(point, from))) : 0;

/** Whether two sides may have a point in common: neither has both ends of the other on one side of it. */
const mayMeet = (one: readonly Point[], other: readonly Point[]): boolean =>
  Math.abs(other.reduce((sum, point) => sum + sideOf(one, point), 0)) < 2 &&
  Math.abs(one.reduce((sum, point) => sum + sideOf(other, point), 0)) < 2;

/** The library clips every piece that a side of the outline may meet, and says where any other lies. */
function bruteForce(polygon: readonly Point[], region: Flatten.Polygon, piece: readonly Point[]): Fate {
  const outline = sidesOf(polygon);
  const [corner = { x: 0, y: 0 }] = piece;
  if (!sidesOf(piece).some((side) => outline.some((other) => mayMeet(side, other)))) {
    return region.contains(Flatten.point(corner.x, corner.y)) ? 'whole' : 'outside';
  }
  const own = polygonOf(piece);
  const kept = Math.abs(Flatten.BooleanOperations.intersect(region, own).area());
  return fateOf(kept, Math.abs(own.area()) - kept);
}

function checkOutline(grid: Grid, pieces: readonly Point[][], polygon: readonly Point[]): void {
  const region = polygonOf(polygon);
  const fates = pieces.map((piece) => bruteForce(polygon, region, piece));
  const count = (fate: Fate): number => fates.filter((each) => each === fate).length;
  const { pieces: groups } = laidOut(panelInOutline(grid, polygon, 'sawn'));
  for (const fate of ['whole', 'trimmed'] as const) {
    const made = groups.filter((group) => group.fate === fate).reduce((sum, group) => sum + group.count, 0);
    expect(made).toBeGreaterThanOrEqual(count(fate));
    expect(made).toBeLessThanOrEqual(count(fate) + count('undecided'));
  }
}

it(`each of ${String(grids * outlinesEach)} sawn panels makes just the pieces that brute force finds`, () => {
  const outlines = fc.array(starPolygons(12, farthest), { minLength: outlinesEach, maxLength: outlinesEach });
  fc.assert(
    fc.property(randomGrids, outlines, (grid, polygons) => {
      const pieces = allPieces(grid);
      for (const polygon of polygons) checkOutline(grid, pieces, polygon);
    }),
    { numRuns: grids },
  );
});
