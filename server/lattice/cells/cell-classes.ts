/** The cells of one period of a grid: their openings, shapes and corner numbers. Every other cell is one of these, moved. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import type { CellShape } from '../../design/design-model.ts';
import { angleOf, cross, distance, dot, type Point, scale, subtract, turned } from '../../geometry/point.ts';
import {
  type Bounds,
  boundsMeet,
  boundsOf,
  centroidOf,
  clipToHalfPlanes,
  grownBounds,
  type HalfPlane,
  ringOfBounds,
  signedArea,
  withoutIdlePoints,
} from '../../geometry/polygons.ts';
import {
  areaTolerance,
  clippingMargin,
  directionTolerance,
  isZeroLength,
  placeTolerance,
  sameAngle,
} from '../../geometry/tolerance.ts';
import { cellReach, crossingPair, type LineFamily, lineOffset, meetingPoint, spaceAt } from '../grid/grid-lines.ts';
import type { Period } from '../grid/grid-period.ts';

/**
 * One cell of the period. `opening` is the clear polygon inside the strips' faces on the panel, its
 * corners numbered from 1 in order. `frame` is the same opening as its motif sees it, turned by
 * `frameTurn` about the origin: the grid's turn taken out, and a downward cell turned upward.
 */
export interface CellClass {
  readonly opening: readonly Point[];
  readonly frame: readonly Point[];
  readonly frameTurn: number;
  readonly shape: CellShape | 'other';
}

/** Classes with room inside the strips; `closed` counts the cells that the strips fill entirely. */
export interface CellClasses {
  readonly classes: readonly CellClass[];
  readonly closed: number;
}

/** The cells of one period or, of a grid that has none, every cell that may meet some bounds. */
export function cellClasses(families: readonly LineFamily[], stretch: Period | Bounds, gridTurn: number): CellClasses {
  const cells = 'first' in stretch ? cellsOfPeriod(families, stretch) : cellsAround(families, stretch);
  const classes: CellClass[] = [];
  let closed = 0;
  for (const { outer, faces, isOpenEnded } of cells) {
    const opening = withoutIdlePoints(clipToHalfPlanes(outer, faces));
    if (opening.length < 3 || signedArea(opening) <= areaTolerance) closed++;
    else classes.push(classOf(opening, gridTurn, isOpenEnded));
  }
  return { classes, closed };
}

function cellsOfPeriod(families: readonly LineFamily[], period: Period): CellBetweenLines[] {
  const pair = crossingPair(families);
  if (!pair) return [];
  const { base, other, rest } = pair;
  const steps = (lines: LineFamily, move: Point): number =>
    Math.round(Math.abs(dot(lines.normal, move)) / lines.spacing);
  const numbers = (count: number): number[] => Array.from({ length: count }, (_, index) => index);
  return numbers(steps(base, period.second)).flatMap((baseIndex) =>
    numbers(steps(other, period.first)).flatMap((otherIndex) => {
      const faces = [...facesOf(base, baseIndex), ...facesOf(other, otherIndex)];
      const outer = parallelogram(base, baseIndex, other, otherIndex);
      return cutByLines([{ outer, faces, isOpenEnded: false }], rest);
    }),
  );
}

/** Cells cut out of a box so wide that what its edges cut short lies outside `bounds`, or has no line on that side at all. */
function cellsAround(families: readonly LineFamily[], bounds: Bounds): CellBetweenLines[] {
  const box = grownBounds(bounds, cellReach(families) + clippingMargin);
  const outer = ringOfBounds(box);
  return cutByLines([{ outer, faces: [], isOpenEnded: false }], families)
    .filter((cell) => boundsMeet(boundsOf(cell.outer), bounds))
    .map((cell) => (cell.outer.some((corner) => isOnEdge(corner, box)) ? beyondBox(cell) : cell));
}

/** A cell that reaches out of its box: without end, or ended by lines that meet farther out. */
function beyondBox(cell: CellBetweenLines): CellBetweenLines {
  if (!areBounding(cell.faces)) return { ...cell, isOpenEnded: true };
  const corners = meetingsOf(cell.faces);
  return { ...cell, outer: ringOfBounds(grownBounds(boundsOf(corners), clippingMargin)) };
}

/** Whether half-planes leave nothing that goes on for ever: their normals point all round. */
function areBounding(sides: readonly HalfPlane[]): boolean {
  const angles = sides.map(({ normal }) => angleOf(normal)).sort((a, b) => a - b);
  return angles.every((angle, index) => {
    const next = angles[index + 1] ?? (angles[0] ?? angle) + 360;
    return next - angle < 180 - directionTolerance;
  });
}

/** Where the edges of half-planes meet, every two of them. */
const meetingsOf = (sides: readonly HalfPlane[]): Point[] =>
  sides.flatMap((one, index) =>
    sides.slice(index + 1).flatMap((two): Point[] => {
      const across = cross(one.normal, two.normal);
      if (Math.abs(across) <= directionTolerance) return [];
      const x = (one.reach * two.normal.y - two.reach * one.normal.y) / across;
      return [{ x, y: (one.normal.x * two.reach - two.normal.x * one.reach) / across }];
    }),
  );

const isOnEdge = ({ x, y }: Point, { left, bottom, right, top }: Bounds): boolean =>
  [x - left, x - right, y - bottom, y - top].some(isZeroLength);

