/** The parts that a motif's dividers leave of an opening. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import { leftDistance, stretchesWithin } from '../../geometry/lines.ts';
import { distance, type Point, quarterTurn, scale, subtract, unit } from '../../geometry/point.ts';
import { clipToHalfPlane, type HalfPlane, leftOf, withoutIdlePoints } from '../../geometry/polygons.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import { cornersFromLowest } from '../cells/cell-classes.ts';
import type { Axis } from './piece-ends.ts';

interface DividedOpening {
  /** Each with corner 1 lowest, then leftmost. */
  readonly parts: readonly (readonly Point[])[];
  /** Dividers, by number, that end within a part. */
  readonly unfinished: readonly number[];
}

/** A convex ring divided; one divider may end on another, whichever of them is named first. */
export function dividedParts(ring: readonly Point[], dividers: readonly Axis[]): DividedOpening {
  let parts: (readonly Point[])[] = [ring];
  let waiting = dividers.map((_, number) => number);
  for (;;) {
    const ready = waiting.find((number) => !parts.some((part) => endsWithin(part, dividers[number])));
    const divider = ready === undefined ? undefined : dividers[ready];
    if (!divider) break;
    parts = parts.flatMap((part) => (isPassed(part, divider) ? bothSides(part, divider) : [part]));
    waiting = waiting.filter((number) => number !== ready);
  }
  return { parts: dividers.length > 0 ? parts.map(cornersFromLowest) : parts, unfinished: waiting };
}

/** What the divider's line has in common with a part, and what of that the divider runs along; lengths along the line. */
function stretches(part: readonly Point[], { from, to, face }: Axis) {
  const along = unit(subtract(to, from));
  const sides = part.map((point) => leftDistance(point, from, along));
  const isBeside = maximum(sides) <= face / 2 || minimum(sides) >= -face / 2;
  const [within] = isBeside ? [] : stretchesWithin([part], from, along);
  if (!within) return null;
  const [start, end] = within;
  return { line: end - start, divider: Math.min(end, distance(from, to)) - Math.max(start, 0) };
}

/** Whether the divider parts all of it from edge to edge. */
function isPassed(part: readonly Point[], divider: Axis): boolean {
  const found = stretches(part, divider);
  return found !== null && found.divider >= found.line - placeTolerance;
}

/** Whether the divider goes into a part and not through it; as far as another divider's middle line does not count. */
function endsWithin(part: readonly Point[], divider: Axis | undefined): boolean {
  const found = divider && stretches(part, divider);
  return found != null && found.divider > placeTolerance && found.divider < found.line - placeTolerance;
}

/** Both sides of a part, the divider's own thickness taken out. */
function bothSides(part: readonly Point[], { from, to, face }: Axis): Point[][] {
  const along = unit(subtract(to, from));
  const aside = scale(quarterTurn(along), face / 2);
  const left: HalfPlane = leftOf({ x: from.x + aside.x, y: from.y + aside.y }, along);
  const right: HalfPlane = leftOf(subtract(from, aside), scale(along, -1));
  return [left, right].map((side) => withoutIdlePoints(clipToHalfPlane(part, side))).filter((each) => each.length >= 3);
}
