/** Questions in the protocol's terms → ours. */
import type { Position, Range } from 'vscode-languageserver';
import type { SourceRange } from '../../grammar/tree/source-range.ts';

/** The UTF-16 offset of a position; a column beyond its line means the line's end, a line beyond the text its end. */
export function offsetAt(text: string, lineStarts: readonly number[], { line, character }: Position): number {
  const start = lineStarts[line];
  if (start === undefined) return text.length;
  const next = lineStarts[line + 1];
  const end = next === undefined ? text.length : start + text.slice(start, next).replace(/[\r\n]+$/, '').length;
  return Math.min(start + character, end);
}

/** The offsets of a range. */
export const rangeFrom = (text: string, lineStarts: readonly number[], { start, end }: Range): SourceRange => ({
  start: offsetAt(text, lineStarts, start),
  end: offsetAt(text, lineStarts, end),
});
