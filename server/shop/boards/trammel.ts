/** Whether an outline can be drawn with a trammel, and its settings. Lengths mm. */
import type { Contour } from '../../geometry/path.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { placeTolerance, sameAngle } from '../../geometry/tolerance.ts';

/** From the pencil: a circle's pivot, or the two runners in their crossed slots. */
export interface Trammel {
  readonly kind: 'circle' | 'ellipse';
  readonly centre: Point;
  readonly long: number;
  readonly short: number;
}

/** Null unless the outer contour is one circle or one ellipse. */
export function trammelOf([outer]: readonly Contour[]): Trammel | null {
  const [first] = outer ?? [];
  if (first?.kind !== 'arc') return null;
  const isSame = (outer ?? []).every(
    (segment) =>
      segment.kind === 'arc' &&
      distance(segment.centre, first.centre) <= placeTolerance &&
      Math.abs(segment.radiusX - first.radiusX) <= placeTolerance &&
      Math.abs(segment.radiusY - first.radiusY) <= placeTolerance &&
      sameAngle(segment.tilt, first.tilt),
  );
  if (!isSame) return null;
  const { centre, radiusX, radiusY } = first;
  const isRound = Math.abs(radiusX - radiusY) <= placeTolerance;
  return {
    kind: isRound ? 'circle' : 'ellipse',
    centre,
    long: Math.max(radiusX, radiusY),
    short: Math.min(radiusX, radiusY),
  };
}
