/** Where words of a text stood in an earlier version of it, as far as one stretch of changes tells. */
import type { SourceRange } from '../../../grammar/tree/source-range.ts';

/**
 * The place in `earlier` of `range` in `later`. Between what both begin with and what both end with lies the changed
 * stretch: a place inside it stands for the whole of it.
 */
export function earlierPlace(earlier: string, later: string, range: SourceRange): SourceRange {
  const shorter = Math.min(earlier.length, later.length);
  let before = 0;
  while (before < shorter && earlier[before] === later[before]) before++;
  let after = 0;
  while (after < shorter - before && earlier.at(-1 - after) === later.at(-1 - after)) after++;
  const shift = earlier.length - later.length;
  const changed = (place: number, inside: number): number => {
    if (place < before) return place;
    return place >= later.length - after ? place + shift : inside;
  };
  const start = changed(range.start, before);
  return { start, end: Math.max(start, changed(range.end, earlier.length - after)) };
}
