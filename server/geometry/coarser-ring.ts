/** A polygon with fewer corners that looks the same: what drawings show of curves that are computed in fine chains. */
import type { Point } from './point.ts';
import { distanceToSegment } from './region.ts';
import { drawingTolerance } from './tolerance.ts';

/** The ring without corners that no drawing would show. */
export const coarserRing = (ring: readonly Point[]): Point[] => ringWithin(ring, drawingTolerance);

/** The ring without corners that lie no further than `tolerance` from what is kept (Ramer 1972, Douglas and Peucker 1973). */
export function ringWithin(ring: readonly Point[], tolerance: number): Point[] {
  const [first] = ring;
  if (!first || ring.length <= 4) return [...ring];
  const far = ring.reduce(
    (best, point, index) => {
      const away = Math.hypot(point.x - first.x, point.y - first.y);
      return away > best.away ? { index, away } : best;
    },
    { index: 0, away: 0 },
  );
  const closed = [...ring, first];
  return [...keptBetween(closed, 0, far.index, tolerance), ...keptBetween(closed, far.index, ring.length, tolerance)];
}

/** The kept points of a chain from `from` on, without the one at `to`. */
function keptBetween(chain: readonly Point[], from: number, to: number, tolerance: number): Point[] {
  const [start, end] = [chain[from], chain[to]];
  if (!start || !end || to <= from) return [];
  let worst = { index: from, away: tolerance };
  for (let index = from + 1; index < to; index++) {
    const point = chain[index];
    const away = point ? distanceToSegment(point, start, end) : 0;
    if (away > worst.away) worst = { index, away };
  }
  if (worst.index === from) return [start];
  return [...keptBetween(chain, from, worst.index, tolerance), ...keptBetween(chain, worst.index, to, tolerance)];
}
