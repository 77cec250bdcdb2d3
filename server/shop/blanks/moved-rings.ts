/** Polygons carried by a move of the grid. */
import type { Point } from '../../geometry/point.ts';
import { type GridMove, movedPoint } from '../../lattice/grid/grid-symmetries.ts';

/** Mirrored rings are written backwards, so that outer ones stay counter-clockwise and holes clockwise. */
export function movedRings(rings: readonly (readonly Point[])[], move: GridMove): Point[][] {
  return rings.map((ring) => {
    const moved = ring.map((point) => movedPoint(point, move));
    return move.mirrored ? moved.reverse() : moved;
  });
}
