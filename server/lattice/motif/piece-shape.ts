/** A piece in its own frame, and the test of whether two pieces are one kind. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import type { StripStock } from '../../design/design-model.ts';
import { angleOf, type Point, subtract } from '../../geometry/point.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { kindAngleTolerance, kindLengthTolerance, placeTolerance, sameLength } from '../../geometry/tolerance.ts';
import type { NotchRun, PieceEnd, PieceShape, Polygon } from '../laid-panel.ts';
import { byPlace, compareRuns, flippedRuns, sameRuns, turnedRuns } from '../strips/notch-runs.ts';

/** One of the four ways to lay a piece down: turned by 180° in the plane, flipped over about its axis, both or neither. */
export interface Lie {
  readonly turned: boolean;
  readonly flipped: boolean;
}

export const lies: readonly Lie[] = [
  { turned: false, flipped: false },
  { turned: true, flipped: false },
  { turned: false, flipped: true },
  { turned: true, flipped: true },
];

/** A piece of `stock` with the given outline (axis along x, left +y), bevels and notches, moved so that it begins at x = 0. */
export function pieceShape(
  stock: StripStock,
  outline: Polygon,
  ends: readonly [PieceEnd, PieceEnd],
  notches: readonly NotchRun[] = [],
): PieceShape {
  const { left, right } = boundsOf(outline);
  return {
    stock,
    length: right - left,
    edges: [longEdge(outline, stock.face / 2), longEdge(outline, -stock.face / 2)],
    ends,
    outline: fromFirstCorner(outline.map(({ x, y }) => ({ x: x - left, y }))),
    notches: notches.map((run) => ({ ...run, first: run.first - left })).sort(byPlace),
  };
}

/** Length of the outline's straight run at height `side`. */
function longEdge(outline: Polygon, side: number): number {
  const along = outline.filter(({ y }) => Math.abs(y - side) <= placeTolerance).map(({ x }) => x);
  return along.length < 2 ? 0 : maximum(along) - minimum(along);
}

/** The outline begun at its leftmost, then lowest corner, so that equal outlines are written alike. */
function fromFirstCorner(outline: Polygon): Polygon {
  let first = 0;
  outline.forEach((point, index) => {
    const best = outline[first] ?? point;
    const nearer = point.x < best.x - placeTolerance;
    if (nearer || (Math.abs(point.x - best.x) <= placeTolerance && point.y < best.y)) first = index;
  });
  return [...outline.slice(first), ...outline.slice(0, first)];
}

/** `shape` laid another way. */
export function laidOtherwise(shape: PieceShape, { turned, flipped }: Lie): PieceShape {
  const move = ({ x, y }: Point): Point => ({
    x: turned ? shape.length - x : x,
    y: turned !== flipped ? -y : y,
  });
  const outline = shape.outline.map(move);
  const swapSides = turned !== flipped;
  const notches = flipped ? flippedRuns(shape.notches) : shape.notches;
  const [left, right] = shape.edges;
  const swapped = ({ bevels }: PieceEnd): PieceEnd => ({
    bevels: bevels && swapSides ? [bevels[1], bevels[0]] : bevels,
  });
  const [first, second] = [swapped(shape.ends[0]), swapped(shape.ends[1])];
  return {
    ...shape,
    edges: swapSides ? [right, left] : [left, right],
    ends: turned ? [second, first] : [first, second],
    outline: fromFirstCorner(flipped ? outline.reverse() : outline),
    notches: turned ? turnedRuns(notches, shape.length) : notches,
  };
}

/** The way to lay a piece down that stands for its kind, and how it is reached from `shape`. */
export function standardLie(shape: PieceShape): { readonly shape: PieceShape; readonly lie: Lie } {
  return lies
    .map((lie) => ({ shape: laidOtherwise(shape, lie), lie }))
    .reduce((best, each) => (compareLies(each.shape, best.shape) > 0 ? each : best));
}

const noBevel = -1;

/** Bevels and edges in order, each with the tolerance within which two count as equal. */
function measuresOf({ ends, edges, outline }: PieceShape): { readonly value: number; readonly tolerance: number }[] {
  const angles = ends.flatMap(({ bevels }) => bevels ?? [noBevel, noBevel]);
  return [
    ...angles.map((value) => ({ value, tolerance: kindAngleTolerance })),
    ...[...edges, ...outline.flatMap(({ x, y }) => [x, y])].map((value) => ({ value, tolerance: kindLengthTolerance })),
  ];
}

function compareLies(a: PieceShape, b: PieceShape): number {
  const others = measuresOf(b);
  for (const [index, { value, tolerance }] of measuresOf(a).entries()) {
    const difference = value - (others[index]?.value ?? 0);
    if (Math.abs(difference) > tolerance) return difference;
  }
  return compareRuns(a.notches, b.notches);
}

/** Whether two pieces in standard lie are one kind. */
export function samePiece(a: PieceShape, b: PieceShape): boolean {
  return (
    a.stock === b.stock &&
    sameLength(a.length, b.length) &&
    a.outline.length === b.outline.length &&
    sameRuns(a.notches, b.notches) &&
    compareLies(a, b) === 0
  );
}

/**
 * Bevels at both ends read off an outline, for a piece fitted to a frame. An end cut by one straight
 * cut, or by two that meet in a point, has bevels; any other has none.
 */
export function endsOfOutline(outline: Polygon, face: number): readonly [PieceEnd, PieceEnd] {
  const turnedOutline = outline.map(({ x, y }) => ({ x: -x, y: -y }));
  const first = farEnd(turnedOutline, face);
  return [{ bevels: first && [first[1], first[0]] }, { bevels: farEnd(outline, face) }];
}

/** [left, right] bevels at the end with the greatest x. */
function farEnd(outline: Polygon, face: number): [number, number] | null {
  const farthest = (side: number): number => {
    const along = outline
      .map((point, index) => ({ point, index }))
      .filter(({ point }) => Math.abs(point.y - side) <= placeTolerance);
    if (along.length < 2) return -1;
    return along.reduce((best, each) => (each.point.x > best.point.x ? each : best)).index;
  };
  const right = farthest(-face / 2);
  const left = farthest(face / 2);
  if (right < 0 || left < 0) return null;
  const steps = (left - right + outline.length) % outline.length;
  const corner = (index: number): Point => outline[index % outline.length] ?? { x: 0, y: 0 };
  if (steps < 1 || steps > 2) return null;
  const alongRight = angleOf(subtract(corner(right + 1), corner(right)));
  const alongLeft = angleOf(subtract(corner(left), corner(left + outline.length - 1)));
  return [180 - alongLeft, alongRight];
}
