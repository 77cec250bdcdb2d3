/** The cells of one period of a grid: their openings, shapes and corner numbers. Every other cell is one of these, moved. */
import type { CellShape } from '../design/design-model.ts';
import { angleOf, distance, dot, origin, type Point, subtract, turned } from '../geometry/point.ts';
import {
  areaOf,
  boundsOf,
  clipToHalfPlanes,
  type HalfPlane,
  signedArea,
  withoutIdlePoints,
} from '../geometry/polygons.ts';
import { areaTolerance, isZeroLength, placeTolerance, sameAngle } from '../geometry/tolerance.ts';
import { type LineFamily, lineOffset, meetingPoint, type Period } from './grid-lines.ts';

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

export function cellClasses(families: readonly LineFamily[], period: Period, gridTurn: number): CellClasses {
  const [base, other, ...rest] = families;
  if (!base || !other) return { classes: [], closed: 0 };
  const baseSteps = Math.round(Math.abs(dot(base.normal, period.second)) / base.spacing);
  const otherSteps = Math.round(Math.abs(dot(other.normal, period.first)) / other.spacing);
  const classes: CellClass[] = [];
  let closed = 0;
  for (let baseIndex = 0; baseIndex < baseSteps; baseIndex++) {
    for (let otherIndex = 0; otherIndex < otherSteps; otherIndex++) {
      for (const cell of cellsBetween(base, baseIndex, other, otherIndex, rest)) {
        const opening = withoutIdlePoints(clipToHalfPlanes(cell.outer, cell.faces));
        if (opening.length < 3 || signedArea(opening) <= areaTolerance) closed++;
        else classes.push(classOf(opening, gridTurn));
      }
    }
  }
  return { classes, closed };
}

interface CellBetweenLines {
  readonly outer: readonly Point[];
  /** The inner sides of the strips all round. */
  readonly faces: readonly HalfPlane[];
}

/** The cells into which the other families cut the parallelogram between two neighbouring lines of each of the first two. */
function cellsBetween(
  base: LineFamily,
  baseIndex: number,
  other: LineFamily,
  otherIndex: number,
  rest: readonly LineFamily[],
): CellBetweenLines[] {
  const start: CellBetweenLines = {
    outer: parallelogram(base, baseIndex, other, otherIndex),
    faces: [...facesOf(base, baseIndex), ...facesOf(other, otherIndex)],
  };
  return rest.reduce<CellBetweenLines[]>(
    (cells, lines) =>
      cells.flatMap((cell) =>
        indicesAcross(lines, cell.outer)
          .map((index) => ({
            outer: clipToHalfPlanes(cell.outer, slab(lines, index, 0)),
            faces: [...cell.faces, ...facesOf(lines, index)],
          }))
          .filter(({ outer }) => outer.length > 0 && areaOf([outer]) > areaTolerance),
      ),
    [start],
  );
}

function parallelogram(base: LineFamily, baseIndex: number, other: LineFamily, otherIndex: number): Point[] {
  const corner = (up: number, over: number): Point =>
    meetingPoint(base, lineOffset(base, baseIndex + up), other, lineOffset(other, otherIndex + over));
  const ring = [corner(0, 0), corner(0, 1), corner(1, 1), corner(1, 0)];
  return signedArea(ring) > 0 ? ring : ring.reverse();
}

/** Indices of the slabs of `lines` that a polygon reaches into. */
function indicesAcross(lines: LineFamily, ring: readonly Point[]): number[] {
  const steps = ring.map((point) => (dot(lines.normal, point) - lines.offset) / lines.spacing);
  const first = Math.floor(Math.min(...steps));
  return Array.from({ length: Math.ceil(Math.max(...steps)) - first + 1 }, (_, index) => first + index);
}

const facesOf = (lines: LineFamily, index: number): HalfPlane[] => slab(lines, index, lines.face / 2);

/** Between line `index` and the next, `inset` away from both. */
function slab({ normal, spacing, offset }: LineFamily, index: number, inset: number): HalfPlane[] {
  return [
    { normal, reach: offset + (index + 1) * spacing - inset },
    { normal: { x: -normal.x, y: -normal.y }, reach: -(offset + index * spacing + inset) },
  ];
}

function classOf(opening: readonly Point[], gridTurn: number): CellClass {
  const upright = opening.map((point) => turned(point, -gridTurn));
  const frameTurn = pointsDown(upright) ? 180 - gridTurn : -gridTurn;
  const frame = cornersFromLowest(opening.map((point) => turned(point, frameTurn)));
  return { opening: frame.map((point) => turned(point, -frameTurn)), frame, frameTurn, shape: cellShapeOf(frame) };
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

/** The area's centre of mass. */
export function centroidOf(ring: readonly Point[]): Point {
  const [anchor = origin] = ring;
  let [area, x, y] = [0, 0, 0];
  ring.forEach((point, index) => {
    const a = subtract(point, anchor);
    const b = subtract(ring[(index + 1) % ring.length] ?? point, anchor);
    const part = a.x * b.y - a.y * b.x;
    area += part;
    x += (a.x + b.x) * part;
    y += (a.y + b.y) * part;
  });
  return { x: anchor.x + x / (3 * area), y: anchor.y + y / (3 * area) };
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
export function cellShapeOf(ring: readonly Point[]): CellShape | 'other' {
  if (ring.length === 3) return 'triangle';
  if (ring.length === 6) return 'hexagon';
  if (ring.length !== 4) return 'other';
  const sides = ring.map((point, index) => distance(point, ring[(index + 1) % 4] ?? point));
  const equalSides = sides.every((side) => isZeroLength(side - (sides[0] ?? side)));
  if (!equalSides) return 'other';
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
