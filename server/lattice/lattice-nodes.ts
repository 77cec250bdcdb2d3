/** The nodes of a grid: where lines of different families cross. */
import { cross, distance, dot, origin, type Point, turned } from '../geometry/point.ts';
import { type Region, regionHolds } from '../geometry/region.ts';
import { isZeroLength, placeDecimals, placeTolerance, rounded } from '../geometry/tolerance.ts';
import { areParallel, type LineFamily, lineOffset, meetingPoint, movedByPeriods, type Period } from './grid-lines.ts';
import { countMembers, memberPlace, scanLattice } from './scan-lattice.ts';

/** The nodes of one period, each once. */
export function nodesOfPeriod(families: readonly LineFamily[], period: Period): Point[] {
  const nodes: Point[] = [];
  families.forEach((one, index) => {
    for (const two of families.slice(index + 1)) {
      if (areParallel(one, two)) continue;
      const oneSteps = stepsInPeriod(one, two, period);
      const twoSteps = stepsInPeriod(two, one, period);
      for (let i = 0; i < oneSteps; i++) {
        for (let j = 0; j < twoSteps; j++) {
          const node = meetingPoint(one, lineOffset(one, i), two, lineOffset(two, j));
          if (!nodes.some((known) => sameModuloPeriod(known, node, period))) nodes.push(node);
        }
      }
    }
  });
  return nodes;
}

/** Enough lines of `lines` that every crossing with `other` is met once or more, modulo the period. */
function stepsInPeriod(lines: LineFamily, other: LineFamily, period: Period): number {
  const across = [period.first, period.second].map((move) =>
    Math.abs(Math.round(dot(lines.normal, move) / lines.spacing)),
  );
  const along = [period.first, period.second].map((move) =>
    Math.abs(Math.round(dot(other.normal, move) / other.spacing)),
  );
  return Math.max(1, Math.abs((across[0] ?? 0) * (along[1] ?? 0)) + Math.abs((across[1] ?? 0) * (along[0] ?? 0)));
}

function sameModuloPeriod(a: Point, b: Point, period: Period): boolean {
  const determinant = cross(period.first, period.second);
  const offset = { x: b.x - a.x, y: b.y - a.y };
  const columns = Math.round(cross(offset, period.second) / determinant);
  const rows = Math.round(cross(period.first, offset) / determinant);
  return distance(movedByPeriods(a, period, columns, rows), b) <= placeTolerance;
}

/** Nodes of the grid in the region, its boundary included. */
export function countNodes(families: readonly LineFamily[], period: Period, region: Region): number {
  return nodesOfPeriod(families, period).reduce((sum, node) => {
    const scan = scanLattice(region, node, period, 0);
    const onBoundary = scan.boundary.filter((member) => regionHolds(region, memberPlace(node, period, member)));
    return sum + countMembers(scan.inside) + onBoundary.length;
  }, 0);
}

/** Every family with a line through `point`. */
export const familiesThrough = (families: readonly LineFamily[], point: Point): LineFamily[] =>
  families.filter(({ normal, spacing, offset }) => {
    const steps = (dot(normal, point) - offset) / spacing;
    return isZeroLength((steps - Math.round(steps)) * spacing);
  });

/** The node at which most strips meet, nearest to the grid's origin; of equals the lowest, then leftmost of the unturned grid. */
export function mainNode(families: readonly LineFamily[], period: Period, gridTurn: number): Point {
  const ranked = nodesOfPeriod(families, period)
    .map((node) => {
      const { x, y } = turned(node, -gridTurn);
      const rank = [-familiesThrough(families, node).length, Math.hypot(x, y), y, x];
      return { node, rank: rank.map((value) => rounded(value, placeDecimals)) };
    })
    .sort(
      (a, b) => a.rank.map((value, index) => value - (b.rank[index] ?? 0)).find((difference) => difference !== 0) ?? 0,
    );
  return ranked[0]?.node ?? origin;
}
