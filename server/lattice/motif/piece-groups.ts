/** The infill of a panel: each motif computed once for each class of cell, and clipped only where the outline passes. */
import type { Panel, PanelFill } from '../../design/design-model.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { append, sum } from '../../geometry/numbers.ts';
import { add, direction, origin, type Point, subtract, turned } from '../../geometry/point.ts';
import {
  areaOf,
  boundsOf,
  intersectionOf,
  isConvexRing,
  signedArea,
  withoutIdlePoints,
} from '../../geometry/polygons.ts';
import { areaTolerance } from '../../geometry/tolerance.ts';
import { type CellClass, cornersFromLowest } from '../cells/cell-classes.ts';
import { type CellChange, pieceChanges } from '../cells/cell-changes.ts';
import type { ClassNumbers } from '../cells/cell-numbers.ts';
import { type BoundaryCell, isCutCell } from '../cells/class-scan.ts';
import { settled } from './cut-piece.ts';
import { doesNotTurn, unusedFills } from '../checks/fill-problems.ts';
import { type RaisedProblem, raisedAt } from '../checks/raised-problem.ts';
import { type FilledPiece, fillOpening } from './fill-opening.ts';
import { hingeGroups } from './hinge-groups.ts';
import type {
  CellCount,
  HingeGroup,
  LaidCell,
  NotchRun,
  PieceFate,
  PieceGroup,
  Placement,
  Polygon,
  Sliver,
  PerTenth,
} from '../laid-panel.ts';
import { flippedRuns, placesOfRun } from '../strips/notch-runs.ts';
import type { PanelCells } from '../cells/panel-cells.ts';
import { endsOfOutline } from './piece-shape.ts';
import { placementInCell } from './placement-in-cell.ts';
import { countMembers, type LatticeMember, memberPlace, membersOf } from '../grid/scan-lattice.ts';
import { sliverOf } from '../checks/slivers.ts';
import { cellFacts, type CellShare, shareCells } from '../cells/share-cells.ts';

export interface PanelInfill {
  readonly groups: readonly PieceGroup[];
  readonly hinges: readonly HingeGroup[];
  readonly cells: readonly CellCount[];
  readonly filledCells: () => Iterable<LaidCell>;
  readonly slivers: readonly Sliver[];
  readonly problems: readonly RaisedProblem[];
}

/** `ruled` are the cells that the conditions of the fills count: those of the panel itself, or of the one it stands for. */
export function panelInfill(cells: PanelCells, ruled = cells): PanelInfill {
  const { panel } = cells;
  const { facts, problems } = cellFacts(cells, ruled);
  const shares = cells.scans.flatMap((scan, index) => {
    const numbers = ruled.numbers[index];
    const change = cells.changes[index] ?? null;
    return numbers ? shareCells(index, facts).map((share) => ({ share, numbers, change, cell: scan.cell })) : [];
  });
  const filled = shares.map((each) => ({ shape: each.cell.shape, ...fillShare(cells, each) }));
  const shapes = [...new Set(cells.scans.map(({ cell }) => cell.shape))];
  return {
    groups: filled.flatMap(({ groups }) => groups),
    hinges: filled.flatMap(({ hinges }) => hinges),
    cells: shapes.map((shape): CellCount => {
      const scans = cells.scans.filter(({ cell }) => cell.shape === shape);
      const met = sum(scans.map(({ inside, boundary }) => countMembers(inside) + boundary.length));
      return { shape, met, needed: sum(filled.filter((each) => each.shape === shape).map(({ needed }) => needed)) };
    }),
    filledCells: function* () {
      for (const { filledCells } of filled) yield* filledCells();
    },
    slivers: filled.flatMap(({ slivers }) => slivers),
    problems: [
      ...raisedAt(panel, problems),
      ...filled.flatMap((each) => each.problems),
      ...raisedAt(
        panel,
        unusedFills(
          cells,
          shares.map(({ share }) => share),
        ),
      ),
    ],
  };
}

interface ClassShare {
  readonly share: CellShare;
  readonly numbers: ClassNumbers;
  readonly change: CellChange | null;
  readonly cell: CellClass;
}

interface FilledShare {
  readonly groups: readonly PieceGroup[];
  readonly hinges: readonly HingeGroup[];
  readonly needed: number;
  readonly filledCells: () => Iterable<LaidCell>;
  readonly slivers: readonly Sliver[];
  readonly problems: readonly RaisedProblem[];
}

const nothing: FilledShare = { groups: [], hinges: [], needed: 0, filledCells: () => [], slivers: [], problems: [] };

