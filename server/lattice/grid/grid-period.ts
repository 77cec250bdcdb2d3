/** What repeats in a grid: the period of all its families taken together. */
import { add, dot, type Point, scale } from '../../geometry/point.ts';
import { stepTolerance } from '../../geometry/tolerance.ts';
import { crossingPair, type LineFamily, meetingPoint } from './grid-lines.ts';

/** Two translations that carry every family onto itself. */
export interface Period {
  readonly first: Point;
  readonly second: Point;
}

const longestPeriodInSteps = 64;

/** The period of all families, or null when they share none within 64 steps, or one has single lines. */
export function periodOf(families: readonly LineFamily[]): Period | null {
  const pair = crossingPair(families);
  if (!pair || families.some(({ places }) => places !== null)) return null;
  const { base, other, rest } = pair;
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
