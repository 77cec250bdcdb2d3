/** The hinges of one class of cells: in every cell that makes both halves of one. */
import { placeTolerance } from '../../geometry/tolerance.ts';
import type { Point } from '../../geometry/point.ts';
import type { FilledPiece } from './fill-opening.ts';
import type { HingeGroup } from '../laid-panel.ts';

/**
 * `insideCells` cells make every piece; of those at the edge each piece is made where `madeAt` says, by the move that
 * brings the class's cell there.
 */
export const hingeGroups = (
  pieces: readonly FilledPiece[],
  insideCells: number,
  madeAt: ReadonlyMap<FilledPiece, ReadonlySet<Point>>,
): HingeGroup[] =>
  foldedPairs(pieces).flatMap((halves) => {
    const [here, there] = halves.map((half) => madeAt.get(half));
    const atEdge = [...(here ?? [])].filter((move) => there?.has(move)).length;
    const count = insideCells + atEdge;
    return count === 0 ? [] : [hingeGroupOf(halves, count)];
  });

/** The two halves of one length, the longer first. */
export type FoldedPair = readonly [FilledPiece, FilledPiece];

/** The pairs among the pieces of one opening. */
export function foldedPairs(pieces: readonly FilledPiece[]): FoldedPair[] {
  return pieces.flatMap((piece, index): FoldedPair[] => {
    const other = piece.fold && pieces.slice(index + 1).find(({ fold }) => fold === piece.fold);
    if (!other) return [];
    return [piece.shape.length >= other.shape.length - placeTolerance ? [piece, other] : [other, piece]];
  });
}

/** `count` hinges like this pair. */
export const hingeGroupOf = ([first, second]: FoldedPair, count: number): HingeGroup => ({
  motif: first.motif,
  roles: [first.role, second.role],
  shapes: [first.shape, second.shape],
  count,
  range: first.fold?.hinge.range ?? first.words,
});
