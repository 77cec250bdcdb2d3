/** The infill of a panel: each motif computed once for each class of cell, and clipped only where the outline passes. */
import type { Panel, PanelFill } from '../design/design-model.ts';
import type { Problem } from '../../grammar/problem.ts';
import { problemAt } from '../../grammar/problem-catalogue.ts';
import { sum } from '../geometry/numbers.ts';
import { add, direction, distance, type Point, subtract, turned } from '../geometry/point.ts';
import { areaOf, boundsOf, intersectionOf, isConvexRing, signedArea, withoutIdlePoints } from '../geometry/polygons.ts';
import { localRings, type Region } from '../geometry/region.ts';
import { areaTolerance } from '../geometry/tolerance.ts';
import { type CellClass, centroidOf, cornersFromLowest, turnOntoItself } from './cell-classes.ts';
import { settled } from './cut-piece.ts';
import { type FilledPiece, fillOpening } from './fill-opening.ts';
import type { Period } from './grid-lines.ts';
import type { CellCount, NotchRun, PieceFate, PieceGroup, Placement, Polygon, UnnumberedCell } from './laid-panel.ts';
import { flippedRuns, placesOfRun } from './notch-runs.ts';
import { endsOfOutline } from './piece-shape.ts';
import { countInside, type LatticeScan, memberPlace, placesInside, scanLattice } from './scan-lattice.ts';

export interface PanelInfill {
  readonly groups: readonly PieceGroup[];
  readonly cells: readonly CellCount[];
  readonly filledCells: () => Iterable<UnnumberedCell>;
  readonly problems: readonly Problem[];
}

/** Moves one whole cell by the lattice: the zero move is the class's own cell. */
interface ClassScan {
  readonly cell: CellClass;
  readonly scan: LatticeScan;
  /** Moves of boundary cells, each with the region's rings near it and the area of opening inside. */
  readonly boundary: readonly BoundaryCell[];
}

interface BoundaryCell {
  readonly move: Point;
  readonly rings: readonly Polygon[];
  readonly openArea: number;
}

export function panelInfill(panel: Panel, classes: readonly CellClass[], period: Period, region: Region): PanelInfill {
  const scanned = classes.map((cell) => scanClass(cell, period, region));
  const filled = scanned.map((each) => fillClass(panel, each, period));
  const shapes = [...new Set(classes.map(({ shape }) => shape))];
  const cells = shapes.map((shape): CellCount => {
    const of = filled.filter((each) => each.shape === shape);
    return { shape, met: sum(of.map(({ met }) => met)), needed: sum(of.map(({ needed }) => needed)) };
  });
  return {
    groups: filled.flatMap(({ groups }) => groups),
    cells,
    filledCells: function* () {
      for (const { filledCells } of filled) yield* filledCells();
    },
    problems: [...filled.flatMap(({ problems }) => problems), ...unusedFills(panel, classes)],
  };
}

const nowhere: Point = { x: 0, y: 0 };

function scanClass(cell: CellClass, period: Period, region: Region): ClassScan {
  const middle = centroidOf(cell.opening);
  const radius = Math.max(...cell.opening.map((corner) => distance(corner, middle)));
  const scan = scanLattice(region, middle, period, radius);
  const boundary = scan.boundary
    .map((member) => {
      const move = memberPlace(nowhere, period, member);
      const opening = cell.opening.map((corner) => add(corner, move));
      const rings = localRings(region, boundsOf(opening));
      return { move, rings, openArea: areaOf(intersectionOf([opening], rings)) };
    })
    .filter(({ openArea }) => openArea > areaTolerance);
  return { cell, scan, boundary };
}

interface FilledClass {
  readonly shape: CellClass['shape'];
  readonly groups: readonly PieceGroup[];
  readonly met: number;
  readonly needed: number;
  readonly filledCells: () => Iterable<UnnumberedCell>;
  readonly problems: readonly Problem[];
}

const noCells = (): Iterable<UnnumberedCell> => [];

