/** The canonical layout of a part of a text: only spaces between words move, so the cursor and the other lines stay. */
import { printDocument } from '../../../grammar/writing/print-document.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import { tokenize } from '../../../grammar/vocabulary/tokens.ts';
import type { Analysis } from '../../analyse.ts';
import type { Replacement } from './formatting.ts';

/**
 * The changes inside `range`, and of the indentation of its first line. None where a syntax error forbids them, or
 * where a comment would have to move past words: that is left to the layout of the whole text.
 */
export function formattingWithin(text: string, range: SourceRange): Replacement[] {
  const printed = printDocument(text);
  if (printed === null) return [];
  const [now, then] = [wordsAndComments(text), wordsAndComments(printed)];
  if (now.length !== then.length || now.some((word, index) => word.text !== then[index]?.text)) return [];
  const wantedGaps = gapsBetween(printed, then);
  return gapsBetween(text, now).flatMap((gap, index) => {
    const wanted = wantedGaps[index]?.text ?? gap.text;
    return replacementWithin(gap, wanted, range) ?? [];
  });
}

/** What typing a `}` or a line end brings about: the block that was closed, or the line before, is laid out. */
export function formattingOnType({ text, tree }: Analysis, offset: number, typed: string): Replacement[] {
  if (typed === '}') {
    const closed = tree.declarations.find((each) => 'close' in each && each.close?.end === offset);
    return closed ? formattingWithin(text, closed.range) : [];
  }
  const lineEnd = text.slice(0, offset).trimEnd().length;
  const lineStart = text.lastIndexOf('\n', lineEnd - 1) + 1;
  return formattingWithin(text, { start: lineStart, end: lineEnd });
}

/** A word or comment, its spaces inside and behind it left out. */
interface Piece {
  readonly text: string;
  readonly range: SourceRange;
}

function wordsAndComments(text: string): Piece[] {
  const { tokens, comments } = tokenize(text);
  return [...tokens, ...comments]
    .sort((first, second) => first.startOffset - second.startOffset)
    .map(({ image, startOffset }) => {
      const kept = image.trimEnd();
      return { text: kept, range: { start: startOffset, end: startOffset + kept.length } };
    });
}

/** The spaces before each piece, and those behind the last. */
function gapsBetween(text: string, pieces: readonly Piece[]): Piece[] {
  const ends = [0, ...pieces.map(({ range }) => range.end)];
  const starts = [...pieces.map(({ range }) => range.start), text.length];
  return ends.map((start, index) => {
    const end = starts[index] ?? start;
    return { text: text.slice(start, end), range: { start, end } };
  });
}

/** The change of one gap, if it lies inside `range`; of one that ends there, the spaces behind its last line end. */
function replacementWithin({ text, range: gap }: Piece, wanted: string, range: SourceRange): Replacement | null {
  if (text === wanted || gap.end < range.start || gap.end > range.end) return null;
  if (gap.start >= range.start) return { range: gap, newText: wanted };
  const [line, wantedLine] = [text.lastIndexOf('\n') + 1, wanted.lastIndexOf('\n') + 1];
  const isIndentation =
    gap.start + line >= range.start && (line > 0 || gap.start === 0) && (wantedLine > 0 || gap.start === 0);
  if (!isIndentation || text.slice(line) === wanted.slice(wantedLine)) return null;
  return { range: { start: gap.start + line, end: gap.end }, newText: wanted.slice(wantedLine) };
}
