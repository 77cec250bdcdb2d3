/** A blank and its cut-outs as something laid out: strips over its full size, and each infill piece that meets a cut-out once. */
import { defaultTail } from '../../design/builders/build-panel.ts';
import type { Panel } from '../../design/design-model.ts';
import type { Blank } from '../../design/work-model.ts';
import { type GridMove, movedPoint } from '../../lattice/grid/grid-symmetries.ts';
import type { HingeGroup, LaidPanel, PieceGroup, Placement } from '../../lattice/laid-panel.ts';
import { layOutPanel } from '../../lattice/lay-out-panel.ts';
import { placeKey } from './cell-clash.ts';
import type { FilledBlank } from './cut-out.ts';
import { type FilledCell, middleAlong, type PanelCutOut } from './cut-out-of-panel.ts';

/** The lattice of a blank, as a sawn panel without infill. */
export function panelOfBlank({ name, range, nameRange, grid, width, height }: Blank): Panel {
  return {
    name,
    range,
    nameRange,
    grid,
    phase: { kind: 'centred', on: 'node' },
    shape: { kind: 'rectangle', width, height, range: nameRange },
    edge: 'sawn',
    stub: 0,
    tail: defaultTail,
    fills: [],
    map: null,
    cutCells: 'trim',
    fit: null,
    frame: null,
    meets: [],
    sliver: null,
    copies: 1,
  };
}

/** A blank filled with cut-outs; its quantity is the number of blanks filled so. Null where its strips cannot be laid out. */
export function layOutBlank(blank: Blank, cutOuts: readonly PanelCutOut[], filled: FilledBlank): LaidPanel | null {
  const { panel: bare } = layOutPanel(panelOfBlank(blank));
  if (!bare) return null;
  const taken = new Map<string, TakenPiece>();
  const cells = new Map<string, PlacedCell>();
  for (const { cutOut, move } of filled.places) {
    const panelCutOut = cutOuts.find((each) => each === cutOut);
    for (const cell of panelCutOut?.cells ?? []) cells.set(placeKey(movedPoint(cell.middle, move)), { cell, move });
    if (panelCutOut) for (const piece of placedPieces(panelCutOut, move)) takePiece(taken, piece);
  }
  const neededOf = (shape: string): number => [...cells.values()].filter(({ cell }) => cell.shape === shape).length;
  const held = cutOuts.filter((cutOut) => filled.places.some((place) => place.cutOut === cutOut));
  return {
    ...bare,
    // The motifs of its pieces, whose order of fitting says which are keys.
    panel: { ...bare.panel, fills: held.flatMap(({ panel }) => panel.fills) },
    quantity: filled.count,
    cells: bare.cells.map((count) => ({ ...count, needed: neededOf(count.shape) })),
    pieces: groupsOf([...taken.values()]),
    hinges: [...cells.values()].flatMap((placed) => hingesMade(placed, taken)),
  };
}

/** A cell that some cut-out meets. Cut-outs share one only where both fill it alike, so that any of them tells its hinges. */
interface PlacedCell {
  readonly cell: FilledCell;
  readonly move: GridMove;
}

/** Whichever cut-outs ask for its halves: a hinge is made where both are. */
const hingesMade = ({ cell, move }: PlacedCell, taken: ReadonlyMap<string, TakenPiece>): HingeGroup[] =>
  cell.hinges.flatMap(({ hinge, middles }) =>
    middles.every((middle) => taken.has(placeKey(movedPoint(middle, move)))) ? [hinge] : [],
  );

/** A piece in the blank, by where its middle lies. */
export interface TakenPiece {
  readonly group: PieceGroup;
  readonly mirrored: boolean;
  readonly placement: Placement;
}

/** Every piece of a cut-out as it lies in the blank; its key says where its middle lies. */
export function placedPieces(
  { laid }: PanelCutOut,
  move: GridMove,
): { readonly key: string; readonly piece: TakenPiece }[] {
  const { turn, mirrored } = move;
  return laid.pieces.flatMap((group) =>
    [...group.placements()].map((placement) => {
      const at = movedPoint(placement.at, move);
      const placed = { at, turn: turn + (mirrored ? -placement.turn : placement.turn) };
      return {
        key: placeKey(movedPoint(middleAlong({ placement, shape: group.shape }), move)),
        piece: { group, mirrored, placement: placed },
      };
    }),
  );
}

/** A piece that two cut-outs share is made once; it counts as trimmed where either of them cuts it. */
function takePiece(
  taken: Map<string, TakenPiece>,
  { key, piece }: { readonly key: string; readonly piece: TakenPiece },
): void {
  const known = taken.get(key);
  if (known && (known.group.fate === 'trimmed' || piece.group.fate === 'whole')) return;
  taken.set(key, piece);
}

/** Pieces of one group and side together. A piece seen from the back is the same piece turned over. */
function groupsOf(pieces: readonly TakenPiece[]): PieceGroup[] {
  const bySide = new Map<PieceGroup, readonly [TakenPiece[], TakenPiece[]]>();
  for (const piece of pieces) {
    const sides = bySide.get(piece.group) ?? [[], []];
    sides[piece.mirrored ? 1 : 0].push(piece);
    bySide.set(piece.group, sides);
  }
  return [...bySide].flatMap(([group, sides]) =>
    sides.flatMap((members, mirrored) => (members.length > 0 ? [groupOf(group, mirrored === 1, members)] : [])),
  );
}

const groupOf = (group: PieceGroup, mirrored: boolean, members: readonly TakenPiece[]): PieceGroup => ({
  ...group,
  outline: mirrored ? group.outline.map(({ x, y }) => ({ x, y: -y })).reverse() : group.outline,
  count: members.length,
  placements: () => members.map(({ placement }) => placement),
});
