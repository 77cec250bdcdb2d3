/** One cell with the infill that lies in it, to show a motif by itself. */
import { leftDistance } from '../geometry/lines.ts';
import { add, type Point, scale, subtract, turned, unit } from '../geometry/point.ts';
import type { LaidCell, LaidPanel, PieceGroup, Polygon } from '../lattice/laid-panel.ts';

/** Outlines of the pieces in `cell`, as they lie in the panel. */
export const piecesInCell = (laid: LaidPanel, cell: LaidCell): Polygon[] =>
  groupsInCell(laid, cell).map(({ outline }) => outline);

/** The same, each with the group that it belongs to. */
export function groupsInCell(
  laid: LaidPanel,
  { opening }: LaidCell,
): { readonly group: PieceGroup; readonly outline: Polygon }[] {
  return laid.pieces.flatMap((group) =>
    [...group.placements()]
      .filter(({ at, turn }) => holds(opening, add(turned(middleOf(group.outline), turn), at)))
      .map(({ at, turn }) => ({ group, outline: group.outline.map((point) => add(turned(point, turn), at)) })),
  );
}

/** The mean of the corners. */
export function middleOf(ring: Polygon): Point {
  return scale(ring.reduce(add, { x: 0, y: 0 }), 1 / ring.length);
}

/** Whether a convex counter-clockwise ring holds a point. */
const holds = (ring: Polygon, point: Point): boolean =>
  ring.every((corner, index) => {
    const next = ring[(index + 1) % ring.length] ?? corner;
    return leftDistance(point, corner, unit(subtract(next, corner))) >= 0;
  });
