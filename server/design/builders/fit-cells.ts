/**
 * So many cells in a given size: the side with which they come out, or the widths that are left for a frame.
 *
 * Between the inner faces of its outer lines, a panel of m × n cells measures m·dc − tc along its first family and
 * n·dr − tr across it: d are the spacings of the two families that bound the cells and t their faces, c for the columns
 * and r for the rows. A sawn panel is measured over its outer lines: + t. Where the columns lean by θ, the panel stays a
 * rectangle: its upright edges run through nodes, m·dc/sin θ apart, and cut the cells there. Where both families lean
 * alike, as those of a diamond grid, all four edges run through nodes: rhombi of side s whose strips rise by β are
 * 2s·cos β wide and 2s·sin β high.
 */
import { cross, direction, type Point } from '../../geometry/point.ts';
import { arithmeticTolerance, headingOf, sameAngle, sameLength } from '../../geometry/tolerance.ts';
import type { FitNeighbour, Grid, GridFamily, PanelFit } from '../design-model.ts';

/** Cells across and up, and the size they are to come out in: inside the frame, over a sawn panel's strips, or over the frame. */
export interface FitWish {
  readonly across: number;
  readonly up: number;
  readonly width: number;
  readonly height: number;
  readonly edge: 'sawn' | 'framed';
  /** Face of the strip that the frame is made of; nothing where none is stated. */
  readonly frameFace?: number;
}

/** What so many cells measure: a step for each, and what the faces of the outer lines take off, or (sawn) add. Lengths at the grid's own side. */
interface CellSides {
  readonly across: { readonly step: number; readonly face: number };
  readonly up: { readonly step: number; readonly face: number };
  /** Whether edges cut the cells, so that the panel is a rectangle whatever way its strips lean; then a node lies in its corner, or so far above it. */
  readonly isCut: boolean;
}

/** Null where no family crosses the first, where one has single lines, or where the cells lean and make no rectangle. */
function cellSides({ families, side }: Grid): CellSides | null {
  const [rows] = families;
  const sineTo = (family: GridFamily): number =>
    rows ? Math.abs(cross(direction(rows.direction), direction(family.direction))) : 0;
  const columns = families.find((family) => sineTo(family) > 0);
  if (!rows || !columns || rows.positions || columns.positions) return null;
  const sine = sineTo(columns);
  if (leanAlike(rows, columns)) {
    const along = direction(rows.direction);
    const step = (reach: number) => ({ step: 2 * side * Math.abs(reach), face: 0 });
    return { across: step(along.x), up: step(along.y), isCut: true };
  }
  const isSquare = sine >= 1 - arithmeticTolerance;
  if (!isSquare && headingOf(rows.direction) !== 0) return null;
  return {
    across: { step: columns.spacing / sine, face: isSquare ? columns.stock.face : 0 },
    up: { step: rows.spacing, face: rows.stock.face },
    isCut: !isSquare,
  };
}

/** Whether a grid's cells make no upright rectangle: its strips lean, and not alike to either side. */
export const leansAside = (grid: Grid): boolean =>
  cellSides(grid) === null && grid.families.every(({ positions }) => positions === null);

/** Whether two families lean from the level by one angle to either side, equally far apart. */
const leanAlike = (one: GridFamily, two: GridFamily): boolean =>
  headingOf(one.direction) !== 0 &&
  sameAngle(headingOf(one.direction) + headingOf(two.direction), 180) &&
  sameLength(one.spacing, two.spacing);

/** Size of so many cells of a grid, inside a frame or over a sawn panel. */
function sizeOfCells(cells: CellSides, { across, up, edge }: FitWish, growth: number) {
  const sign = edge === 'sawn' ? 1 : -1;
  return {
    width: across * cells.across.step * growth + sign * cells.across.face,
    height: up * cells.up.step * growth + sign * cells.up.face,
  };
}

/** The rectangle of a panel whose edges cut cells, and where a node lies in it: at its left edge, on the middle of an outer line. */
function insideOf(cells: CellSides, wish: FitWish, growth: number): PanelFit['inside'] {
  if (!cells.isCut) return null;
  const { width, height } = sizeOfCells(cells, wish, growth);
  const node: Point = { x: -width / 2, y: (-wish.up * cells.up.step * growth) / 2 };
  return { width, height, node };
}

