/** Hollows of a saw line that are tighter than the blade turns. Lengths mm. */
import type { Bench } from '../../design/design-model.ts';
import type { Contour } from '../../geometry/path.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { sharpestBends } from '../../geometry/sharpest-bends.ts';
import { bandRuns } from '../bands/band-runs.ts';

/** A place of the finished line; the radius is the saw line's beside it, 0 in a corner. */
export interface TightHollow {
  readonly at: Point;
  readonly radius: number;
}

/** The tightest curve that a bench's saw for outlines turns; null where no bench says. */
export const tightestCut = (benches: readonly Bench[]): number | null =>
  benches.find(({ bandRadius }) => bandRadius !== null)?.bandRadius ?? null;

/**
 * The work lies on the left of its contours. A hollow of radius r has the parallel of radius r − `out`, `out` mm outside
 * it. Of hollows nearer to one another than the blade turns the tightest stands for all; of one segment its tightest place.
 */
export function tightHollows(finished: readonly Contour[], out: number, tightest: number): TightHollow[] {
  const found = bandRuns(finished).flatMap(({ segments, turns }): TightHollow[] => {
    const [first] = segments;
    const corner = first && turns && turns[0] < 0 ? [{ at: first.from, radius: 0 }] : [];
    const curved = segments.flatMap((segment): TightHollow[] => {
      const { right } = sharpestBends([segment]);
      return right ? [{ at: right.at, radius: Math.max(0, -1 / right.curvature - out) }] : [];
    });
    return [...corner, ...curved.filter(({ radius }) => radius < tightest)];
  });
  const kept: TightHollow[] = [];
  for (const hollow of found.sort((a, b) => a.radius - b.radius))
    if (kept.every(({ at }) => distance(at, hollow.at) > tightest)) kept.push(hollow);
  return kept;
}
