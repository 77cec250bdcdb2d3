/** Length of a path's segment: closed for lines and circles, elsewhere the integral of the speed. */
import type { ArcSegment, CubicSegment, PathSegment, QuadraticSegment } from './path.ts';
import { add, distance, length, type Point, radians, scale, subtract } from './point.ts';
import { quadratureTolerance } from './tolerance.ts';

/** Length in mm, exact for lines and circular arcs, else within the quadrature tolerance. */
export function segmentLength(segment: PathSegment): number {
  switch (segment.kind) {
    case 'line':
      return distance(segment.from, segment.to);
    case 'arc':
      return segment.radiusX === segment.radiusY
        ? segment.radiusX * Math.abs(radians(segment.sweep))
        : integral((fraction) => arcSpeed(segment, fraction), 0, 1);
    case 'quadratic':
      return integral((fraction) => quadraticSpeed(segment, fraction), 0, 1);
    case 'cubic':
      return integral((fraction) => cubicSpeed(segment, fraction), 0, 1);
  }
}

function arcSpeed({ radiusX, radiusY, startAngle, sweep }: ArcSegment, fraction: number): number {
  const angle = radians(startAngle + sweep * fraction);
  return Math.abs(radians(sweep)) * Math.hypot(radiusX * Math.sin(angle), radiusY * Math.cos(angle));
}

/** B′(t) = 2(1 − t)(P1 − P0) + 2t(P2 − P1). */
function quadraticSpeed({ from, control, to }: QuadraticSegment, fraction: number): number {
  return 2 * length(weighted([subtract(control, from), subtract(to, control)], [1 - fraction, fraction]));
}

/** B′(t) = 3(1 − t)²(P1 − P0) + 6(1 − t)t(P2 − P1) + 3t²(P3 − P2). */
function cubicSpeed({ from, control1, control2, to }: CubicSegment, fraction: number): number {
  const steps = [subtract(control1, from), subtract(control2, control1), subtract(to, control2)];
  return 3 * length(weighted(steps, [(1 - fraction) ** 2, 2 * (1 - fraction) * fraction, fraction ** 2]));
}

const weighted = (points: readonly Point[], weights: readonly number[]): Point =>
  points.reduce((sum, point, index) => add(sum, scale(point, weights[index] ?? 0)), { x: 0, y: 0 });

/** Gauss–Legendre rule of five points on [−1, 1] (Abramowitz and Stegun, table 25.4). */
const inner = Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3;
const outer = Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3;
const innerWeight = (322 + 13 * Math.sqrt(70)) / 900;
const outerWeight = (322 - 13 * Math.sqrt(70)) / 900;
const rule: readonly (readonly [place: number, weight: number])[] = [
  [-outer, outerWeight],
  [-inner, innerWeight],
  [0, 128 / 225],
  [inner, innerWeight],
  [outer, outerWeight],
];

function gauss(speed: (fraction: number) => number, low: number, high: number): number {
  const half = (high - low) / 2;
  return half * rule.reduce((sum, [place, weight]) => sum + weight * speed((low + high) / 2 + half * place), 0);
}

/** A cusp is halved towards no longer than this: what is left there is shorter than any tolerance. */
const mostHalvings = 24;

/** Halves the interval until both halves together agree with the whole. */
function integral(speed: (fraction: number) => number, low: number, high: number, halvings = 0): number {
  const middle = (low + high) / 2;
  const whole = gauss(speed, low, high);
  const halves = gauss(speed, low, middle) + gauss(speed, middle, high);
  if (Math.abs(whole - halves) <= quadratureTolerance || halvings === mostHalvings) return halves;
  return integral(speed, low, middle, halvings + 1) + integral(speed, middle, high, halvings + 1);
}
