/** Centre lines of a lattice's strips, as far as they run over an area. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import { stretchesWithin } from '../../geometry/lines.ts';
import { add, dot, type Point, scale } from '../../geometry/point.ts';
import { lineOffset, type LineFamily, linesBetween } from '../grid/grid-lines.ts';

/** Every stretch of every line that lies within `rings` (holes clockwise), as its two ends. */
export function stripAxes(
  families: readonly LineFamily[],
  rings: readonly (readonly Point[])[],
): (readonly [Point, Point])[] {
  return families.flatMap((lines) => {
    const reaches = rings.flat().map((point) => dot(lines.normal, point));
    return linesBetween(lines, minimum(reaches), maximum(reaches)).flatMap((index) => {
      const foot = scale(lines.normal, lineOffset(lines, index));
      return stretchesWithin(rings, foot, lines.along).map(
        ([start, end]) => [add(foot, scale(lines.along, start)), add(foot, scale(lines.along, end))] as const,
      );
    });
  });
}
