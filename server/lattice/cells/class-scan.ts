/** The cells of one class in a region: whole rows inside it, one by one along its boundary. */
import { maximum } from '../../geometry/numbers.ts';
import { add, distance, origin, type Point } from '../../geometry/point.ts';
import { areaOf, boundsOf, centroidOf, intersectionOf } from '../../geometry/polygons.ts';
import { localRings, type Region } from '../../geometry/region.ts';
import { areaTolerance } from '../../geometry/tolerance.ts';
import type { CellClass } from './cell-classes.ts';
import type { Period } from '../grid/grid-period.ts';
import type { Polygon } from '../laid-panel.ts';
import { type LatticeMember, type LatticeRun, memberPlace, scanLattice } from '../grid/scan-lattice.ts';

/** A cell whose opening meets the region near its boundary. */
export interface BoundaryCell {
  readonly member: LatticeMember;
  /** From the class's own cell to this one. */
  readonly move: Point;
  /** The region's rings near it. */
  readonly rings: readonly Polygon[];
  /** Area of the opening inside the region. */
  readonly openArea: number;
}

export interface ClassScan {
  readonly cell: CellClass;
  /** Middle of the class's own cell. */
  readonly middle: Point;
  readonly inside: readonly LatticeRun[];
  readonly boundary: readonly BoundaryCell[];
}

/** `beyond` widens the boundary: cells so much further inside are among those listed one by one. */
export function scanClass(cell: CellClass, period: Period | null, region: Region, beyond = 0): ClassScan {
  const middle = centroidOf(cell.opening);
  const radius = maximum(cell.opening.map((corner) => distance(corner, middle)));
  const { inside, boundary } = scanLattice(region, middle, period, radius + beyond);
  const cells = boundary
    .map((member): BoundaryCell => {
      const move = memberPlace(origin, period, member);
      const opening = cell.opening.map((corner) => add(corner, move));
      const rings = localRings(region, boundsOf(opening));
      return { member, move, rings, openArea: areaOf(intersectionOf([opening], rings)) };
    })
    .filter(({ openArea }) => openArea > areaTolerance);
  return { cell, middle, inside, boundary: cells };
}

/** Whether the boundary takes some of a cell's opening. */
export const isCutCell = (cell: CellClass, { openArea }: BoundaryCell): boolean =>
  areaOf([cell.opening]) - openArea > areaTolerance;
