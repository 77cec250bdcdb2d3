/** Infill pieces from their bevels, for tests of the jigs. */
import type { PieceShape } from '../../../server/lattice/laid-panel.ts';
import { clipToHalfPlanes, leftOf } from '../../../server/geometry/polygons.ts';
import { pieceShape } from '../../../server/lattice/motif/piece-shape.ts';
import { stripStock } from '../../design-builder.ts';

type Bevels = readonly [left: number, right: number];

/** A piece whose axis is `length` long; bevels left and right seen from end 1 to end 2. One slanted cut reaches further. */
export function pointedPiece(length: number, face: number, first: Bevels, second: Bevels): PieceShape {
  const far = farLines(second);
  const near = farLines([first[1], first[0]]).map(({ x, y }) => ({ x: -x, y: -y }));
  const long = 10 * length;
  const bar = [
    { x: -long, y: -face / 2 },
    { x: long, y: -face / 2 },
    { x: long, y: face / 2 },
    { x: -long, y: face / 2 },
  ];
  const cut = clipToHalfPlanes(bar, [
    ...far.map((along) => leftOf({ x: length, y: 0 }, along)),
    ...near.map((along) => leftOf({ x: 0, y: 0 }, along)),
  ]);
  return pieceShape(stripStock('stock', face), cut, [{ bevels: first }, { bevels: second }]);
}

/** Directions along which the wood lies to the left of the right and the left bevel at end 2. */
const farLines = ([left, right]: Bevels) =>
  [right, 180 - left].map((angle) => ({
    x: Math.cos((angle * Math.PI) / 180),
    y: Math.sin((angle * Math.PI) / 180),
  }));

/** A piece whose second end an outline rules. */
export const fittedPiece = (length: number, face: number): PieceShape => {
  const whole = pointedPiece(length, face, [45, 45], [90, 90]);
  return { ...whole, ends: [whole.ends[0], { bevels: null }] };
};
