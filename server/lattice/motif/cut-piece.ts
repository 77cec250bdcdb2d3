/** One piece of a motif as the intersection of half-planes: two faces, two bevels at each end, and the opening. */
import type { StripStock } from '../../design/design-model.ts';
import {
  add,
  angleOf,
  cross,
  distance,
  dot,
  type Point,
  quarterTurn,
  scale,
  subtract,
  unit,
} from '../../geometry/point.ts';
import {
  boundsOf,
  clipToHalfPlanes,
  type HalfPlane,
  leftOf,
  signedArea,
  withoutIdlePoints,
} from '../../geometry/polygons.ts';
import { areaTolerance, placeTolerance } from '../../geometry/tolerance.ts';
import type { NotchRun, PieceEnd, PieceShape, Placement, Polygon } from '../laid-panel.ts';
import type { Axis, EndBevels } from './piece-ends.ts';
import { pieceShape, standardLie } from './piece-shape.ts';

/** A piece in place: its kind's shape, its outline as it lies, and where. */
export interface CutPiece {
  readonly shape: PieceShape;
  readonly outline: Polygon;
  readonly placement: Placement;
  /** Whether it lies flipped over about its axis from the way its shape is told. */
  readonly flipped: boolean;
  /** The piece on the ground of its cell. */
  readonly ground: Polygon;
  /** Plan area lost to the opening's edge, mm². */
  readonly lost: number;
}

/** The piece, or null when nothing of it is left. `laps` are its notches, measured from the axis's first node. */
export function cutPiece(
  axis: Axis,
  stock: StripStock,
  first: EndBevels,
  second: EndBevels,
  opening: readonly Point[],
  laps: readonly NotchRun[],
): CutPiece | null {
  if (distance(axis.from, axis.to) <= placeTolerance) return null;
  const along = unit(subtract(axis.to, axis.from));
  const bevelled = clipToHalfPlanes(blankAround(axis, along, opening), [
    first.left.keeps,
    first.right.keeps,
    second.left.keeps,
    second.right.keeps,
  ]);
  const ground = withoutIdlePoints(clipToHalfPlanes(bevelled, sidesOf(opening)));
  if (ground.length < 3 || signedArea(ground) <= areaTolerance) return null;
  const ends: readonly [PieceEnd, PieceEnd] = [
    { bevels: [first.left.angle, first.right.angle] },
    { bevels: [second.right.angle, second.left.angle] },
  ];
  const lost = signedArea(bevelled) - signedArea(ground);
  return { ...settled(ground, axis.from, along, stock, ends, laps), lost };
}

/** A strip of the piece's face, long enough to be cut at both ends. */
function blankAround({ from, to, face }: Axis, along: Point, opening: readonly Point[]): Point[] {
  const { left, bottom, right, top } = boundsOf(opening);
  const reach = right - left + (top - bottom) + face;
  const aside = scale(quarterTurn(along), face / 2);
  const [start, end] = [subtract(from, scale(along, reach)), add(to, scale(along, reach))];
  return [subtract(start, aside), subtract(end, aside), add(end, aside), add(start, aside)];
}

/** The inner sides of a convex ring's edges. */
export const sidesOf = (ring: readonly Point[]): HalfPlane[] =>
  ring.map((corner, index) => leftOf(corner, unit(subtract(ring[(index + 1) % ring.length] ?? corner, corner))));

/**
 * A polygon on the ground whose axis runs through `anchor` along `along`, told as a shape of its own and a
 * place. `notches` are measured from `anchor`.
 */
export function settled(
  ground: Polygon,
  anchor: Point,
  along: Point,
  stock: StripStock,
  ends: readonly [PieceEnd, PieceEnd],
  notches: readonly NotchRun[],
): Omit<CutPiece, 'lost'> {
  const own = ground.map((point) => ({
    x: dot(subtract(point, anchor), along),
    y: cross(along, subtract(point, anchor)),
  }));
  const start = boundsOf(own).left;
  const { shape, lie } = standardLie(pieceShape(stock, own, ends, notches));
  const turn = angleOf(along);
  const at = add(anchor, scale(along, lie.turned ? start + shape.length : start));
  const placement: Placement = lie.turned ? { at, turn: (turn + 180) % 360 } : { at, turn };
  const outline = lie.flipped ? shape.outline.map(({ x, y }) => ({ x, y: -y })).reverse() : shape.outline;
  return { shape, outline, placement, flipped: lie.flipped, ground };
}
