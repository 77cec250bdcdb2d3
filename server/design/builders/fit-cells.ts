/**
 * So many cells in a given size: the side with which they come out, or the widths that are left for a frame.
 *
 * Between the inner faces of its outer lines, a panel of m × n cells measures m·dc − tc along its first family and
 * n·dr − tr across it: d are the spacings of the two families that bound the cells and t their faces, c for the columns
 * and r for the rows. A sawn panel is measured over its outer lines: + t. Where the columns lean by θ, the panel stays a
 * rectangle: its upright edges run through nodes, m·dc/sin θ apart, and cut the cells there.
 */
import { cross, direction, type Point } from '../../geometry/point.ts';
import { arithmeticTolerance, sameAngle } from '../../geometry/tolerance.ts';
import type { FitNeighbour, Grid, GridFamily, PanelFit } from '../design-model.ts';

/** Cells across and up, and the size they are to come out in: inside the frame, over a sawn panel's strips, or over the frame. */
export interface FitWish {
  readonly across: number;
  readonly up: number;
  readonly width: number;
  readonly height: number;
  readonly edge: 'sawn' | 'framed';
}

/** The two families that bound cells and their angle. */
interface CellSides {
  readonly rows: GridFamily;
  readonly columns: GridFamily;
  readonly sine: number;
  /** Whether the columns lean and upright edges cut them, so that the panel is a rectangle all the same. */
  readonly isCut: boolean;
}

/** Null where no family crosses the first, or one has single lines. */
function cellSides({ families }: Grid): CellSides | null {
  const [rows] = families;
  const sineTo = (family: GridFamily): number =>
    rows ? Math.abs(cross(direction(rows.direction), direction(family.direction))) : 0;
  const columns = families.find((family) => sineTo(family) > 0);
  if (!rows || !columns || rows.positions || columns.positions) return null;
  const sine = sineTo(columns);
  return { rows, columns, sine, isCut: sine < 1 - arithmeticTolerance && sameAngle(rows.direction, 0) };
}

/** Size of so many cells of a grid, inside a frame or over a sawn panel. */
function sizeOfCells(cells: CellSides, { across, up, edge }: FitWish, growth: number) {
  const { rows, columns, sine } = cells;
  const sign = edge === 'sawn' ? 1 : -1;
  return {
    width: (across * columns.spacing * growth) / sine + sign * sideFace(cells),
    height: up * rows.spacing * growth + sign * rows.stock.face,
  };
}

/** What the outer lines at the sides take off the width; nothing where the edges cut the cells. */
const sideFace = ({ columns, sine, isCut }: CellSides): number => (isCut ? 0 : columns.stock.face / sine);

/** The rectangle of a panel whose columns lean, and where a node lies in it: in its lower left corner, on the middle of an outer line. */
function insideOf(cells: CellSides, wish: FitWish, growth: number): PanelFit['inside'] {
  if (!cells.isCut) return null;
  const { width, height } = sizeOfCells(cells, wish, growth);
  const node: Point = { x: -width / 2, y: (-wish.up * cells.rows.spacing * growth) / 2 };
  return { width, height, node };
}

/** Sides with which the cells come out across, and up. */
function sidesFor(grid: Grid, cells: CellSides, wish: FitWish): PanelFit['sides'] {
  const { rows, columns, sine } = cells;
  const sign = wish.edge === 'sawn' ? 1 : -1;
  return {
    across: ((wish.width - sign * sideFace(cells)) * sine * grid.side) / (wish.across * columns.spacing),
    up: ((wish.height - sign * rows.stock.face) * grid.side) / (wish.up * rows.spacing),
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

/** The widths of the frame's members that fill up the size round the grid as it is; null where the grid can't be sized. */
export function fitByFrame(grid: Grid, wish: FitWish): PanelFit | null {
  const cells = cellSides(grid);
  if (!cells) return null;
  const size = sizeOfCells(cells, wish, 1);
  return {
    by: 'frame',
    across: wish.across,
    up: wish.up,
    sides: { across: grid.side, up: grid.side },
    side: grid.side,
    leftOver: { across: 0, up: 0 },
    // sides that lean are measured square to them
    members: {
      sides: ((wish.width - size.width) / 2) * (cells.isCut ? 1 : cells.sine),
      rails: (wish.height - size.height) / 2,
    },
    inside: insideOf(cells, wish, 1),
    neighbours: neighboursOf(grid, cells, wish),
  };
}

/** The most cells of the grid as it is that leave a frame any width, and the largest side with which as many as wished do. */
export function largestFit(grid: Grid, wish: FitWish): { across: number; up: number; side: number } | null {
  const cells = cellSides(grid);
  if (!cells) return null;
  const { rows, columns, sine } = cells;
  const sides = sidesFor(grid, cells, wish);
  return {
    across: Math.ceil((wish.width * sine + columns.stock.face) / columns.spacing) - 1,
    up: Math.ceil((wish.height + rows.stock.face) / rows.spacing) - 1,
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
