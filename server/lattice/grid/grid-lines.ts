/** The lines of a grid: where they lie, which of them pass a place, and where they meet. */
import type { Grid, GridFamily } from '../../design/design-model.ts';
import { maximum } from '../../geometry/numbers.ts';
import { cross, direction, dot, type Point, quarterTurn } from '../../geometry/point.ts';
import type { Bounds } from '../../geometry/polygons.ts';
import { directionTolerance, isZeroLength } from '../../geometry/tolerance.ts';

/** A family laid on the panel: line i is {p : normal·p = lineOffset(i)}. */
export interface LineFamily {
  readonly family: GridFamily;
  readonly number: number;
  /** Unit vector along the strips. */
  readonly along: Point;
  readonly normal: Point;
  readonly spacing: number;
  readonly offset: number;
  /** Offsets of the only lines there are, ascending; null where line follows line without end. */
  readonly places: readonly number[] | null;
  readonly face: number;
}

/** The grid's families with the grid's own origin at `origin`. */
export function lineFamilies(grid: Grid, origin: Point): LineFamily[] {
  return grid.families.map((family, index) => {
    const along = direction(family.direction);
    const normal = quarterTurn(along);
    const moved = dot(normal, origin);
    return {
      family,
      number: index + 1,
      along,
      normal,
      spacing: family.spacing,
      offset: family.offset + moved,
      places: family.positions?.map((position) => position + moved) ?? null,
      face: family.stock.face,
    };
  });
}

/** The place of a line: its offset along the family's normal. Index −1 and those behind the last single line have none. */
export const lineOffset = ({ places, offset, spacing }: LineFamily, index: number): number =>
  places ? (places[index] ?? (index < 0 ? -Infinity : Infinity)) : offset + index * spacing;

/** The space between line i and the next that a place along the normal lies in: i, or −1 before the first single line. */
export const spaceAt = ({ places, offset, spacing }: LineFamily, reach: number): number =>
  places ? places.filter((place) => place <= reach).length - 1 : Math.floor((reach - offset) / spacing);

/** Lines with low ≤ offset ≤ high, by index. */
export function linesBetween(lines: LineFamily, low: number, high: number): number[] {
  const { places, offset, spacing } = lines;
  if (places) return places.flatMap((place, index) => (place >= low && place <= high ? [index] : []));
  const first = Math.ceil((low - offset) / spacing);
  return Array.from(
    { length: Math.max(0, Math.floor((high - offset) / spacing) - first + 1) },
    (_, step) => first + step,
  );
}

/** The line through `point`, null where none passes. */
export function lineThrough(lines: LineFamily, point: Point): number | null {
  const reach = dot(lines.normal, point);
  const below = spaceAt(lines, reach);
  return [below, below + 1].find((index) => isZeroLength(lineOffset(lines, index) - reach)) ?? null;
}

/** Where {a.normal·p = reachA} meets {b.normal·p = reachB}; the families must not be parallel. */
export function meetingPoint(a: LineFamily, reachA: number, b: LineFamily, reachB: number): Point {
  const across = cross(a.normal, b.normal);
  return {
    x: (reachA * b.normal.y - reachB * a.normal.y) / across,
    y: (a.normal.x * reachB - b.normal.x * reachA) / across,
  };
}

/** Whether two families run the same way. */
export const areParallel = (a: LineFamily, b: LineFamily): boolean =>
  Math.abs(cross(a.along, b.along)) <= directionTolerance;

/** The first family, the first that crosses it, and the others; null where all run one way. */
export function crossingPair(
  families: readonly LineFamily[],
): { readonly base: LineFamily; readonly other: LineFamily; readonly rest: readonly LineFamily[] } | null {
  const [base] = families;
  const other = base && families.find((lines) => !areParallel(lines, base));
  return base && other ? { base, other, rest: families.filter((lines) => lines !== base && lines !== other) } : null;
}

/** The widest space between neighbouring lines of a family; 0 where it has one line only. */
export const widestSpace = ({ places, spacing }: LineFamily): number =>
  places ? Math.max(0, maximum(places.slice(1).map((place, index) => place - (places[index] ?? place)))) : spacing;

/** No cell that is bounded by lines of the first two crossing families reaches further than this from any of its points. */
export function cellReach(families: readonly LineFamily[]): number {
  const pair = crossingPair(families);
  if (!pair) return 0;
  return (widestSpace(pair.base) + widestSpace(pair.other)) / Math.abs(cross(pair.base.along, pair.other.along));
}

/** The box about the origin in which a grid without a period shows every space between its lines. */
export function boundsAboutOrigin(families: readonly LineFamily[]): Bounds {
  const farthest = maximum(families.flatMap(({ places, offset }) => (places ?? [offset]).map(Math.abs)));
  const reach = (farthest + maximum(families.map(widestSpace))) * 2 + cellReach(families);
  return { left: -reach, bottom: -reach, right: reach, top: reach };
}
