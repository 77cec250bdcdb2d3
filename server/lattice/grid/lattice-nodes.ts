/** The nodes of a grid: where lines of different families cross. */
import { minimum, maximum } from '../../geometry/numbers.ts';
import { cross, distance, dot, origin, type Point, turned } from '../../geometry/point.ts';
import { type Bounds, ringOfBounds } from '../../geometry/polygons.ts';
import { type Region, regionHolds } from '../../geometry/region.ts';
import { placeDecimals, placeTolerance, rounded } from '../../geometry/tolerance.ts';
import { areParallel, type LineFamily, lineOffset, linesBetween, lineThrough, meetingPoint } from './grid-lines.ts';
import { movedByPeriods, type Period } from './grid-period.ts';
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

/** Every node within bounds, each once. */
export function nodesWithin(families: readonly LineFamily[], bounds: Bounds): Point[] {
  const corners = ringOfBounds(bounds);
  const across = (lines: LineFamily): number[] => {
    const reaches = corners.map((corner) => dot(lines.normal, corner));
    return linesBetween(lines, minimum(reaches), maximum(reaches));
  };
  const nodes = new Map<string, Point>();
  families.forEach((one, index) => {
    for (const two of families.slice(index + 1)) {
      if (areParallel(one, two)) continue;
      for (const i of across(one)) {
        for (const j of across(two)) {
          const node = meetingPoint(one, lineOffset(one, i), two, lineOffset(two, j));
          if (holds(bounds, node))
            nodes.set(`${rounded(node.x, placeDecimals)} ${rounded(node.y, placeDecimals)}`, node);
        }
      }
    }
  });
  return [...nodes.values()];
}

const holds = ({ left, bottom, right, top }: Bounds, { x, y }: Point): boolean =>
  x >= left - placeTolerance &&
  x <= right + placeTolerance &&
  y >= bottom - placeTolerance &&
  y <= top + placeTolerance;

/** The nodes of one period or, without one, those in the region: every node there is in a panel is like one of them. */
export const nodesIn = (families: readonly LineFamily[], period: Period | null, region: Region): Point[] =>
  period
    ? nodesOfPeriod(families, period)
    : nodesWithin(families, region.bounds).filter((node) => regionHolds(region, node));

/** Nodes of the grid in the region, its boundary included. */
export function countNodes(families: readonly LineFamily[], period: Period | null, region: Region): number {
  if (!period) return nodesIn(families, period, region).length;
  return nodesOfPeriod(families, period).reduce((sum, node) => {
    const scan = scanLattice(region, node, period, 0);
    const onBoundary = scan.boundary.filter((member) => regionHolds(region, memberPlace(node, period, member)));
    return sum + countMembers(scan.inside) + onBoundary.length;
  }, 0);
}

/** Every family with a line through `point`. */
export const familiesThrough = (families: readonly LineFamily[], point: Point): LineFamily[] =>
  families.filter((lines) => lineThrough(lines, point) !== null);

/** The node at which most strips meet, nearest to the grid's origin; of equals the lowest, then leftmost of the unturned grid. */
export function mainNode(families: readonly LineFamily[], stretch: Period | Bounds, gridTurn: number): Point {
  const nodes = 'first' in stretch ? nodesOfPeriod(families, stretch) : nodesWithin(families, stretch);
  const ranked = nodes
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
