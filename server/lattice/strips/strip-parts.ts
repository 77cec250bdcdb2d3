/** The strips of a panel: one for each connected part of a line's body within the region. */
import type { Panel } from '../../design/design-model.ts';
import { maximum, minimum } from '../../geometry/numbers.ts';
import { add, cross, dot, type Point, scale, subtract, unit } from '../../geometry/point.ts';
import { clipToHalfPlanes, type HalfPlane, intersectionOf, signedArea } from '../../geometry/polygons.ts';
import { distanceToSegment, type Region, ringsWithin } from '../../geometry/region.ts';
import { areaTolerance, clippingMargin, directionTolerance, stepTolerance } from '../../geometry/tolerance.ts';
import { areParallel, type LineFamily, lineOffset, linesBetween } from '../grid/grid-lines.ts';

/** A strip as cut: along its line from `start` to `end`, measured from the foot of the origin's perpendicular. */
export interface StripPart {
  readonly lines: LineFamily;
  readonly index: number;
  readonly start: number;
  readonly end: number;
}

/** The point of a line at `position` along it. */
export const pointOnLine = (lines: LineFamily, index: number, position: number): Point =>
  add(scale(lines.normal, lineOffset(lines, index)), scale(lines.along, position));

/** A line that crosses a strip, and where along it. */
export interface CrossingPlace {
  readonly line: number;
  readonly position: number;
}

/** Where lines of `other` cross line `index` from position `low` to `high`, in order; ends that miss by rounding alone included. */
export function crossingsBetween(
  lines: LineFamily,
  index: number,
  other: LineFamily,
  low: number,
  high: number,
): CrossingPlace[] {
  const turn = dot(other.normal, lines.along);
  const foot = dot(other.normal, scale(lines.normal, lineOffset(lines, index)));
  const reaches = [low, high].map((position) => foot + position * turn);
  const crossing = linesBetween(other, minimum(reaches) - stepTolerance, maximum(reaches) + stepTolerance).map(
    (line) => ({ line, position: (lineOffset(other, line) - foot) / turn }),
  );
  return turn < 0 ? crossing.reverse() : crossing;
}

export function stripParts(panel: Panel, families: readonly LineFamily[], region: Region): StripPart[] {
  return families.flatMap((lines) => {
    const reaches = region.rings.flat().map((point) => dot(lines.normal, point));
    if (reaches.length === 0) return [];
    const half = lines.face / 2;
    return linesBetween(lines, minimum(reaches) - half, maximum(reaches) + half).flatMap((index) =>
      partsOfLine(panel, families, region, lines, index),
    );
  });
}

/** The strips of one line, in order along it. */
export const partsOfLine = (
  panel: Panel,
  families: readonly LineFamily[],
  region: Region,
  lines: LineFamily,
  index: number,
): StripPart[] =>
  withoutOverlaps(
    extents(lines, index, region).map(([start, end]) =>
      withEnds(panel, families, { lines, index, start, end }, region),
    ),
  );

/** Extents along the line of the connected parts of body ∩ region. */
function extents(lines: LineFamily, index: number, region: Region): [number, number][] {
  const middle = lineOffset(lines, index);
  const body: HalfPlane[] = [
    { normal: lines.normal, reach: middle + lines.face / 2 },
    { normal: scale(lines.normal, -1), reach: -(middle - lines.face / 2) },
  ];
  return bodyWithin(lines, index, body, region)
    .filter((ring) => signedArea(ring) > areaTolerance)
    .map((ring): [number, number] => {
      const positions = ring.map((point) => dot(lines.along, point));
      return [minimum(positions), maximum(positions)];
    })
    .sort(([a], [b]) => a - b);
}

/** A convex region leaves one part of a body, which needs no clipping library to be told apart. */
function bodyWithin(lines: LineFamily, index: number, body: readonly HalfPlane[], region: Region): Point[][] {
  if (region.isConvex) return region.rings.map((ring) => clipToHalfPlanes(ring, body));
  const rings = ringsWithin(region, body);
  const positions = rings.flat().map((point) => dot(lines.along, point));
  if (positions.length === 0) return [];
  const [from, to] = [minimum(positions) - clippingMargin, maximum(positions) + clippingMargin];
  const corner = (position: number, side: number): Point =>
    add(pointOnLine(lines, index, position), scale(lines.normal, (side * lines.face) / 2));
  return intersectionOf([[corner(from, -1), corner(to, -1), corner(to, 1), corner(from, 1)]], rings);
}

/** Parts of one line in order; two whose sawn ends would take the same wood are one strip. */
function withoutOverlaps(parts: readonly StripPart[]): StripPart[] {
  return parts.reduce<StripPart[]>((kept, part) => {
    const before = kept.at(-1);
    if (!before || part.start > before.end) return [...kept, part];
    return [...kept.slice(0, -1), { ...before, end: Math.max(before.end, part.end) }];
  }, []);
}

/** Framed: a stub beyond each end. Sawn: each end a tail beyond the nearest node that covers the part. */
function withEnds(panel: Panel, families: readonly LineFamily[], part: StripPart, region: Region): StripPart {
  if (panel.edge === 'framed')
    return {
      ...part,
      start: part.start - stubAt(panel, part, part.start, region),
      end: part.end + stubAt(panel, part, part.end, region),
    };
  const others = families.filter((other) => !areParallel(other, part.lines));
  const node = (place: number, way: 1 | -1): number => nearestCrossing(part, others, place, way);
  return {
    ...part,
    start: node(part.start + panel.tail, -1) - panel.tail,
    end: node(part.end - panel.tail, 1) + panel.tail,
  };
}

/**
 * How far a strip runs on beyond its last point in the region. In a groove or mortice of depth g its square end touches
 * the bottom with one corner: at an angle θ to the edge, S·sin θ + t·cos θ = g, for S begins at the farther corner.
 */
function stubAt(panel: Panel, { lines, index }: StripPart, position: number, region: Region): number {
  if (!panel.frame) return panel.stub;
  const end = pointOnLine(lines, index, position);
  const away = ({ from, to }: Region['edges'][number]): number => distanceToSegment(end, from, to);
  const [first, ...others] = region.edges;
  if (!first) return panel.stub;
  const edge = others.reduce((nearest, each) => (away(each) < away(nearest) ? each : nearest), first);
  const sine = Math.abs(cross(lines.along, unit(subtract(edge.to, edge.from))));
  const cosine = Math.sqrt(Math.max(0, 1 - sine * sine));
  return sine <= directionTolerance ? panel.stub : Math.max(0, (panel.stub - lines.face * cosine) / sine);
}

/** Position of the first crossing at `place` or beyond it, forwards or backwards; `place` itself where no line crosses there. */
function nearestCrossing(
  { lines, index }: StripPart,
  others: readonly LineFamily[],
  place: number,
  way: 1 | -1,
): number {
  const found = others.flatMap((other) => {
    const reach = other.places ? Infinity : other.spacing / Math.abs(dot(other.normal, lines.along));
    const [low, high] = way === 1 ? [place, place + reach] : [place - reach, place];
    return crossingsBetween(lines, index, other, low, high).map(({ position }) => way * position);
  });
  return found.length > 0 ? way * minimum(found) : place;
}
