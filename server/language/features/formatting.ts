/** The canonical layout of a text as one edit. */
import { printDocument } from '../../../grammar/writing/print-document.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';

export interface Replacement {
  readonly range: SourceRange;
  readonly newText: string;
}

/** From the first to the last letter that differs; null where nothing does, or where a syntax error forbids it. */
export function formatting(text: string): Replacement | null {
  const printed = printDocument(text);
  if (printed === null || printed === text) return null;
  const shorter = Math.min(text.length, printed.length);
  let start = 0;
  while (start < shorter && text[start] === printed[start]) start++;
  while (splits(text, start) || splits(printed, start)) start--;
  let tail = 0;
  while (tail < shorter - start && text.at(-1 - tail) === printed.at(-1 - tail)) tail++;
  while (splits(text, text.length - tail) || splits(printed, printed.length - tail)) tail--;
  return {
    range: { start, end: text.length - tail },
    newText: printed.slice(start, printed.length - tail),
  };
}

/** True where `offset` parts what no edit may part: the halves of a letter beyond the basic plane, or a CR LF. */
const splits = (text: string, offset: number): boolean =>
  /^(?:[\uD800-\uDBFF][\uDC00-\uDFFF]|\r\n)$/.test(text.slice(Math.max(offset - 1, 0), offset + 1));
