/** The hinges of one class of cells: in every cell that makes both halves of one. */
import { placeTolerance } from '../geometry/tolerance.ts';
import type { Point } from '../geometry/point.ts';
import type { FilledPiece } from './fill-opening.ts';
import type { HingeGroup } from './laid-panel.ts';

/**
 * `insideCells` cells make every piece; of those at the edge each piece is made where `madeAt` says, by the move that
 * brings the class's cell there.
 */
export function hingeGroups(
  pieces: readonly FilledPiece[],
  insideCells: number,
  madeAt: ReadonlyMap<FilledPiece, ReadonlySet<Point>>,
): HingeGroup[] {
  return pieces.flatMap((piece, index): HingeGroup[] => {
    const { fold, shape, motif } = piece;
    const other = fold && pieces.slice(index + 1).find((each) => each.fold === fold);
    if (!fold || !other) return [];
    const [here, there] = [madeAt.get(piece), madeAt.get(other)];
    const atEdge = [...(here ?? [])].filter((move) => there?.has(move)).length;
    const count = insideCells + atEdge;
    const isFirstLonger = shape.length >= other.shape.length - placeTolerance;
    const [first, second] = isFirstLonger ? [piece, other] : [other, piece];
    const range = fold.hinge.range;
    return count === 0
      ? []
      : [{ motif, roles: [first.role, second.role], shapes: [first.shape, second.shape], count, range }];
  });
}