function fillShare(cells: PanelCells, classShare: ClassShare): FilledShare {
  const { panel } = cells;
  const { share, change, cell } = classShare;
  const { fill, inside, boundary } = share;
  const count = countMembers(inside);
  if (count + boundary.length === 0) return nothing;
  const place = placementInCell(cell, fill);
  if (!place) return { ...nothing, problems: raisedAt(panel, [doesNotTurn(panel, fill)], fill) };
  const { pieces, problems } = fillOpening(cell.frame, fill.motif, fill.stock, fill.tips);
  const isCut = (each: BoundaryCell): boolean => isCutCell(cell, each);
  const keepsMotif = panel.edge === 'sawn' || panel.cutCells === 'trim';
  const clipped = keepsMotif ? boundary : boundary.filter((each) => !isCut(each));
  const changes = pieceChanges(pieces, change, fill);
  const placed = pieces.map((piece, index): ChangingPiece => ({ ...place(piece), perTenth: changes[index] ?? null }));
  const { groups, neededAt, madeAt, slivers } = placePieces(cells, classShare, placed, clipped);
  const own =
    keepsMotif || panel.cutCells === 'open' ? [] : boundary.filter(isCut).flatMap((each) => ownFill(cell, each, fill));
  for (const { move } of own) neededAt.add(move);
  return {
    groups: [...groups, ...own.map(({ group }) => group)],
    hinges: hingeGroups(placed, count, madeAt),
    needed: pieces.length > 0 ? count + neededAt.size : 0,
    filledCells: () => (pieces.length > 0 ? laidCells(cells, classShare, neededAt) : []),
    slivers,
    problems: raisedAt(panel, [...problems, ...own.flatMap((each) => each.problems)], fill),
  };
}

/** The pieces of a motif in every cell of a class's share, and in which of the boundary cells each is made. */
function placePieces(
  { panel, period }: PanelCells,
  { share: { fill, inside }, numbers }: ClassShare,
  placed: readonly ChangingPiece[],
  clipped: readonly BoundaryCell[],
) {
  const count = countMembers(inside);
  const insideMoves = function* (): Generator<Point> {
    for (const member of membersOf(inside)) yield memberPlace(origin, period, member);
  };
  const neededAt = new Set<Point>();
  const madeAt = new Map<FilledPiece, Set<Point>>();
  const slivers: Sliver[] = [];
  const groups = placed.flatMap((piece) =>
    groupsOfPiece(
      panel,
      fill,
      piece,
      { count, moves: insideMoves },
      clipped,
      ({ move, member }, trimmedTo, isFitted) => {
        neededAt.add(move);
        if (!isFitted) madeAt.set(piece, (madeAt.get(piece) ?? new Set()).add(move));
        const inRows = { row: numbers.rowOf(member.row), column: numbers.columnOf(member) };
        const sliver = trimmedTo && sliverOf(piece, trimmedTo, panel.sliver, inRows);
        if (sliver) slivers.push(sliver);
      },
    ),
  );
  return { groups, neededAt, madeAt, slivers };
}

/** Every cell of a class's share in which a piece is made. */
function* laidCells(
  { period }: PanelCells,
  { share: { fill, inside, boundary }, numbers, cell }: ClassShare,
  neededAt: ReadonlySet<Point>,
): Generator<LaidCell> {
  const cellAt = (member: LatticeMember, isInside: boolean): LaidCell => ({
    row: numbers.rowOf(member.row),
    column: numbers.columnOf(member),
    shape: cell.shape,
    motif: fill.motif.name,
    fill,
    turned: fill.turned,
    mirrored: fill.mirrored,
    opening: cell.opening.map((corner) => add(corner, memberPlace(origin, period, member))),
    inside: isInside,
  });
  for (const member of membersOf(inside)) yield cellAt(member, true);
  for (const each of boundary) if (neededAt.has(each.move)) yield cellAt(each.member, !isCutCell(cell, each));
}

interface OwnPiece {
  readonly move: Point;
  readonly group: PieceGroup;
  readonly problems: readonly Problem[];
}

/**
 * The motif set anew into what the frame leaves of a cell, where that is straight-sided, without hollows and has
 * as many corners as the motif's cell; else nothing. Corner 1 is the lowest, then leftmost.
 */
