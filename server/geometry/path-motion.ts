/** How a path turns: velocity, acceleration and curvature along one segment. Fractions run from 0 at its start to 1 at its end. */
import type { ArcSegment, CubicSegment, PathSegment, QuadraticSegment } from './path.ts';
import { add, cross, length, type Point, radians, scale, subtract, turned } from './point.ts';
import { placeTolerance } from './tolerance.ts';

interface Motion {
  readonly velocity: Point;
  readonly acceleration: Point;
}

/** First and second derivative of the place by the fraction, mm. */
export function motionAt(segment: PathSegment, fraction: number): Motion {
  switch (segment.kind) {
    case 'line':
      return { velocity: subtract(segment.to, segment.from), acceleration: { x: 0, y: 0 } };
    case 'arc':
      return arcMotion(segment, fraction);
    case 'quadratic':
      return quadraticMotion(segment, fraction);
    case 'cubic':
      return cubicMotion(segment, fraction);
  }
}

/**
 * Signed curvature (x′y″ − y′x″)/|v|³ in 1/mm: positive where the path turns left, so round an outline counter-clockwise
 * positive is convex. Null where the path stands still.
 */
export function curvatureAt(segment: PathSegment, fraction: number): number | null {
  const { velocity, acceleration } = motionAt(segment, fraction);
  const speed = length(velocity);
  return speed <= placeTolerance ? null : cross(velocity, acceleration) / speed ** 3;
}

function arcMotion({ radiusX, radiusY, tilt, startAngle, sweep }: ArcSegment, fraction: number): Motion {
  const angle = radians(startAngle + sweep * fraction);
  const rate = radians(sweep);
  const velocity = { x: -radiusX * Math.sin(angle), y: radiusY * Math.cos(angle) };
  const acceleration = { x: -radiusX * Math.cos(angle), y: -radiusY * Math.sin(angle) };
  return { velocity: scale(turned(velocity, tilt), rate), acceleration: scale(turned(acceleration, tilt), rate ** 2) };
}

/** B′(t) = 2(1 − t)(P1 − P0) + 2t(P2 − P1), B″ = 2(P2 − 2P1 + P0). */
function quadraticMotion({ from, control, to }: QuadraticSegment, fraction: number): Motion {
  const [first, second] = [subtract(control, from), subtract(to, control)];
  return {
    velocity: add(scale(first, 2 * (1 - fraction)), scale(second, 2 * fraction)),
    acceleration: scale(subtract(second, first), 2),
  };
}

/** B′(t) = 3(1 − t)²Δ₀ + 6(1 − t)tΔ₁ + 3t²Δ₂, B″ = 6(1 − t)(Δ₁ − Δ₀) + 6t(Δ₂ − Δ₁), Δₙ the steps between the controls. */
function cubicMotion({ from, control1, control2, to }: CubicSegment, fraction: number): Motion {
  const [first, second, third] = [subtract(control1, from), subtract(control2, control1), subtract(to, control2)];
  const rest = 1 - fraction;
  const ends = add(scale(first, 3 * rest ** 2), scale(third, 3 * fraction ** 2));
  return {
    velocity: add(ends, scale(second, 6 * rest * fraction)),
    acceleration: add(scale(subtract(second, first), 6 * rest), scale(subtract(third, second), 6 * fraction)),
  };
}
