/** Closed contours made of lines, elliptical arcs and Bézier curves: the exact form of an outline. */
import type { Point } from './point.ts';

export interface LineSegment {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/**
 * Part of an ellipse: point(θ) = centre + R(tilt)·(radiusX cos θ, radiusY sin θ), θ from `startAngle`
 * over `sweep` degrees (positive counter-clockwise). A circular arc has equal radii and tilt 0.
 */
export interface ArcSegment {
  readonly kind: 'arc';
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly radiusX: number;
  readonly radiusY: number;
  readonly tilt: number;
  readonly startAngle: number;
  readonly sweep: number;
}

export interface QuadraticSegment {
  readonly kind: 'quadratic';
  readonly from: Point;
  readonly control: Point;
  readonly to: Point;
}

export interface CubicSegment {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly control1: Point;
  readonly control2: Point;
  readonly to: Point;
}

export type PathSegment = LineSegment | ArcSegment | QuadraticSegment | CubicSegment;

/** A closed chain of segments: each begins where the one before it ends, the first where the last ends. */
export type Contour = readonly PathSegment[];