/** Sides with which the cells come out across, and up. */
function sidesFor(grid: Grid, cells: CellSides, wish: FitWish): PanelFit['sides'] {
  const sign = wish.edge === 'sawn' ? 1 : -1;
  return {
    across: ((wish.width - sign * cells.across.face) * grid.side) / (wish.across * cells.across.step),
    up: ((wish.height - sign * cells.up.face) * grid.side) / (wish.up * cells.up.step),
  };
}

/** One cell more or less each way, the nearest to coming out both ways first. */
function neighboursOf(grid: Grid, sides: CellSides, wish: FitWish): FitNeighbour[] {
  const steps = [-1, 0, 1];
  return steps
    .flatMap((more) => steps.map((higher) => ({ across: wish.across + more, up: wish.up + higher })))
    .filter(({ across, up }) => across > 0 && up > 0 && (across !== wish.across || up !== wish.up))
    .map((count): FitNeighbour => ({ ...count, sides: sidesFor(grid, sides, { ...wish, ...count }) }))
    .sort((a, b) => mismatch(a) - mismatch(b));
}

const mismatch = ({ sides }: FitNeighbour): number => Math.abs(sides.across - sides.up);

/** The pitch that makes the cells fill the size, the smaller where the two ways differ; null where the grid can't be sized. */
export function fitByPitch(grid: Grid, wish: FitWish): PanelFit | null {
  const cells = cellSides(grid);
  if (!cells) return null;
  const sides = sidesFor(grid, cells, wish);
  const side = Math.min(sides.across, sides.up);
  const size = sizeOfCells(cells, wish, side / grid.side);
  return {
    by: 'pitch',
    across: wish.across,
    up: wish.up,
    sides,
    side,
    leftOver: { across: wish.width - size.width, up: wish.height - size.height },
    members: null,
    inside: insideOf(cells, wish, side / grid.side),
    neighbours: neighboursOf(grid, cells, wish),
  };
}

/**
 * The widths of the frame's members that fill up the size round the grid as it is; null where the grid can't be sized. The
 * counts beside come out inside a frame as wide as its strip, or as the narrower of the members where none is stated.
 */
export function fitByFrame(grid: Grid, wish: FitWish): PanelFit | null {
  const cells = cellSides(grid);
  if (!cells) return null;
  const size = sizeOfCells(cells, wish, 1);
  const members = { sides: (wish.width - size.width) / 2, rails: (wish.height - size.height) / 2 };
  const frame = wish.frameFace ?? Math.max(0, Math.min(members.sides, members.rails));
  return {
    by: 'frame',
    across: wish.across,
    up: wish.up,
    sides: { across: grid.side, up: grid.side },
    side: grid.side,
    leftOver: { across: 0, up: 0 },
    members,
    inside: insideOf(cells, wish, 1),
    neighbours: neighboursOf(grid, cells, {
      ...wish,
      width: wish.width - 2 * frame,
      height: wish.height - 2 * frame,
    }),
  };
}

/** The most cells of the grid as it is that leave a frame any width, and the largest side with which as many as wished do. */
export function largestFit(grid: Grid, wish: FitWish): { across: number; up: number; side: number } | null {
  const cells = cellSides(grid);
  if (!cells) return null;
  const sides = sidesFor(grid, cells, wish);
  return {
    across: Math.ceil((wish.width + cells.across.face) / cells.across.step) - 1,
    up: Math.ceil((wish.height + cells.up.face) / cells.up.step) - 1,
    side: Math.min(sides.across, sides.up),
  };
}

/** A grid of another size: every spacing in the same ratio, strips as they are. */
export function resizedGrid(grid: Grid, side: number): Grid {
  const growth = side / grid.side;
  return {
    ...grid,
    side,
    families: grid.families.map((family) => ({
      ...family,
      spacing: family.spacing * growth,
      offset: family.offset * growth,
      positions: family.positions?.map((position) => position * growth) ?? null,
    })),
    measured: grid.measured && { ...grid.measured, side: grid.measured.side * growth },
  };
}