function fillClass(panel: Panel, { cell, scan, boundary }: ClassScan, period: Period): FilledClass {
  const met = countInside(scan) + boundary.length;
  const fill = panel.fills.find(({ shape }) => shape === cell.shape);
  if (!fill || met === 0) return { shape: cell.shape, groups: [], met, needed: 0, filledCells: noCells, problems: [] };
  const turn = turnOntoItself(cell.frame, fill.turned);
  if (turn === null) {
    const message = `A ${cell.shape} of grid ${panel.grid.name} does not come back onto itself when turned ${fill.turned} corners; choose another turn.`;
    return {
      shape: cell.shape,
      groups: [],
      met,
      needed: 0,
      filledCells: noCells,
      problems: [problemAt('motifDoesNotFitCell', fill.range, message)],
    };
  }
  const { pieces, problems } = fillOpening(cell.frame, fill.motif, fill.stock, fill.tips);
  const fullArea = areaOf([cell.opening]);
  const isCut = ({ openArea }: BoundaryCell): boolean => fullArea - openArea > areaTolerance;
  const keepsMotif = panel.edge === 'sawn' || panel.cutCells === 'trim';
  const clipped = keepsMotif ? boundary : boundary.filter((each) => !isCut(each));
  const middle = centroidOf(cell.frame);
  const onPanel = (point: Point): Point => turned(add(turned(subtract(point, middle), turn), middle), -cell.frameTurn);
  const inCell = pieces.map((piece) => placedInCell(piece, onPanel, turn - cell.frameTurn));
  const insideMoves = (): Iterable<Point> => placesInside(scan, nowhere, period);
  const neededAt = new Set<Point>();
  const groups = inCell.flatMap((piece) =>
    groupsOfPiece(panel, fill, piece, { count: countInside(scan), moves: insideMoves }, clipped, (move) =>
      neededAt.add(move),
    ),
  );
  const own =
    keepsMotif || panel.cutCells === 'open' ? [] : boundary.filter(isCut).flatMap((each) => ownFill(cell, each, fill));
  for (const { move } of own) neededAt.add(move);
  const needed = pieces.length > 0 ? countInside(scan) + neededAt.size : 0;
  const cellAt = (move: Point, inside: boolean): UnnumberedCell => ({
    shape: cell.shape,
    motif: fill.motif.name,
    turned: fill.turned,
    opening: cell.opening.map((corner) => add(corner, move)),
    inside,
  });
  const filledCells = function* (): Generator<UnnumberedCell> {
    if (pieces.length === 0) return;
    for (const move of insideMoves()) yield cellAt(move, true);
    for (const each of boundary) if (neededAt.has(each.move)) yield cellAt(each.move, !isCut(each));
  };
  const all = {
    groups: [...groups, ...own.map(({ group }) => group)],
    problems: [...problems, ...own.flatMap((each) => each.problems)],
  };
  return { shape: cell.shape, met, needed, filledCells, ...all };
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
    group: groupOf(piece, 'trimmed', 1, () => [piece.placement]),
  }));
}

function placedInCell(piece: FilledPiece, onPanel: (point: Point) => Point, turn: number): FilledPiece {
  const placement = { at: onPanel(piece.placement.at), turn: (((piece.placement.turn + turn) % 360) + 360) % 360 };
  return { ...piece, placement, ground: piece.ground.map(onPanel) };
}

interface InsideMoves {
  readonly count: number;
  readonly moves: () => Iterable<Point>;
}

/** One piece of a motif over all cells of a class: whole pieces in one group, trimmed ones in another, fitted ones each by shape. */
function groupsOfPiece(
  panel: Panel,
  fill: PanelFill,
  piece: FilledPiece,
  inside: InsideMoves,
  boundary: ClassScan['boundary'],
  markNeeded: (move: Point) => void,
): PieceGroup[] {
  const full = signedArea(piece.ground);
  const whole: Point[] = [];
  const trimmed: Point[] = [];
  const fitted: PieceGroup[] = [];
  boundary.forEach(({ move, rings }) => {
    const ground = piece.ground.map((point) => add(point, move));
    const kept = intersectionOf([ground], rings);
    const keptArea = areaOf(kept);
    if (keptArea <= areaTolerance) return;
    markNeeded(move);
    if (full - keptArea <= areaTolerance) whole.push(move);
    else if (panel.edge === 'sawn') trimmed.push(move);
    else fitted.push(...fittedPieces(piece, fill, kept, move));
  });
  const group = (fate: PieceFate, count: number, moves: () => Iterable<Point>): PieceGroup =>
    groupOf(piece, fate, count, () => movedPlacements(piece.placement, moves()));
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
  { motif, role, shape, outline, words }: FilledPiece,
  fate: PieceFate,
  count: number,
  placements: PieceGroup['placements'],
): PieceGroup => ({ motif, role, shape, outline, fate, count, range: words, placements });

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
      return groupOf({ ...piece, shape, outline }, 'trimmed', 1, () => [placement]);
    });
}

/** A piece's notches as it lies, each by itself, measured from its placement. */
const notchesOnGround = ({ shape, flipped }: FilledPiece): NotchRun[] =>
  (flipped ? flippedRuns(shape.notches) : shape.notches).flatMap((run) =>
    placesOfRun(run).map((first) => ({ ...run, first, step: 0, count: 1 })),
  );

function unusedFills(panel: Panel, classes: readonly CellClass[]): Problem[] {
  const made = [...new Set(classes.map(({ shape }) => shape))].join(', ');
  return panel.fills
    .filter(({ shape }) => !classes.some((cell) => cell.shape === shape))
    .map(({ shape, range }) => {
      const message = `Grid ${panel.grid.name} makes no ${shape} cells, only ${made}; fill one of those.`;
      return problemAt('nothingToFill', range, message);
    });
}