interface CellBetweenLines {
  readonly outer: readonly Point[];
  /** The inner sides of the strips all round. */
  readonly faces: readonly HalfPlane[];
  /** Whether no line ends it on some side. */
  readonly isOpenEnded: boolean;
}

/** The cells into which the lines of all families cut `cells`. */
const cutByLines = (cells: CellBetweenLines[], families: readonly LineFamily[]): CellBetweenLines[] =>
  families.reduce<CellBetweenLines[]>(
    (parts, lines) =>
      parts.flatMap((cell) =>
        spacesAcross(lines, cell.outer)
          .map((index) => ({
            ...cell,
            outer: clipToHalfPlanes(cell.outer, slab(lines, index, 0)),
            faces: [...cell.faces, ...facesOf(lines, index)],
          }))
          .filter(({ outer }) => outer.length > 0 && signedArea(outer) > areaTolerance),
      ),
    cells,
  );

function parallelogram(base: LineFamily, baseIndex: number, other: LineFamily, otherIndex: number): Point[] {
  const corner = (up: number, over: number): Point =>
    meetingPoint(base, lineOffset(base, baseIndex + up), other, lineOffset(other, otherIndex + over));
  const ring = [corner(0, 0), corner(0, 1), corner(1, 1), corner(1, 0)];
  return signedArea(ring) > 0 ? ring : ring.reverse();
}

/** The spaces between lines that a polygon reaches into, by index. */
function spacesAcross(lines: LineFamily, ring: readonly Point[]): number[] {
  const reaches = ring.map((point) => dot(lines.normal, point));
  const first = spaceAt(lines, minimum(reaches));
  return Array.from({ length: spaceAt(lines, maximum(reaches)) - first + 1 }, (_, index) => first + index);
}

const facesOf = (lines: LineFamily, index: number): HalfPlane[] => slab(lines, index, lines.face / 2);

/** Between line `index` and the next, `inset` away from both; beyond the last single line there is one side only. */
function slab(lines: LineFamily, index: number, inset: number): HalfPlane[] {
  const { normal } = lines;
  const [low, high] = [lineOffset(lines, index), lineOffset(lines, index + 1)];
  return [
    ...(high < Infinity ? [{ normal, reach: high - inset }] : []),
    ...(low > -Infinity ? [{ normal: scale(normal, -1), reach: -(low + inset) }] : []),
  ];
}

function classOf(opening: readonly Point[], gridTurn: number, isOpenEnded: boolean): CellClass {
  const upright = opening.map((point) => turned(point, -gridTurn));
  const frameTurn = pointsDown(upright) ? 180 - gridTurn : -gridTurn;
  const frame = cornersFromLowest(opening.map((point) => turned(point, frameTurn)));
  const shape = isOpenEnded ? 'other' : cellShapeOf(frame);
  return { opening: frame.map((point) => turned(point, -frameTurn)), frame, frameTurn, shape };
}

/** A cell points down when its middle lies above the middle of its height, like a triangle on its tip. */
function pointsDown(ring: readonly Point[]): boolean {
  const { bottom, top } = boundsOf(ring);
  return centroidOf(ring).y > (bottom + top) / 2 + placeTolerance;
}

/** The ring begun at its lowest, then leftmost corner. */
export function cornersFromLowest(ring: readonly Point[]): Point[] {
  let lowest = 0;
  ring.forEach((point, index) => {
    const best = ring[lowest] ?? point;
    const lower = point.y < best.y - placeTolerance;
    if (lower || (isZeroLength(point.y - best.y) && point.x < best.x - placeTolerance)) lowest = index;
  });
  return [...ring.slice(lowest), ...ring.slice(0, lowest)];
}

/** The inside angle at every corner, degrees. */
export function cornerAngles(ring: readonly Point[]): number[] {
  return ring.map((point, index) => {
    const before = ring[(index + ring.length - 1) % ring.length] ?? point;
    const after = ring[(index + 1) % ring.length] ?? point;
    return (angleOf(subtract(before, point)) - angleOf(subtract(after, point)) + 720) % 360;
  });
}

/** What kind of cell a polygon is, for `fill SHAPE`. */
export function cellShapeOf(ring: readonly Point[]): CellShape {
  if (ring.length === 3) return 'triangle';
  if (ring.length === 6) return 'hexagon';
  if (ring.length !== 4) return `polygon ${ring.length}`;
  const sides = ring.map((point, index) => distance(point, ring[(index + 1) % 4] ?? point));
  const equalSides = sides.every((side) => isZeroLength(side - (sides[0] ?? side)));
  if (!equalSides) return 'polygon 4';
  return cornerAngles(ring).every(isSquareCorner) ? 'square' : 'rhombus';
}

/** Degrees by which turning a ring about its middle brings corner 1 to corner 1 + `corners`, or null when that does not map the ring to itself. */
export function turnOntoItself(ring: readonly Point[], corners: number): number | null {
  const middle = centroidOf(ring);
  const from = ring[0];
  const to = ring[((corners % ring.length) + ring.length) % ring.length];
  if (!from || !to) return null;
  const angle = angleOf(subtract(to, middle)) - angleOf(subtract(from, middle));
  const fits = ring.every((point) => {
    const moved = turned(subtract(point, middle), angle);
    return ring.some((corner) => distance(subtract(corner, middle), moved) <= placeTolerance);
  });
  return fits ? angle : null;
}

export const isSquareCorner = (angle: number): boolean => sameAngle(angle, 90);
