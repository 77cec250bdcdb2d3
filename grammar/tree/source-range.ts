/** Places in a source text, as UTF-16 offsets; lines and columns are made only at the doors. */

/** A half-open stretch of text: `start` is its first offset, `end` the offset after its last. */
export interface SourceRange {
  readonly start: number;
  readonly end: number;
}

/** Where a token stands. */
export const rangeOf = ({ startOffset, image }: TokenPlace): SourceRange => ({
  start: startOffset,
  end: startOffset + image.length,
});

/** What a token says of its place. */
interface TokenPlace {
  readonly startOffset: number;
  readonly image: string;
}

/**
 * Offsets of a used file begin at its number times this, and those of the file in hand at 0: so one offset says both
 * the file and the place, and ranges of different files never meet.
 */
export const fileStride = 2 ** 32;

/** Number of the file an offset lies in; 0 is the file in hand. */
export const fileNumberOf = (offset: number): number => Math.floor(offset / fileStride);

/** The range as counted from the beginning of its own file. */
export function rangeInFile({ start, end }: SourceRange): SourceRange {
  const begin = fileNumberOf(start) * fileStride;
  return { start: start - begin, end: end - begin };
}

/** A zero-based line and UTF-16 column. */
export interface LineColumn {
  readonly line: number;
  readonly column: number;
}

/** The smallest range that holds both. */
export function spanOf(first: SourceRange, last: SourceRange): SourceRange {
  return { start: Math.min(first.start, last.start), end: Math.max(first.end, last.end) };
}

/** Offsets at which each line of `text` begins; CR LF, LF and CR all end a line. */
export function lineStartsOf(text: string): number[] {
  const starts = [0];
  for (const match of text.matchAll(/\r\n|\n|\r/g)) starts.push(match.index + match[0].length);
  return starts;
}

/** The line and column of `offset`, found by bisection in the result of `lineStartsOf`. */
export function lineColumnAt(lineStarts: readonly number[], offset: number): LineColumn {
  let low = 0;
  let high = lineStarts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((lineStarts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low, column: offset - (lineStarts[low] ?? 0) };
}
