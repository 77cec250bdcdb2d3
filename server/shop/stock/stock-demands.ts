/** What is to be cut from sticks for a plan: every strip, and every rough piece of infill with what is pared off it. Lengths mm. */
import type { Design } from '../../design/design.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { bandDemands } from '../bands/band-demands.ts';
import { sum } from '../../geometry/numbers.ts';
import { keysOf } from '../jigs/key-share.ts';
import type { MarkedHinge, MarkedKinds, MarkedPiece } from '../marks/marked-kinds.ts';
import { frameDemands } from '../sections/plan-frames.ts';
import type { StockDemand } from './cut-every-stock.ts';

/** What is known of a design when its sticks are cut. */
export interface CutDesign {
  readonly design: Design;
  readonly kinds: MarkedKinds;
  readonly panels: readonly LaidPanel[];
}

/** Everything of a design that is cut from sticks: strips, rough pieces of infill, the members of frames and what fills their grooves, and bands. */
export const cuttingDemands = (cut: CutDesign, trim: number): StockDemand[] => [
  ...stockDemands(cut.kinds, trim),
  ...otherDemands(cut),
];

/** What is neither strip nor infill. */
export const otherDemands = ({ design, kinds, panels }: CutDesign): StockDemand[] => [
  ...frameDemands(panels, kinds),
  ...bandDemands(design),
];

/** `trim` is what a rough piece of infill is longer than the finished one at each end. */
export const stockDemands = ({ strips, pieces, hinges }: MarkedKinds, trim: number): StockDemand[] => [
  ...strips.flatMap(({ mark, groups, total }) =>
    groups.slice(0, 1).map(({ group: { stock, length } }) => ({ stock, mark, lengthMm: length, total })),
  ),
  ...pieces.flatMap((piece) => roughPiecesOf(piece, halvesOf(piece, hinges), trim)),
  ...hinges.map(({ halves: [first, second], make }) => ({
    stock: first.shape.stock,
    mark: `${first.mark}+${second.mark}`,
    lengthMm: first.shape.length + second.shape.length + 2 * trim,
    total: make,
  })),
];

/** How many of a mark are halves of hinges: those are cut with their other half. */
const halvesOf = (piece: MarkedPiece, hinges: readonly MarkedHinge[]): number =>
  sum(hinges.map(({ halves, make }) => make * halves.filter((half) => half === piece).length));

/** Rough pieces of single pieces. Keys are cut longer than the other pieces of their mark, and are never halves of a hinge. */
function roughPiecesOf(piece: MarkedPiece, halves: number, trim: number): StockDemand[] {
  const { stock, length } = piece.shape;
  const { pieces: asked, longer } = keysOf(piece);
  const keys = Math.min(asked, piece.total - halves);
  const rough = { stock, mark: piece.mark, lengthMm: length + 2 * trim };
  if (longer === 0) return halves < piece.total ? [{ ...rough, total: piece.total - halves }] : [];
  return [
    { ...rough, total: piece.total - keys - halves },
    { ...rough, lengthMm: rough.lengthMm + longer, total: keys },
  ].filter(({ total }) => total > 0);
}
