/** The lines of a grid and what repeats: the period of the families taken together. */
import type { Grid, GridFamily } from '../design/design-model.ts';
import { add, cross, direction, dot, type Point, quarterTurn, scale } from '../geometry/point.ts';
import { directionTolerance, stepTolerance } from '../geometry/tolerance.ts';

/** A family laid on the panel: line i is {p : normal·p = offset + i·spacing}. */
export interface LineFamily {
  readonly family: GridFamily;
  readonly number: number;
  /** Unit vector along the strips. */
  readonly along: Point;
  readonly normal: Point;
  readonly spacing: number;
  readonly offset: number;
  readonly face: number;
}

/** Two translations that carry every family onto itself. */
export interface Period {
  readonly first: Point;
  readonly second: Point;
}

/** The grid's families with the grid's own origin at `origin`. */
export function lineFamilies(grid: Grid, origin: Point): LineFamily[] {
  return grid.families.map((family, index) => {
    const along = direction(family.direction);
    const normal = quarterTurn(along);
    return {
      family,
      number: index + 1,
      along,
      normal,
      spacing: family.spacing,
      offset: family.offset + dot(normal, origin),
      face: family.stock.face,
    };
  });
}

/** The place of a line: its offset along the family's normal. */
export const lineOffset = (lines: LineFamily, index: number): number => lines.offset + index * lines.spacing;

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

const longestPeriodInSteps = 64;

/** The period of all families, or null when they share none within 64 steps. */
export function periodOf(families: readonly LineFamily[]): Period | null {
  const [base, other, ...rest] = families;
  if (!base || !other) return null;
  const withoutOffset = (lines: LineFamily): LineFamily => ({ ...lines, offset: 0 });
  const step = (reachBase: number, reachOther: number): Point =>
    meetingPoint(withoutOffset(base), reachBase, withoutOffset(other), reachOther);
  const first = repeated(step(0, other.spacing), rest);
  const second = repeated(step(base.spacing, 0), rest);
  return first && second ? { first, second } : null;
}

function repeated(step: Point, families: readonly LineFamily[]): Point | null {
  for (let times = 1; times <= longestPeriodInSteps; times++) {
    const moved = scale(step, times);
    if (families.every((lines) => isWhole(dot(lines.normal, moved) / lines.spacing))) return moved;
  }
  return null;
}

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) <= stepTolerance;

/** `start` moved by whole periods. */
export const movedByPeriods = (start: Point, period: Period, a: number, b: number): Point =>
  add(start, add(scale(period.first, a), scale(period.second, b)));
