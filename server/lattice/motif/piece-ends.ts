/** What stands around a node, and the bevels it gives to the pieces that end there. */
import { append } from '../../geometry/numbers.ts';
import { liesWithin } from '../../geometry/lines.ts';
import { add, angleOf, direction, distance, type Point, quarterTurn, scale, subtract } from '../../geometry/point.ts';
import { type HalfPlane, leftOf } from '../../geometry/polygons.ts';
import { kindAngleTolerance, placeTolerance } from '../../geometry/tolerance.ts';

/** The axis of a piece or divider of face `face` in a cell. */
export interface Axis {
  readonly from: Point;
  readonly to: Point;
  readonly face: number;
}

/** A direction out of a node that is taken: by a piece's end, by one that runs through, or by the opening's edge. */
interface Spoke {
  readonly angle: number;
  readonly kind: 'end' | 'through' | 'edge';
  /** For an end, the axis's number; else −1. */
  readonly axis: number;
  readonly face: number;
  /** For an end, the bevel declared on both its sides. */
  readonly declared: number | null;
}

/** One side of a piece's end: the bevel inside the wood to the axis, and the half-plane the wood keeps. */
export interface Bevel {
  readonly angle: number;
  readonly keeps: HalfPlane;
}

export interface EndBevels {
  readonly axis: number;
  /** Left and right looking from the node into the piece. */
  readonly left: Bevel;
  readonly right: Bevel;
}

/** Why the ends at a node cannot be made. */
export type EndTrouble =
  | {
      readonly kind: 'tip';
      readonly axis: number;
      readonly declared: number;
      readonly low: number;
      readonly high: number;
    }
  | { readonly kind: 'overlap'; readonly axis: number }
  | { readonly kind: 'crossing'; readonly axis: number; readonly sum: number };

export interface NodeEnds {
  readonly ends: readonly EndBevels[];
  readonly troubles: readonly EndTrouble[];
}

/** Bevels at `node` of all axes that end there. `declaredTip` gives the declared bevel of an axis's end here, or null. */
export function endsAtNode(
  node: Point,
  axes: readonly Axis[],
  ring: readonly Point[],
  declaredTip: (axis: number) => number | null,
): NodeEnds {
  const spokes = [...endSpokes(node, axes, declaredTip), ...throughSpokes(node, axes), ...edgeSpokes(node, ring)].sort(
    (a, b) => a.angle - b.angle,
  );
  const shares = spokes.map((spoke, index) =>
    shareGap(spoke, spokes[(index + 1) % spokes.length] ?? spoke, spokes.length),
  );
  const ends: EndBevels[] = [];
  const troubles: EndTrouble[] = [];
  spokes.forEach((spoke, index) => {
    if (spoke.kind !== 'end') return;
    const leftShare = shares[index];
    const rightShare = shares[(index + spokes.length - 1) % spokes.length];
    if (!leftShare || !rightShare) return;
    const next = spokes[(index + 1) % spokes.length] ?? spoke;
    const before = spokes[(index + spokes.length - 1) % spokes.length] ?? spoke;
    const left = bevelTowards(node, spoke, next, leftShare.first, 1);
    const right = bevelTowards(node, spoke, before, rightShare.second, -1);
    ends.push({ axis: spoke.axis, left, right });
    const spread = (gap: number, neighbour: Spoke, beyond: number): number =>
      neighbour.kind === 'end' && neighbour.declared === null ? gap + beyond - 180 : 0;
    const low = Math.max(
      0,
      spread(leftShare.gap, next, shares[(index + 1) % spokes.length]?.first ?? 0),
      spread(rightShare.gap, before, shares[(index + 2 * spokes.length - 2) % spokes.length]?.second ?? 0),
    );
    append(troubles, troublesOf(spoke, left, right, leftShare, rightShare, low));
  });
  return { ends, troubles };
}

function endSpokes(node: Point, axes: readonly Axis[], declaredTip: (axis: number) => number | null): Spoke[] {
  return axes.flatMap(({ from, to, face }, axis): Spoke[] => {
    const other = distance(from, node) <= placeTolerance ? to : distance(to, node) <= placeTolerance ? from : null;
    return other
      ? [{ angle: angleOf(subtract(other, node)), kind: 'end', axis, face, declared: declaredTip(axis) }]
      : [];
  });
}

