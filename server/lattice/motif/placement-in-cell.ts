/** How the pieces of a motif come to lie in a cell of the panel: mirrored and turned as its fill says. */
import { centroidOf } from '../../geometry/polygons.ts';
import type { PanelFill } from '../../design/design-model.ts';
import { add, distance, type Point, subtract, turned } from '../../geometry/point.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import { type CellClass, turnOntoItself } from '../cells/cell-classes.ts';
import type { FilledPiece } from './fill-opening.ts';
import { mirroredPiece, mirroredPoint } from './mirrored-piece.ts';

/** From a piece in the cell's frame to the piece on the panel; null where the cell does not come to lie on itself. */
export function placementInCell(cell: CellClass, fill: PanelFill): ((piece: FilledPiece) => FilledPiece) | null {
  const turn = turnOntoItself(cell.frame, fill.turned);
  const [corner] = cell.frame;
  if (turn === null || !corner) return null;
  const middle = centroidOf(cell.frame);
  if (fill.mirrored && !mirrorsOntoItself(cell.frame, middle, corner)) return null;
  const onPanel = (point: Point): Point => turned(add(turned(subtract(point, middle), turn), middle), -cell.frameTurn);
  return (piece) => {
    const lying = fill.mirrored ? mirroredPiece(piece, middle, corner) : piece;
    const angle = lying.placement.turn + turn - cell.frameTurn;
    const placement = { at: onPanel(lying.placement.at), turn: ((angle % 360) + 360) % 360 };
    return { ...lying, placement, ground: lying.ground.map(onPanel) };
  };
}

const mirrorsOntoItself = (ring: readonly Point[], middle: Point, corner: Point): boolean =>
  ring.every((point) => {
    const mirrored = mirroredPoint(point, middle, corner);
    return ring.some((other) => distance(other, mirrored) <= placeTolerance);
  });
