/** A piece of a motif seen in a mirror that stands on its cell. */
import { add, direction, dot, type Point, scale, subtract } from '../../geometry/point.ts';
import { settled } from './cut-piece.ts';
import type { FilledPiece } from './fill-opening.ts';
import type { PieceEnd } from '../laid-panel.ts';
import { mirroredRuns } from '../strips/notch-runs.ts';
import { laidOtherwise } from './piece-shape.ts';

/** `point` mirrored in the line through `on` and `toward`. */
export function mirroredPoint(point: Point, on: Point, toward: Point): Point {
  const along = subtract(toward, on);
  const from = subtract(point, on);
  const foot = scale(along, dot(from, along) / dot(along, along));
  return { x: on.x + 2 * foot.x - from.x, y: on.y + 2 * foot.y - from.y };
}

/** What was on the left of the piece is on its right; it is made for itself, unless a turn or flip brings it back. */
export function mirroredPiece(piece: FilledPiece, on: Point, toward: Point): FilledPiece {
  const mirror = (point: Point): Point => mirroredPoint(point, on, toward);
  const { placement, flipped } = piece;
  const shape = laidOtherwise(piece.shape, { turned: false, flipped });
  const anchor = mirror(placement.at);
  const along = subtract(mirror(add(placement.at, direction(placement.turn))), anchor);
  const [first, second] = shape.ends;
  return {
    ...piece,
    ...settled(
      piece.ground.map(mirror).reverse(),
      anchor,
      along,
      shape.stock,
      [swapped(first), swapped(second)],
      mirroredRuns(shape.notches),
    ),
  };
}

const swapped = ({ bevels }: PieceEnd): PieceEnd => ({ bevels: bevels && [bevels[1], bevels[0]] });