function throughSpokes(node: Point, axes: readonly Axis[]): Spoke[] {
  return axes
    .filter(({ from, to }) => liesWithin(node, from, to))
    .flatMap(({ from, to, face }) =>
      [from, to].map((end): Spoke => ({
        angle: angleOf(subtract(end, node)),
        kind: 'through',
        axis: -1,
        face,
        declared: null,
      })),
    );
}

function edgeSpokes(node: Point, ring: readonly Point[]): Spoke[] {
  return ring.flatMap((corner, index): Spoke[] => {
    const next = ring[(index + 1) % ring.length] ?? corner;
    const ends = liesWithin(node, corner, next)
      ? [corner, next]
      : distance(node, corner) <= placeTolerance
        ? [next, ring[(index + ring.length - 1) % ring.length] ?? corner]
        : [];
    return ends.map((end) => ({
      angle: angleOf(subtract(end, node)),
      kind: 'edge',
      axis: -1,
      face: 0,
      declared: null,
    }));
  });
}

interface GapShare {
  readonly gap: number;
  /** Bevel on the left of the first spoke, and on the right of the second. */
  readonly first: number;
  readonly second: number;
  /** The bound a declared bevel must stay below (between pieces) or may reach (against a face). */
  readonly againstFace: boolean;
}

/** How two neighbouring spokes share the gap between them, `first` lying clockwise of `second`. */
function shareGap(first: Spoke, second: Spoke, spokes: number): GapShare {
  const gap = spokes === 1 ? 360 : (second.angle - first.angle + 360) % 360;
  if (spokes === 1) return { gap, first: first.declared ?? 90, second: first.declared ?? 90, againstFace: false };
  if (second.kind !== 'end') return { gap, first: first.declared ?? gap, second: 0, againstFace: true };
  if (first.kind !== 'end') return { gap, first: 0, second: second.declared ?? gap, againstFace: true };
  if (first.declared !== null)
    return { gap, first: first.declared, second: second.declared ?? gap - first.declared, againstFace: false };
  if (second.declared !== null)
    return { gap, first: gap - second.declared, second: second.declared, againstFace: false };
  return { gap, first: gap / 2, second: gap / 2, againstFace: false };
}

/** The bevel on one side of an end; `side` is 1 for left, −1 for right. A through piece is met at its face. */
function bevelTowards(node: Point, spoke: Spoke, neighbour: Spoke, angle: number, side: 1 | -1): Bevel {
  const along = direction(spoke.angle + side * angle);
  const meetsFace = neighbour.kind === 'through' && spoke.declared === null;
  const inward = scale(quarterTurn(along), -side);
  const point = meetsFace ? add(node, scale(inward, neighbour.face / 2)) : node;
  return { angle, keeps: leftOf(point, scale(along, -side)) };
}

/** `low` is the least tip that leaves the neighbours' two bevels within 180°. */
function troublesOf(
  spoke: Spoke,
  left: Bevel,
  right: Bevel,
  leftShare: GapShare,
  rightShare: GapShare,
  low: number,
): EndTrouble[] {
  const { axis, declared } = spoke;
  if (Math.min(leftShare.gap, rightShare.gap) <= kindAngleTolerance) return [{ kind: 'overlap', axis }];
  if (declared !== null) {
    const high = Math.min(leftShare.gap, rightShare.gap, 90);
    const tooWide = [leftShare, rightShare].some(({ gap, againstFace }) =>
      againstFace ? declared > gap + kindAngleTolerance : declared >= gap,
    );
    const unshared =
      Math.abs(leftShare.first + leftShare.second - leftShare.gap) > kindAngleTolerance && !leftShare.againstFace;
    const tooNarrow = declared <= 0 || declared < low - kindAngleTolerance;
    if (tooNarrow || declared > 90 || tooWide || unshared) return [{ kind: 'tip', axis, declared, low, high }];
    return [];
  }
  const sum = left.angle + right.angle;
  return sum > 180 + kindAngleTolerance ? [{ kind: 'crossing', axis, sum }] : [];
}