function ownFill(cell: CellClass, { move, rings }: BoundaryCell, fill: PanelFill): OwnPiece[] {
  const opening = cell.opening.map((corner) => add(corner, move));
  const [part, ...others] = intersectionOf([opening], rings).map(withoutIdlePoints);
  if (!part || others.length > 0 || part.length !== cell.opening.length || !isConvexRing(part)) return [];
  const { pieces, problems } = fillOpening(cornersFromLowest(part), fill.motif, fill.stock, fill.tips);
  return pieces.map((piece) => ({
    move,
    problems,
    group: groupOf({ ...piece, perTenth: null }, fill, 'trimmed', 1, () => [piece.placement]),
  }));
}

interface ChangingPiece extends FilledPiece {
  readonly perTenth: PerTenth | null;
}

interface InsideMoves {
  readonly count: number;
  readonly moves: () => Iterable<Point>;
}

/**
 * One piece of a motif over all cells of a class: whole pieces in one group, trimmed ones in another, fitted ones each by
 * shape. `note` is told of every boundary cell that needs it, with what a sawn edge leaves of it, and whether a frame
 * leaves only part of it.
 */
function groupsOfPiece(
  panel: Panel,
  fill: PanelFill,
  piece: ChangingPiece,
  inside: InsideMoves,
  boundary: readonly BoundaryCell[],
  note: (cell: BoundaryCell, trimmedTo: readonly Polygon[] | null, isFitted: boolean) => void,
): PieceGroup[] {
  const full = signedArea(piece.ground);
  const whole: Point[] = [];
  const trimmed: Point[] = [];
  const fitted: PieceGroup[] = [];
  boundary.forEach((cell) => {
    const { move, rings } = cell;
    const ground = piece.ground.map((point) => add(point, move));
    const kept = intersectionOf([ground], rings);
    const keptArea = areaOf(kept);
    if (keptArea <= areaTolerance) return;
    const isWhole = full - keptArea <= areaTolerance;
    const isFitted = !isWhole && panel.edge === 'framed';
    note(cell, isWhole || isFitted ? null : kept, isFitted);
    if (isWhole) whole.push(move);
    else if (panel.edge === 'sawn') trimmed.push(move);
    else append(fitted, fittedPieces(piece, fill, kept, move));
  });
  const group = (fate: PieceFate, count: number, moves: () => Iterable<Point>): PieceGroup =>
    groupOf(piece, fill, fate, count, () => movedPlacements(piece.placement, moves()));
  const wholeMoves = function* (): Generator<Point> {
    yield* inside.moves();
    yield* whole;
  };
  return [
    ...(inside.count + whole.length > 0 ? [group('whole', inside.count + whole.length, wholeMoves)] : []),
    ...(trimmed.length > 0 ? [group('trimmed', trimmed.length, () => trimmed)] : []),
    ...fitted,
  ];
}

/** Pieces like `piece`, wherever its placements are. */
const groupOf = (
  { motif, role, shape, outline, words, perTenth }: ChangingPiece,
  fill: PanelFill,
  fate: PieceFate,
  count: number,
  placements: PieceGroup['placements'],
): PieceGroup => ({ fill, motif, role, shape, outline, fate, count, perTenth, range: words, placements });

function* movedPlacements({ at, turn }: Placement, moves: Iterable<Point>): Generator<Placement> {
  for (const move of moves) yield { at: add(at, move), turn };
}

/** What a frame leaves of a piece: each part is a piece of its own, made to its outline. */
function fittedPieces(piece: FilledPiece, fill: PanelFill, kept: readonly Polygon[], move: Point): PieceGroup[] {
  const along = direction(piece.placement.turn);
  const anchor = add(piece.placement.at, move);
  return kept
    .map((ring) => withoutIdlePoints(ring))
    .filter((ring) => ring.length >= 3 && signedArea(ring) > areaTolerance)
    .map((ring): PieceGroup => {
      const own = ring.map((point) => turned(subtract(point, anchor), -piece.placement.turn));
      const ends = endsOfOutline(own, fill.stock.face);
      const { left, right } = boundsOf(own);
      const notches = notchesOnGround(piece).filter(({ first }) => first > left && first < right);
      const { shape, outline, placement } = settled(ring, anchor, along, fill.stock, ends, notches);
      return groupOf({ ...piece, shape, outline, perTenth: null }, fill, 'trimmed', 1, () => [placement]);
    });
}

/** A piece's notches as it lies, each by itself, measured from its placement. */
const notchesOnGround = ({ shape, flipped }: FilledPiece): NotchRun[] =>
  (flipped ? flippedRuns(shape.notches) : shape.notches).flatMap((run) =>
    placesOfRun(run).map((first) => ({ ...run, first, step: 0, count: 1 })),
  );
